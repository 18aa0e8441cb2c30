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
test('a run whose volts break down in the worst case is drawn, every lamp open at the bottom and marked', () => {
	const plan = makePlan(examples[0]!.yard);
	const run = plan.runs[0]!;
	const low = { ...run.corners.low, volts: null, amps: null };
	const broken = {
		...run,
		corners: { ...run.corners, low },
		nodes: run.nodes.map((node) => ({ ...node, band: null }))
	};
	const chart = drawVolts(broken, plan.fixtures, 'metres', 640)!;
	expect(chart.points).toHaveLength(run.nodes.filter(({ fixture }) => fixture !== null).length);
	for (const point of chart.points) {
		expect(point).toMatchObject({ low: null, outside: true, yLow: chart.plot.bottom });
		expect(point.high).toBeCloseTo(run.corners.high.volts![run.nodes.findIndex(({ id }) => id === point.id)]!, 9);
	}
});
describe('where lamps do not get what they want', () => {
	const plan = makePlan(examples[0]!.yard);
	const run = plan.runs[0]!;
	const at = (low: number, high: number) => ({
		...run,
		nodes: run.nodes.map((node) => ({
			...node,
			volts: (low + high) / 2,
			band: node.fixture === null ? null : { low, high }
		}))
	});
	const within = ({ plot }: { plot: { top: number; bottom: number } }, y: number) =>
		y >= plot.top - 0.01 && y <= plot.bottom + 0.01;
	/** The demo's lamps as if they wanted these volts, given in turn. */
	const wanting = (...windows: [number, number][]) =>
		plan.fixtures.map((fixture, k) => {
			const [minVolts, maxVolts] = windows[k % windows.length]!;
			return { ...fixture, lamp: { ...fixture.lamp, minVolts, maxVolts } };
		});

	test.each([
		['far below', 4, 5],
		['just below', 8.8, 9.5],
		['far above', 17, 19],
		['just above', 14.5, 15.2]
	])('%s: the limit that is broken is on the chart, with its shading', (_, low, high) => {
		for (const width of [280, 640]) {
			const chart = drawVolts(at(low, high), plan.fixtures, 'metres', width)!;
			expect(chart.points.every(({ outside }) => outside)).toBe(true);
			const { window } = chart;
			expect(window).not.toBeNull();
			expect(low < 9 ? window!.lower : window!.upper).toBe(true);
			for (const y of [window!.top, window!.bottom, ...chart.points.flatMap((p) => [p.yLow, p.yHigh])])
				expect(within(chart, y)).toBe(true);
			// Nothing of the shading lies behind a lamp that is wholly outside it.
			const beyond = low < 9 ? high < 9 : low > 15;
			for (const p of chart.points) if (beyond) expect(p.yLow <= window!.top || p.yHigh >= window!.bottom).toBe(true);
		}
	});
	test('windows that differ: the common part is shaded, and each lamp’s own behind it', () => {
		const chart = drawVolts(at(11, 11.6), wanting([9, 15], [10.8, 12]), 'metres', 640)!;
		expect(chart.caption).toBe('common to all these lamps: 10.8 to 12.0 V');
		expect(chart.window).toMatchObject({ upper: true, lower: true });
		expect(chart.columns).toHaveLength(chart.points.length);
		for (const { top, bottom } of chart.columns) {
			expect(top).toBeLessThanOrEqual(chart.window!.top);
			expect(bottom).toBeGreaterThanOrEqual(chart.window!.bottom);
		}
		expect(chart.points.some(({ outside }) => outside)).toBe(false);
	});
	test('windows with nothing in common: said, and only each lamp’s own is shaded', () => {
		const chart = drawVolts(at(11, 11.6), wanting([9, 11], [11.5, 13]), 'metres', 640)!;
		expect(chart.caption).toBe('no volts suit all these lamps');
		expect(chart.window).toBeNull();
		expect(chart.columns).toHaveLength(chart.points.length);
		expect(chart.points.every(({ outside }) => outside)).toBe(true);
	});
	test('lamps that want the same have no shading of their own', () =>
		expect(drawVolts(run, plan.fixtures, 'metres', 640)!.columns).toEqual([]));
});

test('a hub is drawn as a place of its own, with a leg to each lamp', () => {
	const plan = makePlan(examples[0]!.yard);
	const run = plan.runs[0]!;
	const [supply, ...lamps] = run.nodes;
	const hub = { id: 'hub', fixture: null, at: supply!.at, volts: 11.9, band: null };
	const segment = run.segments[0]!;
	const star = {
		...run,
		feed: 'hub' as const,
		nodes: [supply!, hub, ...lamps],
		segments: [
			{ ...segment, from: supply!.id, to: 'hub', length: 4 },
			...lamps.map(({ id }, k) => ({ ...segment, from: 'hub', to: id, length: 2 + k }))
		]
	};
	const chart = drawVolts(star, plan.fixtures, 'metres', 640)!;
	expect(chart.joints).toHaveLength(1);
	expect(chart.points).toHaveLength(lamps.length);
	const [joint] = chart.joints;
	const fromHub = chart.legs.filter(({ x1, y1 }) => x1 === joint!.x && y1 === joint!.y);
	expect(fromHub).toHaveLength(lamps.length);
	expect(distances(star).get(lamps[1]!.id)).toBe(4 + 3);
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
