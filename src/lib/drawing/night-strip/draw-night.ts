/** One night of the sensor: light on its window against the clock, on a logarithmic axis, with its levels and what it does. Marks in px. */
import type { LitSpan, SensorNight } from '../../domain/dusk';
import { scale } from '../chart';
import { mm } from '../path';
import { clock } from '../year-days';

export interface NightMarks {
	width: number;
	height: number;
	plot: { left: number; right: number; top: number; bottom: number };
	/** The band under the plot in which the lights are on. */
	band: { top: number; bottom: number };
	hours: { x: number; text: string; anchor: 'start' | 'middle' | 'end' }[];
	/** Decades of lux. */
	decades: { y: number; text: string }[];
	levels: { y: number; text: string; above: boolean }[];
	trace: string;
	/** Stretches in which the sensor calls for light. */
	called: { left: number; right: number }[];
	/** Of these, what the hours chosen let burn. */
	lit: { left: number; right: number }[];
	/** After the last switch that is known of a sensor that blinks. */
	andSoOn: { x: number; text: string } | null;
}
/** Darker than this is drawn at the foot of the chart: moonlight is about a quarter of a lux (from memory). */
const leastLux = 0.1;
const decadeText = (lux: number): string => (lux >= 1000 ? `${lux / 1000}k` : String(lux));

/**
 * Stretches in which the sensor is on, minutes; what it was before its first switch is the contrary. One that never switches
 * is on all the while where its window stays darker than `onLux`.
 */
export function calledBetween({ switches, trace }: SensorNight, onLux: number, from: number, to: number): LitSpan[] {
	if (switches.length === 0) return trace.every(({ lux }) => lux < onLux) ? [{ on: from, off: to }] : [];
	const lit: LitSpan[] = [];
	let on: number | null = switches[0]?.on === false ? from : null;
	for (const change of switches) {
		if (change.on) on ??= change.at;
		else if (on !== null) {
			lit.push({ on, off: change.at });
			on = null;
		}
	}
	if (on !== null) lit.push({ on, off: to });
	return lit;
}
function hoursBetween(from: number, to: number, most: number): number[] {
	const step = [60, 120, 180, 360].find((minutes) => (to - from) / minutes <= most) ?? 720;
	const first = Math.ceil(from / step) * step;
	return Array.from({ length: Math.max(0, Math.floor((to - first) / step) + 1) }, (_, k) => first + k * step);
}

/** What two lists of stretches have in common. */
const common = (some: readonly LitSpan[], others: readonly LitSpan[]): LitSpan[] =>
	some.flatMap((one) =>
		others
			.map((other) => ({ on: Math.max(one.on, other.on), off: Math.min(one.off, other.off) }))
			.filter(({ on, off }) => off > on)
	);

/**
 * The night `width` px wide; `onLux`: level at which the sensor switches on; `spans`: when the hours chosen let the lights
 * burn. Null without a trace.
 */
export function drawNight(
	night: SensorNight,
	onLux: number,
	spans: readonly LitSpan[],
	width: number
): NightMarks | null {
	const { trace, offAt } = night;
	const [first, last] = [trace[0], trace.at(-1)];
	if (!first || !last || !(last.at > first.at)) return null;
	const plot = { left: 46, right: width - 8, top: 10, bottom: 190 };
	const band = { top: plot.bottom + 11, bottom: plot.bottom + 30 };
	const top = 10 ** Math.ceil(Math.log10(Math.max(offAt * 2, ...trace.map(({ lux }) => lux)) - 1e-9));
	const x = scale([first.at, last.at], [plot.left, plot.right]);
	const log = scale([Math.log10(leastLux), Math.log10(top)], [plot.bottom, plot.top]);
	const y = (lux: number): number => log(Math.log10(Math.min(top, Math.max(leastLux, lux))));
	const decades: NightMarks['decades'] = [];
	for (let lux = leastLux; lux <= top * 1.001; lux = Number((lux * 10).toPrecision(3)))
		decades.push({ y: y(lux), text: decadeText(lux) });
	// Of a night that blinks only the first switches are told.
	const told = night.verdict === 'hunting' ? (night.switches.at(-1)?.at ?? last.at) : last.at;
	const isCut = last.at - told > 60;
	// Beyond them the trace is too coarse for the blinking.
	const known = isCut ? trace.filter(({ at }) => at <= told) : trace;
	const called = calledBetween(night, onLux, first.at, isCut ? told : last.at);
	const across = ({ on, off }: LitSpan) => ({ left: x(on), right: x(off) });
	return {
		width,
		height: band.bottom + 26,
		plot,
		band,
		hours: hoursBetween(first.at, last.at, width < 460 ? 5 : 9).map((at) => {
			const here = x(at);
			const anchor = here < plot.left + 16 ? 'start' : here > plot.right - 18 ? 'end' : 'middle';
			return { x: here, text: clock(at), anchor };
		}),
		decades,
		levels: [
			{ y: y(offAt), text: `off at ${Math.round(offAt)} lx`, above: true },
			{ y: y(onLux), text: `on at ${Math.round(onLux)} lx`, above: false }
		],
		trace: known.map(({ at, lux }, k) => `${k === 0 ? 'M' : 'L'}${mm(x(at))} ${mm(y(lux))}`).join(''),
		called: called.map(across),
		lit: common(called, spans).map(across),
		andSoOn: isCut ? { x: x(told) + 8, text: 'and so on' } : null
	};
}
