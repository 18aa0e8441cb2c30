import { describe, expect, test } from 'vitest';
import { compareLamps } from '$lib/domain/compare';
import { blankYard, examples } from '$lib/domain/yard';
import { randomYard } from '$lib/domain/yard/random.testing';
import { tablesOf } from './rows';
import { drawYears } from './years-chart';

const strange = /\b(NaN|undefined|null|Infinity|\[object)\b/;
const yardOf = (id: string) => examples.find((one) => one.id === id)!.yard;
const cell = (id: string, name: string) => {
	const yard = yardOf(id);
	const row = tablesOf(compareLamps(yard), yard.place.units ?? 'feet')
		.flatMap(({ rows }) => rows)
		.find((one) => one.name === name);
	return row && [row.led, row.halogen].map((text) => text.replaceAll('\u00a0', ' '));
};

describe.each(examples.map(({ id, yard }) => [id, yard] as const))('%s', (_, yard) => {
	const comparison = compareLamps(yard);
	const rows = tablesOf(comparison, yard.place.units ?? 'feet').flatMap((table) => table.rows);
	test('every row has a figure for each kind, and names of its own', () => {
		for (const row of rows) for (const text of [row.led, row.halogen]) expect(text).toMatch(/\d/);
		expect(new Set(rows.map(({ name }) => name)).size).toBe(rows.length);
		expect(rows.filter(({ led, halogen }) => strange.test(led + halogen))).toEqual([]);
	});
	test('every figure but counts, sizes and bands opens a working', () => {
		const without = rows.filter(({ workings }) => workings.led.length === 0 || workings.halogen.length === 0);
		expect(without.map(({ name }) => name)).toEqual(['Lamps', 'Transformer needed', 'In the worst case']);
	});
});
test('cable in the units of the yard', () => {
	expect(cell('town', 'Cable laid')![0]).toMatch(/^(\d+ AWG, \d+ ft\n?)+$/);
	expect(cell('rural', 'Cable laid')![0]).toMatch(/^([\d.]+ mm², \d+ m\n?)+$/);
});
test('a total without all lamps says "at least"', () => {
	const town = compareLamps(yardOf('town'));
	const { halogen } = town;
	const open = { ...town, halogen: { ...halogen, replaced: { ...halogen.replaced, unknown: ['T1'] } } };
	const last = (comparison: typeof town) => tablesOf(comparison, 'feet')[0]!.rows.at(-1)!;
	expect(last(open).halogen).toMatch(/^at least \$/);
	expect(last(town).halogen).toMatch(/^\$/);
});
test('no strange word or coordinate on random yards and on a blank one', () => {
	const yards = [
		blankYard(),
		...Array.from({ length: process.env.LONG ? 400 : 12 }, (_, seed) => randomYard(seed + 1))
	];
	for (const yard of yards) {
		const comparison = compareLamps(yard);
		const chart = drawYears(comparison, 360);
		const words = tablesOf(comparison, 'feet').flatMap(({ rows }) =>
			rows.map(({ led, halogen }) => `${led} ${halogen}`)
		);
		expect(
			[
				...words,
				JSON.stringify({
					...chart,
					crossing: '',
					led: { ...chart.led, band: '' },
					halogen: { ...chart.halogen, band: '' }
				})
			].filter((text) => strange.test(text))
		).toEqual([]);
	}
});

describe('the chart', () => {
	const town = compareLamps(yardOf('town'));
	const points = (path: string) =>
		[...path.matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
	test.each([280, 360, 640, 1000])('at %d px the lines stay in the plot and the money rises', (width) => {
		const chart = drawYears(town, width);
		for (const { path } of [chart.led, chart.halogen]) {
			const list = points(path);
			expect(list.length).toBe(11);
			for (const [index, [x, y]] of list.entries()) {
				expect(x).toBeGreaterThanOrEqual(chart.plot.left);
				expect(x).toBeLessThanOrEqual(chart.plot.right);
				expect(y).toBeGreaterThanOrEqual(chart.plot.top);
				expect(y).toBeLessThanOrEqual(chart.plot.bottom);
				// y grows downwards
				if (index > 0) expect(y).toBeLessThanOrEqual(list[index - 1]![1]!);
			}
		}
		expect(Math.abs(chart.led.y - chart.halogen.y)).toBeGreaterThanOrEqual(16.9);
	});
	test('names of lines that end together stand apart', () => {
		const chart = drawYears({ ...town, halogen: { ...town.halogen, byYear: town.led.byYear } }, 640);
		expect(Math.abs(chart.led.y - chart.halogen.y)).toBeCloseTo(17, 6);
	});
	test('marks where LED catches up, and nothing where it is ahead from the start or never', () => {
		const at = (latest: number | null) => drawYears({ ...town, ledAhead: { earliest: latest, latest } }, 640).crossing;
		expect(at(0)).toBeNull();
		expect(at(null)).toBeNull();
		const { xTicks } = drawYears(town, 640);
		expect(at(4)).toMatchObject({ x: xTicks[4]!.x, anchor: 'start', text: 'LED ahead from the end of year 4' });
		expect(at(8)).toMatchObject({ x: xTicks[8]!.x, anchor: 'end' });
	});
});
