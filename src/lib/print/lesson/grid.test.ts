import { describe, expect, test } from 'vitest';
import { gridOf, gridScales, origin } from './grid';
import { leafOf } from './leaves';

describe('squared paper', () => {
	// A scale of 1:50 shows a metre as 20 mm; a quarter of an inch is 6.35 mm: arithmetic.
	test.each([
		{ units: 'metres', ratio: 50, heavy: 20, text: '1:50' },
		{ units: 'metres', ratio: 100, heavy: 10, text: '1:100' },
		{ units: 'feet', ratio: 48, heavy: 5 * 6.35, text: '1/4 in = 1 ft' },
		{ units: 'feet', ratio: 96, heavy: 10 * 3.175, text: '1/8 in = 1 ft' }
	] as const)('at $text has heavy lines $heavy mm apart', ({ units, ratio, heavy, text }) => {
		for (const paper of ['letter', 'a4'] as const) {
			const grid = gridOf(units, ratio, paper)!;
			expect(grid.step * grid.every).toBeCloseTo(heavy, 9);
			expect(grid.scale.text).toBe(text);
			expect(origin + grid.columns * grid.step).toBeLessThanOrEqual(leafOf(paper).width);
			expect(leafOf(paper).width - origin - grid.columns * grid.step).toBeLessThan(heavy);
			expect(grid.rows * grid.step).toBeGreaterThan(130);
			expect(grid.names(grid.columns).at(-1)).toMatchObject({ at: grid.columns });
		}
	});
	test('is offered at two scales, and at no other', () => {
		expect(gridScales('feet').map(({ text }) => text)).toEqual(['1/4 in = 1 ft', '1/8 in = 1 ft']);
		expect(gridOf('metres', 48, 'a4')).toBeNull();
	});
});
