/**
 * Runs as a capacitated minimum spanning tree: every run leaves the root (the transformer) and carries at most
 * `capacity`. Finding the best is NP-hard. For a dozen nodes of a group it is found and proven (`subsets.ts`); beyond,
 * Esau & Williams's savings (IBM Systems Journal 5, 1966) from several starts, exchanges between runs (`exchange.ts`), and for
 * the best of them neighbours taken out and put back (`reinsert.ts`).
 * Each run is kept a minimum tree by Prim's algorithm (`spanning.ts`).
 */
import { exchange } from './exchange';
import { reinsert } from './reinsert';
import { gainAtLeast, minimumTree, type Costs, type TreeInput } from './spanning';
import { bestRuns, provenUpTo } from './subsets';

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
/** Times that neighbours are taken out and put back all through. */
const sweeps = 4;

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

/** Nodes to be fed, by group. */
function groupsOf({ size, costs, group }: TreeInput): number[][] {
	const found = new Map<number, number[]>();
	for (let node = 1; node < size; node++) {
		if (costs[node] === Infinity) continue;
		const list = found.get(group[node]!);
		if (list) list.push(node);
		else found.set(group[node]!, [node]);
	}
	return [...found.values()];
}

/**
 * What ways to the root are multiplied by for other starts. The savings are greedy: with a far root they join what is far
 * first, with a near one what is close together, and of several trees one mostly comes near the best (tried out on random grounds).
 */
const rootWeights = [0.5, 0.75, 1.3, 2];
function otherStart(input: TreeInput, weight: number): number[][] {
	const costs = input.costs.slice();
	for (let node = 1; node < input.size; node++) costs[node]! *= weight;
	return esauWilliams({ ...input, costs });
}

/** The cheaper; the first where the second is so by no more than rounding. */
const cheaper = (a: Tree, b: Tree): Tree => (b.cost < a.cost - gainAtLeast ? b : a);

/** The same bettered by exchanges, where it is small enough for them. */
export const improveTree = (input: TreeInput, tree: Tree): Tree =>
	tree.runs.length > 1 && input.size <= exchangeUpTo ? treeOf(input, exchange(input, tree.runs, exchanges)) : tree;

/**
 * The best that is found with more time, `tree` itself where that is it: proven where no group has more than a dozen
 * nodes, else from other starts.
 */
export function searchTree(input: TreeInput, tree: Tree): Tree {
	// A single run is the minimum tree over all, and nothing is cheaper.
	if (tree.runs.length < 2) return tree;
	const groups = groupsOf(input);
	if (groups.every(({ length }) => length <= provenUpTo))
		return cheaper(
			tree,
			treeOf(
				input,
				groups.flatMap((nodes) => bestRuns(input, nodes))
			)
		);
	if (input.size > exchangeUpTo) return tree;
	const best = rootWeights
		.map((weight) => treeOf(input, exchange(input, otherStart(input, weight), exchanges)))
		.reduce(cheaper, tree);
	const near = input.near ?? neighbourLists(input);
	return cheaper(best, treeOf(input, exchange(input, reinsert({ ...input, near }, best.runs, sweeps), exchanges)));
}
