/**
 * The cheapest way to share few nodes out among runs, proven: dynamic programming over subsets. A run may be any set of nodes
 * within capacity, laid as its minimum tree; the best way to serve a set is the best run that holds its first node, with the
 * best way to serve the rest. Time grows as 3ⁿ, so it is for a dozen nodes.
 */
import { gainAtLeast, minimumTreeCost, type TreeInput } from './spanning';

/** Nodes up to which all subsets are looked at: half a million steps. */
export const provenUpTo = 12;

/** Runs over `nodes`, which are all of one group; every node must be within capacity. Each run in the order of `nodes`. */
export function bestRuns(input: TreeInput, nodes: readonly number[]): number[][] {
	const { demand, capacity } = input;
	const count = nodes.length;
	const all = (1 << count) - 1;
	const load = new Float64Array(all + 1);
	/** Cost of each set as one run; Infinity above capacity. */
	const single = new Float64Array(all + 1).fill(Infinity);
	const list: number[] = [];
	for (let set = 1; set <= all; set++) {
		const last = 31 - Math.clz32(set);
		load[set] = load[set ^ (1 << last)]! + demand[nodes[last]!]!;
		if (load[set]! > capacity + 1e-9) continue;
		list.length = 0;
		for (let k = 0; k <= last; k++) if (set & (1 << k)) list.push(nodes[k]!);
		single[set] = minimumTreeCost(input, list);
	}
	const best = new Float64Array(all + 1);
	const run = new Int32Array(all + 1);
	for (let set = 1; set <= all; set++) {
		const first = set & -set;
		let least = Infinity;
		let pick = first;
		const others = set ^ first;
		let more = others;
		for (;;) {
			const part = more | first;
			const cost = single[part]! + best[set ^ part]!;
			if (cost < least - gainAtLeast) {
				least = cost;
				pick = part;
			}
			if (more === 0) break;
			more = (more - 1) & others;
		}
		best[set] = least;
		run[set] = pick;
	}
	const runs: number[][] = [];
	for (let left = all; left > 0; left ^= run[left]!) runs.push(nodes.filter((_, k) => (run[left]! >> k) & 1));
	return runs;
}
