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
	/** The search ends when so many terminals are met; null: only those of `direct` are sought, and all of them. */
	most: number | null;
	/** Ways that cost more are not looked for. */
	limit: number;
}
/** Two ways this close cost the same: the first found stays. */
const rounding = 1e-12;

/**
 * Dijkstra's algorithm from one terminal at a time over the corners of a graph with `size` terminals. Terminals end a
 * way, they are not passed through: where all are sought they need not wait in the heap for their turn.
 */
export function searcher(graph: Graph, size: number): (terminal: number, asked: Asked) => Found {
	const { links, exits, entries, nodes } = graph;
	const count = nodes.length;
	const reach = new Float64Array(count + size);
	const before = new Int16Array(count + size);
	const heap = new Heap();
	/** Notes a way that is cheaper than the one known; false where it is not. */
	const betters = (to: number, cost: number, from: number): boolean => {
		if (cost >= reach[to]! - rounding) return false;
		reach[to] = cost;
		before[to] = from;
		return true;
	};
	return (terminal, { direct, most, limit }) => {
		reach.fill(Infinity);
		before.fill(-1);
		heap.clear();
		const isAll = most === null;
		let dearest = limit;
		for (const other of direct) {
			const cost = graph.direct(terminal, other);
			if (cost <= dearest && betters(count + other, cost, -1) && !isAll) heap.push(cost, count + other);
		}
		// With enough terminals in sight, nothing beyond the last of them is met any more.
		if (most !== null && heap.size >= most) {
			const seen = reach.slice(count).sort();
			dearest = Math.min(dearest, seen[most - 1]! + rounding);
		}
		for (let e = exits.start[terminal]!; e < exits.start[terminal + 1]!; e++) {
			const cost = exits.cost[e]!;
			if (cost <= dearest && betters(exits.to[e]!, cost, -1)) heap.push(cost, exits.to[e]!);
		}
		const terminals: Found['terminals'] = [];
		const enough = most ?? Infinity;
		/** Those that the search ends with; so many, from the first, have a way that nothing further off betters. */
		const sought = isAll ? direct : [];
		let sure = 0;
		for (let at = heap.pop(); at >= 0 && terminals.length < enough; at = heap.pop()) {
			const cost = heap.key;
			if (cost > reach[at]!) continue;
			if (at >= count) {
				if (at - count !== terminal) terminals.push({ to: at - count, cost, last: before[at]! });
				continue;
			}
			while (sure < sought.length && reach[count + sought[sure]!]! <= cost) sure++;
			if (isAll && sure === sought.length) break;
			for (let l = links.start[at]!, end = links.start[at + 1]!; l < end; l++) {
				const whole = cost + links.cost[l]!;
				if (whole <= dearest && betters(links.to[l]!, whole, at)) heap.push(whole, links.to[l]!);
			}
			for (let e = entries.start[at]!, end = entries.start[at + 1]!; e < end; e++) {
				const to = count + entries.to[e]!;
				const whole = cost + entries.cost[e]!;
				if (whole <= dearest && betters(to, whole, at) && !isAll) heap.push(whole, to);
			}
		}
		for (const to of sought) {
			const cost = reach[count + to]!;
			if (cost < Infinity) terminals.push({ to, cost, last: before[count + to]! });
		}
		return { terminals, before: before.slice(0, count) };
	};
}
