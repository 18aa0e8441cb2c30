/** Day of the year against clock time, noon to noon, so that each night is one column. Marks in px. */
import type { Dusk, DuskDay } from '../domain/dusk';
import { dayInWords, monthNames } from '../domain/shared/day-words';
import { scale } from './chart';
import { mm } from './path';
import { outlineOf, roomFor, tracksOf } from './year-areas';
import { clock, clockChanges, isClockStep, seasonDays } from './year-days';

export interface Word {
	text: string;
	x: number;
	y: number;
	anchor: 'start' | 'middle' | 'end';
}
export interface YearChartMarks {
	width: number;
	height: number;
	plot: { left: number; right: number; top: number; bottom: number };
	months: { x: number; middle: number; text: string }[];
	hours: { y: number; text: string }[];
	/** Closed areas in which the lights are on. */
	on: string;
	/** Lines; broken where the thing does not happen, stepped where clocks change. */
	sunset: string;
	dusk: string;
	dawn: string;
	sunrise: string;
	/** Names of the lines, of the area, and of the days on which clocks change. */
	names: Word[];
	/** First and last day of other hours. */
	seasons: { x: number; word: Word }[];
	midnight: number;
	/** Middle of a night's column, and the height of a time. */
	x: (day: number) => number;
	y: (minutes: number) => number;
	/** The night whose column is at `x`. */
	dayAt: (x: number) => number;
}
const noon = 720;
const minutesInDay = 1440;
/** Widths of words at 13 px, about. */
const perLetter = 6.6;

interface Scales {
	x: (day: number) => number;
	y: (minutes: number) => number;
}
/** A line through the nights that have the thing, from the middle of each column to the next. */
function lineThrough(days: readonly DuskDay[], pick: (day: DuskDay) => number | null, { x, y }: Scales): string {
	let d = '';
	let before: number | null = null;
	days.forEach((day, index) => {
		const value = pick(day);
		if (value !== null) {
			const here = `${mm(x(index + 0.5))} ${mm(y(value))}`;
			// On the day itself, since clocks jump and the sun does not.
			const step = before !== null && isClockStep(days, index) && Math.abs(value - before) > 15;
			if (before === null) d += `M${here}`;
			else if (step) d += `L${mm(x(index))} ${mm(y(before))}V${mm(y(value))}L${here}`;
			else d += `L${here}`;
		}
		before = value;
	});
	return d;
}
function namesOf(
	dusk: Dusk,
	{ x, y }: Scales,
	plot: YearChartMarks['plot'],
	tracks: ReturnType<typeof tracksOf>
): Word[] {
	const { days } = dusk;
	const named = [
		['sunset', (day: DuskDay) => day.sunset, -6],
		['dusk', (day: DuskDay) => day.dusk, 15],
		['dawn', (day: DuskDay) => day.dawn, -6],
		['sunrise', (day: DuskDay) => day.sunrise, 15]
	] as const;
	// The lines lie furthest apart at midsummer.
	const at = Math.floor(days.length * (dusk.latitude >= 0 ? 0.47 : 0.03));
	const lines = named.flatMap(([text, pick, dy]): Word[] => {
		const day = days[at];
		const value = day ? pick(day) : null;
		const half = (text.length * perLetter) / 2;
		return value === null
			? []
			: [{ text, x: Math.max(x(at), plot.left + half + 4), y: y(value) + dy, anchor: 'middle' }];
	});
	const perDay = (plot.right - plot.left) / days.length;
	const perMinute = (plot.bottom - plot.top) / minutesInDay;
	const room = roomFor(tracks, { nights: Math.ceil(70 / perDay), minutes: 18 / perMinute }, at);
	const area: Word[] = room ? [{ text: 'lights on', x: x(room.day), y: y(room.minutes) + 4.5, anchor: 'middle' }] : [];
	const clocks = clockChanges(days).map(({ index, minutes }): Word => {
		const text =
			plot.right - plot.left < 420 ? 'clocks' : `clocks ${minutes > 0 ? 'on' : 'back'} ${hourWords(minutes)}`;
		const half = (text.length * perLetter) / 2;
		const middle = Math.min(plot.right - half, Math.max(plot.left + half, x(index)));
		return { text, x: middle, y: plot.top + 14, anchor: 'middle' };
	});
	return [...lines, ...area, ...clocks];
}
const hourWords = (minutes: number): string =>
	Math.abs(minutes) % 60 === 0 ? `${Math.abs(minutes) / 60} h` : `${Math.abs(minutes)} min`;

function seasonsOf(dusk: Dusk, { x }: Scales, plot: YearChartMarks['plot']): YearChartMarks['seasons'] {
	const days = seasonDays(dusk);
	if (!days) return [];
	const short = (day: DuskDay | undefined): string => dayInWords(day?.date ?? '').replace(/ (\w{3})\w*$/, ' $1');
	const mark = (at: number, text: string) => {
		const before = x(at) + text.length * perLetter + 6 > plot.right;
		const word: Word = { text, x: x(at) + (before ? -4 : 4), y: plot.bottom - 7, anchor: before ? 'end' : 'start' };
		return { x: x(at), word };
	};
	return [
		mark(days.from, `from ${short(dusk.days[days.from])}`),
		mark(days.after, `to ${short(dusk.days[days.after - 1])}`)
	];
}

/** The chart of a year, `width` px wide. Null when there are no days. */
export function drawYear(dusk: Dusk, width: number): YearChartMarks | null {
	const { days } = dusk;
	if (days.length === 0) return null;
	const height = Math.round(Math.min(420, Math.max(280, width * 0.5)));
	const plot = { left: 50, right: width - 12, top: 12, bottom: height - 30 };
	const x = scale([0, days.length], [plot.left, plot.right]);
	const yRaw = scale([noon, noon + minutesInDay], [plot.top, plot.bottom]);
	const y = (minutes: number) => Math.min(plot.bottom, Math.max(plot.top, yRaw(minutes)));
	const line = (pick: (day: DuskDay) => number | null) => lineThrough(days, pick, { x, y });
	const tracks = tracksOf(days);
	const starts = days.flatMap((day, index) =>
		day.date.endsWith('-01') ? [{ index, month: Number(day.date.slice(5, 7)) }] : []
	);
	const months = starts.map(({ index, month }, i) => ({
		x: x(index),
		middle: x((index + (starts[i + 1]?.index ?? days.length)) / 2),
		text: (monthNames[month - 1] ?? '').slice(0, width < 460 ? 1 : 3)
	}));
	return {
		width,
		height,
		plot,
		months,
		hours: [12, 15, 18, 21, 24, 27, 30, 33, 36].map((hour) => ({ y: yRaw(hour * 60), text: clock(hour * 60) })),
		on: tracks.map((track) => outlineOf(track, x, y)).join(''),
		sunset: line((day) => day.sunset),
		dusk: line((day) => day.dusk),
		dawn: line((day) => day.dawn),
		sunrise: line((day) => day.sunrise),
		names: namesOf(dusk, { x, y }, plot, tracks),
		seasons: seasonsOf(dusk, { x, y }, plot),
		midnight: yRaw(minutesInDay),
		x: (day) => x(day + 0.5),
		y,
		dayAt: (at) =>
			Math.min(days.length - 1, Math.max(0, Math.floor(scale([plot.left, plot.right], [0, days.length])(at))))
	};
}
