import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lengthOf, pack } from './packing';
import type { Pull } from './pulls';
import { cheapestRolls, wasteShare, type RollKind } from './rolls';

const pull = (...legs: number[]): Pull => ({
	run: 'run-1',
	legs: legs.map((length, segment) => ({ length, segment, from: `n${segment}`, to: `n${segment + 1}` }))
});
const kinds: RollKind[] = [
	{ id: 'short', length: 15, cents: 1600 },
	{ id: 'middle', length: 30, cents: 3200 },
	{ id: 'long', length: 76, cents: 7200 }
];
const metres = (counts: readonly number[], of: readonly RollKind[]): number =>
	of.reduce((sum, kind, i) => sum + kind.length * counts[i]!, 0);

/** Every count of every kind up to `most`, cheapest that covers the length and takes the cuts. */
function bruteForce(pulls: Pull[], of: readonly RollKind[], inHand: number, most: number): number {
	const need = pulls.reduce((sum, one) => sum + lengthOf(one.legs), 0) * (1 + wasteShare);
	let least = Infinity;
	const visit = (counts: number[]): void => {
		if (counts.length < of.length) {
			for (let n = 0; n <= most; n += 1) visit([...counts, n]);
			return;
		}
		const cents = of.reduce((sum, kind, i) => sum + kind.cents * counts[i]!, 0);
		if (cents >= least || metres(counts, of) + inHand < need - 1e-9) return;
		const rolls = of.flatMap((kind, i) => Array.from({ length: counts[i]! }, () => kind.length));
		if (pack(pulls, inHand > 0 ? [...rolls, inHand] : rolls)) least = cents;
	};
	visit([]);
	return least;
}
describe('rolls of cable', () => {
	it('by hand: 40 m with waste is 42 m, and 30 + 15 m at 48.00 beats 76 m at 72.00', () => {
		expect(cheapestRolls([pull(10, 10, 10, 10)], kinds, 0)).toMatchObject({ counts: [1, 1, 0], cents: 4800 });
	});
	it('a price of one’s own changes the choice', () => {
		const cheap = kinds.map((kind) => (kind.id === 'long' ? { ...kind, cents: 4000 } : kind));
		expect(cheapestRolls([pull(10, 10, 10, 10)], cheap, 0).counts).toEqual([0, 0, 1]);
	});
	it('a leg is not cut where a longer roll takes it whole', () => {
		// 42 m would do by length; a leg of 40 m needs the long roll.
		expect(cheapestRolls([pull(40)], kinds, 0)).toMatchObject({ counts: [0, 0, 1], joints: 0 });
	});
	it('a leg longer than any roll is joined on the way', () => {
		const choice = cheapestRolls([pull(100)], kinds, 0);
		expect(choice.joints).toBe(1);
		expect(metres(choice.counts, kinds)).toBeGreaterThanOrEqual(105);
	});
	it('cable in hand is used first, and nothing is bought when it is enough', () => {
		expect(cheapestRolls([pull(10, 10)], kinds, 21)).toMatchObject({ counts: [0, 0, 0], cents: 0 });
		expect(cheapestRolls([pull(10, 10, 10, 10)], kinds, 30).counts).toEqual([1, 0, 0]);
	});
	it('is as cheap as the cheapest of all combinations', () => {
		const legs = fc.array(fc.double({ min: 0.5, max: 28, noNaN: true }), { minLength: 1, maxLength: 6 });
		const price = fc.integer({ min: 0, max: 9000 });
		fc.assert(
			fc.property(
				fc.array(legs, { minLength: 1, maxLength: 3 }),
				price,
				price,
				price,
				fc.constantFrom(0, 0, 12, 40),
				(all, a, b, c, inHand) => {
					const priced = kinds.map((kind, i) => ({ ...kind, cents: [a, b, c][i]! }));
					const pulls = all.map((one) => pull(...one));
					const need = pulls.reduce((sum, one) => sum + lengthOf(one.legs), 0) * (1 + wasteShare);
					const choice = cheapestRolls(pulls, priced, inHand);
					expect(metres(choice.counts, priced) + inHand).toBeGreaterThanOrEqual(need - 1e-9);
					expect(choice.cents).toBeLessThanOrEqual(
						bruteForce(pulls, priced, inHand, need > 200 ? 5 : Math.ceil(need / 15) + 1)
					);
				}
			),
			{ numRuns: process.env['LONG'] ? 500 : 40, seed: 11 }
		);
	});
	it('a thousand legs and a kilometre each come to an end, quickly', () => {
		const from = performance.now();
		const choice = cheapestRolls(
			Array.from({ length: 100 }, () => pull(...Array.from({ length: 10 }, () => 1000))),
			kinds,
			0
		);
		expect(metres(choice.counts, kinds)).toBeGreaterThanOrEqual(1_000_000 * 1.05 - 1);
		expect(performance.now() - from).toBeLessThan(5000);
	});
});
describe('packing', () => {
	it('never takes more off a roll than is on it, and lays every metre', () => {
		fc.assert(
			fc.property(
				fc.array(fc.array(fc.double({ min: 0.1, max: 20, noNaN: true }), { minLength: 1, maxLength: 8 }), {
					minLength: 1,
					maxLength: 5
				}),
				(all) => {
					const pulls = all.map((one) => pull(...one));
					const total = pulls.reduce((sum, one) => sum + lengthOf(one.legs), 0);
					const rolls = Array.from({ length: Math.ceil(total / 20) * 2 + 1 }, () => 30);
					const packed = pack(pulls, rolls)!;
					expect(packed).not.toBeNull();
					expect(30 * rolls.length - packed.left.reduce((sum, room) => sum + room, 0)).toBeCloseTo(total, 6);
					for (const room of packed.left) expect(room).toBeGreaterThanOrEqual(0);
				}
			),
			{ numRuns: 100, seed: 3 }
		);
	});
	it('keeps a pull on one roll where it fits, cuts it at a joint where it must', () => {
		expect(pack([pull(10, 10)], [15, 25])).toMatchObject({ joints: 0 });
		expect(pack([pull(10, 10)], [12, 15])).toMatchObject({ joints: 1 });
		expect(pack([pull(20)], [12, 15])).toBeNull();
	});
});
