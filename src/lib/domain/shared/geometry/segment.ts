import type { Point, Polygon } from './types';
import { hypot } from './vector';

export interface Nearest {
	point: Point;
	/** Fraction of the way along the segment, 0 to 1. */
	t: number;
	distance: number;
}
/** The point of segment a–b nearest to `p`. A segment without length is its first point. */
export function nearestOnSegment(p: Point, a: Point, b: Point): Nearest {
	const dx = b.x - a.x;
	const dy = b.y - a.y;
	const t = fractionNearest(p, a, dx, dy);
	const x = a.x + dx * t;
	const y = a.y + dy * t;
	return { point: { x, y }, t, distance: hypot(p.x - x, p.y - y) };
}
/** How far along the segment from `a` by (dx, dy) its point nearest to `p` lies, 0 to 1. */
function fractionNearest(p: Point, a: Point, dx: number, dy: number): number {
	const square = dx * dx + dy * dy;
	return square > 0 ? Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square)) : 0;
}
/** Metres from `p` to the nearest of the sides of a ring, and which side: `nearestOnSegment` of each, without their points. */
export function nearestSide(p: Point, ring: Polygon): { side: number; distance: number } {
	let side = -1;
	let least = Infinity;
	/** Square of the least, with room for rounding: what is further off needs no root. */
	let within = Infinity;
	for (let i = 0; i < ring.length; i++) {
		const a = ring[i]!;
		const b = ring[i + 1 < ring.length ? i + 1 : 0]!;
		const dx = b.x - a.x;
		const dy = b.y - a.y;
		const t = fractionNearest(p, a, dx, dy);
		const x = p.x - (a.x + dx * t);
		const y = p.y - (a.y + dy * t);
		const square = x * x + y * y;
		if (square > within) continue;
		const distance = hypot(x, y);
		if (side >= 0 && !(distance < least)) continue;
		side = i;
		least = distance;
		within = square * (1 + 1e-12);
	}
	return { side, distance: least };
}
export interface Meeting {
	point: Point;
	/** Fractions along the first and the second segment. */
	t: number;
	u: number;
}
/**
 * Where segment a–b meets segment c–d, ends included; null when they miss or run parallel. Segments that lie on one
 * another share many points: null, ask `segmentDistance`.
 */
export function segmentMeeting(a: Point, b: Point, c: Point, d: Point): Meeting | null {
	const rx = b.x - a.x;
	const ry = b.y - a.y;
	const sx = d.x - c.x;
	const sy = d.y - c.y;
	const den = rx * sy - ry * sx;
	// Relative to both lengths, so that nearly parallel long segments do not meet at a point made of rounding.
	if (Math.abs(den) <= 1e-12 * hypot(rx, ry) * hypot(sx, sy)) return null;
	const wx = c.x - a.x;
	const wy = c.y - a.y;
	const t = (wx * sy - wy * sx) / den;
	const u = (wx * ry - wy * rx) / den;
	const slack = 1e-12;
	if (t < -slack || t > 1 + slack || u < -slack || u > 1 + slack) return null;
	return {
		point: { x: a.x + rx * t, y: a.y + ry * t },
		t: Math.min(1, Math.max(0, t)),
		u: Math.min(1, Math.max(0, u))
	};
}
/** Shortest distance between two segments; 0 when they touch. */
export function segmentDistance(a: Point, b: Point, c: Point, d: Point): number {
	if (segmentMeeting(a, b, c, d)) return 0;
	return Math.min(
		nearestOnSegment(a, c, d).distance,
		nearestOnSegment(b, c, d).distance,
		nearestOnSegment(c, a, b).distance,
		nearestOnSegment(d, a, b).distance
	);
}
