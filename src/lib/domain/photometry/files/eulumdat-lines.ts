import { fieldName, numberOf, Refusal, type Field, type Range } from './reading';

/** A decimal comma made a point. */
export const pointed = (text: string): string => text.trim().replace(/^([^.,]*),([^.,]*)$/, '$1.$2');

/** Line after line; numbers may have a decimal comma. */
export class Lines {
	/** Of the line last given, from 1. */
	line = 0;
	constructor(readonly all: readonly string[]) {}

	text(field: Field): string {
		if (this.line >= this.all.length) throw new Refusal(this.all.length, fieldName(field), 'the file ends before it.');
		return this.all[this.line++]!.trim();
	}
	number(field: Field, range?: Range): number {
		return numberOf(pointed(this.text(field)), this.line, field, range);
	}
	/** A number of a field that is often left blank: 0 then. */
	spare(field: string): number {
		const text = pointed(this.text(field));
		return text === '' ? 0 : numberOf(text, this.line, field);
	}
}
