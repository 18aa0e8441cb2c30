import { expect, test } from 'vitest';
import { distance } from '../../shared/geometry';
import { expectLesson } from '../lessons.testing';
import { landing } from './held';
import { offsetLesson } from './lesson';

test('the lesson is sound in both systems of units', () => expectLesson(offsetLesson));

// Euclid, Elements I.47, and its oldest example: sides of 3 and 4 have a diagonal of 5.
test('held square, the diagonal is the Pythagorean one, and the engine chooses it', () => {
	expect(landing({ x: 4, y: 3 }, 0)).toEqual({ at: { x: 4, y: 3 }, across: 5, aside: 0 });
	expect(offsetLesson.reveal('metres').right).toBe('square');
	expect(offsetLesson.reveal('metres').figures.find(({ changed }) => changed)?.text).toBe('5.00 m');
	// 12, 9, 15: three times 4, 3, 5; the foot is 0.3048 m exactly (international yard and pound agreement, 1959).
	expect(offsetLesson.reveal('feet').right).toBe('square');
	expect(offsetLesson.reveal('feet').figures.find(({ changed }) => changed)?.text).toBe('15 ft');
});

test('out of square, the diagonal follows the law of cosines and the end swings on its circle', () => {
	for (const turn of [1, 2, 5, 10, 30, 60, 90]) {
		const { at, across, aside } = landing({ x: 4, y: 3 }, turn);
		// Euclid, Elements II.12: the angle between the tapes is a right angle and the lean.
		const cosine = Math.cos(((90 + turn) * Math.PI) / 180);
		expect(across ** 2).toBeCloseTo(16 + 9 - 24 * cosine, 9);
		expect(distance(at, { x: 4, y: 0 })).toBeCloseTo(3, 12);
		expect(aside).toBeCloseTo(distance(at, { x: 4, y: 3 }), 12);
	}
	// A sixth of a turn: the chord is as long as the tape (Elements IV.15).
	expect(landing({ x: 4, y: 3 }, 60).aside).toBeCloseTo(3, 12);
});
