import type { Graph } from './graph';
import { Heap } from './heap';

export interface Found {
	/** Cost to each terminal met, in the order met, and the last corner before it (−1: straight). */
	terminals: { to: number; cost: number; last: number }[];
	/** By corner: the one before it on the way from the terminal, −1 at the first. */
	before: Int16Array;
}
export interface Asked {
	/** Terminals to which a straight line is tried. */
	direct: readonly number[];
	/** The search ends when so many terminals are met. */
	most: number;
	/** Ways that cost more are not looked for. */
	limit: number;
}
/** Two ways this close cost the same: the first found stays. */
const rounding = 1e-12;

/**
 * Dijkstra's algorithm from one terminal at a time over the corners of a graph with `size` terminals. Terminals end a
 * way, they are not passed through.
 */
export function searcher(graph: Graph, size: number): (terminal: number, asked: Asked) => Found {
	const { links, exits, entries, nodes } = graph;
	const count = nodes.length;
	const reach = new Float64Array(count + size);
	const before = new Int16Array(count + size);
	const heap = new Heap();
	return (terminal, { direct, most, limit }) => {
		reach.fill(Infinity);
		before.fill(-1);
		heap.clear();
		let dearest = limit;
		const relax = (to: number, cost: number, from: number) => {
			if (cost > dearest || cost >= reach[to]! - rounding) return;
			reach[to] = cost;
			before[to] = from;
			heap.push(cost, to);
		};
		for (const other of direct) relax(count + other, graph.direct(terminal, other), -1);
		// With enough terminals in sight, nothing beyond the last of them is met any more.
		if (heap.size >= most) {
			const seen = reach.slice(count).sort();
			dearest = Math.min(dearest, seen[most - 1]! + rounding);
		}
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
		return { terminals, before: before.slice(0, count) };
	};
}
