import { describe, expect, test } from 'vitest';
import { distance, lineLength, nearestOnLine, smoothLine, turns, type Point } from '../geometry';

const arc = (a: number, b: number, n: number): Point[] =>
	Array.from({ length: n + 1 }, (_, i) => ({
		x: a * Math.cos((i / n) * 2 * Math.PI),
		y: b * Math.sin((i / n) * 2 * Math.PI)
	}));

describe('smooth lines', () => {
	test('go through every given point, from the first to the last', () => {
		const control = [
			{ x: 0, y: 0 },
			{ x: 5, y: 1 },
			{ x: 6, y: 8 },
			{ x: 20, y: 9 }
		];
		const line = smoothLine(control);
		for (const p of control) expect(line).toContainEqual(p);
		expect(line[0]).toEqual(control[0]);
		expect(line.at(-1)).toEqual(control.at(-1));
	});
	test('points on one straight line stay straight', () => {
		const line = smoothLine([0, 1, 4, 9].map((x) => ({ x, y: 2 * x })));
		expect(lineLength(line)).toBeCloseTo(9 * Math.sqrt(5), 9);
		for (const { turn } of turns(line)) expect(Math.abs(turn)).toBeLessThan(1e-6);
	});
	// Ramanujan's approximation to the perimeter of an ellipse (1914), error below 1e-6 here.
	test('sixteen points of an ellipse come to its perimeter within 1 %', () => {
		const [a, b] = [12, 8];
		const h = ((a - b) / (a + b)) ** 2;
		const perimeter = Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
		expect(Math.abs(lineLength(smoothLine(arc(a, b, 16))) / perimeter - 1)).toBeLessThan(0.01);
	});
	test('no corner is left that the eye would see: under 12° between chords of a gentle drive', () => {
		const drive = smoothLine([
			{ x: 0, y: 30 },
			{ x: 4, y: 22 },
			{ x: 14, y: 12 },
			{ x: 15, y: 0 }
		]);
		for (const { turn } of turns(drive)) expect(Math.abs(turn)).toBeLessThan(12);
		expect(drive.length).toBeLessThan(60);
	});
	test('the same seen in a mirror', () => {
		const control = [
			{ x: 0, y: 30 },
			{ x: 4, y: 21 },
			{ x: 14, y: 12 },
			{ x: 13, y: 0 }
		];
		const mirrored = smoothLine(control.map(({ x, y }) => ({ x: -x, y }))).map(({ x, y }) => ({ x: -x, y }));
		const straight = smoothLine(control);
		expect(mirrored.length).toBe(straight.length);
		straight.forEach((p, i) => expect(distance(p, mirrored[i]!)).toBeLessThan(1e-9));
	});
	test('uneven spacing makes no loop: the line never runs far behind its points', () => {
		const control = [
			{ x: 0, y: 0 },
			{ x: 10, y: 0 },
			{ x: 10.2, y: 0.3 },
			{ x: 10, y: 10 }
		];
		for (const p of smoothLine(control)) expect(nearestOnLine(p, control)!.distance).toBeLessThan(1);
	});
});
