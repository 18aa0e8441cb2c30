import { describe, expect, test } from 'vitest';
import { expectSound } from '../kinds.testing';
import { arc } from './arc';
import { clearPlace } from './clear';
import { setbackKinds } from './kinds';
import { pairs } from './pairs';
import { stakes } from './stakes';

describe('every problem is sound', () => {
	for (const kind of setbackKinds) test(kind.id, () => expectSound(kind));
});

test('a stake stands its setback and half its head from the edge', () => {
	// Common practice, no source: 6 in (150 mm) clear of a drive.
	const metric = stakes.pose({ width: 3, head: 150, clear: 150 }, 'metres')!;
	expect(metric.steps.map(({ text }) => text)).toEqual(['225', '3000', '3450']);
	const feet = stakes.pose({ width: 10, head: 5, clear: 6 }, 'feet')!;
	expect(feet.steps.map(({ text }) => text)).toEqual(['8.5', '120.0', '137.0']);
});

// Fence posts: one more than gaps (an exercise of every arithmetic book).
test.each([
	[10, 1, 1.5, 3, 3],
	[12.5, 1, 1.5, 3, 4],
	[7.5, 2, 1.5, 3, 2]
])('along %f m, from %f m in to %f m before the end, %f m apart: %i pairs', (length, first, last, spacing, count) => {
	const problem = pairs.pose({ length, first, last, spacing }, 'metres')!;
	expect(problem.engine).toBe(count);
	expect(problem.answer.type === 'choice' && problem.answer.choices[problem.answer.right]).toBe(String(count));
	expect(Math.floor((length - first - last) / spacing) + 1).toBe(count);
});
test('a long drive, or gaps that come out even, are not asked', () => {
	expect(pairs.pose({ length: 25, first: 1, last: 1.5, spacing: 3 }, 'metres')).toBeNull();
	expect(pairs.pose({ length: 11.5, first: 1, last: 1.5, spacing: 3 }, 'metres')).toBeNull();
});

test('a lamp whose corner is at 3 and 4 from the centre is 5 from it (Euclid, Elements I.47)', () => {
	const stepsOf = (out: number, back: number) =>
		arc.pose({ flare: 1000, out, back, head: 160 }, 'metres')?.steps.map(({ text }) => text);
	expect(stepsOf(480, 630)).toEqual(['600', '450', '750', '250']);
	expect(stepsOf(180, 405)).toEqual(['900', '675', '1125', '−125']);
	// 800 and 600 lie on the arc itself: no one could say.
	expect(stepsOf(280, 480)).toBeUndefined();
});
test('of four places one is clear, and the key says what is wrong with the others', () => {
	const drawn = { flare: 1000, head: 160, clear: 150 };
	const places = [
		[100, 600],
		[350, 200],
		[400, 800],
		[300, 150]
	] as const;
	const problem = clearPlace.pose({ ...drawn, places }, 'metres')!;
	expect(problem.answer).toEqual({ type: 'choice', choices: ['A', 'B', 'C', 'D'], right: 2 });
	expect(problem.because).toBe(
		'A is too near the edge; B is in the corner that the car cuts; C is clear; D is in the corner that the car cuts.'
	);
	expect(clearPlace.pose({ ...drawn, places: [...places.slice(0, 3), [500, 900]] }, 'metres')).toBeNull();
});
