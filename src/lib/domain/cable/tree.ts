/**
 * Runs as a capacitated minimum spanning tree: every run leaves the root (the transformer) and carries at most
 * `capacity`. Finding the best is NP-hard, so: Esau & Williams's savings (IBM Systems Journal 5, 1966), then exchanges
 * between runs, each run kept a minimum tree by Prim's algorithm.
 */
export interface Tree {
	/** By node: the node it hangs from; the root and unreachable nodes have −1. */
	parent: Int32Array;
	/** Members of each run, without the root, in node order. */
	runs: number[][];
	cost: number;
}
export interface TreeInput {
	/** Nodes, the root being 0. */
	size: number;
	/** Row by row, symmetric; Infinity where there is no way. */
	costs: Float64Array;
	/** By node, the root's unused. */
	demand: readonly number[];
	capacity: number;
	/** Nodes of different groups never share a run. */
	group: readonly number[];
	/** As from `neighbourLists`, for those who ask for several capacities. */
	near?: readonly (readonly number[])[];
}

/** Least gain worth a change: below it two ways cost the same and the order of nodes decides. */
const gainAtLeast = 1e-6;

/** Minimum tree over the root and `members`. */
export function spanning(input: TreeInput, members: readonly number[]): { cost: number; parent: Map<number, number> } {
	const parent = new Map<number, number>();
	const best = members.map((node) => input.costs[node]!);
	const from = members.map(() => 0);
	const done = members.map(() => false);
	let cost = 0;
	for (let round = 0; round < members.length; round++) {
		let pick = -1;
		for (let k = 0; k < members.length; k++)
			if (!done[k] && (pick < 0 || best[k]! < best[pick]! - gainAtLeast)) pick = k;
		done[pick] = true;
		cost += best[pick]!;
		const node = members[pick]!;
		parent.set(node, from[pick]!);
		const row = node * input.size;
		for (let k = 0; k < members.length; k++) {
			const way = input.costs[row + members[k]!]!;
			if (done[k] || way >= best[k]! - gainAtLeast) continue;
			best[k] = way;
			from[k] = node;
		}
	}
	return { cost, parent };
}

/**
 * Esau & Williams: from a star, again and again the join that saves most, given up at no saving. Loads only grow and runs
 * only merge, so a neighbour once out of the question stays so, and each node walks its list of neighbours once.
 */
export function esauWilliams(input: TreeInput): number[][] {
	const { size, costs, demand, capacity, group } = input;
	const run = Int32Array.from({ length: size }, (_, i) => i);
	const members = Array.from({ length: size }, (_, i) => (i > 0 && Number.isFinite(costs[i]!) ? [i] : []));
	const load = [...demand];
	const near = input.near ?? neighbourLists(input);
	const next = new Int32Array(size);
	for (;;) {
		let gain = gainAtLeast;
		let from = 0;
		for (let i = 1; i < size; i++) {
			const list = near[i]!;
			const a = run[i]!;
			const allowed = (j: number) =>
				run[j] !== a && group[i] === group[j] && load[a]! + load[run[j]!]! <= capacity + 1e-9;
			while (next[i]! < list.length && !allowed(list[next[i]!]!)) next[i]!++;
			if (next[i]! >= list.length) continue;
			// A run goes by the number of the node by which it hangs from the root.
			const saving = costs[a]! - costs[i * size + list[next[i]!]!]!;
			if (saving <= gain + gainAtLeast) continue;
			gain = saving;
			from = i;
		}
		if (from === 0) break;
		const drop = run[from]!;
		const keep = run[near[from]![next[from]!]!]!;
		for (const node of members[drop]!) run[node] = keep;
		members[keep]!.push(...members[drop]!);
		members[drop] = [];
		load[keep]! += load[drop]!;
	}
	return members.filter((list) => list.length > 0).map((list) => list.toSorted((a, b) => a - b));
}
/** Other nodes to which there is a way, nearest first. */
function neighbours({ size, costs }: Pick<TreeInput, 'size' | 'costs'>, node: number): number[] {
	const found: number[] = [];
	for (let j = 1; j < size; j++)
		if (j !== node && Number.isFinite(costs[j]!) && Number.isFinite(costs[node * size + j]!)) found.push(j);
	const row = node * size;
	// Whole micrometres, so that rounding does not order what is equally far.
	const key = costs.slice(row, row + size).map((cost) => Math.round(cost / gainAtLeast));
	return found.sort((a, b) => key[a]! - key[b]! || a - b);
}
/** By node: the others to which there is a way, nearest first; none for a node that the root does not reach. */
export const neighbourLists = (input: Pick<TreeInput, 'size' | 'costs'>): number[][] =>
	Array.from({ length: input.size }, (_, i) => (i > 0 && Number.isFinite(input.costs[i]!) ? neighbours(input, i) : []));

