/** The beam's lesson, and its light against values from outside. */
import { describe, expect, test } from 'vitest';
import published from '../../photometry/photometry.published.json';
import { metresPerFoot } from '../../shared/units';
import { expectLesson } from '../lessons.testing';
import { aheadOf, beamWidth, luxPerFootcandle, onWall } from './beam-light';
import { beamLesson } from './lesson';

test('sound at every place of its lever', () => expectLesson(beamLesson));
test('the engine finds the answer', () => {
	for (const units of ['metres', 'feet'] as const) expect(beamLesson.reveal(units).right).toBe('quarter');
});
describe('values from outside', () => {
	// 2·d·tan(θ/2), analytic; the beam angle as CIE S 017:2020, 17-27-077, defines it.
	test('a 36° beam at 10 ft', () => {
		const { beamAngle, metres, feetWide } = published.spot36;
		expect(beamWidth(beamAngle, metres) / metresPerFoot).toBeCloseTo(feetWide, 3);
	});
	test('width by the law of the lamp and by the tangent are one', () => {
		for (const angle of [10, 15, 24, 36, 60, 90, 120])
			expect(beamWidth(angle, 3)).toBeCloseTo(6 * Math.tan((angle * Math.PI) / 360), 9);
	});
	// Aaron Lee, Lighting for Electricians (open textbook), Inverse Square Law: 100 lx at 1 m are 25 lx at 2 m and 11.1 lx at 3 m.
	test('100 lx at 1 m', () => {
		const source = { centre: 100, n: 1, cosCut: 0 };
		expect(aheadOf(source, 1)).toBeCloseTo(100, 9);
		expect(aheadOf(source, 2)).toBeCloseTo(25, 9);
		expect(aheadOf(source, 3).toFixed(1)).toBe('11.1');
	});
	// The foot is 0.3048 m exactly; 1 fc = 10.76391 lx: IES, The Lighting Handbook, conversion factors.
	test('a footcandle', () => expect(luxPerFootcandle).toBeCloseTo(10.76391, 5));
	test('candela of a lumen in a 36° beam', () =>
		expect(onWall({ lumens: 1, beamAngle: published.perLumen36.beamAngle }, 1).candela).toBeCloseTo(
			published.perLumen36.candelaPerLumen,
			3
		));
});
