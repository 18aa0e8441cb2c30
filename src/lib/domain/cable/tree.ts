/**
 * Runs as a capacitated minimum spanning tree: every run leaves the root (the transformer) and carries at most
 * `capacity`. Finding the best is NP-hard, so: Esau & Williams's savings (IBM Systems Journal 5, 1966), then exchanges
 * between runs (`exchange.ts`), each run kept a minimum tree by Prim's algorithm (`spanning.ts`).
 */
import { exchange } from './exchange';
import { gainAtLeast, minimumTree, type Costs, type TreeInput } from './spanning';

export interface Tree {
	/** By node: the node it hangs from; the root and unreachable nodes have −1. */
	parent: Int32Array;
	/** Members of each run, without the root, in node order. */
	runs: number[][];
	cost: number;
}

/**
 * Esau & Williams: from a star, again and again the join that saves most, given up at no saving. Loads only grow and runs
 * only merge, so a neighbour once out of the question stays so, and each node walks its list of neighbours once.
 */
export function esauWilliams(input: TreeInput): number[][] {
	const { size, costs, demand, capacity, group } = input;
	const run = Int32Array.from({ length: size }, (_, i) => i);
	const members = Array.from({ length: size }, (_, i) => (i > 0 && Number.isFinite(costs[i]!) ? [i] : []));
	const load = Float64Array.from(demand);
	const near = input.near ?? neighbourLists(input);
	const next = new Int32Array(size);
	for (;;) {
		let gain = gainAtLeast;
		let from = 0;
		for (let i = 1; i < size; i++) {
			const list = near[i]!;
			const a = run[i]!;
			let k = next[i]!;
			for (; k < list.length; k++) {
				const j = list[k]!;
				const b = run[j]!;
				if (b !== a && group[i] === group[j] && load[a]! + load[b]! <= capacity + 1e-9) break;
			}
			next[i] = k;
			if (k >= list.length) continue;
			// A run goes by the number of the node by which it hangs from the root.
			const saving = costs[a]! - costs[i * size + list[k]!]!;
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

/** By node: the others to which there is a way, nearest first; none for a node that the root does not reach. */
export function neighbourLists({ size, costs }: Costs): number[][] {
	const key = new Float64Array(size);
	return Array.from({ length: size }, (_, node) => {
		const found: number[] = [];
		if (node === 0 || !Number.isFinite(costs[node]!)) return found;
		for (let j = 1; j < size; j++) {
			const cost = costs[node * size + j]!;
			if (j === node || cost === Infinity || costs[j] === Infinity) continue;
			// Whole micrometres, so that rounding does not order what is equally far.
			key[j] = Math.round(cost / gainAtLeast);
			found.push(j);
		}
		return found.sort((a, b) => key[a]! - key[b]! || a - b);
	});
}

/** Nodes above which exchanges are left out, and how many are made: their number grows with the cube. */
const exchangeUpTo = 50;
const exchanges = 12;

/** Runs as trees: each kept a minimum tree, and split where it leaves the root more than once. */
function treeOf(input: TreeInput, runs: readonly number[][]): Tree {
	const parent = new Int32Array(input.size).fill(-1);
	/** By node: the first of its run, counted from the root. */
	const top = new Int32Array(input.size);
	let cost = 0;
	for (const list of runs) {
		const tree = minimumTree(input, list);
		cost += tree.cost;
		for (let k = 1; k < tree.nodes.length; k++) {
			const node = tree.nodes[k]!;
			const from = tree.nodes[tree.up[k]!]!;
			parent[node] = from;
			top[node] = from === 0 ? node : top[from]!;
		}
	}
	const split = new Map<number, number[]>();
	for (let node = 1; node < input.size; node++) {
		if (parent[node]! < 0) continue;
		const run = split.get(top[node]!);
		if (run) run.push(node);
		else split.set(top[node]!, [node]);
	}
	return { parent, runs: [...split.values()], cost };
}

/** A good tree by savings alone. */
export const makeTree = (input: TreeInput): Tree => treeOf(input, esauWilliams(input));

/** The same bettered by exchanges, where it is small enough for them. */
export const improveTree = (input: TreeInput, tree: Tree): Tree =>
	tree.runs.length > 1 && input.size <= exchangeUpTo ? treeOf(input, exchange(input, tree.runs, exchanges)) : tree;
