/** What is called hopeless never passes, whatever it is completed to; sampled, each completion solved. */
import { expect, test } from 'vitest';
import { demoShelf } from '../../shelf';
import { dice } from '../circuit/networks.testing';
import { makePlan } from '../plan';
import { quickYard, usualAnswers } from '../quick';
import { examples } from '../yard/examples';
import { needsOf } from './needs';
import { problemOf, type Posed } from './problem';
import type { SetupIndex } from './search-types';
import { awg, chain, feet, halogen, led, line, shelfOf, transformer } from './shelf.testing';
import type { Needs, Shelf } from './types';

const yards = [
	...examples.map(({ yard }) => yard),
	...[
		{ walk: 24, receptacle: 15 },
		{ walk: 18, drive: 18, trees: { small: 2, medium: 2, large: 2 }, wall: 12, receptacle: 15 },
		{ walk: 18, receptacle: 15, lamp: 'halogen' as const }
	].map((change) => quickYard({ ...usualAnswers('feet'), ...change }).yard)
];
/** A chain by lot and lamps, cable and transformers for it, LED and filament, that carry and reach it about as often as not. */
function byLot(seed: number): { needs: Needs; shelf: Shelf } {
	const roll = dice(seed);
	const within = (from: number, to: number): number => from + roll() * (to - from);
	const lights = 4 + Math.floor(roll() * 8);
	const source = seed % 4 === 0 ? 'halogen' : 'led';
	const lamps = [0, 1, 2, 3, 4].map((k) =>
		k > 2 ? halogen('path', Math.round(within(5, 20)), 150) : led('path', within(1, 12), within(100, 230))
	);
	return {
		needs: chain(lights, feet(within(20, 150)), feet(within(5, 20)), { source }),
		shelf: shelfOf(
			...lamps.map((fixture, k) =>
				line(`L${k}`, 'fixture', 1000, { fixtures: [{ product: `P${k}`, fixture, count: 1 }] })
			),
			...[16, 14, 12, 10].map((size) =>
				line(`C${size}`, 'cable', 2000, { cable: [{ size: awg(size), metres: feet(500), count: 1 }] })
			),
			...[[12], [12, 13], [12, 13, 14, 15]].map((taps, k) =>
				line(`T${k}`, 'transformer', 4000, { transformer: transformer(within(30, 250), taps, within(0, 0.08)) })
			),
			line('X', 'connectors', 100, { connectors: 40 })
		)
	};
}

const tally = { setups: 0, hopeless: 0, solved: 0, completions: 0 };
/** Asks whole setups by lot, so that what is hopeless by solving becomes known, then parts of them. */
function sample({ problem, judge }: Posed, seed: number): void {
	const { needs, runs, transformers, sizes, passes } = problem;
	const roll = dice(seed);
	const below = (n: number): number => Math.floor(roll() * n);
	const product = (n: number): number => needs[n]!.products[below(needs[n]!.products.length)]!;
	const draw = (): SetupIndex => ({
		transformer: below(transformers),
		sizes: runs.map(() => below(sizes)),
		products: needs.map((_, n) => product(n))
	});
	for (let k = 0; k < 20; k++) {
		const setup = draw();
		tally.setups += 1;
		passes(setup);
		const part = {
			transformer: setup.transformer,
			sizes: setup.sizes.map((size) => (k % 3 === 0 && roll() < 0.5 ? null : size)),
			products: setup.products.map((one) => (roll() < 0.6 ? null : one))
		};
		if (!problem.hopeless!(part)) continue;
		tally.hopeless += 1;
		if (!problem.hopeless!({ ...part, sizes: part.sizes.map(() => null) })) tally.solved += 1;
		for (let c = 0; c < 4; c++) {
			tally.completions += 1;
			const products = part.products.map((one, n) => judge.stock.products[one ?? product(n)]!.id);
			const filled = part.sizes.map((size) => judge.stock.sizes[size ?? below(sizes)]!);
			const [code] = judge.stock.supplies[part.transformer]!.codes;
			expect(judge.judge({ products, sizes: filled, transformer: code! }).ok, JSON.stringify(part)).toBe(false);
		}
	}
}

test('on the demo shelf and on shelves by lot', () => {
	yards.forEach((yard, k) => {
		const posed = problemOf(needsOf(makePlan(yard), yard), demoShelf);
		if (posed.problem.needs.every(({ products }) => products.length > 0)) sample(posed, k + 1);
	});
	for (let seed = 1; seed <= (process.env.LONG ? 1_000 : 16); seed++) {
		const { needs, shelf } = byLot(seed);
		sample(problemOf(needs, shelf), seed);
	}
	// The lot must not make the test empty: parts hopeless by their load, and parts that only solving tells.
	expect(tally.hopeless).toBeGreaterThan(tally.setups / 20);
	expect(tally.hopeless).toBeLessThan(tally.setups);
	expect(tally.solved).toBeGreaterThan(20);
	expect(tally.completions).toBe(4 * tally.hopeless);
});
