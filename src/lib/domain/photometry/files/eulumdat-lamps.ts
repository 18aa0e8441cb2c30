import { pointed, type Lines } from './eulumdat-lines';
import { clean, numberOf, Refusal } from './reading';

export interface LampSet {
	/** Negative: absolute photometry. */
	lamps: number;
	type: string;
	/** Of all lamps of the set; in absolute photometry of the luminaire. */
	lumens: number;
	watts: number;
}

const fields = [
	'number of lamps',
	'type of lamps',
	'total luminous flux of lamps',
	'colour temperature',
	'colour rendering',
	'watts'
];

/**
 * The standard sets of lamps: choices of which the first is taken. Files list six lines set by set, or, as the line list can be read
 * too, all sets of a field together; the latter is taken where only it makes numbers of what must be numbers.
 */
export function lampSetsOf(lines: Lines, notes: string[]): LampSet {
	const count = lines.number('number of standard sets of lamps', { min: 1, max: 20, whole: true });
	const start = lines.line;
	const text = (field: number, set: number, together: boolean): { text: string; line: number } => {
		const at = start + (together ? field * count + set : set * 6 + field);
		const found = lines.all[at];
		if (found === undefined)
			throw new Refusal(
				lines.all.length,
				`${fields[field]}${count > 1 ? `, set ${set + 1}` : ''}`,
				'the file ends before it.'
			);
		return { text: found.trim(), line: at + 1 };
	};
	const numbers = (together: boolean): boolean =>
		Array.from({ length: count }, (_, set) => set).every((set) =>
			[0, 2].every((field) => looksLike(text(field, set, together).text))
		);
	const together = count > 1 && !numbers(false) && numbers(true);
	const of = (field: number): { text: string; line: number } => text(field, 0, together);
	const number = (field: number, range: { min?: number; above?: boolean }, blank?: number): number => {
		const { text, line } = of(field);
		return text === '' && blank !== undefined ? blank : numberOf(pointed(text), line, fields[field]!, range);
	};
	// Reading the last of them first says where the file ends when it ends among them.
	text(5, count - 1, together);
	const set = {
		lamps: number(0, {}),
		type: clean(of(1).text),
		lumens: number(2, { min: 0, above: true }),
		watts: number(5, { min: 0 }, 0)
	};
	if (count > 1) notes.push(`It lists ${count} sets of lamps; the first is taken.`);
	lines.line = start + 6 * count;
	return set;
}

const looksLike = (text: string): boolean => /^[+-]?\d*[.,]?\d+$/.test(text);
