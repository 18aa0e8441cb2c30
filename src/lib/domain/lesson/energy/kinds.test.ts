import { describe, expect, test } from 'vitest';
import { expectSound, problemOf } from '../kinds.testing';
import type { Problem, ProblemKind } from '../types';
import { energyKinds, type LampsDrawn, type YearDrawn } from './kinds';
import { pairs } from './pairs';

const kind = <T>(id: string) => energyKinds.find((one) => one.id === id) as ProblemKind<T>;
const shown = (problem: Problem | null) => problem!.steps.map(({ text, unit }) => `${text} ${unit}`);
const year = kind<YearDrawn>('energy.year');

describe('problems about energy', () => {
	test.each(energyKinds.map((one) => [one.id, one] as const))('%s is sound', (_, one) => expectSound(one));

	// OpenStax, College Physics, chapter 20 (seen second-hand): 60 W for 1000 hours at 12 cents are 60.0 kWh and $7.20; 15 W for as long, $1.80.
	test('a textbook’s bulbs cost what the book prints', () => {
		const drawn = { lights: 1, hoursANight: 10, nights: 100, price: 0.12 };
		expect(shown(year.pose({ ...drawn, watts: 60 }, 'feet')).slice(1)).toEqual(['60.0 kWh', '7.20 dollars']);
		expect(shown(year.pose({ ...drawn, watts: 15 }, 'feet')).slice(1)).toEqual(['15.0 kWh', '1.80 dollars']);
	});
	// The same chapter: what the change saves in 1000 hours is $7.20 − $1.80.
	test('a textbook’s change of lamps saves what the book’s figures differ by', () => {
		const pair = { name: 'lamps', halogen: 60, led: 15 };
		const drawn: LampsDrawn = { pair, lights: 1, hours: 1000, price: 0.12, lamp: 9 };
		expect(shown(kind<LampsDrawn>('energy.saving').pose(drawn, 'feet')).at(-1)).toBe('5.40 dollars');
		// $9 over $5.40 a year.
		expect(shown(kind<LampsDrawn>('energy.payback').pose(drawn, 'feet')).at(-1)).toBe('1.7 years');
	});
	// A power company’s own example of its formula (ACE, energy costs estimator, seen): a fan of 200 W, 4 hours a day, 120 days: 96 kWh, $8.16 at 8.5 cents.
	test('a power company’s example comes out as printed', () => {
		const drawn = { lights: 1, watts: 200, hoursANight: 4, nights: 120, price: 0.085 };
		expect(shown(year.pose(drawn, 'metres')).slice(1)).toEqual(['96.0 kWh', '8.16 dollars']);
	});
	test('LED lamps take a quarter or less of the halogen lamps they replace', () => {
		expect(pairs.length).toBeGreaterThanOrEqual(6);
		for (const { halogen, led } of pairs) expect(led).toBeLessThan(0.35 * halogen);
	});
	// Half of all hours are night, less twilight: 4380 h less the two twilights, at any latitude (analytic; the refraction of the horizon left aside).
	test('the nights of a year last about as long wherever one lives', () => {
		for (let n = 0; n < 40; n += 1) {
			const problem = problemOf(kind('energy.hours'), `nights ${n}`, 'metres');
			const hours = Number(problem.givens[0]!.text);
			expect(hours).toBeGreaterThan(3900);
			expect(hours).toBeLessThan(4380);
		}
	});
	test('what cannot be is no problem', () => {
		const pair = pairs[0]!;
		expect(
			kind<LampsDrawn>('energy.payback').pose({ pair, lights: 4, hours: 1, price: 0.12, lamp: 15 }, 'feet')
		).toBeNull();
		expect(
			kind<YearDrawn>('energy.year').pose({ lights: 0, watts: 4, hoursANight: 5, nights: 365, price: 0.2 }, 'feet')
		).toBeNull();
	});
});
