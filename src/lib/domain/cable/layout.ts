import { chooseSupply, type Choice, type ChooseOptions, type RunShape } from '../circuit';
import { rules } from '../shared/rules';
import type { Fixture } from '../placement';
import { layingCosts, trenchPricePerMetre } from './costs';
import { runEstimator } from './estimate';
import { alikeOf, loadOf, windowOf } from './loads';
import type { Route, Routes } from './paths';
import type { TreeInput } from './spanning';
import { improveTree, makeTree, neighbourLists, type Tree } from './tree';

/** A segment of a run before its volts are known; `from` and `to` are nodes of the run, `node` numbers are terminals. */
export interface LaidSegment {
	from: number;
	to: number;
	/** Metres of cable laid: path, slack at both ends, the rise to the transformer; to the centimetre. */
	length: number;
	route: Route;
}
export interface LaidRun {
	/** Terminals in order, the supply (terminal 0) first. */
	nodes: number[];
	segments: LaidSegment[];
	shape: RunShape;
}
export interface Layout {
	runs: LaidRun[];
	choice: Choice;
}

/** Up to so many runs, or the fewest that the secondary allows, are tried; more only where fewer cannot reach so far. */
const mostRuns = 6;
const mostRunsFar = 12;
/** Ways of sharing the lamps out that are solved, the cheapest by estimate first, until one has no problem. */
const mostSolved = 3;

/** Metres of cable in a segment over a path of `length` metres; the first one of a run also climbs to the transformer. */
export function cableLength(length: number, first: boolean, mountHeight: number): number {
	const slack = 2 * rules['cable.slack'].figures.taken;
	const rise = first ? mountHeight + rules['cable.depth'].figures.lawn : 0;
	return Math.round((length + slack + rise) * 100) / 100;
}

function layRun(
	id: string,
	members: readonly number[],
	parent: Int32Array,
	routes: Routes,
	fixtures: readonly Fixture[],
	mountHeight: number
): LaidRun {
	const nodes = [0];
	const segments: LaidSegment[] = [];
	const after = new Map<number, number[]>();
	for (const node of members) {
		const list = after.get(parent[node]!);
		if (list) list.push(node);
		else after.set(parent[node]!, [node]);
	}
	for (let at = 0; at < nodes.length; at++) {
		for (const node of after.get(nodes[at]!) ?? []) {
			const route = routes.route(nodes[at]!, node)!;
			segments.push({ from: at, to: nodes.length, length: cableLength(route.length, at === 0, mountHeight), route });
			nodes.push(node);
		}
	}
	const shape: RunShape = {
		id,
		nodes: nodes.length,
		segments: segments.map(({ from, to, length }) => ({ from, to, metres: length })),
		loads: nodes.slice(1).map((node, k) => {
			const fixture = fixtures[node - 1]!;
			return { id: fixture.id, node: k + 1, load: loadOf(fixture.lamp), alike: alikeOf(fixture) };
		})
	};
	return { nodes, segments, shape };
}

/** What stops the plan even in the nominal case. */
export const stops = (choice: Choice): number =>
	choice.problems.filter((problem) => !problem.cornerOnly && problem.code !== 'uneven').length;

const trenchOf = (runs: readonly LaidRun[]): number =>
	runs.flatMap((run) => run.segments).reduce((metres, segment) => metres + segment.route.length, 0);

/** Stops first, then lesser problems, then money for cable, transformer and digging. */
const dearness = ({ choice, runs }: Layout): [stops: number, problems: number, money: number] => {
	return [stops(choice), choice.problems.length, choice.cost + trenchOf(runs) * trenchPricePerMetre];
};
const better = (a: Layout, b: Layout): boolean => {
	const [stopsA, problemsA, moneyA] = dearness(a);
	const [stopsB, problemsB, moneyB] = dearness(b);
	if (stopsA !== stopsB) return stopsA < stopsB;
	return problemsA === problemsB ? moneyA < moneyB - 0.01 : problemsA < problemsB;
};

/**
 * Fixtures shared out among runs and the supply chosen for them: from the fewest runs that the secondary allows up to six,
 * ranked by an estimate of cable and digging, solved until one has no problems. `fixtures` are terminals 1, 2, … of `routes`, terminal 0 the supply;
 * `reached` are those to which there is a way.
 */
export function layOut(
	routes: Routes,
	fixtures: readonly Fixture[],
	reached: readonly number[],
	mountHeight: number,
	options: ChooseOptions
): Layout | null {
	if (reached.length === 0) return null;
	const size = routes.size;
	const costs = routes.costs.slice();
	for (let node = 1; node < size; node++) costs[node]! += layingCosts.run;
	const demand = [0, ...fixtures.map((fixture) => fixture.lamp.voltAmps)];
	const windows = [...new Set(fixtures.map(windowOf))];
	const group = [0, ...fixtures.map((fixture) => windows.indexOf(windowOf(fixture)))];
	const total = reached.reduce((sum, node) => sum + demand[node]!, 0);
	const largest = Math.max(...reached.map((node) => demand[node]!));
	const tap = Math.min(...options.transformers.flatMap((transformer) => transformer.taps));
	const secondary = options.secondaryAmps * tap;
	const fewest = Math.max(1, Math.ceil(total / secondary - 1e-9));

	const estimate = runEstimator(options);
	const near = neighbourLists({ size, costs });
	const plans = new Map<string, Sketch>();
	const possible = () => [...plans.values()].some((plan) => plan.beyond === 0);
	const sketch = (input: TreeInput, tree: Tree): Sketch => {
		const runs = tree.runs.map((members, k) =>
			layRun(`run-${k + 1}`, members, tree.parent, routes, fixtures, mountHeight)
		);
		const cable = runs.map((run) => estimate(run.shape));
		const finite = cable.filter(Number.isFinite);
		const money = finite.reduce((sum, one) => sum + one, 0) + trenchOf(runs) * trenchPricePerMetre;
		return { input, tree, runs, beyond: cable.length - finite.length, money };
	};
	for (let wanted = fewest; wanted <= Math.max(possible() ? mostRuns : mostRunsFar, fewest); wanted++) {
		// A quarter more than an even share leaves the tree room to follow the ground.
		const capacity = Math.max(largest, Math.min(secondary, wanted === 1 ? Infinity : (1.25 * total) / wanted));
		const input = { size, costs, demand, capacity, group, near };
		const tree = makeTree(input);
		const key = tree.parent.join();
		if (!plans.has(key)) plans.set(key, sketch(input, tree));
	}
	const ranked = [...plans.values()].toSorted((a, b) => a.beyond - b.beyond || a.money - b.money);
	let best: Layout | null = null;
	for (const { input, tree, runs: rough } of ranked.slice(0, mostSolved)) {
		const improved = improveTree(input, tree);
		const runs = improved === tree ? rough : sketch(input, improved).runs;
		const layout = {
			runs,
			choice: chooseSupply(
				runs.map((run) => run.shape),
				options
			)
		};
		if (!best || better(layout, best)) best = layout;
		if (best.choice.problems.length === 0) break;
	}
	return best;
}
/** Lamps shared out among runs, judged by estimate. */
interface Sketch {
	input: TreeInput;
	tree: Tree;
	runs: LaidRun[];
	/** Runs that no cable size is thick enough for. */
	beyond: number;
	money: number;
}
