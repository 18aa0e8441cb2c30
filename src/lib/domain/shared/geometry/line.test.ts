import { assert, array, double, integer, property, record } from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	directionAt,
	distance,
	lineLength,
	lineMeetings,
	nearestOnLine,
	nearestOnSegment,
	offsetLine,
	offsetRing,
	partOf,
	pointAt,
	polygonArea,
	segmentDistance,
	segmentMeeting,
	selfMeetings,
	turns,
	withoutRepeats,
	type Point
} from '../geometry';

const at = (x: number, y: number): Point => ({ x, y });
const coordinate = double({ min: -50, max: 50, noNaN: true });
const point = record({ x: coordinate, y: coordinate });
/** The 3-4-5 triangle, open. */
const line = [at(0, 0), at(3, 0), at(3, 4)];

describe('along a line', () => {
	test('length, places and directions', () => {
		expect(lineLength(line)).toBe(7);
		expect(pointAt(line, 5)).toEqual(at(3, 2));
		expect(pointAt(line, -1)).toEqual(at(0, 0));
		expect(pointAt(line, 99)).toEqual(at(3, 4));
		expect(directionAt(line, 1)).toEqual(at(1, 0));
		expect(directionAt(line, 6)).toEqual(at(0, 1));
		expect(partOf(line, 1, 5)).toEqual([at(1, 0), at(3, 0), at(3, 2)]);
		expect(turns(line)).toEqual([{ at: 3, turn: 90 }]);
	});
	test('lines without length make no NaN', () => {
		const dot = [at(1, 1), at(1, 1)];
		expect(pointAt(dot, 3)).toEqual(at(1, 1));
		expect(directionAt(dot, 0)).toEqual(at(0, 0));
		expect(offsetLine(dot, 1)).toEqual(dot);
		expect(nearestOnLine(at(1, 2), dot)?.distance).toBe(1);
		expect(pointAt([], 1)).toEqual(at(0, 0));
		expect(nearestOnLine(at(0, 0), [])).toBe(null);
	});
	test('the nearest place, its station and side', () => {
		expect(nearestOnLine(at(2.5, 1.5), line)).toEqual({ point: at(3, 1.5), at: 4.5, distance: 0.5, side: 'right' });
		// Beyond a sharp corner the point is right of the one segment and left of the other: it lies outside the turn.
		const sharp = [at(0, 0), at(10, 0), at(0, 1)];
		expect(nearestOnLine(at(11, 0.5), sharp)).toMatchObject({ at: 10, side: 'left' });
		expect(nearestOnLine(at(11, -0.5), sharp)).toMatchObject({ at: 10, side: 'left' });
		expect(nearestOnLine(at(1, -2), line)).toMatchObject({ at: 1, distance: 2, side: 'left' });
	});
	test('no sampled place of a line is nearer than the nearest', () => {
		assert(
			property(array(point, { minLength: 2, maxLength: 6 }), point, (path, p) => {
				const near = nearestOnLine(p, path)!;
				const length = lineLength(path);
				for (let i = 0; i <= 40; i++)
					expect(distance(pointAt(path, (length * i) / 40), p)).toBeGreaterThanOrEqual(near.distance - 1e-9);
				expect(distance(pointAt(path, near.at), near.point)).toBeLessThan(1e-6);
			})
		);
	});
});

describe('segments', () => {
	test('Heron: the distance to a side is twice the area over the side (13-14-15 triangle, area 84)', () => {
		// The 13-14-15 triangle of Heron of Alexandria, Metrica I: area 84, so its height on the side of 14 is 12.
		expect(nearestOnSegment(at(5, 12), at(0, 0), at(14, 0)).distance).toBe((2 * 84) / 14);
		expect(distance(at(5, 12), at(0, 0))).toBe(13);
		expect(distance(at(5, 12), at(14, 0))).toBe(15);
	});
	test('meetings', () => {
		expect(segmentMeeting(at(0, 0), at(4, 4), at(0, 4), at(4, 0))).toEqual({ point: at(2, 2), t: 0.5, u: 0.5 });
		expect(segmentMeeting(at(0, 0), at(4, 0), at(0, 1), at(4, 1))).toBe(null);
		expect(segmentMeeting(at(0, 0), at(1, 0), at(2, -1), at(2, 1))).toBe(null);
		expect(segmentMeeting(at(0, 0), at(2, 0), at(2, 0), at(2, 5))?.point).toEqual(at(2, 0));
		expect(segmentDistance(at(0, 0), at(4, 0), at(5, 3), at(9, 3))).toBeCloseTo(Math.hypot(1, 3), 12);
		expect(segmentDistance(at(0, 0), at(4, 0), at(1, 0), at(2, 0))).toBe(0);
	});
	test('lines that meet, and a line that crosses itself', () => {
		expect(lineMeetings(line, [at(-1, 2), at(5, 2)])).toEqual([{ point: at(3, 2), at: 5, atOther: 4 }]);
		expect(selfMeetings([at(0, 0), at(4, 0), at(4, 4), at(2, 4), at(2, -2)])).toEqual([
			{ point: at(2, 0), at: 2, atOther: 14 }
		]);
		expect(selfMeetings(line)).toEqual([]);
	});
});

describe('moved sideways', () => {
	test('corners are mitred', () => {
		const right = offsetLine([at(0, 0), at(10, 0), at(10, 10)], 1);
		expect(right.map((p) => [p.x, p.y].map((n) => Math.round(n * 1e9) / 1e9))).toEqual([
			[0, 1],
			[9, 1],
			[9, 10]
		]);
	});
	test('a hairpin does not throw its corner across the yard', () => {
		const hairpin = offsetLine([at(0, 0), at(10, 0), at(0, 0.1)], 1);
		for (const p of hairpin) expect(nearestOnLine(p, [at(0, 0), at(10, 0)])!.distance).toBeLessThan(3.2);
		expect(offsetLine([at(0, 0), at(10, 0), at(0, 0)], 1)[1]).toEqual(at(10, 1));
	});
	// A mitred strip is made of trapezia: what one side gains at a corner the other loses, so area = length × width.
	test('the strip between both edges has the area length × width', () => {
		const bend = record({ step: double({ min: 5, max: 9, noNaN: true }), turn: integer({ min: -50, max: 50 }) });
		assert(
			property(
				array(bend, { minLength: 1, maxLength: 5 }),
				double({ min: 0.5, max: 2, noNaN: true }),
				(bends, width) => {
					const path = [at(0, 0)];
					let heading = 0;
					for (const { step, turn } of bends) {
						heading += (turn * Math.PI) / 180;
						path.push(at(path.at(-1)!.x + step * Math.cos(heading), path.at(-1)!.y + step * Math.sin(heading)));
					}
					const ring = [...offsetLine(path, -width / 2), ...offsetLine(path, width / 2).toReversed()];
					expect(polygonArea(ring)).toBeCloseTo(lineLength(path) * width, 6);
				}
			)
		);
	});
	test('a ring grows and shrinks by its corners', () => {
		const square = [at(0, -4), at(0, 0), at(4, 0), at(4, -4)];
		expect(polygonArea(offsetRing(square, 1))).toBeCloseTo(36, 9);
		expect(polygonArea(offsetRing(square, -1))).toBeCloseTo(4, 9);
	});
	test('repeated points are dropped, the last one kept', () => {
		expect(withoutRepeats([at(0, 0), at(0, 0), at(1, 0), at(1, 1e-9)])).toEqual([at(0, 0), at(1, 1e-9)]);
	});
});
