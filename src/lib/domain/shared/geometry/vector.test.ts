import { describe, expect, test } from 'vitest';
import { assert, double, property } from 'fast-check';
import { bearingOf, directionOf, hypot, leftOf, rightOf, rotated, turnBetween, unit, wrapDegrees } from '../geometry';

describe('hands and bearings', () => {
	const home = { x: 0, y: -1 };
	test('going home from the street, right is along the front', () => {
		expect(rightOf(home)).toEqual({ x: 1, y: 0 });
		expect(leftOf(home)).toEqual({ x: -1, y: -0 });
	});
	test('a turn to the right is positive', () => {
		expect(turnBetween(home, { x: 1, y: 0 })).toBeCloseTo(90, 12);
		expect(turnBetween(home, { x: -1, y: -1 })).toBeCloseTo(-45, 12);
		expect(turnBetween(home, { x: 0, y: 1 })).toBeCloseTo(180, 12);
		expect(turnBetween(home, { x: 0, y: 0 })).toBe(0);
		const turned = rotated(home, 90);
		expect(turned.x).toBeCloseTo(1, 12);
		expect(turned.y).toBeCloseTo(0, 12);
	});
	// Facing south, one looks north from the street: the right hand is east.
	test.each([
		[180, { x: 0, y: 1 }, 180],
		[180, { x: 1, y: 0 }, 90],
		[180, { x: 0, y: -1 }, 0],
		[0, { x: 1, y: 0 }, 270],
		[90, { x: 1, y: 0 }, 0],
		[270, { x: 1, y: 1 }, 225]
	])('front faces %i°: %o points to %i°', (faces, direction, bearing) => {
		expect(wrapDegrees(bearingOf(direction, faces))).toBeCloseTo(bearing, 9);
		const back = directionOf(bearing, faces);
		expect(back.x).toBeCloseTo(unit(direction).x, 12);
		expect(back.y).toBeCloseTo(unit(direction).y, 12);
	});
	test('the zero vector has no direction and makes no NaN', () => {
		expect(unit({ x: 0, y: 0 })).toEqual({ x: 0, y: 0 });
	});
});

describe('length', () => {
	test("is that of the language's own, to the last digits, from the tiny to the huge", () => {
		const any = double({ noNaN: true });
		assert(
			property(any, any, (x, y) => {
				const own = Math.hypot(x, y);
				if (Number.isFinite(own)) expect(Math.abs(hypot(x, y) - own)).toBeLessThanOrEqual(own * 5e-16);
				else expect(hypot(x, y)).toBe(own);
			}),
			{ numRuns: 2000 }
		);
		expect(hypot(0, 0)).toBe(0);
		expect(hypot(3, -4)).toBe(5);
		expect(hypot(Number.NaN, 1)).toBeNaN();
		expect(hypot(1, Number.NaN)).toBeNaN();
		expect(hypot(-Infinity, Number.NaN)).toBe(Infinity);
	});
});
