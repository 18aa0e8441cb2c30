/**
 * Lengths as people write them: feet and inches with marks or words, metric, fractions, decimal commas. What can be
 * read in two ways is refused with the readings as suggestions; nothing is guessed.
 */
import { tidy } from './read-tidy';
import { meaningOf, salvage } from './read-length-readings';
import { systemOf, termsOf } from './read-length-terms';
import { formatLength, formatLengthFinely, metresPerInch, type UnitSystem } from './units';

export interface LengthRange {
	/** Metres. */
	min: number;
	max: number;
	/** A sign may stand before it. */
	signed?: boolean;
}
export type ReadLength =
	{ ok: true; metres: number; understood: string } | { ok: false; message: string; suggestions: string[] };

const longest = 60;
/** Sums of inches leave dust in the sixteenth decimal; a tenth of a micrometre is finer than a 64th of an inch needs. */
const exact = (metres: number) => Number(metres.toFixed(7));
const example = (units: UnitSystem) => (units === 'feet' ? '12 ft 6 in' : '3.8 m');
const rangeWords = ({ min, max }: LengthRange, units: UnitSystem) =>
	`from ${formatLength(min, units)} to ${formatLength(max, units)}`;
/** A range is shown rounded: what it shows as its end is inside. */
const slack: Record<UnitSystem, number> = { feet: metresPerInch / 4, metres: 0.005 };

function inRange(metres: number, range: LengthRange): number | null {
	if (metres >= range.min && metres <= range.max) return metres;
	for (const end of [range.min, range.max]) {
		const shown = Math.abs(end) < 1 ? 0.0005 : slack.metres;
		if (Math.abs(metres - end) <= Math.max(shown, slack.feet) + 1e-9) return end;
	}
	return null;
}
const readPlain = (text: string, units: UnitSystem): number | string[] => {
	const terms = termsOf(text);
	return terms ? meaningOf(terms, units) : [];
};
const unique = (list: readonly string[]) => [...new Set(list)].slice(0, 3);

/**
 * Reads a length. `units` are the yard's: a bare number is in them, and messages are. `range` is in metres; a length
 * that only display rounding puts beyond an end of it is taken as that end.
 */
export function readLength(text: string, units: UnitSystem, range: LengthRange): ReadLength {
	const refuse = (message: string, suggestions: string[] = []): ReadLength => ({ ok: false, message, suggestions });
	const clean = tidy(text);
	if (clean.length > longest) return refuse(`That is too long to be a length. Write it like ${example(units)}.`);
	if (clean === '') return refuse(`Type a length, for example ${example(units)}.`);
	const [, sign = '', size = ''] = /^([+-]?)\s*(.*)$/.exec(clean) ?? [];
	const meaning = readPlain(size, units);
	const withSign = (list: readonly string[]) =>
		sign === '-' && range.signed ? list.map((one) => `−${one}`) : [...list];
	const fits = (reading: string) => {
		const metres = readPlain(tidy(reading), units);
		return typeof metres === 'number' && inRange(sign === '-' ? -metres : metres, range) !== null;
	};
	if (typeof meaning !== 'number') {
		const readings = meaning.length > 0 ? meaning : salvage(size, units);
		const fitting = readings.filter(fits);
		const message =
			meaning.length > 0
				? 'That can be read in more than one way.'
				: `That is not a length as it stands. Write it like ${example(units)}.`;
		return refuse(message, unique(withSign(fitting)));
	}
	const metres = exact(sign === '-' && meaning !== 0 ? -meaning : meaning);
	const typed = systemOf(termsOf(size) ?? [], units);
	const taken = inRange(metres, range);
	if (taken === null) {
		if (metres < 0 && !range.signed) {
			const positive = inRange(-metres, range) === null ? [] : [formatLengthFinely(-metres, typed)];
			return refuse('This length has no direction: leave the minus away.', positive);
		}
		const others = /^[\d.,]+$/.test(size)
			? ['cm', 'mm', 'm', 'ft', 'in'].map((one) => `${size} ${one}`).filter(fits)
			: [];
		return refuse(
			`That is ${formatLength(metres, units)}. Here it goes ${rangeWords(range, units)}.`,
			unique(withSign(others))
		);
	}
	const say = (system: UnitSystem) =>
		system === typed ? formatLengthFinely(taken, system) : formatLength(taken, system);
	return { ok: true, metres: taken, understood: `${say(units)} · ${say(units === 'feet' ? 'metres' : 'feet')}` };
}
