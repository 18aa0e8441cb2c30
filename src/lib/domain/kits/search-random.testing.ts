/** For tests and benches: problems drawn by lot from a seed. */
import { dice } from '../circuit/networks.testing';
import { fnv1a } from '../shared/fnv1a';
import type { Offer, Problem, SetupIndex } from './search-types';

export type Oracle = 'all' | 'none' | 'monotone' | 'hash';
export interface Extent {
	needs: number;
	runs: number;
	products: number;
	transformers: number;
	sizes: number;
	kits: number;
	loose: number;
	/** Lights of a need, at the most. */
	lights: number;
	oracle: Oracle;
}
/** A number of lot for a setup: the same for the same setup, else unrelated. */
function lot({ transformer, sizes, products }: SetupIndex, seed: number): number {
	return fnv1a(`${seed}|${transformer}|${sizes.join()}|${products.join()}`) / 2 ** 32;
}
type Judge = Pick<Problem, 'passes' | 'hopeless'>;

/**
 * A transformer carries so much, a product draws so much, a thicker size drops less: what passes, passes with less draw, thicker cable and a larger
 * transformer too.
 */
function monotone(needs: Problem['needs'], runs: number[], roll: () => number, extent: Extent, told: boolean): Judge {
	const draw = Array.from({ length: extent.products }, () => 2 + Math.floor(roll() * 9));
	const total = (chosen: number[]) => needs.reduce((sum, { count }, n) => sum + count * draw[chosen[n]!]!, 0);
	const least = needs.map(({ products }) => products.reduce((a, b) => (draw[b]! < draw[a]! ? b : a), products[0] ?? 0));
	const room = needs.reduce((sum, { count }) => sum + count * 6, 10);
	const carries = Array.from({ length: extent.transformers }, () => room * (0.4 + roll()));
	const drop = runs.map((metres) => 0.15 + metres / 60);
	const limit = 6 + roll() * room * 0.25;
	const passes = ({ transformer, sizes, products }: SetupIndex): boolean => {
		const all = total(products);
		if (all > carries[transformer]!) return false;
		return sizes.every((size, run) => (all / Math.max(1, runs.length)) * drop[run]! <= limit * (1 + size));
	};
	if (!told) return { passes };
	const hopeless: Problem['hopeless'] = ({ transformer, sizes, products }) =>
		!passes({
			transformer,
			sizes: sizes.map((size) => size ?? extent.sizes - 1),
			products: products.map((product, n) => product ?? least[n]!)
		});
	return { passes, hopeless };
}

export function randomProblem(seed: number, extent: Extent): Problem {
	const roll = dice(seed);
	const below = (n: number): number => Math.floor(roll() * n);
	const some = (n: number, share: number): number[] =>
		Array.from({ length: n }, (_, k) => k).filter(() => roll() < share);
	const needs = Array.from({ length: extent.needs }, () => ({
		count: roll() < 0.05 ? 0 : 1 + below(extent.lights),
		products: [...new Set([...some(extent.products, 0.3), below(extent.products)])]
	}));
	const runs = Array.from({ length: extent.runs }, () => [0, 8, 12.5, 20, 30.48][below(5)]!);
	const even = roll() < 0.3;
	const price = (base: number): number => (roll() < 0.06 ? 0 : even ? 500 * (1 + below(4)) : 1 + below(base));
	const stock = (): number => (roll() < 0.6 ? Infinity : below(4));
	const blank = (): Offer => ({
		cents: 0,
		stock: stock(),
		isKit: false,
		fixtures: new Map<number, number>(),
		transformer: null,
		cable: new Map<number, number>(),
		connectors: 0
	});
	const metres = (): number => [7.62, 10, 15.24, 20, 30.48][below(5)]!;
	const kits = Array.from({ length: extent.kits }, (): Offer => {
		const offer = blank();
		for (const product of [below(extent.products), ...(roll() < 0.4 ? [below(extent.products)] : [])])
			offer.fixtures.set(product, 1 + below(extent.lights + 1));
		if (roll() < 0.8) offer.transformer = below(extent.transformers);
		if (roll() < 0.7) offer.cable.set(below(extent.sizes), metres());
		return { ...offer, isKit: true, cents: price(6000), connectors: below(4) };
	});
	const loose = Array.from({ length: extent.loose }, (): Offer => {
		const kind = roll();
		const offer = { ...blank(), cents: price(2000) };
		if (kind < 0.5) offer.fixtures.set(below(extent.products), roll() < 0.7 ? 1 : 1 + below(3));
		else if (kind < 0.68) offer.transformer = below(extent.transformers);
		else if (kind < 0.88) offer.cable.set(below(extent.sizes), metres());
		else offer.connectors = 1 + below(4);
		// Now and then a lamp comes with its connector: no kit, yet of two resources.
		if (kind < 0.05) offer.connectors = 1;
		return offer;
	});
	const offers = [...kits, ...loose];
	if (roll() < 0.5) offers.sort((a, b) => a.cents - b.cents);
	const share = 0.2 + 0.7 * roll();
	const oracles: Record<Oracle, () => Judge> = {
		all: () => ({ passes: () => true }),
		none: () => ({ passes: () => false }),
		monotone: () => monotone(needs, runs, roll, extent, roll() < 0.7),
		hash: () => ({ passes: (setup) => lot(setup, seed) < share })
	};
	const { products, transformers, sizes } = extent;
	const connectors = below(extent.lights + 2);
	return { needs, runs, connectors, products, transformers, sizes, offers, ...oracles[extent.oracle]() };
}
