/** Day of the year against clock time, noon to noon, so that each night is one column. Marks in px. */
import type { Dusk, DuskDay } from '../domain/dusk';
import { mm } from './path';
import { scale } from './chart';

export interface YearChartMarks {
	width: number;
	height: number;
	plot: { left: number; right: number; top: number; bottom: number };
	months: { x: number; middle: number; text: string }[];
	hours: { y: number; text: string }[];
	/** Closed areas in which the lights are on. */
	on: string;
	/** Lines; broken where the thing does not happen. */
	sunset: string;
	dusk: string;
	dawn: string;
	sunrise: string;
	/** Where the names of the lines may stand: at their height near the year's end. */
	names: { text: string; x: number; y: number }[];
	midnight: number;
}
const noon = 720;
const minutesInDay = 1440;
const monthNames = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** Runs of neighbouring days that all have the values wanted. */
function stretches<T>(days: readonly DuskDay[], pick: (day: DuskDay) => T | null): { day: number; value: T }[][] {
	const out: { day: number; value: T }[][] = [];
	let open: { day: number; value: T }[] = [];
	days.forEach((entry, day) => {
		const value = pick(entry);
		if (value !== null) return void open.push({ day, value });
		if (open.length > 0) out.push(open);
		open = [];
	});
	return open.length > 0 ? [...out, open] : out;
}

/** Minutes after local midnight -> "18:00". */
export const clock = (minutes: number): string => {
	const m = ((Math.round(minutes) % minutesInDay) + minutesInDay) % minutesInDay;
	return `${String(Math.floor(m / 60)).padStart(2, '0')}:${String(m % 60).padStart(2, '0')}`;
};

/** The chart of a year, `width` px wide. Null when there are no days. */
export function drawYear(dusk: Dusk, width: number): YearChartMarks | null {
	const { days } = dusk;
	if (days.length === 0) return null;
	const height = Math.round(Math.min(420, Math.max(260, width * 0.5)));
	const plot = { left: 50, right: width - 12, top: 12, bottom: height - 30 };
	const x = scale([0, days.length], [plot.left, plot.right]);
	const yRaw = scale([noon, noon + minutesInDay], [plot.top, plot.bottom]);
	const y = (minutes: number) => Math.min(plot.bottom, Math.max(plot.top, yRaw(minutes)));
	const line = (pick: (day: DuskDay) => number | null) =>
		stretches(days, pick)
			.map((run) =>
				run.map(({ day, value }, i) => `${i === 0 ? 'M' : 'L'}${mm(x(day + 0.5))} ${mm(y(value))}`).join('')
			)
			.join('');
	const on = stretches(days, (day) => (day.on === null || day.off === null ? null : { on: day.on, off: day.off }))
		.map((run) => {
			const there = run.map(({ day, value }) =>
				[`${mm(x(day))} ${mm(y(value.on))}`, `${mm(x(day + 1))} ${mm(y(value.on))}`].join('L')
			);
			const back = run
				.toReversed()
				.map(({ day, value }) =>
					[`${mm(x(day + 1))} ${mm(y(value.off))}`, `${mm(x(day))} ${mm(y(value.off))}`].join('L')
				);
			return `M${[...there, ...back].join('L')}Z`;
		})
		.join('');
	const starts = days.flatMap((day, index) =>
		day.date.endsWith('-01') ? [{ index, month: Number(day.date.slice(5, 7)) }] : []
	);
	const months = starts.map(({ index, month }, i) => {
		const name = monthNames[month - 1] ?? '';
		return {
			x: x(index),
			middle: x((index + (starts[i + 1]?.index ?? days.length)) / 2),
			text: width < 460 ? name.slice(0, 1) : name
		};
	});
	const named = [
		['sunset', (day: DuskDay) => day.sunset, -6],
		['dusk', (day: DuskDay) => day.dusk, 15],
		['dawn', (day: DuskDay) => day.dawn, -6],
		['sunrise', (day: DuskDay) => day.sunrise, 15]
	] as const;
	// The lines lie furthest apart at midsummer.
	const at = Math.floor(days.length * (dusk.latitude >= 0 ? 0.47 : 0.03));
	const names = named.flatMap(([text, pick, dy]) => {
		const day = days[at];
		const value = day ? pick(day) : null;
		return value === null ? [] : [{ text, x: x(at), y: y(value) + dy }];
	});
	return {
		width,
		height,
		plot,
		months,
		hours: [12, 15, 18, 21, 24, 27, 30, 33, 36].map((hour) => ({ y: yRaw(hour * 60), text: clock(hour * 60) })),
		on,
		sunset: line((day) => day.sunset),
		dusk: line((day) => day.dusk),
		dawn: line((day) => day.dawn),
		sunrise: line((day) => day.sunrise),
		names,
		midnight: yRaw(minutesInDay)
	};
}
