/** Which column is what, by its heading. */
import { fieldBySaying } from './column-words';
import { isField, type Field } from './fields';
import type { Column } from './types';

const ordinals: Record<string, string> = {
	first: '1',
	second: '2',
	third: '3',
	fourth: '4',
	'1st': '1',
	'2nd': '2',
	'3rd': '3',
	'4th': '4'
};
/** Units that stand behind a heading and do not change what it means. */
const units = /\s(?:ft|feet|foot|m|metres?|meters?|usd|eur|gbp|w|watts|va|v|volts|lm|k|kelvin|deg|degrees|pcs|each)$/;

/** `Beam (deg.)` as `beam deg`, `Fixture2 Watts` as `fixture 2 watts`, `mm²` as `mm2`. */
const plainly = (header: string): string =>
	header
		.normalize('NFKC')
		.toLowerCase()
		.replace(/#/g, ' no ')
		.replace(/([a-z]{2,}|\bv|\bw)([1-9])(?=[^a-z0-9]|$)/g, (all, word: string, digit: string) =>
			all === 'mm2' ? all : `${word} ${digit}`
		)
		.replace(/[^a-z0-9]+/g, ' ')
		.trim()
		.split(' ')
		.map((word) => (Object.hasOwn(ordinals, word) ? ordinals[word] : word))
		.join(' ');

/** The phrase itself, then without whose it is (`fixture watts`), then both without the unit. */
function* readings(phrase: string): Generator<string> {
	const bare = phrase.replace(units, '');
	for (const one of new Set([phrase, bare])) {
		yield one;
		const own = one.replace(/^(?:fixture|light|lamp|kit|item|no of|number of)\s/, '');
		if (own !== one) yield own;
	}
}

/** What a heading means, null where it means nothing to us. `Light 2 watts` and `watts 2` are `watts 2`. */
export function fieldOf(header: string): Field | null {
	if (header.length > 80) return null;
	const phrase = plainly(header);
	const [, set = '1'] = /(?:^|\s)([1-9])(?=\s|$)/.exec(phrase) ?? [];
	const rest = phrase.replace(/(?:^|\s)[1-9](?=\s|$)/, '').trim();
	for (const reading of readings(rest)) {
		const base = fieldBySaying.get(reading);
		const field = base && (set === '1' ? base : `${base} ${set}`);
		if (field && isField(field)) return field;
	}
	return null;
}
/** How many of a row's cells are headings that we know, each once. */
export const countKnown = (row: readonly string[]): number =>
	new Set(row.map(fieldOf).filter((field) => field !== null)).size;

/** Index of the row of headings among the first rows: the one with most that are known, at least two. Null: there is none. */
export function headerIndex(rows: readonly (readonly string[])[]): number | null {
	let best: { at: number | null; known: number } = { at: null, known: 1 };
	for (const [at, row] of rows.slice(0, 20).entries()) {
		const known = countKnown(row);
		if (known > best.known) best = { at, known };
	}
	return best.at;
}

/** A spreadsheet's name of a column: A, B … Z, AA. */
export const letters = (index: number): string =>
	(index >= 26 ? letters(Math.floor(index / 26) - 1) : '') + String.fromCharCode(65 + (index % 26));

const sampleLength = 60;
const cut = (text: string) => (text.length > sampleLength ? `${text.slice(0, sampleLength - 1)}…` : text);
/**
 * The columns with what each holds. Where two headings mean the same, the first has it. `told` is what a person said, left to right.
 */
export function columnsOf(
	headers: readonly string[] | null,
	body: readonly (readonly string[])[],
	told?: readonly (Field | null)[]
): Column[] {
	const width = body.reduce((most, row) => Math.max(most, row.length), headers?.length ?? 0);
	const taken = new Set<Field>();
	return Array.from({ length: width }, (_, at) => {
		const own = headers?.[at]?.trim() ?? '';
		const guess = told ? (told[at] ?? null) : headers ? fieldOf(own) : null;
		const field = guess && !taken.has(guess) ? guess : null;
		if (field) taken.add(field);
		const sample = body.find((row) => row[at]?.trim())?.[at]?.trim() ?? '';
		return { header: own || `Column ${letters(at)}`, sample: cut(sample), field };
	});
}
