/** Ways of sharing lamps out among runs, before any circuit is solved. */
import type { ChooseOptions } from '../circuit';
import type { Fixture } from '../placement';
import { layingCosts } from './costs';
import { treeDraft, weigh } from './drafts';
import { runEstimator } from './estimate';
import { hangingBy } from './feeds';
import type { Laying } from './laid';
import { windowOf } from './loads';
import type { TreeInput } from './spanning';
import { makeTree, neighbourLists, type Tree } from './tree';

/** Up to so many runs, or the fewest that the secondary allows, are tried; more only where fewer cannot reach so far. */
const mostRuns = 6;
const mostRunsFar = 12;
/** Lamps shared out among runs, judged by estimate. */
export interface Sketch {
	input: TreeInput;
	tree: Tree;
	/** Runs that no cable size is thick enough for. */
	beyond: number;
	money: number;
}

/** Ways of sharing `rest` out among more and more runs, the cheapest by estimate first. */
export function sketches(rest: readonly number[], laying: Laying, options: ChooseOptions): Sketch[] {
	const { routes, fixtures } = laying;
	const { size } = routes;
	const costs = routes.costs.slice();
	const own = new Set(rest);
	for (let node = 1; node < size; node++) costs[node] = own.has(node) ? costs[node]! + layingCosts.run : Infinity;
	const demand = [0, ...fixtures.map((fixture) => fixture.lamp.voltAmps)];
	const windows = [...new Set(fixtures.map(windowOf))];
	const group = [0, ...fixtures.map((fixture) => windows.indexOf(windowOf(fixture)))];
	const total = rest.reduce((sum, node) => sum + demand[node]!, 0);
	const largest = Math.max(...rest.map((node) => demand[node]!));
	const tap = Math.min(...options.transformers.flatMap((transformer) => transformer.taps));
	const secondary = options.secondaryAmps * tap;
	const fewest = Math.max(1, Math.ceil(total / secondary - 1e-9));

	const estimate = runEstimator(options);
	const near = neighbourLists({ size, costs });
	const found = new Map<string, Sketch>();
	const possible = () => [...found.values()].some((plan) => plan.beyond === 0);
	for (let wanted = fewest; wanted <= Math.max(possible() ? mostRuns : mostRunsFar, fewest); wanted++) {
		// A quarter more than an even share leaves the tree room to follow the ground.
		const capacity = Math.max(largest, Math.min(secondary, wanted === 1 ? Infinity : (1.25 * total) / wanted));
		const input = { size, costs, demand, capacity, group, near };
		const tree = makeTree(input);
		const key = tree.parent.join();
		if (found.has(key)) continue;
		const runs = treeRuns(tree).map(({ members, hanging }) => ({
			...weigh(treeDraft('end', hanging), laying),
			...sharedWindow(members, fixtures)
		}));
		const cable = runs.map(estimate);
		const finite = cable.filter(Number.isFinite);
		const money = finite.reduce((sum, one) => sum + one, 0) + runs.reduce((sum, run) => sum + run.laying, 0);
		found.set(key, { input, tree, beyond: cable.length - finite.length, money });
	}
	return [...found.values()].toSorted((a, b) => a.beyond - b.beyond || a.money - b.money);
}
/** Volts that suit all lamps of a run. */
const sharedWindow = (members: readonly number[], fixtures: readonly Fixture[]) => ({
	minVolts: members.reduce((least, terminal) => Math.max(least, fixtures[terminal - 1]!.lamp.minVolts), 0),
	maxVolts: members.reduce((most, terminal) => Math.min(most, fixtures[terminal - 1]!.lamp.maxVolts), Infinity)
});
export const treeRuns = ({ runs, parent }: Tree) =>
	runs.map((members) => ({ members, hanging: hangingBy(members, (terminal) => parent[terminal]!) }));
