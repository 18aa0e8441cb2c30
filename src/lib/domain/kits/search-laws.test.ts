import { describe, expect, test } from 'vitest';
import { search, searchFully } from './search';
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
});
