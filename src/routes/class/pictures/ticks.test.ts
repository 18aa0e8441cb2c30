/** Marks of an axis: round, even, and round what they are for. */
import { assert, double, integer, property } from 'fast-check';
import { expect, test } from 'vitest';
import { clockTicks, niceTicks } from './ticks';

test('whatever the range', () => {
	assert(
		property(
			double({ min: -1000, max: 1000, noNaN: true }),
			double({ min: 0.01, max: 5000, noNaN: true }),
			integer({ min: 2, max: 6 }),
			(low, span, wanted) => {
				const ticks = niceTicks(low, low + span, wanted);
				const step = ticks[1]! - ticks[0]!;
				expect(ticks[0]!).toBeLessThanOrEqual(low + 1e-6 * step);
				expect(ticks.at(-1)!).toBeGreaterThanOrEqual(low + span - 1e-6 * step);
				expect(ticks.length).toBeLessThanOrEqual(wanted + 2);
				for (const [i, tick] of ticks.slice(1).entries()) expect(tick - ticks[i]!).toBeCloseTo(step, 6);
			}
		)
	);
});
test('of lux, and of a clock', () => {
	expect(niceTicks(0, 13, 2)).toEqual([0, 10, 20]);
	expect(niceTicks(0, 4.2, 2)).toEqual([0, 2.5, 5]);
	// From before five to before nine: four, six, eight and ten o'clock.
	expect(clockTicks(266, 522, 4)).toEqual([240, 360, 480, 600]);
});
