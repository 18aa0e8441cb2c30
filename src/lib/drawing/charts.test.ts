import { describe, expect, test } from 'vitest';
import { makePlan } from '../domain/plan';
import { blankYard, examples } from '../domain/yard';
import { scale, ticks } from './chart';
import { distances, drawVolts } from './volt-chart';
import { clock, drawYear } from './year-chart';

describe('axes', () => {
	test.each([
		[9, 12, 6, [9, 9.5, 10, 10.5, 11, 11.5, 12]],
		[0, 131, 7, [0, 20, 40, 60, 80, 100, 120]],
		[0, 0, 5, [0]]
	])('ticks from %f to %f', (low, high, most, expected) => expect(ticks(low, high, most)).toEqual(expected));
	test('a scale without extent gives its start', () => expect(scale([1, 1], [10, 20])(1)).toBe(10));
	test.each([
		[0, '00:00'],
		[1439.6, '00:00'],
		[1500, '01:00'],
		[-30, '23:30']
	])('%f minutes is %s', (minutes, text) => expect(clock(minutes)).toBe(text));
});

describe.each(examples.map(({ id, yard }) => [id, makePlan(yard)] as const))('%s', (_, plan) => {
	test.each([280, 640, 1100])('volts along every run, %i px wide', (width) => {
		for (const run of plan.runs) {
			const chart = drawVolts(run, plan.fixtures, plan.site.units, width)!;
			expect(JSON.stringify(chart)).not.toMatch(/NaN|null|Infinity/);
			expect(chart.points).toHaveLength(run.nodes.filter((node) => node.fixture !== null).length);
			for (const point of chart.points) {
				expect(point.x).toBeGreaterThanOrEqual(chart.plot.left);
				expect(point.x).toBeLessThanOrEqual(chart.plot.right);
				expect(point.yHigh).toBeGreaterThanOrEqual(chart.plot.top);
				expect(point.yLow).toBeLessThanOrEqual(chart.plot.bottom);
			}
			// More volts stand higher.
			const byVolts = chart.points.toSorted((a, b) => b.volts - a.volts);
			expect(byVolts.map((p) => p.y)).toEqual(byVolts.map((p) => p.y).toSorted((a, b) => a - b));
		}
	});
	test('distances add up along the cable', () => {
		for (const run of plan.runs) {
			const far = distances(run);
			for (const { from, to, length } of run.segments)
				expect(Math.abs(far.get(to)! - far.get(from)!)).toBeCloseTo(length, 9);
		}
	});
	test('the year runs from noon to noon', () => {
		const chart = drawYear(plan.dusk, 640)!;
		expect(JSON.stringify(chart)).not.toMatch(/NaN|null|Infinity/);
		expect(chart.months).toHaveLength(12);
		expect(chart.on).not.toBe('');
	});
});

test('a run without a solution is not drawn', () => {
	const plan = makePlan(examples[0]!.yard);
	const run = plan.runs[0]!;
	const dark = { ...run, nodes: run.nodes.map((node) => ({ ...node, volts: null, band: null })) };
	expect(drawVolts(dark, plan.fixtures, 'metres', 640)).toBeNull();
});
test('a blank yard has a year', () => {
	expect(JSON.stringify(drawYear(makePlan(blankYard()).dusk, 300))).not.toMatch(/NaN|Infinity/);
});
test('where dusk does not come, the lines break and nothing is shaded', () => {
	const { dusk } = makePlan(examples[0]!.yard);
	const polar = {
		...dusk,
		days: dusk.days.map((day) => ({ ...day, sunset: null, dusk: null, dawn: null, sunrise: null, on: null, off: null }))
	};
	expect(drawYear(polar, 640)).toMatchObject({ on: '', dusk: '', dawn: '', names: [] });
});
