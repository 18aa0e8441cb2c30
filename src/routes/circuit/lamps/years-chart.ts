/** What each kind of lamp has cost by the end of each year, as marks in px. */
import type { Comparison, Range } from '$lib/domain/compare';
import { scale, ticks } from '$lib/drawing/chart';
import { about } from './words';

interface Line {
	/** Through the middle of the range of each year. */
	path: string;
	/** From the lower end of the range to the upper; null where they are one. */
	band: string | null;
	/** Name at the end of the line. */
	text: string;
	y: number;
}
export interface YearsChart {
	width: number;
	height: number;
	plot: { left: number; right: number; top: number; bottom: number };
	xTicks: { x: number; text: string }[];
	yTicks: { y: number; text: string }[];
	led: Line;
	halogen: Line;
	/** Where LED has caught up for good, when that is neither from the start nor never; px. */
	crossing: { x: number; text: string; anchor: 'start' | 'end' } | null;
}
/** Of the scale, currency: below it the whole units on the axis would repeat. */
const least = 10;
/** Names of the two lines stand at least so far apart, px. */
const apart = 17;

export function drawYears(comparison: Comparison, width: number): YearsChart {
	const { led, halogen, years, ledAhead } = comparison;
	const { currency } = led.plan.shopping;
	const most = Math.max(...[...led.byYear, ...halogen.byYear].map(({ high }) => high), least);
	const costs = ticks(0, most, 5);
	const top = Math.max(most, costs.at(-1) ?? most);
	const height = Math.round(Math.min(340, Math.max(240, width * 0.45)));
	const wide = Math.max(...costs.map((cost) => about(cost, currency).length));
	const plot = { left: 16 + wide * 8, right: width - 66, top: 14, bottom: height - 40 };
	const x = scale([0, years], [plot.left, plot.right]);
	const y = scale([0, top], [plot.bottom, plot.top]);
	const through = (values: number[]) =>
		values.map((value, year) => `${year ? 'L' : 'M'}${x(year)} ${y(value)}`).join('');
	const line = (byYear: readonly Range[], text: string): Line => {
		const back = byYear.map(({ low }, year) => `L${x(year)} ${y(low)}`).toReversed();
		const last = byYear.at(-1);
		return {
			path: through(byYear.map(({ low, high }) => (low + high) / 2)),
			band: byYear.some(({ low, high }) => high > low)
				? `${through(byYear.map(({ high }) => high))}${back.join('')}Z`
				: null,
			text,
			y: last ? y((last.low + last.high) / 2) : plot.bottom
		};
	};
	const [one, other] = [line(led.byYear, 'LED'), line(halogen.byYear, 'halogen')];
	const [upper, lower] = one.y <= other.y ? [one, other] : [other, one];
	const overlap = apart - (lower.y - upper.y);
	if (overlap > 0) {
		upper.y -= overlap / 2;
		lower.y += overlap / 2;
	}
	const from = ledAhead.latest;
	return {
		width,
		height,
		plot,
		xTicks: Array.from({ length: years + 1 }, (_, year) => ({ x: x(year), text: String(year) })),
		yTicks: costs.map((cost) => ({ y: y(cost), text: about(cost, currency) })),
		led: one,
		halogen: other,
		crossing:
			from === null || from === 0
				? null
				: {
						x: x(from),
						text: `LED ahead from the end of year ${from}`,
						anchor: from > years / 2 ? 'end' : 'start'
					}
	};
}
