import { describe, expect, it } from 'vitest';
import type { SpotFigures } from '$lib/domain/compare';
import { changeTo, differenceWords, figureWords, headlineOf, markOf } from './words';

const spot = (over: Partial<SpotFigures>): SpotFigures => ({
	id: 'plan',
	kind: 'plan',
	where: 'the front of the house, 2.00 m from its left end',
	at: { x: 2, y: 0.1 },
	on: 'wall',
	far: 0.4,
	answer: 'suggest',
	cable: 40,
	trench: 20,
	crossings: 1,
	cost: 200,
	voltAmps: 100,
	stops: 0,
	unfed: 0,
	lowestVolts: 11.234,
	difference: 0,
	electrician: false,
	because: [],
	why: '',
	...over
});
const yours = spot({
	id: 'yours',
	kind: 'yours',
	answer: { at: { along: 8, out: 0 }, on: 'wall', height: 0.5 },
	cost: 231
});

describe('the headline', () => {
	it('sets the person’s place beside the plan’s', () => {
		expect(headlineOf([yours, spot({ difference: -31 })], '$')).toBe(
			'Your place costs about $31 more than the one the plan would choose.'
		);
		expect(headlineOf([yours, spot({ difference: 0.4 })], '$')).toContain('costs the same');
		expect(headlineOf([yours], '$')).toContain('no place of its own');
	});
	it('says where the plan’s own place is not the cheapest after all', () => {
		const near = spot({ id: 'spot-1', kind: 'reach', difference: -12 });
		expect(headlineOf([spot({}), near], '€')).toContain('number 1 comes to about €12 less');
		expect(headlineOf([spot({}), { ...near, difference: 3 }], '€')).toContain('Nothing within the cord’s reach');
		expect(headlineOf([], '€')).toBe('');
	});
});
it('says what a place comes to', () => {
	expect(figureWords(spot({}), 'metres')).toEqual([
		'20.00 m of trench',
		'40.00 m of cable',
		'1 crossing',
		'11.23 V at the lamp that gets least'
	]);
	expect(figureWords(spot({ crossings: 0, lowestVolts: null }), 'metres').slice(2)).toEqual([
		'no crossing',
		'volts not known'
	]);
	expect(differenceWords(yours, yours, '$')).toBe('where you want it');
	expect(differenceWords(spot({ difference: 12.2 }), yours, '$')).toBe('about $12 more');
	expect(differenceWords(spot({ difference: -0.6 }), yours, '$')).toBe('the same cost');
});
it('names its mark, and is taken as one answer', () => {
	expect([yours, spot({}), spot({ id: 'spot-3', kind: 'beyond' })].map(markOf)).toEqual(['yours', 'plan’s', '3']);
	expect(changeTo(spot({})).changes).toEqual([{ path: 'power.transformer', value: 'suggest' }]);
});
