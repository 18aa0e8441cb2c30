import { distance, hypot, type Point } from '../shared/geometry';
import type { Site } from '../site';
import type { LayingCosts } from './costs';
import { makeGraph, type Graph } from './graph';
import type { Ground, Terminal } from './ground';
import { searcher } from './search';
import type { SegmentCrossing } from './types';

export interface Route {
	/** By the table of laying costs. */
	cost: number;
	/** Metres along the ground. */
	length: number;
	path: Point[];
	crossings: SegmentCrossing[];
}
export interface Routes {
	/** Row by row, terminal to terminal; Infinity where there is no way. */
	costs: Float64Array;
	size: number;
	route: (from: number, to: number) => Route | null;
	/** Metres of that route, without tracing it out; Infinity where there is no way. */
	length: (from: number, to: number) => number;
	/** The same, searched for now where the way was left out of the table. */
	anyLength: (from: number, to: number) => number;
	/** The route, searched for now where the way was left out of the table. */
	anyRoute: (from: number, to: number) => Route | null;
	/** What the ways were sought in; absent: cables cannot be led along each other (`bundle.ts`). */
	sought?: Sought;
}
export interface Sought {
	graph: Graph;
	terminals: readonly Terminal[];
	costs: LayingCosts;
}

/** Up to so many terminals, ways among all of them are worked out; beyond, from each to its nearest only. */
const allUpTo = 64;
const nearest = 16;

/** Terminals in a straight line's reach of each: the nearest as the crow flies. */
function inSight(terminals: readonly Terminal[], i: number): number[] {
	const { x, y } = terminals[i]!.ground;
	const far = new Float64Array(terminals.length);
	for (let j = 0; j < far.length; j++) {
		const { ground } = terminals[j]!;
		far[j] = (ground.x - x) ** 2 + (ground.y - y) ** 2;
	}
	const limit = far.toSorted()[3 * nearest]!;
	const found: number[] = [];
	for (let j = 0; j < far.length; j++) if (j !== i && far[j]! <= limit) found.push(j);
	return found;
}

const pathLength = (path: readonly Point[]): number =>
	path.reduce((sum, p, k) => (k === 0 ? 0 : sum + distance(p, path[k - 1]!)), 0);

/** Points nearer than this to the one before are left out of a path. */
const sameSpot = 1e-9;

/** Length of the path through `points` from the last to the first, as `pathLength` finds it once those on one spot are left out. */
function lengthBack(points: readonly Point[]): number {
	let sum = 0;
	let kept = points.at(-1)!;
	for (let k = points.length - 2; k >= 0; k--) {
		const { x, y } = points[k]!;
		const before = points[k + 1]!;
		if (hypot(x - before.x, y - before.y) <= sameSpot) continue;
		sum += hypot(x - kept.x, y - kept.y);
		kept = points[k]!;
	}
	return sum;
}

/**
 * Cheapest ways among terminals by the table of laying costs, in a graph of what sees what (`graph.ts`). Lines keep each
 * obstacle's clearance, paving is crossed only at a declared crossing or a bore. From terminal 0 all are sought.
 *
 * `run`: what a way of its own from terminal 0 costs besides. A way between two terminals dearer than that to either of
 * them is in no cheapest tree with terminal 0 in it (in the ring of the three it would be the one left out), and is left
 * out where `run` is given.
 */
