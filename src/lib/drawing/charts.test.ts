import { describe, expect, test } from 'vitest';
import { makePlan } from '../domain/plan';
import { blankYard, examples, type Yard } from '../domain/yard';
import { scale, ticks } from './chart';
import { distances, drawVolts } from './volt-chart';
import { drawYear } from './year-chart';
import { clock, clockChanges, dayWords, seasonDays } from './year-days';

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
		season: null,
		days: dusk.days.map((day) => ({
			...day,
			sunset: null,
			dusk: null,
			dawn: null,
			sunrise: null,
			on: null,
			off: null,
			spans: []
		}))
	};
	expect(drawYear(polar, 640)).toMatchObject({ on: '', dusk: '', dawn: '', names: [] });
});

describe('the year picture', () => {
	type Power = Yard['power'];
	type Location = Exclude<NonNullable<Yard['place']['location']>, 'unsure'>;
	const chicago: Location = { latitude: 41.9, longitude: -87.6, timeZone: 'America/Chicago' };
	const duskOf = (power: Power, location = chicago) =>
		makePlan({ ...examples[0]!.yard, place: { ...examples[0]!.yard.place, location }, power }).dusk;
	/** Area inside closed outlines of straight edges, px² (shoelace). */
	const areaOf = (d: string): number =>
		d
			.split('Z')
			.filter(Boolean)
			.reduce((sum, outline) => {
				const points = outline
					.slice(1)
					.split('L')
					.map((pair) => pair.split(' ').map(Number) as [number, number]);
				const twice = points.reduce((all, [x, y], k) => {
					const [nextX, nextY] = points[(k + 1) % points.length]!;
					return all + x * nextY - nextX * y;
				}, 0);
				return sum + Math.abs(twice) / 2;
			}, 0);
	const split: Power = { hours: { kind: 'split', evening: '23:00', morning: '05:30' } };
	const seasonal: Power = {
		hours: { kind: 'dusk-to-dawn' },
		season: { from: '11-01', to: '02-30', hours: { kind: 'until', clock: '22:00' } }
	};
	test.each([
		['split', split],
		['seasonal', seasonal],
		['all night', { hours: { kind: 'dusk-to-dawn' } } satisfies Power],
		['five hours', { hours: { kind: 'after-dusk', hours: 5 } } satisfies Power]
	])('%s: the area filled is the hours of the year', (_, power) => {
		const dusk = duskOf(power);
		const chart = drawYear(dusk, 1000)!;
		const perDay = (chart.plot.right - chart.plot.left) / dusk.days.length;
		const perHour = (chart.plot.bottom - chart.plot.top) / 24;
		// An hour read off the clock counts twice or not at all on the nights that clocks change; heights are rounded to 0.01 px.
		expect(Math.abs(areaOf(chart.on) / perDay / perHour - dusk.hoursPerYear)).toBeLessThan(4);
	});
	test('two spans a night are two areas, where short nights do without the second half', () => {
		const outlines = drawYear(duskOf(split), 1000)!.on.split('Z').filter(Boolean);
		// The evening all year; mornings from the new year to spring, and from autumn on.
		expect(outlines).toHaveLength(3);
	});
	test('a season stands at its first day and after its last, also over the new year', () => {
		const dusk = duskOf(seasonal);
		const { from, after } = seasonDays(dusk)!;
		expect([dusk.days[from]!.date.slice(5), dusk.days[after]!.date.slice(5)]).toEqual(['11-01', '03-01']);
		const { seasons } = drawYear(dusk, 1000)!;
		expect(seasons.map(({ word }) => word.text)).toEqual(['from 1 Nov', 'to 28 Feb']);
		expect(seasonDays(duskOf(split))).toBeNull();
	});
	// US: second Sunday of March, first of November (Energy Policy Act of 2005). EU: last Sundays of March and October
	// (Directive 2000/84/EC). Lord Howe Island changes by half an hour (IANA time zone database).
	test.each([
		['America/Chicago', 41.9, -87.6, ['03-14 60', '11-07 -60']],
		['Europe/Paris', 48.9, 2.3, ['03-28 60', '10-31 -60']],
		['Australia/Lord_Howe', -31.5, 159.1, ['04-04 -30', '10-03 30']],
		['Europe/Oslo', 59.9, 10.8, ['03-28 60', '10-31 -60']],
		['America/Phoenix', 33.4, -112.1, []],
		['UTC', 51.5, 0, []]
	])('clocks in %s', (timeZone, latitude, longitude, expected) => {
		const { days } = duskOf(split, { latitude, longitude, timeZone });
		expect(clockChanges(days).map(({ index, minutes }) => `${days[index]!.date.slice(5)} ${minutes}`)).toEqual(
			expected
		);
	});
	test('at a change of clocks the lines step on the day, not over it', () => {
		expect(drawYear(duskOf(split), 640)!.dusk.match(/V/g)).toHaveLength(2);
		expect(drawYear(duskOf(split, { ...chicago, timeZone: 'UTC' }), 640)!.dusk).not.toContain('V');
	});
	test('every night is read at its own column', () => {
		const dusk = duskOf(split);
		for (const width of [280, 640, 1100]) {
			const chart = drawYear(dusk, width)!;
			expect(dusk.days.map((_, day) => chart.dayAt(chart.x(day)))).toEqual(dusk.days.map((_, day) => day));
			expect([chart.dayAt(-50), chart.dayAt(5000)]).toEqual([0, dusk.days.length - 1]);
			for (const { x } of chart.names) {
				expect(x).toBeGreaterThan(chart.plot.left);
				expect(x).toBeLessThan(chart.plot.right);
			}
		}
	});
	test('a night in words', () => {
		const day = {
			date: '2027-03-14',
			sunset: 1085,
			dusk: 1101,
			dawn: 1800,
			sunrise: 1830,
			on: 1113,
			off: 1802,
			hours: 5
		};
		const spans = [
			{ on: 1113, off: 1380 },
			{ on: 1770, off: 1802 }
		];
		expect(dayWords({ ...day, spans })).toBe('14 March: dusk 18:21, on 18:33 to 23:00 and 05:30 to 06:02.');
		expect(dayWords({ ...day, dusk: null, spans: [] })).toBe('14 March: no dusk, the lights stay off.');
	});
});
