import { describe, expect, test } from 'vitest';
import { dice } from '../circuit/networks.testing';
import { search, searchFully } from './search';
import { randomProblem } from './search-random.testing';
import { shopProblem } from './search-shop.testing';
import type { Problem } from './search-types';

const seeds = Array.from({ length: 12 }, (_, k) => k + 1);
const shop = (seed: number): Problem =>
	shopProblem(seed, { needs: 3, runs: 1 + (seed % 2), kits: 8, loose: 40, tells: 'drop' });
const least = (problem: Problem): number => search(problem, { most: 1 })[0]?.cents ?? Infinity;

describe('laws that hold whatever the shelf', () => {
	test('the lot gives shelves with an answer', () => {
		expect(seeds.filter((seed) => least(shop(seed)) < Infinity).length).toBeGreaterThan(4);
	});
	test('one offer more never costs more', () => {
		for (const seed of seeds) {
			const problem = shop(seed);
			const fewer = { ...problem, offers: problem.offers.filter((_, i) => i % 7 !== seed % 7) };
			expect(least(problem)).toBeLessThanOrEqual(least(fewer));
		}
	});
	test('prices threefold cost threefold', () => {
		for (const seed of seeds) {
			const problem = shop(seed);
			const dear = { ...problem, offers: problem.offers.map((offer) => ({ ...offer, cents: 3 * offer.cents })) };
			expect(least(dear)).toBe(3 * least(problem));
		}
	});
	test('a wish for one of an offer is heeded and never makes it cheaper', () => {
		for (const seed of seeds) {
			const problem = shop(seed);
			const [found] = search(problem, { most: 1, atLeast: new Map([[0, 1]]) });
			if (!found) continue;
			expect(found.counts[0]).toBeGreaterThanOrEqual(1);
			expect(found.cents).toBeGreaterThanOrEqual(least(problem));
		}
	});
	test('what nothing serves is named', () => {
		const problem = shop(1);
		const found = searchFully({ ...problem, offers: [] }, { most: 1 });
		expect(found.purchases).toEqual([]);
		expect(found.lacks.map(({ kind }) => kind)).toContain('transformer');
	});
	test('needs in another order: the same purchases', () => {
		for (const seed of seeds) {
			const problem = shop(seed);
			// Need n stands where need n + 1 stood.
			const back = <T>(list: T[]): T[] => [...list.slice(-1), ...list.slice(0, -1)];
			const moved: Problem = {
				...problem,
				needs: [...problem.needs.slice(1), problem.needs[0]!],
				passes: (setup) => problem.passes({ ...setup, products: back(setup.products) }),
				hopeless: (part) => problem.hopeless!({ ...part, products: back(part.products) })
			};
			const bought = (of: Problem) => search(of, { most: 3 }).map(({ counts, cents }) => ({ counts, cents }));
			expect(bought(moved)).toEqual(bought(problem));
			for (const { setup } of search(moved, { most: 3 })) expect(moved.passes(setup)).toBe(true);
		}
	});
	test('told which products are alike to the circuit: the same purchases and setups, with fewer questions', () => {
		const asks = { told: 0, untold: 0 };
		for (let seed = 1; seed <= 80; seed++) {
			const roll = dice(seed);
			const extent = { needs: 3, runs: 1, products: 6, transformers: 2, sizes: 2, kits: 4, loose: 14, lights: 3 };
			const { hopeless: _, ...problem } = randomProblem(seed, { ...extent, oracle: 'hash' });
			const classes = Array.from({ length: extent.products }, () => Math.floor(roll() * 3));
			const alike = classes.map((one) => classes.indexOf(one));
			const counting = (count: keyof typeof asks): Problem => ({
				...problem,
				passes: (setup) => {
					asks[count] += 1;
					return problem.passes({ ...setup, products: setup.products.map((p) => alike[p]!) });
				}
			});
			expect(search({ ...counting('told'), alike }, { most: 3 })).toEqual(search(counting('untold'), { most: 3 }));
		}
		expect(asks.told).toBeLessThan(0.9 * asks.untold);
	});
});
