/** Small words of the counter: what things are called, counts, lists, money. */
import { metresPerFoot, type UnitSystem } from '../shared/units';
import type { FixtureKind, ShelfLamp } from './types';

const called: Record<FixtureKind, [one: string, many: string]> = {
	spot: ['spot', 'spots'],
	well: ['well light', 'well lights'],
	wash: ['wall wash light', 'wall wash lights'],
	path: ['path light', 'path lights'],
	marker: ['drive marker', 'drive markers'],
	step: ['step light', 'step lights']
};
export const sourceWords: Record<ShelfLamp['source'], string> = { led: 'LED', halogen: 'halogen' };

export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
/** `path light`, `path lights`. */
export const kindWords = (kind: FixtureKind, count = 1): string => called[kind][count === 1 ? 0 : 1];
/** `1 path light`, `4 path lights`. */
export const kindsCounted = (count: number, kind: FixtureKind): string => `${count} ${kindWords(kind, count)}`;

/** `a, b and c`. */
export const listed = (names: readonly string[]): string =>
	names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
/** Inside a sentence: `The 60 VA transformer …` after `As it comes, `; a light's letter stays large. */
export const inside = (words: string): string =>
	words.replace(/^(The|Their|Run|Lamps|One)\b/, (first) => first.toLowerCase());
/** As a sentence: its first letter large, a full stop at its end. */
export const sentence = (words: string): string =>
	`${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.?!]$/.test(words) ? '' : '.'}`;

/** A length of cable in whole feet or metres: nobody cuts it finer at a counter. `isUp`: what is missing is never told too short. */
export function cableLength(metres: number, units: UnitSystem, isUp: boolean): string {
	const one = units === 'feet' ? metresPerFoot : 1;
	// A hair of leeway, so that 50 ft of metres is 50 ft.
	const whole = isUp ? Math.ceil(metres / one - 1e-6) : Math.floor(metres / one + 1e-6);
	return `${whole} ${units === 'feet' ? 'ft' : 'm'}`;
}
/** Hundredths of a currency as it is said: `$24.00`, `USD 24.00`. */
export const money = (cents: number, currency: string): string => {
	const amount = (Math.abs(cents) / 100).toFixed(2);
	return `${cents < 0 ? '−' : ''}${currency}${/[\p{L}\p{N}.]$/u.test(currency) ? ' ' : ''}${amount}`;
};
