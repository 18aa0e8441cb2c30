/** What a sensor's spot comes to, in words: its verdict, and how many minutes early and late it is. */
import type { SensorNight, SensorView } from '../../domain/dusk';

type Verdict = SensorNight['verdict'];
/** Share of the sky's light below which a window is as good as covered: full day then stays below the usual levels. */
const blind = 0.0005;
/** Minutes that are too few to speak of. */
const few = 0.5;
const minutes = (count: number): string => `${count} ${count === 1 ? 'minute' : 'minutes'}`;

/** Minutes through a year: `6 to 11 minutes early`; below zero they are `late`, and the reverse where `sign` is -1. Null: none known. */
export function rangeWords(values: readonly (number | null)[], sign: 1 | -1 = 1): string | null {
	const known = values.filter((value): value is number => value !== null).map((value) => Math.round(value * sign) || 0);
	if (known.length === 0) return null;
	const [low, high] = [Math.min(...known), Math.max(...known)];
	if (low === 0 && high === 0) return 'within a minute';
	if (low >= 0) return `${low === high ? '' : `${low} to `}${minutes(high)} early`;
	if (high <= 0) return `${low === high ? '' : `${-high} to `}${minutes(-low)} late`;
	return `from ${minutes(-low)} late to ${minutes(high)} early`;
}
/** One month's minutes: `6 min early`, `on time`; `none` where there is no dusk. */
export function minuteWords(value: number | null, sign: 1 | -1 = 1): string {
	if (value === null) return 'none';
	const early = value * sign;
	if (Math.abs(early) < few) return 'on time';
	return `${Math.round(Math.abs(early))} min ${early > 0 ? 'early' : 'late'}`;
}
const most = (values: readonly (number | null)[]): number => Math.max(0, ...values.map((value) => value ?? 0));

/** The verdict in a word or three. */
export function verdictTitle(verdict: Verdict, months: SensorView['months'] = []): string {
	if (verdict === 'steady') return 'Steady';
	if (verdict === 'held-off') return 'Held off';
	if (verdict === 'hunting') return 'Hunting';
	const [early, late] = [most(months.map((month) => month.early)), most(months.map((month) => month.late))];
	if (months.length === 0 || early >= late) return late > 2 ? 'Early and late' : 'Early';
	return early > 2 ? 'Early and late' : 'Late';
}
const luxWords = (lux: number): string => (lux < 0.05 ? 'no light' : `${lux.toFixed(lux < 9.95 ? 1 : 0)} lx`);

/** The verdict as a sentence or two: what happens and why. */
export function verdictWords({ night, months, sky }: SensorView): string {
	if (sky.leafOn < blind)
		return 'No light of the sky to speak of reaches its window: it calls for light day and night.';
	const early = rangeWords(months.map((month) => month.early));
	const late = rangeWords(
		months.map((month) => month.late),
		-1
	);
	switch (night.verdict) {
		case 'steady':
			if (early === null) return 'It switches on once and off once in a night.';
			return early === 'within a minute' && late === early
				? 'It switches on once and off once, within a minute of a window in the open.'
				: `It switches on once and off once: on ${early}, off ${late ?? 'at no dawn'}, against a window in the open.`;
		case 'shifted':
			return `It switches on once and off once, but on ${early ?? 'at no dusk'} and off ${late ?? 'at no dawn'}, against a window in the open: something takes its sky.`;
		case 'held-off':
			return `Other lights throw ${luxWords(night.others)} on its window: it takes that for day, and your lights stay off.`;
		case 'hunting':
			return `Your own lights throw ${luxWords(night.own)} on its window: they come on, it takes them for day, they go off, and so on all night.`;
	}
}
/** What to do where a sensor blinks or keeps the lights off; for the page and for paper. */
export const blinkRemedies: readonly string[] = [
	'Turn its window away from the lamp or the porch light that shines on it.',
	'Fit a hood over it, or put a corner of the house between.',
	'Move it to one of the other spots, or up on a post that sees open sky.',
	'To test by day: cover the window with your hand or dark tape for a few minutes, and wait; most wait up to five minutes before they switch (common practice, no source).'
];
