/**
 * How short cable routes could be at best.
 *
 * What is bounded: the metres along the ground of all cables of a layout together, slack and the rise to the transformer left
 * out, over all layouts of this kind: every light to which there is a way is fed; cables meet at lights (a hub stands beside
 * one) or at the transformer, nowhere else; a cable between two of these takes the way that is cheapest by the table of laying
 * costs; and at least `runs` cables leave the transformer, to different lights. Limits of load and volts are not asked of them.
 *
 * Proof. Let the transformer and the lights be nodes (a hub and its light are one node, nothing apart). What feeds every light
 * is a connected graph on these nodes. Its links at the transformer end at different lights, so they form no ring, and can be
 * completed from its other links to a spanning tree, which is no longer than the layout. So no layout is shorter than the
 * shortest spanning tree with at least `runs` links at the transformer, each link as long as its way. Without the condition
 * on links that is the minimum spanning tree (Kruskal, Proceedings of the American Mathematical Society 7, 1956). Where it has
 * too few, exchanges of one link for one at the transformer, the least lengthening first, lead to the shortest tree with one
 * more there, and so on (Glover & Klingman, in Combinatorial Programming: Methods and Applications, 1975; from memory, and
 * compared with all trees in the tests).
 *
 * A shared trench may be shorter than this: it is counted apart (`trench.ts`).
 */
import { Heap } from './heap';

/** A link of the shortest tree, between nodes `a` and `b`. */
export interface Link {
	a: number;
	b: number;
	/** Metres. */
	length: number;
}
/** Metres between nodes: `least` is quick and never above `exact`; Infinity where there is no way. Both symmetric. */
export interface Lengths {
	least: (a: number, b: number) => number;
	exact: (a: number, b: number) => number;
}

/**
 * Kruskal's algorithm over nodes 0 to `count` − 1, measuring only links whose turn may have come: links wait by a length that
 * is never above their own, and one that has been measured waits again.
 */
function minimumLinks(count: number, { least, exact }: Lengths): Link[] {
	const heap = new Heap();
	for (let b = 1; b < count; b++) for (let a = 0; a < b; a++) heap.push(least(a, b), a * count + b);
	const measured = new Uint8Array(count * count);
	const root = Int32Array.from({ length: count }, (_, k) => k);
	const rootOf = (node: number): number => {
		let at = node;
		while (root[at] !== at) at = root[at] = root[root[at]!]!;
		return at;
	};
	const links: Link[] = [];
	for (let pair = heap.pop(); pair >= 0 && links.length < count - 1; pair = heap.pop()) {
		const length = heap.key;
		const a = Math.floor(pair / count);
		const b = pair % count;
		const from = rootOf(a);
		const to = rootOf(b);
		if (from === to) continue;
		if (!measured[pair]) {
			measured[pair] = 1;
			const real = exact(a, b);
			if (real < Infinity) heap.push(real, pair);
			continue;
		}
		root[from] = to;
		links.push({ a, b, length });
	}
	return links;
}

/** By node: place in `links` of the longest one on the way from node 0 that does not start there; −1 where there is none. */
function longestOnWay(count: number, links: readonly Link[]): Int32Array {
	const near: number[][] = Array.from({ length: count }, () => []);
	links.forEach(({ a, b }, k) => {
		near[a]!.push(k);
		near[b]!.push(k);
	});
	const longest = new Int32Array(count).fill(-1);
	const seen = new Uint8Array(count);
	seen[0] = 1;
	const open = [0];
	for (const node of open)
		for (const k of near[node]!) {
			const { a, b, length } = links[k]!;
			const next = a === node ? b : a;
			if (seen[next]) continue;
			seen[next] = 1;
			const before = longest[node]!;
			longest[next] = node === 0 || (before >= 0 && links[before]!.length >= length) ? before : k;
			open.push(next);
		}
	return longest;
}

/**
 * The links of the shortest tree over nodes 0 to `count` − 1 with at least `runs` of them at node 0, metres; fewer than
 * `count` − 1 where not all nodes can be joined.
 */
export function shortestLinks(count: number, runs: number, lengths: Lengths): Link[] {
	const links = minimumLinks(count, lengths);
	for (let own = links.filter(({ a }) => a === 0).length; own < runs; own++) {
		const longest = longestOnWay(count, links);
		let best = { more: Infinity, out: -1, node: 0, length: 0 };
		for (let node = 1; node < count; node++) {
			const out = longest[node]!;
			if (out < 0) continue;
			const length = lengths.exact(0, node);
			const more = length - links[out]!.length;
			if (more < best.more) best = { more, out, node, length };
		}
		if (best.out < 0) break;
		links[best.out] = { a: 0, b: best.node, length: best.length };
	}
	return links;
}
