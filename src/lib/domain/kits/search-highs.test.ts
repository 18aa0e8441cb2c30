/** The cheapest against HiGHS (see `search-program.testing.ts`), on shelves that are too large to try everything. */
import { expect, test } from 'vitest';
import { dice } from '../circuit/networks.testing';
import { searchFully } from './search';
import { leastCents, oracleOf, type Linear } from './search-program.testing';
import { shopProblem } from './search-shop.testing';
import type { Problem } from './search-types';

interface Case {
	problem: Problem;
	linear: Linear;
}
const count = process.env.LONG ? 150 : 4;
const upTo = (n: number): number[] => Array.from({ length: n }, (_, k) => k);

/** A shop of 12 to 60 kits and up to 200 loose items, and an oracle in rows; `isHeld`: with one setup only. */
function caseOf(seed: number, isHeld: boolean): Case {
	const roll = dice(seed + 4241);
	const below = (n: number): number => Math.floor(roll() * n);
	const kits = 12 + ((seed * 13) % 49);
	const shop = shopProblem(seed, {
		needs: isHeld ? 3 + (seed % 6) : 2 + (seed % 3),
		runs: 1 + (seed % 3),
		kits,
		loose: Math.min(200, 30 + kits * 3),
		tells: 'load'
	});
	const { needs, runs, products, transformers, sizes } = shop;
	const of = (list: readonly number[]): number => list[below(list.length)]!;
	const only = {
		transformer: below(transformers),
		sizes: runs.map(() => below(sizes)),
		products: needs.map((need) => of(need.products))
	};
	const linear: Linear = {
		draw: upTo(products).map(() => 2 + below(9)),
		carries: upTo(transformers).map((t) => (isHeld ? 1e4 : 20 * (t + 1) * (0.8 + 0.4 * roll()))),
		forbidden: isHeld
			? []
			: upTo(40).map(() => {
					const need = below(needs.length);
					const product = of(needs[need]!.products);
					return { transformer: below(transformers), need, product, run: below(runs.length), size: below(sizes) };
				}),
		only: isHeld ? only : null
	};
	return { problem: { ...shop, ...oracleOf(linear, needs) }, linear };
}
/** Of a hundred such shelves, those on which the search may break off before it is sure; its answer is the cheapest all the same. */
const unsure = 5;
/** How many of the cases have an answer. */
function compared(isHeld: boolean): number {
	let answered = 0;
	let broken = 0;
	for (let seed = 1; seed <= count; seed++) {
		const { problem, linear } = caseOf(seed, isHeld);
		const { purchases, isProven } = searchFully(problem, { most: 1 });
		if (!isProven) broken += 1;
		expect(purchases[0]?.cents ?? null, `seed ${seed}`).toBe(leastCents(problem, linear));
		answered += purchases.length;
	}
	expect(broken).toBeLessThanOrEqual((unsure * count) / 100);
	return answered;
}

test(`one setup, kits and loose items a covering program: the same cost on ${count} shelves`, () => {
	expect(compared(true)).toBeGreaterThan(count / 2);
});
test(`products, sizes and transformer free, load and forbidden parts in rows: the same cost on ${count} shelves`, () => {
	expect(compared(false)).toBeGreaterThan(count / 2);
});
