/** Volts of taps and lamps. Low voltage ends at 30 V (NEC Article 411, from memory). */
import { tidy } from '../../domain/shared/read-tidy';
import { quoted, refused, taken, type ReadValue } from './types';

const months = 'jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec';
/** What a spreadsheet makes of `12-15`. */
const date = new RegExp(
	`^(?:\\d{1,2}[-/ ](?:${months})[a-z]*|(?:${months})[a-z]*[-/ ]\\d{1,4})$|^\\d{1,4}[-/.]\\d{1,2}[-/.]\\d{2,4}$`
);
const dateWords = (text: string) =>
	`${quoted(text)} looks like a date that a spreadsheet made of it. Write 12 V to 15 V instead.`;
export const mostVolts = 30;
const leastTap = 6;

const numbers = (text: string): number[] | null => {
	const parts = text
		.replace(/\bv(?:olts?)?(?:\s*ac)?\b/g, ' ')
		.replace(/(?<=\d)v\b/g, ' ')
		.replace(/(\d),(?=\d{2}(?!\d))/g, '$1 ')
		.replace(/(\d),(?=\d(?!\d))/g, '$1.')
		.split(/[\s,;/|&+]+|\band\b/)
		.filter(Boolean);
	const values = parts.map(Number);
	return values.length > 0 && values.every((value) => Number.isFinite(value)) ? values : null;
};
/** `12-15`, `12 V to 15 V` as its two ends; null where it is no range. */
function rangeOf(text: string): [number, number] | null {
	const found =
		/^(\d+(?:[.,]\d+)?)\s*(?:v(?:olts?)?)?\s*(?:-|to|\.\.\.?)\s*(\d+(?:[.,]\d+)?)\s*(?:v(?:olts?)?)?(?:\s*ac)?$/.exec(
			text
		);
	if (!found) return null;
	const [low, high] = [found[1], found[2]].map((one) => Number((one ?? '').replace(',', '.')));
	return [low ?? 0, high ?? 0];
}
/** Volts of a transformer's taps, ascending. A range is each whole volt of it: that is said. */
export function readTaps(text: string): ReadValue<number[]> {
	const clean = tidy(text);
	if (date.test(clean)) return refused(dateWords(text));
	const range = rangeOf(clean);
	const list = range
		? Array.from({ length: Math.max(0, Math.min(25, Math.floor(range[1] - range[0]) + 1)) }, (_, i) => range[0] + i)
		: numbers(clean);
	const taps = [...new Set(list ?? [])].toSorted((a, b) => a - b);
	if (taps.length === 0 || taps.length > 12 || taps.some((tap) => tap < leastTap || tap > mostVolts))
		return refused(
			`${quoted(text)} is no list of taps from ${leastTap} to ${mostVolts} V. Write it like 12, 13, 14, 15.`
		);
	if (!range) return taken(taps);
	return taken(taps, { about: 'meaning', words: `${quoted(text)} was taken as ${taps.join(', ')} V.` });
}
export interface VoltWindow {
	min: number;
	max: number;
}
/** The window in which a lamp works, `9-15 V`; null where one figure alone stands there, which is what it is meant for. */
export function readWindow(text: string): ReadValue<VoltWindow | null> {
	const clean = tidy(text);
	if (date.test(clean)) return refused(dateWords(text));
	const range = rangeOf(clean);
	if (range) {
		const [min, max] = range;
		return min >= 1 && max > min && max <= mostVolts
			? taken({ min, max })
			: refused(`${quoted(text)} is no window up to ${mostVolts} V. Write it like 9 V to 15 V.`);
	}
	const one = numbers(clean);
	if (one?.length !== 1) return refused(`${quoted(text)} is no window of volts. Write it like 9 V to 15 V.`);
	// Lamps for the mains, or for 24 V systems, would be taken for 12 V ones.
	return one[0]! >= 11 && one[0]! <= 13
		? taken(null)
		: refused(`${quoted(text)}: this is for 12 V lighting. Write the window, like 9 V to 15 V.`);
}
