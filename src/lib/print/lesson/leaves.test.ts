import { array, assert, constantFrom, double, property } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gap, leafOf, leavesOf, roomOn } from './leaves';

describe('pages of a worksheet', () => {
	test('lie within the paper', () => {
		// ANSI/ASME Y14.1 Letter 8.5 × 11 in, ISO 216 A4 210 × 297 mm; 12 mm clear at the sides, 11 above and below.
		expect(leafOf('letter').width).toBeCloseTo(8.5 * 25.4 - 24, 9);
		expect(leafOf('a4')).toEqual({ width: 186, height: 274.5 });
	});
	test('hold every problem once, in order, whole', () => {
		const heights = array(double({ min: 5, max: 200, noNaN: true }), { maxLength: 60 });
		assert(
			property(heights, constantFrom('letter' as const, 'a4' as const), (heights, paper) => {
				const leaves = leavesOf(heights, paper);
				expect(leaves.flat()).toEqual(heights.map((_, n) => n));
				for (const [n, page] of leaves.entries()) {
					const high = page.reduce((sum, index) => sum + heights[index]! + gap, -gap);
					expect(high).toBeLessThanOrEqual(roomOn(paper, n === 0) + 1e-9);
					// Nothing was moved on that had room.
					const next = leaves[n + 1]?.[0];
					if (next !== undefined) expect(high + gap + heights[next]!).toBeGreaterThan(roomOn(paper, n === 0));
				}
			}),
			{ numRuns: 500, seed: 7 }
		);
	});
	test('of nothing are one, and what is higher than a page has one of its own', () => {
		expect(leavesOf([], 'a4')).toEqual([[]]);
		expect(leavesOf([300, 10, 300], 'a4')).toEqual([[0], [1], [2]]);
	});
});