/** Moves of one node to another run and exchanges of two, while the whole gets cheaper; stops after `rounds` of them. */
export function exchange(input: TreeInput, start: readonly number[][], rounds: number): number[][] {
	const { demand, capacity, group } = input;
	const runs = start.map((list) => [...list]);
	const cost = runs.map((list) => spanning(input, list).cost);
	const load = runs.map((list) => list.reduce((sum, node) => sum + demand[node]!, 0));
	const without = (a: number, node: number) => runs[a]!.filter((other) => other !== node);
	const withNode = (list: number[], node: number) => [...list, node].sort((p, q) => p - q);
	const settle = (a: number, list: number[]) => {
		runs[a] = list;
		cost[a] = spanning(input, list).cost;
		load[a] = list.reduce((sum, node) => sum + demand[node]!, 0);
	};
	for (let round = 0; round < rounds; round++) {
		let gain = gainAtLeast;
		let change: (() => void) | null = null;
		for (let a = 0; a < runs.length; a++) {
			for (const node of runs[a]!) {
				const rest = without(a, node);
				const saved = cost[a]! - spanning(input, rest).cost;
				for (let b = 0; b < runs.length; b++) {
					const first = runs[b]![0];
					if (a === b || (first !== undefined && group[first] !== group[node])) continue;
					if (load[b]! + demand[node]! <= capacity + 1e-9) {
						const joined = withNode(runs[b]!, node);
						const better = saved + cost[b]! - spanning(input, joined).cost;
						if (better > gain + gainAtLeast) {
							gain = better;
							change = () => {
								settle(a, rest);
								settle(b, joined);
							};
						}
					}
					if (b < a) continue;
					for (const other of runs[b]!) {
						if (load[b]! + demand[node]! - demand[other]! > capacity + 1e-9) continue;
						if (load[a]! + demand[other]! - demand[node]! > capacity + 1e-9) continue;
						const toA = withNode(rest, other);
						const toB = withNode(without(b, other), node);
						const better = cost[a]! + cost[b]! - spanning(input, toA).cost - spanning(input, toB).cost;
						if (better <= gain + gainAtLeast) continue;
						gain = better;
						change = () => {
							settle(a, toA);
							settle(b, toB);
						};
					}
				}
			}
		}
		if (!change) break;
		change();
	}
	return runs.filter((list) => list.length > 0);
}

/** Nodes above which exchanges are left out, and how many are made: their number grows with the cube. */
const exchangeUpTo = 50;
const exchanges = 12;

/** Runs as trees: each kept a minimum tree, and split where it leaves the root more than once. */
function treeOf(input: TreeInput, runs: readonly number[][]): Tree {
	const parent = new Int32Array(input.size).fill(-1);
	let cost = 0;
	for (const list of runs) {
		const tree = spanning(input, list);
		cost += tree.cost;
		for (const [node, from] of tree.parent) parent[node] = from;
	}
	const top = (node: number): number => (parent[node]! <= 0 ? node : top(parent[node]!));
	const split = new Map<number, number[]>();
	for (const node of runs.flat().toSorted((a, b) => a - b)) {
		const key = top(node);
		split.set(key, [...(split.get(key) ?? []), node]);
	}
	return { parent, runs: [...split.values()], cost };
}

/** A good tree by savings alone. */
export const makeTree = (input: TreeInput): Tree => treeOf(input, esauWilliams(input));

/** The same bettered by exchanges, where it is small enough for them. */
export const improveTree = (input: TreeInput, tree: Tree): Tree =>
	tree.runs.length > 1 && input.size <= exchangeUpTo ? treeOf(input, exchange(input, tree.runs, exchanges)) : tree;
