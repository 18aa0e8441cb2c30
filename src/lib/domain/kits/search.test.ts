import { expect, test } from 'vitest';
import { dice } from '../circuit/networks.testing';
import { searchFully } from './search';
import { brute } from './search-brute.testing';
import { randomProblem, type Extent, type Oracle } from './search-random.testing';

const cases = process.env.LONG ? 12_000 : 600;
const oracles: Oracle[] = ['all', 'monotone', 'hash', 'monotone', 'hash', 'none'];

/** Small enough to try everything. */
function smallExtent(seed: number): Extent {
	const roll = dice(seed + 7919);
	const upTo = (n: number) => 1 + Math.floor(roll() * n);
	return {
		needs: upTo(4) - 1,
		runs: upTo(3) - 1,
		products: upTo(4),
		transformers: upTo(2),
		sizes: upTo(2),
		kits: upTo(4) - 1,
		loose: upTo(5),
		lights: 2,
		oracle: oracles[seed % oracles.length]!
	};
}

test(`buys what trying everything buys, to the last tie: ${cases} shelves`, { timeout: 1_200_000 }, () => {
	let answered = 0;
	let several = 0;
	for (let seed = 1; seed <= cases; seed++) {
		const problem = randomProblem(seed, smallExtent(seed));
		const roll = dice(seed);
		const wished = Math.floor(roll() * problem.offers.length);
		const atLeast = roll() < 0.3 ? new Map([[wished, 1 + Math.floor(roll() * 2)]]) : undefined;
		const wish = { most: 1 + (seed % 4), ...(atLeast ? { atLeast } : {}) };
		const expected = brute(problem, wish);
		const found = searchFully(problem, wish);
		expect(found.isProven).toBe(true);
		expect(found.purchases, `seed ${seed}`).toEqual(expected);
		if (expected.length > 0) answered += 1;
		if (expected.length > 1) several += 1;
	}
	// The lot must not make the test empty.
	expect(answered).toBeGreaterThan(cases / 4);
	expect(several).toBeGreaterThan(cases / 20);
});
