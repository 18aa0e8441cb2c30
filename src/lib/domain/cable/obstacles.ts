import {
	boxOf,
	leftOf,
	moved,
	nearestOnSegment,
	towards,
	type Box,
	type Point,
	type Polygon
} from '../shared/geometry';
import { rules } from '../shared/rules';
import { postsOf, type Site } from '../site';
import { cornersOf, type Corner } from './corners';
import { clearances } from './costs';

/** Something with an edge. */
export interface Shape {
	/** Counter-clockwise in x right, y up; two points for a thin wall; empty for a round one. */
	ring: Polygon;
	/** A trunk. */
	round: { at: Point; radius: number } | null;
	minX: number;
	minY: number;
	maxX: number;
	maxY: number;
}
export interface Obstacle extends Shape {
	kind: 'house' | 'porch' | 'tree' | 'water' | 'seating' | 'paved' | 'post' | 'walk' | 'drive' | 'wall';
	id: string;
	name: string;
	/** Metres a cable keeps from it, except where one of its own ends stands nearer. */
	clearance: number;
}
const same = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y) < 1e-6;

/** Ring without repeated points, counter-clockwise (positive shoelace area in x right, y up). */
export function tidyRing(ring: Polygon): Point[] {
	const points = ring.filter((p, i) => !same(p, ring[(i + 1) % ring.length]!) || ring.length === 1);
	let area = 0;
	points.forEach((p, i) => {
		const q = points[(i + 1) % points.length]!;
		area += p.x * q.y - q.x * p.y;
	});
	return area < 0 ? points.toReversed() : points;
}

/** What a polygon encloses. */
export function ringShape(polygon: Polygon): Shape {
	const ring = tidyRing(polygon);
	const xs = ring.map((p) => p.x);
	const ys = ring.map((p) => p.y);
	return {
		ring,
		round: null,
		minX: Math.min(...xs),
		minY: Math.min(...ys),
		maxX: Math.max(...xs),
		maxY: Math.max(...ys)
	};
}
/** A disc; metres. */
export const roundShape = (at: Point, radius: number): Shape => ({
	ring: [],
	round: { at, radius },
	minX: at.x - radius,
	minY: at.y - radius,
	maxX: at.x + radius,
	maxY: at.y + radius
});
const obstacle = (kind: Obstacle['kind'], id: string, name: string, clearance: number, polygon: Polygon): Obstacle => ({
	kind,
	id,
	name,
	clearance,
	...ringShape(polygon)
});
const trunk = (id: string, name: string, at: Point, radius: number): Obstacle => ({
	kind: 'tree',
	id,
	name,
	clearance: clearances.trunk,
	...roundShape(at, radius)
});

/**
 * What a cable goes round. Garden walls are left out on request: when one cuts off part of the yard, the cable has to
 * pass under it and the plan says so.
 */
export function obstaclesOf(site: Site, gardenWalls: boolean): Obstacle[] {
	const { house, water, paving, wall: thin } = clearances;
	const areas = { porch: house, water, seating: paving, paved: paving };
	return [
		obstacle('house', 'house', 'the house', house, site.house),
		...site.areas.flatMap((area) =>
			area.kind === 'bed' ? [] : [obstacle(area.kind, area.id, area.name, areas[area.kind], area.polygon)]
		),
		...site.strips.map((strip) => obstacle(strip.kind, strip.id, strip.name, paving, strip.polygon)),
		...site.strips.flatMap((s) => postsOf(s).map((ring) => obstacle('post', s.id, 'a gate post', thin, ring))),
		...site.trees.map((tree) => trunk(tree.id, tree.name, tree.at, tree.trunkDiameter / 2)),
		...(gardenWalls ? site.walls : []).flatMap((wall) =>
			wall.of === 'garden' ? [obstacle('wall', wall.id, wall.name, thin, [wall.from, wall.to])] : []
		)
	].filter((o) => o.round !== null || o.ring.length >= 2);
}

/** Nearest point on the boundary and the distance to it, metres; `inside` by even-odd crossing. */
export function nearestOn(o: Shape, p: Point): { distance: number; inside: boolean; at: Point; outward: Point } {
	if (o.round) {
		const dx = p.x - o.round.at.x;
		const dy = p.y - o.round.at.y;
		const d = Math.hypot(dx, dy);
		const outward = d < 1e-9 ? { x: 0, y: 1 } : { x: dx / d, y: dy / d };
		const at = { x: o.round.at.x + outward.x * o.round.radius, y: o.round.at.y + outward.y * o.round.radius };
		return { distance: Math.abs(d - o.round.radius), inside: d < o.round.radius, at, outward };
	}
	let best = Infinity;
	let at = p;
	let normal: Point = { x: 0, y: 1 };
	let inside = false;
	const n = o.ring.length;
	for (let i = 0; i < n; i++) {
		const a = o.ring[i]!;
		const b = o.ring[(i + 1) % n]!;
		const ex = b.x - a.x;
		const ey = b.y - a.y;
		const length2 = ex * ex + ey * ey;
		const t = length2 === 0 ? 0 : Math.max(0, Math.min(1, ((p.x - a.x) * ex + (p.y - a.y) * ey) / length2));
		const x = a.x + t * ex;
		const y = a.y + t * ey;
		const d = Math.sqrt((p.x - x) * (p.x - x) + (p.y - y) * (p.y - y));
		if (d < best) {
			best = d;
			at = { x, y };
			const length = Math.sqrt(length2) || 1;
			normal = { x: ey / length, y: -ex / length };
		}
		if (n > 2 && a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / ey) * ex) inside = !inside;
	}
	const d = Math.hypot(p.x - at.x, p.y - at.y);
	const sign = inside ? -1 : 1;
	return {
		distance: best,
		inside,
		at,
		outward: d < 1e-6 ? normal : { x: (sign * (p.x - at.x)) / d, y: (sign * (p.y - at.y)) / d }
	};
}

