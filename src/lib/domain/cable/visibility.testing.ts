/**
 * Shortest ways by other means than the plan's: obstacles grown and united by JSTS (a port of the JTS Topology Suite), a
 * graph of all their corners that see each other, and Dijkstra's algorithm over it, without any of what makes the plan's quick.
 */
import { Coordinate, GeometryFactory } from 'jsts/org/locationtech/jts/geom.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import UnaryUnionOp from 'jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js';
import type { Point } from '../shared/geometry';
import { layingCosts, type LayingCosts } from './costs';
import type { Obstacle } from './obstacles';

/** Plain length: what a shortest path is compared by. Crossings that are told cost nothing, others all but forbid themselves. */
export const byLength: LayingCosts = {
	...layingCosts,
	alongEdge: 1,
	lawnEdge: 1,
	inBed: 1,
	amongRoots: 1,
	nearWater: 0,
	crossing: { sleeve: 0, joint: 0, bore: 0, undeclared: 1e6 },
	bored: 1
};

const factory = new GeometryFactory();
const coordinate = ({ x, y }: Point) => new Coordinate(x, y);
/** Arcs become chords, eight to a quarter: what is grown so lies inside what is grown round. */
const chords = 8;

const shapeOf = ({ round, ring }: Obstacle) =>
	round ? factory.createPoint(coordinate(round.at)) : factory.createPolygon([...ring, ring[0]!].map(coordinate));

type Ring = Point[];
/** The rings of all obstacles, each grown by its clearance less `short` metres, counter-clockwise round what is blocked. */
function grownRings(obstacles: readonly Obstacle[], short: number): Ring[] {
	const grown = obstacles.map((o) => {
		const by = o.clearance + (o.round?.radius ?? 0) - short;
		return BufferOp.bufferOp(shapeOf(o), by, new BufferParameters(chords));
	});
	const union = UnaryUnionOp.union(factory.createGeometryCollection(grown));
	const rings: Ring[] = [];
	for (let g = 0; g < union.getNumGeometries(); g++) {
		const polygon = union.getGeometryN(g);
		const own = [polygon.getExteriorRing()];
		for (let hole = 0; hole < polygon.getNumInteriorRing(); hole++) own.push(polygon.getInteriorRingN(hole));
		own.forEach((ring, k) => {
			const points: Ring = ring.getCoordinates().map(({ x, y }: Point) => ({ x, y }));
			points.pop();
			const area = points.reduce((sum, p, i) => {
				const q = points[(i + 1) % points.length]!;
				return sum + p.x * q.y - q.x * p.y;
			}, 0);
			// Outside counter-clockwise, holes clockwise: what is blocked lies to the left.
			rings.push(area > 0 === (k === 0) ? points : points.toReversed());
		});
	}
	return rings;
}
const turn = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Whether the line a-b runs through what the rings block: it crosses a side, or lies inside from end to end. */
function isBlocked(a: Point, b: Point, rings: readonly Ring[]): boolean {
	const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
	let inside = false;
	for (const ring of rings) {
		let p = ring.at(-1)!;
		for (const q of ring) {
			if (turn(a, b, p) > 0 !== turn(a, b, q) > 0 && turn(p, q, a) > 0 !== turn(p, q, b) > 0) return true;
			if (p.y > middle.y !== q.y > middle.y && middle.x < p.x + ((middle.y - p.y) / (q.y - p.y)) * (q.x - p.x))
				inside = !inside;
			p = q;
		}
	}
	return inside;
}

/** Rounding of a corner off the ring it is a corner of, metres. */
const hair = 1e-6;

/** Metres of the shortest way that keeps every clearance, arcs taken by their chords; Infinity where there is none. */
export function shortestByJsts(obstacles: readonly Obstacle[], from: Point, to: Point): number {
	const blocks = grownRings(obstacles, hair);
	// A way bends only where the blocked side is less than half a turn.
	const bends = grownRings(obstacles, 0).flatMap((ring) =>
		ring.filter((p, i) => turn(ring.at(i - 1)!, p, ring[(i + 1) % ring.length]!) > 0)
	);
	const nodes = [from, to, ...bends];
	const reach = nodes.map((_, k) => (k === 0 ? 0 : Infinity));
	const done = nodes.map(() => false);
	for (;;) {
		let at = -1;
		for (let k = 0; k < nodes.length; k++) if (!done[k] && reach[k]! < (at < 0 ? Infinity : reach[at]!)) at = k;
		if (at < 0) return Infinity;
		if (at === 1) return reach[1]!;
		done[at] = true;
		for (let k = 0; k < nodes.length; k++) {
			if (done[k]) continue;
			const cost = reach[at]! + Math.hypot(nodes[k]!.x - nodes[at]!.x, nodes[k]!.y - nodes[at]!.y);
			if (cost < reach[k]! && !isBlocked(nodes[at]!, nodes[k]!, blocks)) reach[k] = cost;
		}
	}
}

/** By how much a path comes nearer to an obstacle than its clearance, metres; 0 or below where it never does. */
export function tooNear(path: readonly Point[], obstacles: readonly Obstacle[]): number {
	const line = factory.createLineString(path.map(coordinate));
	return Math.max(
		...obstacles.map((o) => o.clearance + (o.round?.radius ?? 0) - (DistanceOp.distance(line, shapeOf(o)) as number))
	);
}
