import type { Point, Polygon } from './types';
import { boxesMeet, boxOf } from './box';
import { nearestOnSegment, nearestSide, segmentMeeting } from './segment';
import { between, cross, subtract } from './vector';

/** The sides of a ring, as pairs of points. */
export function sidesOf(ring: Polygon): [Point, Point][] {
	return ring.map((p, i) => [p, ring[(i + 1) % ring.length]!]);
}
/** Square metres with a sign, positive when the ring runs clockwise on the drawing (y down). */
export function signedArea(ring: Polygon): number {
	let sum = 0;
	for (const [a, b] of sidesOf(ring)) sum += cross(a, b);
	return sum / 2;
}
/** Square metres inside a ring. */
export const polygonArea = (ring: Polygon): number => Math.abs(signedArea(ring));
/** Centre of area; the mean of the points when the ring has no area; the origin when it is empty. */
export function centroid(ring: Polygon): Point {
	const first = ring[0];
	if (!first) return { x: 0, y: 0 };
	let area = 0;
	let x = 0;
	let y = 0;
	for (const [a, b] of sidesOf(ring)) {
		// Relative to the first point: a small ring far out would lose its digits otherwise.
		const p = subtract(a, first);
		const q = subtract(b, first);
		const part = cross(p, q);
		area += part;
		x += (p.x + q.x) * part;
		y += (p.y + q.y) * part;
	}
	if (Math.abs(area) < 1e-12) {
		const mean = ring.reduce((sum, p) => ({ x: sum.x + p.x / ring.length, y: sum.y + p.y / ring.length }), {
			x: 0,
			y: 0
		});
		return mean;
	}
	return { x: first.x + x / (3 * area), y: first.y + y / (3 * area) };
}
/** Whether a point lies within a ring (even–odd). On the boundary itself either answer may come: ask `distanceToPolygon`. */
export function inPolygon(p: Point, ring: Polygon): boolean {
	let inside = false;
	for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
		const a = ring[i]!;
		const b = ring[j]!;
		if (a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
	}
	return inside;
}
/** The point on the boundary nearest to `p`, with its distance; null for an empty ring. */
export function nearestOnPolygon(p: Point, ring: Polygon): { point: Point; distance: number; side: number } | null {
	const { side } = nearestSide(p, ring);
	if (side < 0) return null;
	const { point, distance } = nearestOnSegment(p, ring[side]!, ring[(side + 1) % ring.length]!);
	return { point, distance, side };
}
/** Metres from `p` to the boundary, negative inside; Infinity for an empty ring. */
export function distanceToPolygon(p: Point, ring: Polygon): number {
	const { distance } = nearestSide(p, ring);
	return inPolygon(p, ring) ? -distance : distance;
}
/** Fractions of the way along a–b at which it meets the boundary, in order. */
export function boundaryMeetings(a: Point, b: Point, ring: Polygon): number[] {
	const found: number[] = [];
	for (let i = 0; i < ring.length; i++) {
		const hit = segmentMeeting(a, b, ring[i]!, ring[(i + 1) % ring.length]!);
		if (hit) found.push(hit.t);
	}
	return found.sort((p, q) => p - q);
}
/** Metres of segment a–b that lie strictly inside a ring; running along its boundary does not count. */
export function lengthInside(a: Point, b: Point, ring: Polygon): number {
	const cuts = [0, ...boundaryMeetings(a, b, ring), 1];
	const size = Math.hypot(b.x - a.x, b.y - a.y);
	let sum = 0;
	for (let i = 1; i < cuts.length; i++) {
		const from = cuts[i - 1]!;
		const to = cuts[i]!;
		if ((to - from) * size < 1e-9) continue;
		if (distanceToPolygon(between(a, b, (from + to) / 2), ring) < -1e-9) sum += (to - from) * size;
	}
	return sum;
}
/** Whether two rings share area (touching sides or corners do not count). */
export function polygonsOverlap(a: Polygon, b: Polygon): boolean {
	if (a.length < 3 || b.length < 3 || !boxesMeet(boxOf(a), boxOf(b))) return false;
	if (sidesOf(a).some(([p, q]) => lengthInside(p, q, b) > 1e-6)) return true;
	if (sidesOf(b).some(([p, q]) => lengthInside(p, q, a) > 1e-6)) return true;
	// Equal rings, or one inside the other with every side on the boundary.
	return distanceToPolygon(centroid(a), b) < -1e-6 && distanceToPolygon(centroid(a), a) < 0;
}
/** Shortest distance between two rings' boundaries; 0 when they meet or overlap. */
export function polygonGap(a: Polygon, b: Polygon): number {
	if (polygonsOverlap(a, b)) return 0;
	let least = Infinity;
	for (const p of a) least = Math.min(least, nearestOnPolygon(p, b)?.distance ?? Infinity);
	for (const p of b) least = Math.min(least, nearestOnPolygon(p, a)?.distance ?? Infinity);
	return least;
}
/** An ellipse as a ring of `sides` points on it; the first lies to the right of the centre. */
export function ellipse(centre: Point, width: number, depth: number, sides = 24): Polygon {
	return Array.from({ length: sides }, (_, i) => {
		const angle = (i / sides) * 2 * Math.PI;
		return { x: centre.x + (width / 2) * Math.cos(angle), y: centre.y + (depth / 2) * Math.sin(angle) };
	});
}
/** A circle as a ring of `sides` points on it. */
export const circle = (centre: Point, radius: number, sides = 24): Polygon =>
	ellipse(centre, radius * 2, radius * 2, sides);
/** A rectangle from two opposite corners. */
export function rectangle(a: Point, b: Point): Polygon {
	return [a, { x: b.x, y: a.y }, b, { x: a.x, y: b.y }];
}
/** The smallest convex ring round the points (Andrew's monotone chain, 1979), collinear points left out. */
export function convexHull(points: readonly Point[]): Polygon {
	const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
	if (sorted.length < 3) return sorted;
	const half = (list: readonly Point[]): Point[] => {
		const chain: Point[] = [];
		for (const p of list) {
			while (chain.length > 1 && cross(subtract(chain.at(-1)!, chain.at(-2)!), subtract(p, chain.at(-1)!)) <= 0)
				chain.pop();
			chain.push(p);
		}
		return chain.slice(0, -1);
	};
	return [...half(sorted), ...half(sorted.toReversed())];
}
