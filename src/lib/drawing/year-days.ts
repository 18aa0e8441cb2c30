/** A day of the year in words, and where the year has steps: clocks that change, a season with other hours. */
import type { Dusk, DuskDay, LitSpan } from '../domain/dusk';
import { dayInWords } from '../domain/shared/day-words';

const minutesInDay = 1440;

/** Minutes after local midnight -> "18:00". */
export const clock = (minutes: number): string => {
	const m = ((Math.round(minutes) % minutesInDay) + minutesInDay) % minutesInDay;
	return `${String(Math.floor(m / 60)).padStart(2, '0')}:${String(m % 60).padStart(2, '0')}`;
};
/** `18:33 to 23:00 and 05:30 to 06:02`; empty where the lights stay off. */
export const spanWords = (spans: readonly LitSpan[]): string =>
	spans.map(({ on, off }) => `${clock(on)} to ${clock(off)}`).join(' and ');
/** One night: `14 March: dusk 18:21, on 18:33 to 23:00 and 05:30 to 06:02.` */
export function dayWords({ date, dusk, spans }: DuskDay): string {
	const sky = dusk === null ? 'no dusk' : `dusk ${clock(dusk)}`;
	return `${dayInWords(date)}: ${sky}, ${spans.length === 0 ? 'the lights stay off' : `on ${spanWords(spans)}`}.`;
}

/**
 * Minutes by which the middle of the night moved on the clock since the day before. The sun moves it by less than one minute
 * at any latitude, so that more is a change of clocks; the night it falls in shows one half of it, the next the other.
 */
function shiftAt(days: readonly DuskDay[], index: number): number {
	const middle = (day: DuskDay | undefined): number | null => {
		if (!day) return null;
		if (day.sunset !== null && day.sunrise !== null) return (day.sunset + day.sunrise) / 2;
		return day.dusk !== null && day.dawn !== null ? (day.dusk + day.dawn) / 2 : null;
	};
	const [before, now] = [middle(days[index - 1]), middle(days[index])];
	return before === null || now === null ? 0 : now - before;
}
/** Shifts that are more than the sun's own, minutes; half of the smallest change in use (30 minutes) is 15. */
const leastShift = 8;
export const isClockStep = (days: readonly DuskDay[], index: number): boolean =>
	Math.abs(shiftAt(days, index)) > leastShift;
export interface ClockChange {
	/** The first whole day by the new clock. */
	index: number;
	/** Minutes that clocks go on; below zero: back. */
	minutes: number;
}
export function clockChanges(days: readonly DuskDay[]): ClockChange[] {
	const found: ClockChange[] = [];
	days.forEach((_, index) => {
		if (!isClockStep(days, index)) return;
		const last = found.at(-1);
		const shift = shiftAt(days, index);
		if (last && last.index === index - 1) found[found.length - 1] = { index, minutes: last.minutes + shift };
		else found.push({ index, minutes: shift });
	});
	return found.map(({ index, minutes }) => ({ index, minutes: Math.round(minutes / 15) * 15 }));
}
/** Indices of the days on which the season's hours begin and on which the usual ones return; null without a season. */
export function seasonDays({ days, season }: Pick<Dusk, 'days' | 'season'>): { from: number; after: number } | null {
	if (!season) return null;
	const first = (monthDay: string): number => days.findIndex(({ date }) => date.slice(5) >= monthDay);
	const beyond = days.findIndex(({ date }) => date.slice(5) > season.to);
	const from = first(season.from);
	return { from: from < 0 ? 0 : from, after: beyond < 0 ? days.length : beyond };
}
