import { describe, expect, test } from 'vitest';
import { leastOfTwo } from './brute.testing';
import { chooseBelow, chooseSupply } from './choose';
import { anyShape, evenRun, options, planeRun } from './runs.testing';
import type { Choice } from './types';

/** What of a choice can be compared: which cable, tap and way each run has, and what it costs. */
const taken = ({ runs, transformer, cost }: Choice) => ({
	runs: runs.map(({ id, size, tapVolts, shape }) => [id, size.size, tapVolts, shape.feed]),
	transformer: transformer.id,
	cost
});

describe('a choice for less than a price', () => {
	const seeds = Array.from({ length: process.env.LONG ? 80 : 12 }, (_, k) => k);

	test.each(seeds)(
		'is the cheapest there is by trying everything, or none: two runs in plain ways, seed %i',
		(seed) => {
			const shapes = [anyShape(seed * 2, 'a'), anyShape(seed * 2 + 1, 'b')] as const;
			const least = leastOfTwo([[shapes[0]], [shapes[1]]], options());
			if (least === Infinity) {
				expect(chooseBelow(shapes, options(), 1e6)).toBeNull();
				return;
			}
			for (const more of [1e-3, 5, 500])
				expect(chooseBelow(shapes, options(), least + more)!.cost).toBeCloseTo(least, 6);
			for (const less of [0, 5, least]) expect(chooseBelow(shapes, options(), least - less)).toBeNull();
		}
	);
	test.each(process.env.LONG ? seeds : seeds.slice(0, 4))(
		'takes the other ways to feed a run where these are cheaper, seed %i',
		(seed) => {
			const runs = [planeRun(seed, 'a', { heavy: 2 }), planeRun(seed + 500, 'b', { heavy: 2 })] as const;
			const ways = runs.map(({ shape, others }) => [shape, ...others()]);
			const least = leastOfTwo([ways[0]!, ways[1]!], options());
			if (least === Infinity) {
				expect(chooseBelow(runs, options(), 1e6)).toBeNull();
				return;
			}
			expect(chooseBelow(runs, options(), least + 1e-3)!.cost).toBeCloseTo(least, 6);
			expect(chooseBelow(runs, options(), least - 1e-3)).toBeNull();
		}
	);
	test('is the same as without a price, wherever that is above it', () => {
		let met = 0;
		for (const seed of seeds) {
			const runs = ['a', 'b', 'c'].map((id, k) => anyShape(seed * 10 + k, id));
			const free = chooseSupply(runs, options());
			if (free.problems.length > 0) continue;
			met++;
			expect(taken(chooseBelow(runs, options(), free.cost + 20)!)).toEqual(taken(free));
		}
		expect(met).toBeGreaterThan(seeds.length / 2);
	});
	test('is never one with a problem', () => {
		// Forty lamps on two hundred metres: no cable of these keeps the far one up.
		const starved = evenRun('far', 40, 50, 5);
		expect(chooseSupply([starved], options()).problems).not.toEqual([]);
		expect(chooseBelow([starved], options(), 1e9)).toBeNull();
		// Without a price the least bad is shown all the same.
		expect(chooseBelow([starved], options(), Infinity)!.problems).not.toEqual([]);
	});
	test('of no runs is the cheapest transformer by itself', () => {
		const { cost } = chooseSupply([], options());
		expect(chooseBelow([], options(), cost + 1)!.cost).toBe(cost);
		expect(chooseBelow([], options(), cost)).toBeNull();
	});
});
