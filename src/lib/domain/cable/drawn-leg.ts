/** A straight length of cable as drawn, against what stands in the yard. Metres. */
import {
	between,
	boundaryMeetings,
	distance,
	nearestOnSegment,
	segmentMeeting,
	sidesOf,
	type Point
} from '../shared/geometry';
import { insideOf, type Obstacle } from './obstacles';

/** From and to, as fractions of the leg. */
export type Stretch = [from: number, to: number];
/** Shorter stretches are rounding. */
const hair = 1e-6;

/** Fractions of a–b at which it enters and leaves a circle; null where it misses. */
function roundMeeting(a: Point, b: Point, at: Point, radius: number): Stretch | null {
	const dx = b.x - a.x;
	const dy = b.y - a.y;
	const wx = a.x - at.x;
	const wy = a.y - at.y;
	const square = dx * dx + dy * dy;
	const half = (wx * dx + wy * dy) / square;
	const root = half * half - (wx * wx + wy * wy - radius * radius) / square;
	if (!(root > 0)) return null;
	const off = Math.sqrt(root);
	const [from, to] = [Math.max(0, -half - off), Math.min(1, -half + off)];
	return to > from ? [from, to] : null;
}

/** The stretches of a–b that lie inside an obstacle, in order; a thin wall has no inside. */
export function stretchesInside(o: Obstacle, a: Point, b: Point): Stretch[] {
	const length = distance(a, b);
	if (length < hair) return insideOf(o, a.x, a.y) ? [[0, 1]] : [];
	if (o.round) {
		const met = roundMeeting(a, b, o.round.at, o.round.radius);
		return met ? [met] : [];
	}
	if (o.ring.length < 3) return [];
	const cuts = [0, ...boundaryMeetings(a, b, o.ring), 1];
	const found: Stretch[] = [];
	for (let k = 1; k < cuts.length; k++) {
		const [from, to] = [cuts[k - 1]!, cuts[k]!];
		if ((to - from) * length < hair) continue;
		const { x, y } = between(a, b, (from + to) / 2);
		if (!insideOf(o, x, y)) continue;
		const last = found.at(-1);
		if (last && (from - last[1]) * length < hair) last[1] = to;
		else found.push([from, to]);
	}
	return found;
}

export interface Nearness {
	/** Metres between the leg and the obstacle, 0 where they meet. */
	distance: number;
	/** Where on the leg: where it runs into the obstacle, or comes nearest to it. */
	at: Point;
}
/** How near a–b comes to an obstacle. */
export function nearness(o: Obstacle, a: Point, b: Point): Nearness {
	const inside = stretchesInside(o, a, b)[0];
	if (inside) return { distance: 0, at: between(a, b, inside[0]) };
	if (o.round) {
		const near = nearestOnSegment(o.round.at, a, b);
		return { distance: Math.max(0, near.distance - o.round.radius), at: near.point };
	}
	let best: Nearness = { distance: Infinity, at: a };
	const take = (away: number, at: Point) => {
		if (away < best.distance) best = { distance: away, at };
	};
	for (const [p, q] of sidesOf(o.ring)) {
		const met = segmentMeeting(a, b, p, q);
		if (met) take(0, met.point);
		take(nearestOnSegment(a, p, q).distance, a);
		take(nearestOnSegment(b, p, q).distance, b);
		const corner = nearestOnSegment(p, a, b);
		take(corner.distance, corner.point);
	}
	return best;
}

/** Whether the boxes round a–b and an obstacle, grown by `by` metres, meet. */
export const isNearBox = (o: Obstacle, a: Point, b: Point, by: number): boolean =>
	Math.min(a.x, b.x) <= o.maxX + by &&
	Math.max(a.x, b.x) >= o.minX - by &&
	Math.min(a.y, b.y) <= o.maxY + by &&
	Math.max(a.y, b.y) >= o.minY - by;
