import { describe, expect, test } from 'vitest';
import { ngspiceVolts } from '../../circuit/ngspice.testing';
import { expectLesson } from '../lessons.testing';
import { bank, chosenFor, ledLoad, limitOf, mostLamps, voltAmpsOf } from './bank';
import { loadLesson } from './lesson';

test('the lesson is sound', () => expectLesson(loadLesson));

describe('the transformer', () => {
	test('the most lamps keep the limit, one more does not', () => {
		for (const [rated, voltAmps] of [
			[60, 5],
			[150, 15],
			[300, 8.75]
		] as const) {
			const most = mostLamps(rated, voltAmps);
			expect(most * voltAmps).toBeLessThanOrEqual(limitOf(rated) + 1e-9);
			expect((most + 1) * voltAmps).toBeGreaterThan(limitOf(rated));
		}
	});
	// NEC Article 411 (seen second-hand): 25 A on one secondary, which comes before 80 % of 600 VA at 12 V.
	test('the secondary stops first on a large one', () => {
		expect(mostLamps(600, 10)).toBe(30);
	});
	test('the search for a transformer agrees with the sum: 80 % of 150 VA is 120', () => {
		expect(chosenFor(120, [60, 100, 150, 200]).transformer.voltAmps).toBe(150);
		expect(chosenFor(121, [60, 100, 150, 200]).transformer.voltAmps).toBe(200);
	});
	// A general circuit simulator: the same lamps behind a metre of cable, so that there is something to solve.
	test('by ngspice', () => {
		const network = {
			sourceVolts: 12,
			sourceOhms: 0.03,
			nodes: 2,
			segments: [{ from: 0, to: 1, ohms: 0.01 }],
			loads: Array.from({ length: 8 }, () => ({ node: 1, load: ledLoad(15) }))
		};
		const [volts] = ngspiceVolts([network]);
		expect(volts![1]! * ((12 - volts![1]!) / 0.04)).toBeCloseTo(voltAmpsOf(bank(8, 15)!), 5);
	});
});
test('what holds is counted by the engine, and the other answers are what a class counts', () => {
	const { right } = loadLesson.reveal('metres');
	const ids = loadLesson.choices('metres').map(({ id }) => Number(id));
	expect(ids).toContain(Number(right));
	expect(Math.max(...ids)).toBeGreaterThan(Number(right));
});