/** Whether a point lies within an obstacle's box grown by `by` metres: all that is nearer to it does. */
export const nearBox = (o: Shape, x: number, y: number, by: number): boolean =>
	x >= o.minX - by && x <= o.maxX + by && y >= o.minY - by && y <= o.maxY + by;

/** Whether a point lies inside, by even-odd crossing as in `nearestOn`. */
export function insideOf(o: Shape, x: number, y: number): boolean {
	if (!nearBox(o, x, y, 0)) return false;
	if (o.round) return (x - o.round.at.x) ** 2 + (y - o.round.at.y) ** 2 < o.round.radius ** 2;
	const n = o.ring.length;
	if (n < 3) return false;
	let inside = false;
	let a = o.ring[n - 1]!;
	for (const b of o.ring) {
		if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
		a = b;
	}
	return inside;
}

/** Whether the boundary lies within `reach` metres of a point: stops at the first side that does. */
export function boundaryWithin(o: Shape, x: number, y: number, reach: number): boolean {
	if (!nearBox(o, x, y, reach)) return false;
	if (o.round) return boundaryDistance(o, x, y) <= reach;
	const limit = reach * reach;
	let a = o.ring[o.ring.length - 1]!;
	for (const b of o.ring) {
		const ex = b.x - a.x;
		const ey = b.y - a.y;
		const wx = x - a.x;
		const wy = y - a.y;
		const square = ex * ex + ey * ey;
		const along = square === 0 ? 0 : (wx * ex + wy * ey) / square;
		const t = along < 0 ? 0 : along > 1 ? 1 : along;
		const dx = wx - t * ex;
		const dy = wy - t * ey;
		if (dx * dx + dy * dy <= limit) return true;
		a = b;
	}
	return false;
}

/** Metres from a point to the boundary, inside or out: `nearestOn` where only the distance is asked, and asked often. */
export function boundaryDistance(o: Shape, x: number, y: number): number {
	if (o.round) return Math.abs(Math.sqrt((x - o.round.at.x) ** 2 + (y - o.round.at.y) ** 2) - o.round.radius);
	let best = Infinity;
	let a = o.ring[o.ring.length - 1]!;
	for (const b of o.ring) {
		const ex = b.x - a.x;
		const ey = b.y - a.y;
		const square = ex * ex + ey * ey;
		const along = square === 0 ? 0 : ((x - a.x) * ex + (y - a.y) * ey) / square;
		const t = along < 0 ? 0 : along > 1 ? 1 : along;
		const dx = x - a.x - t * ex;
		const dy = y - a.y - t * ey;
		const d = dx * dx + dy * dy;
		if (d < best) best = d;
		a = b;
	}
	return Math.sqrt(best);
}

/** Places `off` metres outside an obstacle to which a point in or on it may be moved: square to each side, and its corners. */
export function exitsOf(o: Obstacle, p: Point, off: number): Point[] {
	if (o.round) {
		const near = nearestOn(o, p);
		return [moved(near.at, near.outward, off)];
	}
	const square = o.ring.flatMap((a, i) => {
		const b = o.ring[(i + 1) % o.ring.length]!;
		const near = nearestOnSegment(p, a, b);
		return near.t > 0 && near.t < 1
			? [moved(near.point, leftOf(towards(b, a)), -off), moved(near.point, leftOf(towards(b, a)), off)]
			: [];
	});
	return [...square, ...cornersOf(o, off).map((corner) => corner.at)];
}

/** A water grown by the distance of rule water.clear. */
export interface WaterRing {
	corners: Corner[];
	box: Box;
}
/** Metres of the segment a-b that lie within rule water.clear of a water, which is taken as convex. */
export function lengthNearWater(rings: readonly WaterRing[], a: Point, b: Point): number {
	let total = 0;
	const dx = b.x - a.x;
	const dy = b.y - a.y;
	for (const { corners: ring, box } of rings) {
		if ((a.x < box.minX && b.x < box.minX) || (a.x > box.maxX && b.x > box.maxX)) continue;
		if ((a.y < box.minY && b.y < box.minY) || (a.y > box.maxY && b.y > box.maxY)) continue;
		let enter = 0;
		let leave = 1;
		for (let i = 0; i < ring.length && enter < leave; i++) {
			const p = ring[i]!;
			const side = p.after;
			// Signed distance to the left of the boundary: inside a counter-clockwise ring is positive.
			const da = side.x * (a.y - p.at.y) - side.y * (a.x - p.at.x);
			const rate = side.x * dy - side.y * dx;
			if (Math.abs(rate) < 1e-12) {
				if (da < 0) leave = 0;
			} else if (rate > 0) enter = Math.max(enter, -da / rate);
			else leave = Math.min(leave, -da / rate);
		}
		if (leave > enter) total += (leave - enter) * Math.sqrt(dx * dx + dy * dy);
	}
	return total;
}
/** Waters grown by the distance of rule water.clear. */
export const waterRings = (obstacles: readonly Obstacle[]): WaterRing[] =>
	obstacles.flatMap((o) => {
		if (o.kind !== 'water') return [];
		const corners = cornersOf(o, rules['water.clear'].figures.clear);
		return [{ corners, box: boxOf(corners.map(({ at }) => at)) }];
	});
