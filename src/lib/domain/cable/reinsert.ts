/**
 * Neighbouring nodes taken out together and put back one after the other where each costs least, while the whole gets cheaper
 * (large neighbourhood search, Shaw, Principles and Practice of Constraint Programming, 1998; from memory). Without
 * chance: each node in turn is the middle of what is taken out, so that a yard and its mirror image are treated alike.
 */
import { gainAtLeast, minimumTreeCost, type TreeInput } from './spanning';

/** How many are taken out at once (tried out on random grounds: more sizes take longer and find next to nothing more). */
const sizes = [3, 6] as const;

interface Run {
	list: number[];
	load: number;
	cost: number;
}
type Orders = (costs: Float64Array) => (a: number, b: number) => number;
/** Back in from the far end, from the near end. */
const orders: readonly Orders[] = [
	(costs) => (a, b) => costs[b]! - costs[a]! || a - b,
	(costs) => (a, b) => costs[a]! - costs[b]! || a - b
];

const costOf = (runs: readonly Run[]): number => runs.reduce((sum, { cost }) => sum + cost, 0);

/** The runs without some nodes; those that lose none stay the same objects. */
function without(input: TreeInput, runs: readonly Run[], out: ReadonlySet<number>): Run[] {
	return runs.flatMap((run) => {
		const list = run.list.filter((node) => !out.has(node));
		if (list.length === run.list.length) return [run];
		if (list.length === 0) return [];
		return [{ list, load: loadOf(input, list), cost: minimumTreeCost(input, list) }];
	});
}
const loadOf = ({ demand }: TreeInput, list: readonly number[]): number =>
	list.reduce((sum, node) => sum + demand[node]!, 0);

/** Puts a node where it costs least: into a run with room for it, or into one of its own. */
function insert(input: TreeInput, runs: Run[], node: number): void {
	const { demand, capacity, group, costs } = input;
	let least = costs[node]!;
	let best = -1;
	let bestCost = least;
	for (let k = 0; k < runs.length; k++) {
		const { list, load, cost } = runs[k]!;
		if (group[list[0]!] !== group[node] || load + demand[node]! > capacity + 1e-9) continue;
		list.push(node);
		const together = minimumTreeCost(input, list);
		list.pop();
		if (together - cost >= least - gainAtLeast) continue;
		least = together - cost;
		best = k;
		bestCost = together;
	}
	if (best < 0) runs.push({ list: [node], load: demand[node]!, cost: costs[node]! });
	else {
		const { list, load } = runs[best]!;
		runs[best] = { list: [...list, node], load: load + demand[node]!, cost: bestCost };
	}
}

/** Runs after every such change that makes the whole cheaper; at most `sweeps` times through all nodes. `start` keeps capacity and groups. */
export function reinsert(
	input: Required<TreeInput>,
	start: readonly (readonly number[])[],
	sweeps: number
): number[][] {
	const { near } = input;
	const nodes = start.flat().sort((a, b) => a - b);
	let runs = start.map((list): Run => ({
		list: [...list],
		load: loadOf(input, list),
		cost: minimumTreeCost(input, list)
	}));
	let cost = costOf(runs);
	for (let sweep = 0; sweep < sweeps; sweep++) {
		const before = cost;
		for (const middle of nodes)
			for (const size of sizes) {
				const taken = [middle, ...near[middle]!.slice(0, size - 1)];
				const left = without(input, runs, new Set(taken));
				for (const order of orders) {
					const next = [...left];
					for (const node of taken.toSorted(order(input.costs))) insert(input, next, node);
					const sum = costOf(next);
					if (sum >= cost - gainAtLeast) continue;
					runs = next;
					cost = sum;
					break;
				}
			}
		if (cost > before - gainAtLeast) break;
	}
	return runs.map(({ list }) => list.toSorted((a, b) => a - b));
}
