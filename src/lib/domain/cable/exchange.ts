import { costWith, gainAtLeast, minimumTree, type MinimumTree, type TreeInput } from './spanning';

interface Run {
	list: number[];
	cost: number;
	load: number;
	tree: MinimumTree;
	/** By place in `list`: the minimum tree without that node, where it is known. */
	without: MinimumTree[];
}

/** Moves of one node to another run and exchanges of two, while the whole gets cheaper; stops after `rounds` of them. */
export function exchange(input: TreeInput, start: readonly number[][], rounds: number): number[][] {
	const { demand, capacity, group, size } = input;
	const scratch = new Float64Array(size + 1);
	const runOf = (list: number[]): Run => {
		const tree = minimumTree(input, list);
		return {
			list,
			cost: tree.cost,
			load: list.reduce((sum, node) => sum + demand[node]!, 0),
			tree,
			without: []
		};
	};
	/** Made when first asked for: much of what it would serve is ruled out by load. */
	const without = ({ list, without: known }: Run, k: number): MinimumTree =>
		(known[k] ??= minimumTree(
			input,
			list.filter((_, other) => other !== k)
		));
	const runs = start.map((list) => runOf([...list]));
	const changed = (list: readonly number[], out: number, into: number | null) =>
		[...list.filter((node) => node !== out), ...(into === null ? [] : [into])].sort((p, q) => p - q);
	for (let round = 0; round < rounds; round++) {
		let gain = gainAtLeast;
		let change: { a: number; b: number; node: number; other: number | null } | null = null;
		for (let a = 0; a < runs.length; a++) {
			const here = runs[a]!;
			for (let k = 0; k < here.list.length; k++) {
				const node = here.list[k]!;
				const rest = without(here, k);
				for (let b = 0; b < runs.length; b++) {
					const there = runs[b]!;
					const first = there.list[0];
					if (a === b || (first !== undefined && group[first] !== group[node])) continue;
					if (there.load + demand[node]! <= capacity + 1e-9) {
						const better = here.cost - rest.cost + there.cost - costWith(input, there.tree, node, scratch);
						if (better > gain + gainAtLeast) {
							gain = better;
							change = { a, b, node, other: null };
						}
					}
					if (b < a) continue;
					for (let m = 0; m < there.list.length; m++) {
						const other = there.list[m]!;
						if (there.load + demand[node]! - demand[other]! > capacity + 1e-9) continue;
						if (here.load + demand[other]! - demand[node]! > capacity + 1e-9) continue;
						const together = costWith(input, rest, other, scratch) + costWith(input, without(there, m), node, scratch);
						const better = here.cost + there.cost - together;
						if (better <= gain + gainAtLeast) continue;
						gain = better;
						change = { a, b, node, other };
					}
				}
			}
		}
		if (!change) break;
		const { a, b, node, other } = change;
		runs[a] = runOf(changed(runs[a]!.list, node, other));
		runs[b] = runOf(changed(runs[b]!.list, other ?? -1, node));
	}
	return runs.map(({ list }) => list).filter((list) => list.length > 0);
}
