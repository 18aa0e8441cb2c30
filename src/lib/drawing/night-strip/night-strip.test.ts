import { describe, expect, test } from 'vitest';
import type { SensorNight, SensorView } from '../../domain/dusk';
import { drawNight, calledBetween } from './draw-night';
import { minuteWords, rangeWords, verdictTitle, verdictWords } from './words';

const onLux = 16;
/** Light that falls by a tenfold every hour from 10,000 lx, and rises again. */
const trace = Array.from({ length: 13 }, (_, k) => ({ at: 960 + k * 60, lux: 10 ** (Math.abs(6 - k) - 2) }));
const night: SensorNight = {
	date: '2027-12-21',
	verdict: 'steady',
	own: 0.4,
	others: 0,
	offAt: 48,
	switches: [
		{ at: 1128, on: true },
		{ at: 1560, on: false }
	],
	trace
};
const viewOf = (change: Partial<SensorNight>, months: Partial<SensorView['months'][number]>[] = []): SensorView => ({
	faces: 0,
	sky: { leafOn: 0.6, leafOff: 0.7 },
	taken: [],
	months: months.map((month, k) => ({ month: k + 1, leaves: true, early: 0, late: 0, ...month })),
	night: { ...night, ...change }
});

describe('the night strip', () => {
	test('each tenfold of light stands as high as the next', () => {
		const chart = drawNight(night, onLux, [], 640)!;
		const heights = chart.decades.map(({ y }) => y);
		const steps = heights.slice(1).map((y, k) => heights[k]! - y);
		for (const step of steps) expect(step).toBeCloseTo(steps[0]!, 1);
		expect(chart.decades[0]!.text).toBe('0.1');
		expect(chart.decades.at(-1)!.text).toBe('10k');
		// A light that falls tenfold an hour is a straight line on a logarithmic axis; below 0.1 lx it stays at the foot.
		const points = chart.trace
			.slice(1)
			.split('L')
			.map((pair) => pair.split(' ').map(Number) as [number, number]);
		const slope = (k: number) => (points[k + 1]![1] - points[k]![1]) / (points[k + 1]![0] - points[k]![0]);
		expect(slope(1)).toBeCloseTo(slope(0), 2);
		for (const [x, y] of points) {
			expect(x).toBeGreaterThanOrEqual(chart.plot.left);
			expect(x).toBeLessThanOrEqual(chart.plot.right);
			expect(y).toBeGreaterThanOrEqual(chart.plot.top);
			expect(y).toBeLessThanOrEqual(chart.plot.bottom);
		}
	});
	test('the level for off lies above that for on by its tenfolds', () => {
		const { levels: lines, decades } = drawNight(night, onLux, [], 640)!;
		const decade = decades[0]!.y - decades[1]!.y;
		expect((lines[1]!.y - lines[0]!.y) / decade).toBeCloseTo(Math.log10(3), 2);
	});
	test.each([
		['once', night.switches, [[1128, 1560]]],
		['never', [], []],
		['still on', [{ at: 1100, on: true }], [[1100, 1680]]],
		['on before', [{ at: 1000, on: false }], [[960, 1000]]],
		[
			'blinking',
			[1, 2, 3, 4].map((k) => ({ at: 1000 + k, on: k % 2 === 1 })),
			[
				[1001, 1002],
				[1003, 1004]
			]
		]
	])('lights that are on %s', (_, switches, expected) => {
		expect(calledBetween({ ...night, switches }, onLux, 960, 1680).map(({ on, off }) => [on, off])).toEqual(expected);
	});
	test('a window that is dark by day too calls all the while', () => {
		const dark = { ...night, switches: [], trace: trace.map(({ at }) => ({ at, lux: 0.2 })) };
		expect(calledBetween(dark, onLux, 960, 1680)).toEqual([{ on: 960, off: 1680 }]);
		expect(verdictWords({ ...viewOf({ verdict: 'shifted' }), sky: { leafOn: 0, leafOff: 0 } })).toContain(
			'day and night'
		);
	});
	test('of a night that blinks, what is not told is not drawn', () => {
		const switches = [1, 2, 3].map((k) => ({ at: 1000 + 10 * k, on: k % 2 === 1 }));
		const chart = drawNight({ ...night, verdict: 'hunting', switches }, onLux, [], 640)!;
		// Points at 960 and 1020 minutes; the last switch told is at 1030.
		expect(chart.trace.split('L')).toHaveLength(2);
		expect(chart.called).toHaveLength(2);
		expect(chart.called[1]!.right).toBe(chart.called[1]!.left);
		expect(chart.andSoOn!.x).toBeGreaterThan(chart.called[1]!.right);
		expect(drawNight(night, onLux, [], 640)!.andSoOn).toBeNull();
	});
	test('no trace, no picture', () => {
		expect(drawNight({ ...night, trace: [] }, onLux, [], 640)).toBeNull();
		expect(drawNight({ ...night, trace: trace.slice(0, 1) }, onLux, [], 640)).toBeNull();
	});
	test.each([280, 620, 1100])('%i px wide, nothing leaves the sheet', (width) => {
		const chart = drawNight(night, onLux, [{ on: 1140, off: 1380 }], width)!;
		expect(chart.lit).toHaveLength(1);
		// Four hours of the twelve drawn.
		expect((chart.lit[0]!.right - chart.lit[0]!.left) / (chart.plot.right - chart.plot.left)).toBeCloseTo(4 / 12, 2);
		for (const { left, right } of [...chart.lit, ...chart.called]) {
			expect(left).toBeGreaterThanOrEqual(chart.plot.left);
			expect(right).toBeLessThanOrEqual(chart.plot.right);
		}
		expect(chart.hours.length).toBeGreaterThan(2);
		expect(chart.hours.length).toBeLessThan(11);
	});
});
describe('words', () => {
	test.each([
		[[6, 11, 8], 1, '6 to 11 minutes early'],
		[[-6, -11], 1, '6 to 11 minutes late'],
		[[3, 9], -1, '3 to 9 minutes late'],
		[[0.2, -0.3], 1, 'within a minute'],
		[[1], 1, '1 minute early'],
		[[-2, 5], 1, 'from 2 minutes late to 5 minutes early'],
		[[0, 4], 1, '0 to 4 minutes early'],
		[[null, 7], 1, '7 minutes early']
	] as const)('%j times %i', (values, sign, words) => expect(rangeWords(values, sign)).toBe(words));
	test('nothing known', () => expect(rangeWords([null, null])).toBeNull());
	test.each([
		[null, 1, 'none'],
		[0.3, 1, 'on time'],
		[6.4, 1, '6 min early'],
		[6.4, -1, '6 min late']
	] as const)('one month: %s', (value, sign, words) => expect(minuteWords(value, sign)).toBe(words));
	test('every verdict names its cause in figures', () => {
		expect(verdictWords(viewOf({}, [{ early: 2, late: 3 }]))).toContain('on 2 minutes early, off 3 minutes late');
		expect(verdictWords(viewOf({ verdict: 'shifted' }, [{ early: 22, late: 31 }]))).toContain('22 minutes early');
		expect(verdictWords(viewOf({ verdict: 'hunting', own: 31.4 }))).toContain('31 lx');
		expect(verdictWords(viewOf({ verdict: 'held-off', others: 52 }))).toContain('52 lx');
	});
	test('early, late or both', () => {
		expect(verdictTitle('shifted', viewOf({}, [{ early: 20, late: 0 }]).months)).toBe('Early');
		expect(verdictTitle('shifted', viewOf({}, [{ early: 0, late: 20 }]).months)).toBe('Late');
		expect(verdictTitle('shifted', viewOf({}, [{ early: 20, late: 18 }]).months)).toBe('Early and late');
	});
});
