import type { Point } from './types';
import { cross, distance, dot, subtract } from './vector';

export interface Nearest {
	point: Point;
	/** Fraction of the way along the segment, 0 to 1. */
	t: number;
	distance: number;
}
/** The point of segment a–b nearest to `p`. A segment without length is its first point. */
export function nearestOnSegment(p: Point, a: Point, b: Point): Nearest {
	const d = subtract(b, a);
	const square = dot(d, d);
	const t = square > 0 ? Math.min(1, Math.max(0, dot(subtract(p, a), d) / square)) : 0;
	const point = { x: a.x + d.x * t, y: a.y + d.y * t };
	return { point, t, distance: distance(p, point) };
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
	const r = subtract(b, a);
	const s = subtract(d, c);
	const den = cross(r, s);
	// Relative to both lengths, so that nearly parallel long segments do not meet at a point made of rounding.
	if (Math.abs(den) <= 1e-12 * Math.hypot(r.x, r.y) * Math.hypot(s.x, s.y)) return null;
	const w = subtract(c, a);
	const t = cross(w, s) / den;
	const u = cross(w, r) / den;
	const slack = 1e-12;
	if (t < -slack || t > 1 + slack || u < -slack || u > 1 + slack) return null;
	return {
		point: { x: a.x + r.x * t, y: a.y + r.y * t },
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
