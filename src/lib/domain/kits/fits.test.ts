import { describe, expect, test } from 'vitest';
import { fits, fitsOf, likeness } from './fits';
import { halogen, led } from './shelf.testing';
import type { FixtureNeed } from './types';

const spot: FixtureNeed = {
	id: 'spot',
	kind: 'spot',
	fixtures: ['a'],
	labels: ['T1'],
	lumens: 300,
	beam: 36,
	source: 'led'
};
const path: FixtureNeed = { ...spot, id: 'path', kind: 'path', lumens: 150, beam: null };

describe('the likeness that the trade keeps to (common practice, no source)', () => {
	test('light from 0.6 to 1.6 times what the plan has, both ends in', () => {
		expect(likeness.light).toEqual({ least: 0.6, most: 1.6 });
		for (const lumens of [90, 150, 240]) expect(fits(led('path', 3, lumens), path)).toEqual({ ok: true });
		for (const lumens of [89, 241]) expect(fits(led('path', 3, lumens), path).ok).toBe(false);
	});
	test('a beam from 0.7 to 1.5 times what is asked for, both ends in', () => {
		expect(likeness.beam).toEqual({ least: 0.7, most: 1.5 });
		for (const beam of [25.2, 36, 54]) expect(fits(led('spot', 5, 300, beam), spot)).toEqual({ ok: true });
		for (const beam of [25, 55]) expect(fits(led('spot', 5, 300, beam), spot).ok).toBe(false);
	});
});

test('why not is said with the figures', () => {
	expect(fits(led('path', 3, 60), path)).toEqual({
		ok: false,
		why: 'too little light: 60 lm, and the plan wants 90 to 240 lm'
	});
	expect(fits(led('spot', 3, 300, 15), spot)).toEqual({
		ok: false,
		why: 'too narrow a beam: 15°, and the plan wants 26 to 54°'
	});
	expect(fits(led('well', 3, 300, 36), spot)).toEqual({ ok: false, why: 'a well light, not a spot' });
	expect(fits(halogen('path', 10, 140), path)).toEqual({ ok: false, why: 'halogen, and LED is wished' });
});
test('a beam that the shelf does not tell is taken, and said; none is asked of a path light', () => {
	expect(fits(led('spot', 5, 300), spot)).toEqual({
		ok: true,
		note: 'its beam is not on the shelf list: see that it is about 36°'
	});
	expect(fits(led('path', 3, 150, 20), path)).toEqual({ ok: true });
});
test('the other kind of lamp serves only where the shelf has nothing of the wished kind, and that is said', () => {
	const [mine, other] = [led('path', 3, 150), halogen('path', 10, 140)];
	expect(fitsOf([mine, other], path).map(({ ok }) => ok)).toEqual([true, false]);
	const [weak, alone] = fitsOf([led('path', 1, 40), other], path);
	expect(weak!.ok).toBe(false);
	expect(alone).toEqual({ ok: true, note: 'halogen, because the shelf has no LED path light that suits' });
});
