import type { Point } from '../shared/geometry';
import type { Site } from '../site';
import type { LayingCosts } from './costs';
import { makeGraph, type Graph, type Links } from './graph';
import type { Ground, Terminal } from './ground';
import { Heap } from './heap';
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
}

/** Up to so many terminals, ways among all of them are worked out; beyond, from each to its nearest only. */
const allUpTo = 64;
const nearest = 16;

interface Found {
	/** Cost to each terminal met, in the order met, and the last corner before it (−1: straight). */
	terminals: { to: number; cost: number; last: number }[];
	before: Int16Array;
}

/**
 * Dijkstra's algorithm from one terminal over the corners, until `most` other terminals are reached. Terminals end a way,
 * they are not passed through.
 */
function search(graph: Graph, entries: Links, terminal: number, direct: readonly number[], most: number): Found {
	const { links, exits } = graph;
	const count = graph.nodes.length;
	const size = exits.start.length - 1;
	const reach = new Float64Array(count + size).fill(Infinity);
	const before = new Int16Array(count + size).fill(-1);
	const heap = new Heap();
	const relax = (to: number, cost: number, from: number) => {
		if (cost >= reach[to]! - rounding) return;
		reach[to] = cost;
		before[to] = from;
		heap.push(cost, to);
	};
	for (const other of direct) relax(count + other, graph.direct(terminal, other), -1);
	for (let e = exits.start[terminal]!; e < exits.start[terminal + 1]!; e++) relax(exits.to[e]!, exits.cost[e]!, -1);
	const terminals: Found['terminals'] = [];
	for (let at = heap.pop(); at >= 0 && terminals.length < most; at = heap.pop()) {
		const cost = heap.key;
		if (cost > reach[at]!) continue;
		if (at >= count) {
			if (at - count !== terminal) terminals.push({ to: at - count, cost, last: before[at]! });
			continue;
		}
		for (let l = links.start[at]!; l < links.start[at + 1]!; l++) relax(links.to[l]!, cost + links.cost[l]!, at);
		for (let e = entries.start[at]!; e < entries.start[at + 1]!; e++)
			relax(count + entries.to[e]!, cost + entries.cost[e]!, at);
	}
	return { terminals, before };
}
/** Two ways this close cost the same: the first found stays. */
const rounding = 1e-12;

/** Terminals in a straight line's reach of each: all, or the nearest as the crow flies. */
function inSight(terminals: readonly Terminal[], i: number, all: boolean): number[] {
	const others = terminals.flatMap((_, j) => (j === i ? [] : [j]));
	if (all) return others;
	const { x, y } = terminals[i]!.ground;
	const far = Float64Array.from(terminals, (t) => (t.ground.x - x) ** 2 + (t.ground.y - y) ** 2);
	const limit = far.toSorted()[3 * nearest]!;
	return others.filter((j) => far[j]! <= limit);
}

const pathLength = (path: readonly Point[]): number =>
	path.reduce((sum, p, k) => (k === 0 ? 0 : sum + Math.hypot(p.x - path[k - 1]!.x, p.y - path[k - 1]!.y)), 0);

/**
 * Cheapest ways among terminals by the table of laying costs, in a graph of what sees what (`graph.ts`). Lines keep each
 * obstacle's clearance, paving is crossed only at a declared crossing or a bore. From terminal 0 all are sought.
 */
export function findRoutes(site: Site, ground: Ground, terminals: readonly Terminal[], costs: LayingCosts): Routes {
	const graph = makeGraph(site, ground, terminals, costs);
	const { nodes, exits } = graph;
	const entries = reversed(exits, nodes.length);
	const size = terminals.length;
	const table = new Float64Array(size * size).fill(Infinity);
	/** By from × size + to: last corner of the way; −1 straight, −2 not found from there. */
	const last = new Int16Array(size * size).fill(-2);
	const before: Int16Array[] = [];
	for (let i = 0; i < size; i++) {
		const all = i === 0 || size <= allUpTo;
		// Ways already found from the other end are not sought again.
		const direct = inSight(terminals, i, all).filter((j) => !all || j > i);
		const found = search(graph, entries, i, direct, all ? size : nearest);
		before.push(found.before);
		table[i * size + i] = 0;
		for (const { to, cost, last: corner } of found.terminals) {
			if ((all && to < i) || Number.isFinite(table[i * size + to]!)) continue;
			table[i * size + to] = table[to * size + i] = cost;
			last[i * size + to] = corner;
		}
	}

	const route = (from: number, to: number): Route | null => {
		const cost = table[from * size + to]!;
		if (!Number.isFinite(cost)) return null;
		if (from !== to && last[from * size + to] === -2) {
			const back = route(to, from)!;
			return { ...back, path: back.path.toReversed(), crossings: back.crossings.toReversed() };
		}
		const steps: number[] = [];
		for (let at = last[from * size + to]!; at >= 0; at = before[from]![at]!) steps.push(at);
		steps.reverse();
		const crossings = steps.flatMap((node, k) => {
			const portal = k === 0 ? null : graph.portal(steps[k - 1]!, node);
			return portal ? [portal.crossing] : [];
		});
		const [a, b] = [terminals[from]!, terminals[to]!];
		const all = [a.at, a.ground, ...steps.map((node) => nodes[node]!.at), b.ground, b.at];
		const path = all.filter((p, k) => k === 0 || Math.hypot(p.x - all[k - 1]!.x, p.y - all[k - 1]!.y) > 1e-9);
		if (path.length === 1) path.push(b.at);
		return { cost, length: pathLength(path), path, crossings };
	};
	return { costs: table, size, route };
}

/** For each node, the terminals that see it. */
function reversed(exits: Links, nodes: number): Links {
	const start = new Int32Array(nodes + 1);
	for (const node of exits.to) start[node + 1]!++;
	for (let i = 0; i < nodes; i++) start[i + 1]! += start[i]!;
	const to = new Int32Array(exits.to.length);
	const cost = new Float64Array(exits.to.length);
	const next = start.slice();
	for (let terminal = 0; terminal + 1 < exits.start.length; terminal++) {
		for (let e = exits.start[terminal]!; e < exits.start[terminal + 1]!; e++) {
			const place = next[exits.to[e]!]!++;
			to[place] = terminal;
			cost[place] = exits.cost[e]!;
		}
	}
	return { start, to, cost };
}
