/**
 * What a layout costs in truth: cable by the metre, the trench that cables share dug once, each sleeve, joint or bore made
 * once, connectors at branches, the start of each cable at the transformer, and that itself.
 */
import { distance, type Point } from '../shared/geometry';
import type { BundleGround } from './bundle-ground';
import { layingCosts, trenchPricePerMetre, type LayingCosts } from './costs';
import { crossedLegs, placedCrossings } from './crossing-places';
import { branchPrice, type LaidRoute, type LaidWay, type Laying } from './laid';
import { trenchLength } from './trench';

/** A route, and by leg of its path what digging or crossing costs there, metres of trench in open ground. */
export interface CostedRoute {
	route: LaidRoute;
	costs: readonly number[];
}
const sameSpot = 1e-9;

/** The way along a chain of nodes between two terminals. A stub from what stands in an edge to open ground is dug like any metre. */
export function routeAlong(ground: BundleGround, chain: readonly number[]): CostedRoute {
	const { corners, sought } = ground;
	const { graph, terminals } = sought;
	const [first, last] = [chain[0]!, chain.at(-1)!];
	const at = (node: number): Point => (node < corners ? graph.nodes[node]!.at : terminals[node - corners]!.ground);
	const path: Point[] = [terminals[first - corners]!.at];
	const costs: number[] = [];
	const crossings: LaidRoute['crossings'] = [];
	const go = (to: Point, cost: number) => {
		if (distance(path.at(-1)!, to) <= sameSpot) return;
		path.push(to);
		costs.push(cost);
	};
	go(at(first), distance(path[0]!, at(first)));
	for (let k = 1; k < chain.length; k++) {
		const leg = ground.cost(chain[k - 1]!, chain[k]!);
		const portal = ground.portal(chain[k - 1]!, chain[k]!);
		if (portal) crossings.push(portal.crossing);
		go(at(chain[k]!), leg);
	}
	const end = terminals[last - corners]!;
	go(end.at, distance(end.ground, end.at));
	if (path.length === 1) {
		path.push(end.at);
		costs.push(0);
	}
	const length = path.reduce((sum, p, k) => (k === 0 ? 0 : sum + distance(p, path[k - 1]!)), 0);
	return { route: { length, path, crossings }, costs };
}

/** A route that is none of the ground's own, as one drawn by hand: every metre dug in open ground. */
export function costedAlone(route: LaidRoute, { metre, bored, crossing: once }: LayingCosts): CostedRoute {
	const costs = route.path.slice(1).map((p, k) => metre * distance(p, route.path[k]!));
	crossedLegs(route.path, route.crossings).forEach((leg, k) => {
		const { kind, crossing, length } = route.crossings[k]!;
		costs[leg - 1] = (kind === 'bore' ? bored : metre) * length + once[crossing === null ? 'undeclared' : kind];
	});
	return { route, costs };
}

/** Digging and crossings of all routes, each once, metres of trench in open ground. */
export function groundwork(all: readonly CostedRoute[]): number {
	const made = new Map<string, number>();
	for (const { route, costs } of all) {
		if (route.crossings.length === 0) continue;
		for (const { place, leg } of placedCrossings(route.path, route.crossings))
			if (!made.has(place)) made.set(place, leg > 0 ? costs[leg - 1]! : 0);
	}
	const { rated } = trenchLength(
		all.map(({ route: { path, crossings }, costs }) => ({
			path,
			crossings,
			rates: costs.map((cost, k) => cost / (distance(path[k]!, path[k + 1]!) || 1))
		}))
	);
	return [...made.values()].reduce((sum, cost) => sum + cost, rated);
}

/** Currency: of a run's branches, and of its cables up the wall to terminals of their own. */
export function jointsPrice(way: Pick<LaidWay, 'segments' | 'nodes'>, { connectorPrice, routes }: Laying): number {
	const leaving = way.segments.filter(({ from }) => from === 0).length;
	const { run } = routes.sought?.costs ?? layingCosts;
	return branchPrice(way, connectorPrice) + leaving * run * trenchPricePerMetre;
}
