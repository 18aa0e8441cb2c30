import { fieldName, numberOf, Refusal, type Field, type Range } from './reading';

/** The numbers after the TILT line, one after the other however the lines break; blanks and commas part them. */
export class Tokens {
	private words: string[] = [];
	private word = 0;
	/** Line of the last number given, counted from 1. */
	line: number;

	constructor(
		private readonly lines: readonly string[],
		private next: number
	) {
		this.line = next;
	}

	private take(): string | null {
		while (this.word >= this.words.length) {
			if (this.next >= this.lines.length) return null;
			this.words = this.lines[this.next]!.split(/[\s,]+/).filter((word) => word !== '');
			this.word = 0;
			this.next++;
		}
		this.line = this.next;
		return this.words[this.word++]!;
	}

	number(field: Field, range?: Range): number {
		const word = this.take();
		if (word === null) throw new Refusal(this.line, fieldName(field), 'the file ends before it.');
		return numberOf(word, this.line, field, range);
	}

	/** How many words are left. */
	rest(): number {
		let count = 0;
		while (this.take() !== null) count++;
		return count;
	}
}
