import { describe, expect, test } from 'vitest';
import { expectSound, problemOf } from '../kinds.testing';
import { besideAmpsKind } from './beside-amps';
import { seriesKinds } from './kinds';
import { ohmKind } from './ohm';
import { shareKind } from './share';
import { totalKind } from './total';
import type { Problem } from '../types';

const answerOf = (problem: Problem | null): number => {
	if (problem?.answer.type !== 'number') throw new Error('no problem with a number for its answer');
	return Number(problem.answer.text);
};
const step = (problem: Problem | null, symbol: string): number =>
	Number(problem?.steps.find((one) => one.symbol === symbol)?.text);

test.each(seriesKinds.map((kind) => [kind.id, kind] as const))('%s is sound', (_, kind) => expectSound(kind), 60_000);

describe('printed answers', () => {
	// Lessons In Electric Circuits, vol. I, chapter on Ohm's law (from memory): 12 V, 3 Ω: 4 A; 36 V, 4 A: 9 Ω; 2 A, 7 Ω: 14 V.
	test('Ohm’s law three ways', () => {
		const base = { volts: 1, amps: 1, ohms: 1 };
		expect(answerOf(ohmKind.pose({ ...base, asked: 'amps', volts: 12, ohms: 3 }, 'metres'))).toBe(4);
		expect(answerOf(ohmKind.pose({ ...base, asked: 'ohms', volts: 36, amps: 4 }, 'metres'))).toBe(9);
		expect(answerOf(ohmKind.pose({ ...base, asked: 'volts', amps: 2, ohms: 7 }, 'metres'))).toBe(14);
	});
	// Lessons In Electric Circuits, vol. II, chapter 11 (seen second-hand): 60 Ω on 120 V: 2 A.
	test('60 Ω on 120 V', () => {
		expect(answerOf(ohmKind.pose({ asked: 'amps', volts: 120, amps: 1, ohms: 60 }, 'feet'))).toBe(2);
	});
	// School problem (seen): 160 Ω and 280 Ω in a row on 220 V: 0.5 A, 80 V and 140 V.
	test('two lamps in a row share 220 V as 80 and 140', () => {
		const posed = (ohms: number[]) => totalKind.pose({ arrangement: 'loop', volts: 220, ohms }, 'metres');
		expect(step(posed([160, 280]), 'I')).toBe(0.5);
		expect(answerOf(posed([160, 280]))).toBe(80);
		expect(answerOf(posed([280, 160]))).toBe(140);
	});
	// Lessons In Electric Circuits, vol. I, simple series circuits (from memory): 9 V; 3, 10 and 5 kΩ: 18 kΩ, 500 µA, 1.5 V across the first.
	test('three in a row on 9 V', () => {
		const posed = totalKind.pose({ arrangement: 'loop', volts: 9, ohms: [3000, 10_000, 5000] }, 'metres');
		expect([step(posed, 'R'), step(posed, 'I'), answerOf(posed)]).toEqual([18_000, 0.0005, 1.5]);
	});
	// The same, simple parallel circuits (from memory): 9 V; 10, 2 and 1 kΩ: 0.9, 4.5 and 9 mA, 14.4 mA in all, 625 Ω.
	test('three side by side on 9 V', () => {
		const posed = totalKind.pose({ arrangement: 'beside', volts: 9, ohms: [10_000, 2000, 1000] }, 'metres');
		expect(['I1', 'I2', 'I3', 'I'].map((symbol) => step(posed, symbol))).toEqual([0.0009, 0.0045, 0.009, 0.0144]);
		expect(answerOf(posed)).toBe(625);
	});
	// Quiz of an electricians' course (seen): 20 Ω and 80 Ω side by side on 64 V: 4 A in all, so 16 Ω.
	test('20 Ω and 80 Ω on 64 V', () => {
		const posed = totalKind.pose({ arrangement: 'beside', volts: 64, ohms: [20, 80] }, 'feet');
		expect([step(posed, 'I'), answerOf(posed)]).toEqual([4, 16]);
	});
	// School problem (seen): lamps of 30 W and 40 W for 120 V are 480 Ω and 360 Ω; in a row on 120 V the first then has 480/840 of it.
	test('lamps by their watts', () => {
		const posed = shareKind.pose({ supply: 120, rated: 120, watts: [30, 40] }, 'metres');
		expect([step(posed, 'R1'), step(posed, 'R2')]).toEqual([480, 360]);
		expect(answerOf(posed)).toBeCloseTo((120 * 480) / 840, 1);
	});
});
test('watts over volts: 3 × 20 W and 2 × 35 W on 12 V are 10.83 A', () => {
	const drawn = {
		volts: 12,
		lamps: [
			{ count: 3, watts: 20 },
			{ count: 2, watts: 35 }
		]
	};
	expect(answerOf(besideAmpsKind.pose(drawn, 'metres'))).toBe(10.83);
});
test('numbers that make no problem are drawn again', () => {
	// The lamp of few watts would take 20.6 of 24 V, and it is made for 12.
	expect(shareKind.pose({ supply: 24, rated: 12, watts: [5, 30] }, 'metres')).toBeNull();
	expect(totalKind.pose({ arrangement: 'loop', volts: 12, ohms: [4] }, 'metres')).toBeNull();
	expect(ohmKind.pose({ asked: 'amps', volts: 0, amps: 1, ohms: 3 }, 'metres')).toBeNull();
});
test('no sheet draws more than the volts of a garden', () => {
	for (const kind of seriesKinds)
		for (let seed = 0; seed < 100; seed += 1) {
			const { givens, steps } = problemOf(kind, `volts|${seed}`, 'feet');
			for (const { unit, text } of [...givens, ...steps])
				if (unit === 'V') expect(Number(text)).toBeLessThanOrEqual(24);
		}
});
