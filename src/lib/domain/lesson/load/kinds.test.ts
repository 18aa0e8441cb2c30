import { describe, expect, test } from 'vitest';
import { expectSound, problemOf } from '../kinds.testing';
import type { Problem } from '../types';
import { ampsKind } from './amps';
import { loadKinds } from './kinds';
import { roomKind } from './room';
import { smallestKind } from './smallest';
import { vaKind } from './va';

const answerOf = (problem: Problem | null): number => {
	if (problem?.answer.type !== 'number') throw new Error('no problem with a number for its answer');
	return Number(problem.answer.text);
};
const choiceOf = (problem: Problem | null): string => {
	if (problem?.answer.type !== 'choice') throw new Error('no problem with a choice');
	return problem.answer.choices[problem.answer.right]!;
};

test.each(loadKinds.map((kind) => [kind.id, kind] as const))('%s is sound', (_, kind) => expectSound(kind), 60_000);

describe('printed answers', () => {
	// Lessons In Electric Circuits, vol. II, chapter 11 (from memory): 119.365 W at a power factor of 0.705 are 169.256 VA; the
	// factor is printed rounded, so that the quotient agrees to a part in a thousand.
	test('watts over power factor', () => {
		const answer = answerOf(vaKind.pose({ lamps: 1, watts: 119.365, powerFactor: 0.705 }, 'metres'));
		expect(Math.abs(answer / 169.256 - 1)).toBeLessThan(1e-3);
	});
	// NEC Article 411 and UL 1838 (seen second-hand): 25 A at 12 V, about 300 VA.
	test('300 VA at 12 V are 25 A', () => {
		expect(answerOf(ampsKind.pose({ lamps: 25, watts: 12, powerFactor: 1, volts: 12 }, 'feet'))).toBe(25);
	});
	// NEC 210.19 (seen second-hand): 125 % of a continuous load, the same as 80 % of the rating.
	test('the rating is 125 % of the load', () => {
		for (let seed = 0; seed < 50; seed += 1) {
			const { steps } = problemOf(smallestKind, `continuous|${seed}`, 'feet');
			const [load, rating] = steps.slice(-2).map(({ text }) => Number(text));
			// Half a tenth is the rounding of the rating.
			expect(Math.abs(rating! - 1.25 * load!)).toBeLessThan(0.051);
		}
	});
});
describe('choices', () => {
	// Common practice, no source: 10 lamps of 7 W at 0.7 are 100 VA, which wants 125 VA and so 150.
	test('the smallest transformer', () => {
		const drawn = { lamps: 10, watts: 7, powerFactor: 0.7, rated: [60, 100, 150, 200, 300] };
		expect(choiceOf(smallestKind.pose(drawn, 'metres'))).toBe('150 VA');
		expect(smallestKind.pose({ ...drawn, rated: [60, 100] }, 'metres')).toBeNull();
	});
	test('how many lamps: 80 % of 100 VA over 5 W at 0.75 is 12 lamps of 6.67 VA, no more', () => {
		// Just 12 to the last digit: that is no problem to set, 0.6 is.
		expect(roomKind.pose({ rated: 100, watts: 5, powerFactor: 0.75 }, 'metres')).toBeNull();
		expect(choiceOf(roomKind.pose({ rated: 100, watts: 5, powerFactor: 0.7 }, 'metres'))).toBe('11 lamps');
	});
	test('a power factor that is none makes no problem', () => {
		for (const powerFactor of [0, 1.2, Number.NaN]) {
			expect(vaKind.pose({ lamps: 3, watts: 5, powerFactor }, 'metres')).toBeNull();
			expect(roomKind.pose({ rated: 100, watts: 5, powerFactor }, 'metres')).toBeNull();
		}
	});
});
test('no sheet draws more than the volts of a garden', () => {
	for (const kind of loadKinds)
		for (let seed = 0; seed < 100; seed += 1) {
			const { givens, steps } = problemOf(kind, `volts|${seed}`, 'feet');
			for (const { unit, text } of [...givens, ...steps])
				if (unit === 'V') expect(Number(text)).toBeLessThanOrEqual(24);
		}
});
