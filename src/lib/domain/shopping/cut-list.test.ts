import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makePlan, type Plan } from '../plan';
import { examples, type Yard } from '../yard';
import { randomYard } from '../yard/random.testing';
import { laidLength } from './cable-items';
import { lengthOf } from './packing';
import type { Pull } from './pulls';
import { cheapestRolls, cutLengths, type RollKind } from './rolls';

const kinds: RollKind[] = [
	{ id: 'short', length: 15, cents: 1600 },
	{ id: 'middle', length: 30, cents: 3200 },
	{ id: 'long', length: 76, cents: 7200 }
];
const pull = (run: string, ...legs: number[]): Pull => ({
	run,
	legs: legs.map((length, segment) => ({ length, segment, from: `${segment}`, to: `${segment + 1}` }))
});
describe('what is cut off which roll', () => {
	it('by hand: 26 m off the 30 m roll, 14 m off the 15 m roll', () => {
		// 40 m and 5 % is 42 m: 30 + 15 m for 48.00 beat 76 m for 72.00.
		const { rolls } = cheapestRolls([pull('run-1', 7, 7), pull('run-2', 13, 13)], kinds, 0);
		const read = rolls.map(({ kind, rest, cuts }) => [kind, rest, cuts.map((cut) => [cut.run, lengthOf(cut.legs)])]);
		expect(read).toEqual([
			[0, 1, [['run-1', 14]]],
			[1, 4, [['run-2', 26]]]
		]);
	});
	it('by hand: 40 m off 30 + 15 m is cut at a joint, 10 m goes on from the other roll', () => {
		const { rolls, joints } = cheapestRolls([pull('run-1', 10, 10, 10, 10)], kinds, 0);
		expect(rolls.map(({ cuts }) => cuts.map(({ legs }) => [legs[0]!.from, legs.at(-1)!.to]))).toEqual([
			[['3', '4']],
			[['0', '3']]
		]);
		expect(joints).toBe(1);
	});
	it('cable in hand is a roll too, also where it is enough', () => {
		expect(cheapestRolls([pull('run-1', 10)], kinds, 21).rolls).toMatchObject([{ kind: null, length: 21, rest: 11 }]);
		const some = cheapestRolls([pull('run-1', 10), pull('run-2', 25)], kinds, 12).rolls;
		expect(some.map(({ kind, rest }) => [kind, rest])).toEqual([
			[1, 5],
			[null, 2]
		]);
	});
	it('by the metre: off what is in hand first, joined where the pieces do not go into the two', () => {
		const read = (pulls: Pull[], bought: number, inHand: number) => {
			const { rolls, joints } = cutLengths(pulls, bought, inHand);
			return [...rolls.map(({ kind, rest, cuts }) => [kind, rest, cuts.map(({ legs }) => lengthOf(legs))]), joints];
		};
		expect(read([pull('run-1', 20), pull('run-2', 8)], 20, 10)).toEqual([[null, 2, [8]], [0, 0, [20]], 0]);
		expect(read([pull('run-1', 28)], 20, 10)).toEqual([[null, 0, [10]], [0, 2, [18]], 1]);
	});
	it('never more off a roll than is on it, every metre of every run, as many rolls as are bought', () => {
		const legs = fc.array(fc.double({ min: 0.5, max: 90, noNaN: true }), { minLength: 1, maxLength: 6 });
		fc.assert(
			fc.property(fc.array(legs, { minLength: 1, maxLength: 5 }), fc.constantFrom(0, 0, 12, 400), (all, inHand) => {
				const pulls = all.map((one, i) => pull(`run-${i}`, ...one));
				const { rolls, counts, spare } = cheapestRolls(pulls, kinds, inHand);
				for (const roll of rolls) {
					const cut = roll.cuts.reduce((sum, one) => sum + lengthOf(one.legs), 0);
					expect(cut + roll.rest).toBeCloseTo(roll.length, 6);
					expect(cut).toBeLessThanOrEqual(roll.length + 1e-6);
				}
				for (const { run, legs: wanted } of pulls) {
					const got = rolls.flatMap(({ cuts }) => cuts.filter((one) => one.run === run));
					expect(got.reduce((sum, one) => sum + lengthOf(one.legs), 0)).toBeCloseTo(lengthOf(wanted), 6);
				}
				expect(kinds.map((_, i) => rolls.filter(({ kind }) => kind === i).length)).toEqual(counts);
				expect(rolls.reduce((sum, { rest }) => sum + rest, 0)).toBeCloseTo(spare, 6);
			}),
			{ numRuns: process.env['LONG'] ? 2000 : 150, seed: 5 }
		);
	});
});

function expectWhole({ shopping, runs }: Plan, where: string) {
	const { rolls, items } = shopping;
	expect(new Set(rolls.map(({ name }) => name)).size, where).toBe(rolls.length);
	for (const { cuts, length, rest } of rolls) {
		const cut = cuts.reduce((sum, one) => sum + one.length, 0);
		expect(cut, where).toBeLessThanOrEqual(length + 1e-6);
		expect(cut + rest, where).toBeCloseTo(length, 6);
		for (const { what } of cuts) expect(what, where).toMatch(/^run \d+, .+ to .+$/);
	}
	for (const run of runs) {
		const mine = rolls.flatMap(({ cuts }) => cuts.filter((cut) => cut.run === run.id));
		expect(
			mine.reduce((sum, one) => sum + one.length, 0),
			where
		).toBeCloseTo(laidLength(run), 6);
	}
	const lines = items.filter(({ group }) => group === 'cable');
	// By the metre, where the size is not sold in rolls: one length.
	const pieces = lines.map(({ id, unit, quantity }) => ({
		id,
		number: unit === 'm' ? Math.min(1, quantity) : quantity
	}));
	for (const { id, number } of pieces) expect(rolls.filter(({ item }) => item === id).length, where).toBe(number);
	expect(rolls.length, where).toBe(pieces.reduce((sum, { number }) => sum + number, 0));
}
describe('the cut list of a plan', () => {
	const inHand = (yard: Yard): Yard => ({
		...yard,
		power: { ...yard.power, owned: { ...yard.power.owned, cableSize: 16, cableLength: 20 } }
	});
	for (const { id, yard } of examples)
		it(`${id}: every run whole, off the rolls of the list, cable in hand too`, () => {
			expectWhole(makePlan(yard), id);
			expectWhole(makePlan(inHand(yard)), `${id}, some in hand`);
		});
	it('on random yards', () => {
		for (let seed = 1; seed <= (process.env['LONG'] ? 600 : 10); seed += 1)
			expectWhole(makePlan(randomYard(seed)), `seed ${seed}`);
	});
});
