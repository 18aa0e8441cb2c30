/** Places at which a way may bend. */
import { distance, type Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import { cornersOf, type Corner } from './corners';
import type { LayingCosts } from './costs';
import type { Portal } from './crossings';
import type { Bed } from './lawn-edges';
import { boundaryWithin, type Obstacle } from './obstacles';
import type { RootZone } from './surface';

/** A way along the edge of a bed that leads from a node: unit direction, metres to the next node. */
export interface Tuck {
	ux: number;
	uy: number;
	length: number;
	/** The edge does not go straight on the other way. */
	ends: boolean;
}
/** A corner of a grown obstacle, of a zone that is dear to dig in, a place on the edge of a bed, or one end of a crossing. */
export interface Node {
	at: Point;
	/** Index of its obstacle, −1 where it is the corner of none. */
	of: number;
	/** Index of the zone that it helps round, −1 where it does not. */
	zone: number;
	/** Boundary directions at a corner, for leaving out lines that no shortest way takes. */
	before: Point | null;
	after: Point | null;
	/** Ways along the edge of a bed; none at other nodes. */
	tucks: readonly Tuck[];
	/** Metres from the edge beyond which following it saves nothing. */
	saves: number;
}
/** Ground that is dear to dig in and may be gone round. */
export interface Zone {
	holds: (p: Point) => boolean;
}
/** Nodes, the zones they help round, and pairs of them that are next to each other along the edge of a bed. */
export interface Nodes {
	nodes: Node[];
	zones: Zone[];
	along: [number, number][];
}
const none: readonly Tuck[] = [];
const cornerNode = ({ at, before, after }: Corner, of: number, zone: number): Node => ({
	at,
	of,
	zone,
	before,
	after,
	tucks: none,
	saves: 0
});
/** A hair more than the clearance, so that rounding does not put a corner too near; metres. */
const hair = 1e-9;
/** A corner of one zone as deep as this in another helps round neither; part of its radius. */
const deep = 0.75;
/** Metres from the lot at which its boundary no longer stands in for a corner. */
const furthestIn = 1;
/** How far a corner lies from the middle, in radii. */
const zoneTip = 1 / Math.cos(Math.PI / 8);

export interface NodesIn {
	obstacles: readonly Obstacle[];
	beds: readonly Bed[];
	roots: readonly RootZone[];
	/** Clear of every obstacle, within the lot. */
	isFree: (p: Point) => boolean;
	/** The same point where it lies within the lot, else the nearest that does. */
	inLot: (p: Point) => Point;
	isFine: boolean;
}

/** Corners of obstacles, of the water's surroundings and of root zones, and places along lawn edges; ends of crossings follow. */
export function nodesOf(given: NodesIn, costs: LayingCosts): Nodes {
	const { obstacles, beds, roots, isFree, isFine } = given;
	const nodes: Node[] = [];
	const zones: Zone[] = [];
	const corners = (o: Obstacle, of: number, distance: number) => {
		for (const corner of cornersOf(o, distance + hair, { free: isFree, isFine }))
			nodes.push(cornerNode(corner, of, -1));
	};
	obstacles.forEach((o, of) => {
		corners(o, of, o.clearance);
		if (o.kind !== 'water') return;
		const { clear } = rules['water.clear'].figures;
		for (const corner of cornersOf(o, clear + hair)) addToZone(corner, zones.length, given, nodes);
		zones.push({ holds: ({ x, y }) => boundaryWithin(o, x, y, clear) });
	});
	if (costs.amongRoots > costs.metre) roots.forEach((root) => aroundRoots(root, given, nodes, zones));
	const along = costs.lawnEdge < costs.metre ? beds.flatMap((bed) => alongBed(bed, isFree, costs, nodes)) : [];
	return { nodes, zones, along };
}

/** A corner round a zone; one beyond the lot is brought to its boundary, where a way may pass it yet. */
function addToZone(corner: Corner, zone: number, { isFree, inLot }: NodesIn, nodes: Node[]): void {
	const at = inLot(corner.at);
	if (!isFree(at)) return;
	if (at === corner.at) nodes.push(cornerNode(corner, -1, zone));
	else if (distance(at, corner.at) < furthestIn)
		nodes.push({ ...cornerNode(corner, -1, zone), at, before: null, after: null });
}
/** Corners round a root zone that do not lie deep in another one. */
function aroundRoots(root: RootZone, given: NodesIn, nodes: Node[], zones: Zone[]): void {
	const within = ({ at, radius }: RootZone, p: Point, times: number) =>
		(p.x - at.x) ** 2 + (p.y - at.y) ** 2 < (radius * times) ** 2;
	for (const corner of cornersOf({ ring: [], round: root }, hair))
		if (!given.roots.some((other) => other !== root && within(other, corner.at, deep)))
			addToZone(corner, zones.length, given, nodes);
	zones.push({ holds: (p) => within(root, p, zoneTip) });
}

/** Places along the edge of a bed against lawn; gives the pairs that lie next to each other. */
function alongBed(
	{ places, edges }: Bed,
	isFree: NodesIn['isFree'],
	costs: LayingCosts,
	nodes: Node[]
): [number, number][] {
	const count = places.length;
	const lawn = new Set(edges.map(({ place }) => place));
	const direction = (place: number): Tuck => {
		const a = places[place]!;
		const b = places[(place + 1) % count]!;
		const length = Math.hypot(b.x - a.x, b.y - a.y);
		return { ux: (b.x - a.x) / length, uy: (b.y - a.y) / length, length, ends: true };
	};
	const metres = edges.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);
	const dearest = Math.max(costs.metre, costs.inBed);
	const ratio = costs.lawnEdge / dearest;
	const saves = ((1 - ratio) * metres) / Math.sqrt(1 - ratio * ratio);
	const at = new Map<number, number>();
	for (let place = 0; place < count; place++) {
		const before = (place + count - 1) % count;
		if ((!lawn.has(place) && !lawn.has(before)) || !isFree(places[place]!)) continue;
		const [came, goes] = [direction(before), direction(place)];
		const turn = came.ux * goes.uy - came.uy * goes.ux;
		const ends = !lawn.has(place) || !lawn.has(before) || Math.abs(turn) > 1e-6;
		const convex = turn > 1e-6;
		at.set(place, nodes.length);
		nodes.push({
			at: places[place]!,
			of: -1,
			zone: -1,
			before: convex ? { x: came.ux, y: came.uy } : null,
			after: convex ? { x: goes.ux, y: goes.uy } : null,
			tucks: [
				...(lawn.has(place) ? [{ ...goes, ends }] : []),
				...(lawn.has(before) ? [{ ux: -came.ux, uy: -came.uy, length: came.length, ends }] : [])
			],
			saves
		});
	}
	return edges.flatMap(({ place }): [number, number][] => {
		const [a, b] = [at.get(place), at.get((place + 1) % count)];
		return a === undefined || b === undefined ? [] : [[a, b]];
	});
}

/** The two ends of each crossing, which are nodes. */
export const endsOf = (portals: readonly Portal[]): Node[] =>
	portals.flatMap(({ from, to }) =>
		[from, to].map((at): Node => ({ at, of: -1, zone: -1, before: null, after: null, tucks: none, saves: 0 }))
	);