export function findRoutes(
	site: Site,
	ground: Ground,
	terminals: readonly Terminal[],
	costs: LayingCosts,
	run = Infinity
): Routes {
	const graph = makeGraph(site, ground, terminals, costs);
	const { nodes } = graph;
	const size = terminals.length;
	const search = searcher(graph, size);
	const table = new Float64Array(size * size).fill(Infinity);
	/** By from × size + to: last corner of the way; −1 straight, −2 not found from there. */
	const last = new Int16Array(size * size).fill(-2);
	const before: Int16Array[] = Array.from({ length: size });
	const few = size <= allUpTo;
	/** Terminals so far searched from. */
	const done: number[] = [];
	const searchFrom = (i: number) => {
		const all = few || i === 0;
		const direct = i === 0 ? terminals.map((_, j) => j).slice(1) : few ? done : inSight(terminals, i);
		// The way back to terminal 0 is known; a limit as dear as it is still leaves every way a tree may take.
		const limit = few && i > 0 ? table[i]! + run : Infinity;
		const found = search(i, { direct, most: all ? null : nearest, limit });
		before[i] = found.before;
		table[i * size + i] = 0;
		for (const { to, cost, last: corner } of found.terminals) {
			if (Number.isFinite(table[i * size + to]!)) continue;
			table[i * size + to] = table[to * size + i] = cost;
			last[i * size + to] = corner;
		}
		if (i > 0) done.push(i);
	};
	if (size > 0) searchFrom(0);
	// Farther ones look back to nearer ones: that way each limit is the larger of the two.
	const far = Array.from({ length: size }, (_, i) => Math.round(Math.min(table[i]!, 1e9) * 1e6));
	const order = far.map((_, i) => i).slice(1);
	if (few) order.sort((a, b) => far[a]! - far[b]! || a - b);
	for (const i of order) searchFrom(i);

	const known = new Map<number, Route | null>();
	const route = (from: number, to: number): Route | null => {
		const key = from * size + to;
		let found = known.get(key);
		if (found === undefined) {
			found = trace(from, to);
			known.set(key, found);
		}
		return found;
	};
	const trace = (from: number, to: number): Route | null => {
		const cost = table[from * size + to]!;
		if (!Number.isFinite(cost)) return null;
		if (from !== to && last[from * size + to] === -2) {
			const back = route(to, from)!;
			return { ...back, path: back.path.toReversed(), crossings: back.crossings.toReversed() };
		}
		return traceBy(from, to, cost, last[from * size + to]!, before[from]!);
	};
	/** The way by the corners that lead back from `corner`, its last. */
	const traceBy = (from: number, to: number, cost: number, corner: number, back: Int16Array): Route => {
		const steps: number[] = [];
		for (let at = corner; at >= 0; at = back[at]!) steps.push(at);
		steps.reverse();
		const crossings = steps.flatMap((node, k) => {
			const portal = k === 0 ? null : graph.portal(steps[k - 1]!, node);
			return portal ? [portal.crossing] : [];
		});
		const [a, b] = [terminals[from]!, terminals[to]!];
		const all = [a.at, a.ground, ...steps.map((node) => nodes[node]!.at), b.ground, b.at];
		const path = all.filter((p, k) => k === 0 || distance(p, all[k - 1]!) > sameSpot);
		if (path.length === 1) path.push(b.at);
		return { cost, length: pathLength(path), path, crossings };
	};

	/** Metres by from × size + to; −1 where not yet asked for. */
	const metres = new Float64Array(size * size).fill(-1);
	const corners: Point[] = [];
	/** Of the way by the corners that lead back from `corner`, its last. */
	const measureBy = (from: number, to: number, corner: number, back: Int16Array): number => {
		const [a, b] = [terminals[from]!, terminals[to]!];
		corners.length = 0;
		corners.push(b.at, b.ground);
		for (let at = corner; at >= 0; at = back[at]!) corners.push(nodes[at]!.at);
		corners.push(a.ground, a.at);
		return lengthBack(corners);
	};
	const measure = (from: number, to: number): number => {
		if (table[from * size + to] === Infinity) return Infinity;
		const corner = last[from * size + to]!;
		return from !== to && corner === -2 ? length(to, from) : measureBy(from, to, corner, before[from]!);
	};
	const length = (from: number, to: number): number => {
		const key = from * size + to;
		if (metres[key]! < 0) metres[key] = measure(from, to);
		return metres[key]!;
	};
	const anyLength = (from: number, to: number): number => {
		if (table[from * size + to]! < Infinity) return length(from, to);
		const found = search(from, { direct: [to], most: null, limit: Infinity });
		const way = found.terminals[0];
		return way ? measureBy(from, to, way.last, found.before) : Infinity;
	};
	const anyRoute = (from: number, to: number): Route | null => {
		if (from === to || table[from * size + to]! < Infinity) return route(from, to);
		const found = search(from, { direct: [to], most: null, limit: Infinity });
		const way = found.terminals[0];
		return way ? traceBy(from, to, way.cost, way.last, found.before) : null;
	};
	return { costs: table, size, route, length, anyLength, anyRoute, sought: { graph, terminals, costs } };
}
