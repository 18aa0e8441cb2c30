/** Least gain worth a change: below it two ways cost the same and the order of nodes decides. */
export const gainAtLeast = 1e-6;

/** A minimum tree over the root and some nodes, in the order in which they joined: the root first. */
export interface MinimumTree {
	nodes: Int32Array;
	/** By place in `nodes`: the place it hangs from, always an earlier one. */
	up: Int32Array;
	/** By place: cost of the way up; the root's is 0. */
	way: Float64Array;
	cost: number;
}
export interface Costs {
	/** Nodes, the root being 0. */
	size: number;
	/** Row by row, symmetric; Infinity where there is no way. The root's are read in its own row. */
	costs: Float64Array;
}
export interface TreeInput extends Costs {
	/** By node, the root's unused. */
	demand: readonly number[];
	capacity: number;
	/** Nodes of different groups never share a run. */
	group: readonly number[];
	/** As from `neighbourLists`, for those who ask for several capacities. */
	near?: readonly (readonly number[])[];
}

/** What has not joined a tree yet: room that each tree overwrites, since thousands are made one after the other. */
const open = { left: new Int32Array(), best: new Float64Array(), from: new Int32Array() };
function roomFor(count: number): typeof open {
	if (open.left.length < count) {
		open.left = new Int32Array(2 * count);
		open.best = new Float64Array(2 * count);
		open.from = new Int32Array(2 * count);
	}
	return open;
}

/** Minimum tree over node 0 and `members` by Prim's algorithm (Bell System Technical Journal 36, 1957). */
export function minimumTree({ size, costs }: Costs, members: readonly number[]): MinimumTree {
	const count = members.length;
	const nodes = new Int32Array(count + 1);
	const up = new Int32Array(count + 1);
	const way = new Float64Array(count + 1);
	// What has not joined yet stays in the order of `members`: of two as near, the first joins.
	const { left, best, from } = roomFor(count);
	for (let k = 0; k < count; k++) {
		left[k] = members[k]!;
		best[k] = costs[members[k]!]!;
		from[k] = 0;
	}
	let cost = 0;
	for (let joined = 1; joined <= count; joined++) {
		const waiting = count - joined + 1;
		let pick = 0;
		for (let k = 1; k < waiting; k++) if (best[k]! < best[pick]! - gainAtLeast) pick = k;
		const node = left[pick]!;
		nodes[joined] = node;
		up[joined] = from[pick]!;
		way[joined] = best[pick]!;
		cost += best[pick]!;
		const row = node * size;
		for (let k = 0; k < waiting - 1; k++) {
			const source = k < pick ? k : k + 1;
			const other = left[source]!;
			const direct = costs[row + other]!;
			const nearer = direct < best[source]! - gainAtLeast;
			left[k] = other;
			best[k] = nearer ? direct : best[source]!;
			from[k] = nearer ? joined : from[source]!;
		}
	}
	return { nodes, up, way, cost };
}

/** Cost of the minimum tree over the root and `members`, where the tree itself is not asked for. */
export function minimumTreeCost({ size, costs }: Costs, members: readonly number[]): number {
	const count = members.length;
	const { left, best } = roomFor(count);
	for (let k = 0; k < count; k++) {
		left[k] = members[k]!;
		best[k] = costs[members[k]!]!;
	}
	let cost = 0;
	for (let waiting = count; waiting > 0; waiting--) {
		let pick = 0;
		for (let k = 1; k < waiting; k++) if (best[k]! < best[pick]!) pick = k;
		cost += best[pick]!;
		const row = left[pick]! * size;
		left[pick] = left[waiting - 1]!;
		best[pick] = best[waiting - 1]!;
		for (let k = 0; k < waiting - 1; k++) {
			const direct = costs[row + left[k]!]!;
			if (direct < best[k]!) best[k] = direct;
		}
	}
	return cost;
}

/** Minimum tree over the root and `members`, as the parent of each. */
export function spanning(input: Costs, members: readonly number[]): { cost: number; parent: Map<number, number> } {
	const { cost, nodes, up } = minimumTree(input, members);
	const parent = new Map<number, number>();
	for (let k = 1; k < nodes.length; k++) parent.set(nodes[k]!, nodes[up[k]!]!);
	return { cost, parent };
}

/**
 * Cost of the minimum tree when `node` joins a minimum tree, without making it: from the leaves inwards each edge meets
 * the best way from below to the newcomer, and the dearer of the two goes on up (Chin & Houck, Journal of Computer and
 * System Sciences 16, 1978). `scratch` holds a number for each place.
 */
export function costWith({ size, costs }: Costs, tree: MinimumTree, node: number, scratch: Float64Array): number {
	const { nodes, up, way } = tree;
	const row = node * size;
	scratch[0] = costs[node]!;
	for (let k = 1; k < nodes.length; k++) scratch[k] = costs[row + nodes[k]!]!;
	let cost = 0;
	for (let k = nodes.length - 1; k > 0; k--) {
		const own = way[k]!;
		const best = scratch[k]!;
		const above = up[k]!;
		const dearer = best < own ? own : best;
		cost += best < own ? best : own;
		if (dearer < scratch[above]!) scratch[above] = dearer;
	}
	return cost + scratch[0]!;
}
