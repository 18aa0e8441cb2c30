import { assert, array, integer, property } from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
	boxOf,
	centroid,
	circle,
	convexHull,
	distanceToPolygon,
	ellipse,
	inPolygon,
	lengthInside,
	nearestOnPolygon,
	nearestOnSegment,
	polygonArea,
	polygonGap,
	polygonsOverlap,
	rectangle,
	sidesOf,
	signedArea,
	type Point
} from '../geometry';

const at = (x: number, y: number): Point => ({ x, y });
const room = [at(0, 0), at(6, 0), at(6, 2), at(2, 2), at(2, 5), at(0, 5)];

describe('area and centre', () => {
	test('an L of two rectangles', () => {
		expect(polygonArea(room)).toBe(6 * 2 + 2 * 3);
		expect(centroid(room)).toEqual(at((12 * 3 + 6 * 1) / 18, (12 * 1 + 6 * 3.5) / 18));
	});
	// Worked example of the shoelace formula in general encyclopaedias (from memory, check): 16.5.
	test('a pentagon worked elsewhere', () => {
		expect(polygonArea([at(1, 6), at(3, 1), at(7, 2), at(4, 4), at(8, 5)])).toBe(16.5);
	});
	test('a regular ring of 24 on a circle: n/2 · r² · sin(2π/n)', () => {
		expect(polygonArea(circle(at(3, -2), 2))).toBeCloseTo(12 * 4 * Math.sin(Math.PI / 12), 12);
		expect(polygonArea(ellipse(at(0, 0), 6, 2))).toBeCloseTo(12 * 3 * Math.sin(Math.PI / 12), 12);
	});
	// Pick's theorem (1899): a simple polygon on lattice points has area I + B/2 − 1. I is counted by `inPolygon`.
	test('Pick: area and inside agree on the lattice', () => {
		const gcd = (a: number, b: number): number => (b === 0 ? Math.abs(a) : gcd(b, a % b));
		const star = array(integer({ min: 1, max: 9 }), { minLength: 8, maxLength: 8 });
		// Eight compass spokes of whole length: lattice corners in order round the origin, so the ring is simple.
		const spokes = [at(1, 0), at(1, 1), at(0, 1), at(-1, 1), at(-1, 0), at(-1, -1), at(0, -1), at(1, -1)];
		assert(
			property(star, (reach) => {
				const ring = spokes.map((s, i) => at(s.x * reach[i]!, s.y * reach[i]!));
				const boundary = sidesOf(ring).reduce((sum, [p, q]) => sum + gcd(q.x - p.x, q.y - p.y), 0);
				let inside = 0;
				for (let x = -9; x <= 9; x++)
					for (let y = -9; y <= 9; y++) if (distanceToPolygon(at(x, y), ring) < -1e-9) inside += 1;
				expect(polygonArea(ring)).toBeCloseTo(inside + boundary / 2 - 1, 9);
			})
		);
	});
	test('rings without area make no NaN', () => {
		expect(centroid([at(0, 0), at(2, 0), at(4, 0)])).toEqual(at(2, 0));
		expect(centroid([])).toEqual(at(0, 0));
		expect(distanceToPolygon(at(0, 0), [])).toBe(Infinity);
		expect(boxOf([])).toEqual({ minX: 0, minY: 0, maxX: 0, maxY: 0 });
	});
	test('clockwise on the drawing is positive', () => {
		expect(signedArea([at(0, 0), at(1, 0), at(1, 1)])).toBeGreaterThan(0);
	});
});

describe('inside and across', () => {
	test('distance is negative inside', () => {
		expect(distanceToPolygon(at(1, 1), room)).toBe(-1);
		expect(distanceToPolygon(at(4, 5), room)).toBe(2);
		expect(inPolygon(at(4, 3), room)).toBe(false);
	});
	test('how much of a segment runs inside', () => {
		expect(lengthInside(at(-1, 1), at(9, 1), room)).toBeCloseTo(6, 12);
		expect(lengthInside(at(5, -1), at(5, 9), room)).toBeCloseTo(2, 12);
		expect(lengthInside(at(-1, 0), at(9, 0), room)).toBe(0);
		expect(lengthInside(at(0.5, 0.5), at(1.5, 0.5), room)).toBeCloseTo(1, 12);
	});
	test('overlap needs shared area', () => {
		expect(polygonsOverlap(room, rectangle(at(2, 2), at(6, 5)))).toBe(false);
		expect(polygonsOverlap(room, rectangle(at(1.9, 1.9), at(6, 5)))).toBe(true);
		expect(polygonsOverlap(room, room)).toBe(true);
		expect(polygonsOverlap(room, rectangle(at(0.5, 0.5), at(1, 1)))).toBe(true);
		// A cross: no corner of either lies in the other.
		expect(polygonsOverlap(rectangle(at(-5, -1), at(5, 1)), rectangle(at(-1, -5), at(1, 5)))).toBe(true);
		expect(polygonGap(rectangle(at(0, 0), at(1, 1)), rectangle(at(4, 5), at(6, 6)))).toBe(5);
	});
	test('the hull holds every point and is convex', () => {
		const whole = integer({ min: -20, max: 20 });
		assert(
			property(array(array(whole, { minLength: 2, maxLength: 2 }), { minLength: 3, maxLength: 30 }), (pairs) => {
				const points = pairs.map(([x, y]) => at(x!, y!));
				const hull = convexHull(points);
				if (hull.length < 3) return;
				for (const p of points) expect(distanceToPolygon(p, hull)).toBeLessThanOrEqual(1e-9);
				expect(polygonArea(convexHull(hull))).toBeCloseTo(polygonArea(hull), 9);
			})
		);
	});
});

test('the nearest side is the first of those that none is nearer than', () => {
	const whole = integer({ min: -6, max: 6 });
	const point = array(whole, { minLength: 2, maxLength: 2 }).map(([x, y]) => at(x! / 3, y! / 7));
	assert(
		property(point, array(point, { minLength: 1, maxLength: 9 }), (p, ring) => {
			const all = sidesOf(ring).map(([a, b]) => nearestOnSegment(p, a, b).distance);
			const least = Math.min(...all);
			const near = nearestOnPolygon(p, ring)!;
			expect(near.distance).toBe(least);
			expect(near.side).toBe(all.indexOf(least));
			expect(Math.abs(distanceToPolygon(p, ring))).toBe(least);
		}),
		{ numRuns: 2000 }
	);
});
