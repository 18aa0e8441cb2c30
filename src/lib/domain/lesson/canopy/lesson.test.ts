import { expect, test } from 'vitest';
import { expectLesson } from '../lessons.testing';
import { canopyLesson } from './lesson';
import { planOf, treeOf, uplit } from './tree';

test('the lesson is sound in both systems of units', () => expectLesson(canopyLesson));

const textOf = (value: number, label: string, units: 'metres' | 'feet' = 'metres') =>
	canopyLesson.at(value, units).figures.find((figure) => figure.label === label)?.text;

// Common practice, no source: 6 in up to a canopy of 10 ft, 3 to 4 ft from one of 25 ft.
test('offsets are the trade’s at both ends, in both systems', () => {
	expect([2, 3, 7.5, 9].map((spread) => textOf(spread, 'From the bark'))).toEqual([
		'150 mm',
		'150 mm',
		'1.05 m',
		'1.05 m'
	]);
	expect(textOf(7, 'From the bark', 'feet')).toBe('6 in');
	expect(['3 ft 5 in', '3 ft 5 1/2 in']).toContain(textOf(30, 'From the bark', 'feet'));
});
test('between them it grows as a straight line does', () => {
	// Two points fix a line: at a ninth of the way 250 mm, halfway 600 mm.
	const offsets = [3, 3.5, 5.25, 7.5].map(
		(spread) => uplit({ spread, height: 12, crownBase: 3, trunk: 0.2 }, 'metres').aim.offset
	);
	expect(offsets.map((metres) => Math.round(metres * 1000))).toEqual([150, 250, 600, 1050]);
});

test('the lesson’s light is the one that a plan of the same tree has', () => {
	const sizes = { spread: 5, height: 8, crownBase: 2.4, trunk: 0.24 };
	const { tree, lights, aim } = uplit(sizes, 'metres');
	const plan = planOf(sizes, 'metres');
	expect(plan.fixtures.map(({ at, aim: one }) => [at, one])).toEqual(lights.map(({ at, aim: one }) => [at, one]));
	expect(treeOf(sizes, 'metres')).toEqual(tree);
	// The lean by the dot product of the beam with upright: a second way to the same angle.
	const light = plan.fixtures[0]!;
	const to = light.aim!.point;
	const beam = [to.x - light.at.x, to.y - light.at.y, to.z - light.height];
	const upright = (Math.acos(beam[2]! / Math.hypot(...beam)) * 180) / Math.PI;
	expect(upright).toBeCloseTo(aim.lean, 9);
});
