/** Walking a network from its supply, without recursion, so that depth costs no stack. */
import type { Network } from './types';

export interface Rooted {
	/** Node by position; position 0 is the supply, and a parent stands before its children. */
	order: Int32Array;
	/** Position by node; −1 where the walk did not come. */
	position: Int32Array;
	/** By position: position of the parent, and the segment to it; −1 at the supply. */
	parent: Int32Array;
	via: Int32Array;
	/** Nodes reached. */
	reached: number;
	/** Segments walked past because both their ends were reached already: each closes a ring. */
	chords: number[];
}

/**
 * A tree whose segments come in an order that could have laid it, each from what is already joined to one node more: read off
 * in one go. Null for any other network.
 */
function readTree({ nodes, segments }: Network): Rooted | null {
	if (segments.length !== nodes - 1) return null;
	const order = new Int32Array(nodes);
	const position = new Int32Array(nodes).fill(-1);
	const parent = new Int32Array(nodes);
	const via = new Int32Array(nodes);
	position[0] = 0;
	parent[0] = via[0] = -1;
	for (let s = 0; s < segments.length; s++) {
		const { from, to } = segments[s]!;
		const [a, b] = [position[from]!, position[to]!];
		if (a < 0 === b < 0) return null;
		const node = a < 0 ? from : to;
		position[node] = s + 1;
		order[s + 1] = node;
		parent[s + 1] = a < 0 ? b : a;
		via[s + 1] = s;
	}
	return { order, position, parent, via, reached: nodes, chords: [] };
}

/** Roots the network at node 0 over the segments for which `use` is set, or over all. */
export function rootTree(network: Network, use: Uint8Array | null = null): Rooted {
	const simple = use ? null : readTree(network);
	if (simple) return simple;
	const { nodes, segments } = network;
	const count = segments.length;
	const start = new Int32Array(nodes + 1);
	for (let s = 0; s < count; s++) {
		if (use && !use[s]) continue;
		const { from, to } = segments[s]!;
		start[from + 1]!++;
		start[to + 1]!++;
	}
	for (let n = 0; n < nodes; n++) start[n + 1]! += start[n]!;
	const next = start.slice();
	const touching = new Int32Array(2 * count);
	for (let s = 0; s < count; s++) {
		if (use && !use[s]) continue;
		const { from, to } = segments[s]!;
		touching[next[from]!++] = s;
		touching[next[to]!++] = s;
	}
	const order = new Int32Array(nodes);
	const position = new Int32Array(nodes).fill(-1);
	const parent = new Int32Array(nodes).fill(-1);
	const via = new Int32Array(nodes).fill(-1);
	const chords: number[] = [];
	position[0] = 0;
	let reached = 1;
	for (let p = 0; p < reached; p++) {
		const node = order[p]!;
		for (let k = start[node]!; k < start[node + 1]!; k++) {
			const s = touching[k]!;
			if (s === via[p]) continue;
			const { from, to } = segments[s]!;
			const other = from === node ? to : from;
			const seen = position[other]!;
			if (seen < 0) {
				position[other] = reached;
				order[reached] = other;
				parent[reached] = p;
				via[reached] = s;
				reached++;
			} else if (seen > p) chords.push(s);
		}
	}
	return { order, position, parent, via, reached, chords };
}

/** Kruskal's least-resistance spanning tree, as a mark by segment. Ties go to the earlier segment. */
export function spanningTree({ nodes, segments }: Network): Uint8Array {
	const leader = Int32Array.from({ length: nodes }, (_, n) => n);
	const find = (n: number): number => {
		while (leader[n] !== n) n = leader[n] = leader[leader[n]!]!;
		return n;
	};
	const use = new Uint8Array(segments.length);
	const byOhms = segments.map((_, s) => s).toSorted((a, b) => segments[a]!.ohms - segments[b]!.ohms || a - b);
	for (const s of byOhms) {
		const a = find(segments[s]!.from);
		const b = find(segments[s]!.to);
		if (a === b) continue;
		leader[Math.max(a, b)] = Math.min(a, b);
		use[s] = 1;
	}
	return use;
}
