/** Text cut into numbers with their units: `12 ft 6 1/2 in` is two terms. */
import { metresPerFoot, metresPerInch, type UnitSystem } from './units';

export type Unit = 'ft' | 'in' | 'm' | 'cm' | 'mm';
export const inMetres: Record<Unit, number> = { ft: metresPerFoot, in: metresPerInch, m: 1, cm: 0.01, mm: 0.001 };
export const isFeet = (unit: Unit) => unit === 'ft' || unit === 'in';

export const number = String.raw`(?:\d+\s+\d+\/\d+|\d+-\d+\/\d+|\d+\/\d+|\d+(?:[.,]\d*)?|[.,]\d+)`;
export const unit = String.raw`(?:'|"|(?:feet|foot|ft|inch(?:es)?|in|millimet(?:er|re)s?|mm|centimet(?:er|re)s?|cm|met(?:er|re)s?|m)(?![a-z])\.?)`;
const term = new RegExp(String.raw`(${number})(?:\s*(${unit}))?`, 'y');
const between = /\s*(?:,\s+|and\s+|-\s*)?/y;

export interface Term {
	text: string;
	value: number;
	unit: Unit | null;
}
function unitOf(word: string | undefined): Unit | null {
	if (!word) return null;
	if (word === "'" || word.startsWith('f')) return 'ft';
	if (word === '"' || word.startsWith('i')) return 'in';
	if (word === 'mm' || word.startsWith('mil')) return 'mm';
	return word.startsWith('c') ? 'cm' : 'm';
}
/** A number with an optional fraction; NaN where the fraction is not a proper one. */
export function valueOf(text: string): number {
	const fraction = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/.exec(text);
	if (!fraction) return Number(text.replace(',', '.'));
	const [, whole, above, below] = fraction.map(Number);
	return (above ?? 0) < (below ?? 0) ? (whole || 0) + (above ?? 0) / (below ?? 1) : Number.NaN;
}
/** The terms that the text is made of, or null when something in it is not a term. */
export function termsOf(text: string): Term[] | null {
	const terms: Term[] = [];
	let at = 0;
	while (at < text.length) {
		term.lastIndex = at;
		const match = term.exec(text);
		if (!match?.[1]) return null;
		terms.push({ text: match[1], value: valueOf(match[1]), unit: unitOf(match[2]) });
		between.lastIndex = term.lastIndex;
		between.test(text);
		const isJoined = between.lastIndex <= term.lastIndex;
		// `3.8.1` is not 3.8 and .1: only a unit may end a number without a space
		if (isJoined && !match[2] && term.lastIndex < text.length) return null;
		at = isJoined ? term.lastIndex : between.lastIndex;
		// something was to follow
		if (at === text.length && at > term.lastIndex) return null;
	}
	return terms;
}

/** The system that the person typed in; a bare number is in the yard's. */
export function systemOf([first]: readonly Term[], units: UnitSystem): UnitSystem {
	if (!first?.unit) return units;
	return isFeet(first.unit) ? 'feet' : 'metres';
}
