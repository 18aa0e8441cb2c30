/**
 * Proven optima of small cases by HiGHS (highs.dev), a general solver for linear programs with whole-number variables. Two
 * formulations, so that neither needs to be trusted: flow along arcs, which knows nothing of trees but that what flows in
 * flows out, and the choice of runs from a list of all that keep the capacity.
 */
import loadHighs from 'highs';
import { blankYard } from '../yard';
import { fixtureModels } from '../shared/catalogue';
import { makeGround } from './ground';
import { layingOf, type Laying } from './laid';
import { layingCosts } from './costs';
import { chooseOptions } from './loads';
import { obstaclesOf } from './obstacles';
import { findRoutes, type Routes } from './paths';
import { fixtureOf, generator, randomGround } from './random.testing';
import { sketches, type Sketch } from './sharing';
import type { TreeInput } from './spanning';
import { siteSupply } from './supply';

export interface SmallCase extends Pick<Sketch, 'input' | 'tree'> {
	routes: Routes;
	laying: Laying;
	/** Lights to which there is a way. */
	rest: number[];
}
const yard = blankYard();
const lamps = fixtureModels.filter(({ lamp }) => lamp.kind === 'led').map(({ id }) => id);

/**
 * A seeded yard of 6 to 12 lights, or so many, of mixed loads, as the plan sees it: one of its own ways of sharing them out, of two runs
 * or more where there is one. Null where fewer than 6 lights can be reached.
 */
export function smallCase(seed: number, lights = 6 + (seed % 7)): SmallCase | null {
	const ground = randomGround(seed, lights);
	const random = generator(seed + 31);
	const fixtures = ground.fixtures.map(({ id, label, at }) =>
		fixtureOf(id, label, at, lamps[Math.floor(random() * lamps.length)])
	);
	const spot = siteSupply(ground.site, yard, [fixtures[0]!])!;
	const open = makeGround(obstaclesOf(ground.site, true));
	const terminals = [open.terminal(spot.at, 2), ...fixtures.map(({ at }) => open.terminal(at))];
	const routes = findRoutes(ground.site, open, terminals, layingCosts, layingCosts.run);
	const rest = fixtures.flatMap((_, k) => (routes.costs[k + 1]! < Infinity ? [k + 1] : []));
	if (rest.length < 6) return null;
	const laying = layingOf({ routes, fixtures, mountHeight: spot.mountHeight, connectorPrice: 1 });
	const all = sketches(rest, laying, chooseOptions('awg', yard, null));
	const several = all.filter(({ tree }) => tree.runs.length > 1);
	const { input, tree } = several[seed % Math.max(1, several.length)] ?? all[0]!;
	return { input, tree, routes, laying, rest };
}

/** What is asked: lights, capacity and the cost of each way; `runs`: so many leave the root at least. */
export interface Asked extends Omit<TreeInput, 'near'> {
	nodes: readonly number[];
	runs: number;
}
const number = (value: number): string => value.toFixed(9);

/** Single-commodity flow (Gavish, Networks 12, 1982): what each light asks for flows to it along arcs that are in the tree. */
function flowProgram({ size, costs, demand, capacity, group, nodes, runs }: Asked): string {
	const cost = (i: number, j: number) => (i === 0 ? costs[j]! : costs[i * size + j]!);
	const arcs = [0, ...nodes].flatMap((i) =>
		nodes.flatMap((j) =>
			i !== j && (i === 0 || group[i] === group[j]) && cost(i, j) < Infinity ? [[i, j] as const] : []
		)
	);
	const x = ([i, j]: readonly [number, number]) => `x${i}_${j}`;
	const f = ([i, j]: readonly [number, number]) => `f${i}_${j}`;
	const sum = (terms: string[]) => terms.join(' + ');
	const total = nodes.reduce((all, node) => all + demand[node]!, 0);
	const most = Math.min(capacity, total);
	const rows = nodes.flatMap((node) => {
		const into = arcs.filter(([, j]) => j === node);
		const out = arcs.filter(([i]) => i === node);
		return [
			`${sum(into.map(x))} = 1`,
			`${sum(into.map(f))}${out.map((arc) => ` - ${f(arc)}`).join('')} = ${number(demand[node]!)}`
		];
	});
	for (const arc of arcs) {
		const [i, j] = arc;
		rows.push(`${f(arc)} - ${number(most - (i === 0 ? 0 : demand[i]!))} ${x(arc)} <= 0.000000001`);
		rows.push(`${f(arc)} - ${number(demand[j]!)} ${x(arc)} >= -0.000000001`);
	}
	const fewest = Math.max(runs, Math.ceil(total / capacity - 1e-9));
	rows.push(`${sum(arcs.filter(([i]) => i === 0).map(x))} >= ${fewest}`);
	return program(
		arcs.map((arc) => [x(arc), cost(...arc)]),
		rows
	);
}

/** Cost of the minimum tree over the root and a set, by trying each way that leads out of what is joined. */
function plainTreeCost({ size, costs }: Asked, set: readonly number[]): number {
	const joined = [0];
	let cost = 0;
	for (const left = new Set(set); left.size > 0;) {
		let best = { cost: Infinity, node: -1 };
		for (const i of joined)
			for (const j of left) {
				const way = i === 0 ? costs[j]! : costs[i * size + j]!;
				if (way < best.cost) best = { cost: way, node: j };
			}
		if (best.node < 0) return Infinity;
		cost += best.cost;
		joined.push(best.node);
		left.delete(best.node);
	}
	return cost;
}
/** Set partitioning (Balas & Padberg, SIAM Review 18, 1976): every light in one of the runs that could be made. */
function runsProgram(asked: Asked): string {
	const { demand, capacity, group, nodes } = asked;
	const columns: [string, number][] = [];
	const holding = new Map(nodes.map((node) => [node, [] as string[]]));
	for (let bits = 1; bits < 1 << nodes.length; bits++) {
		const set = nodes.filter((_, k) => (bits >> k) & 1);
		if (set.reduce((load, node) => load + demand[node]!, 0) > capacity + 1e-9) continue;
		if (set.some((node) => group[node] !== group[set[0]!])) continue;
		const cost = plainTreeCost(asked, set);
		if (cost === Infinity) continue;
		columns.push([`r${bits}`, cost]);
		for (const node of set) holding.get(node)!.push(`r${bits}`);
	}
	// A run that leaves the root twice stands here as two as well, at the same cost.
	const fewest = `${columns.map(([name]) => name).join(' + ')} >= ${asked.runs}`;
	return program(columns, [...nodes.map((node) => `${holding.get(node)!.join(' + ')} = 1`), fewest]);
}
const program = (columns: [string, number][], rows: string[]): string =>
	[
		'Minimize',
		` cost: ${columns.map(([name, cost]) => `${number(cost)} ${name}`).join(' + ')}`,
		'Subject To',
		...rows.map((row, k) => ` c${k}: ${row}`),
		'Binary',
		` ${columns.map(([name]) => name).join(' ')}`,
		'End'
	].join('\n');

const solver = await loadHighs();

/** The least cost, proven; throws where the solver ends without proof. */
export function optimum(asked: Asked, by: 'flow' | 'runs'): number {
	const text = by === 'flow' ? flowProgram(asked) : runsProgram(asked);
	const options = { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 1e-7 };
	const { Status, ObjectiveValue } = solver.solve(text, options);
	if (Status !== 'Optimal') throw new Error(`The solver ended with ${Status}.`);
	return ObjectiveValue;
}
