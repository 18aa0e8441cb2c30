/** The length of all cable routes beside the least that it could be, and the trench they take. */
import { distance, type Point } from '../shared/geometry';
import type { Fixture } from '../placement';
import { supplyNode } from './assemble';
import { shortestLinks } from './bound';
import type { LaidRun } from './layout';
import type { Routes } from './paths';
import { trenchLength, type Dug } from './trench';
import type { RouteLength } from './types';

/** What was laid, and between what: terminals 1, 2, … of `routes` are `fixtures`, of which `reached` have a way. */
export interface Laid {
	runs: readonly LaidRun[];
	routes: Routes;
	fixtures: readonly Fixture[];
	reached: readonly number[];
	supplyAt: Point;
}

/**
 * Metres of the cables as laid, by pair of terminals: one drawn by hand, or led along another, may be shorter than the way that
 * is cheapest for it alone. With them the bound speaks of layouts whose cables take those ways or the ways laid, of which
 * the layout itself is one, so that it is never above its length.
 */
function laidLengths(runs: readonly LaidRun[], size: number): (a: number, b: number) => number {
	const metres = new Map<number, number>();
	const key = (a: number, b: number) => Math.min(a, b) * size + Math.max(a, b);
	for (const { nodes, segments } of runs)
		for (const { from, to, route } of segments)
			metres.set(key(nodes[from]!.terminal, nodes[to]!.terminal), route.length);
	return (a, b) => metres.get(key(a, b)) ?? Infinity;
}

/** The way that a cable would take by itself: as laid where it was drawn by hand, or is nothing but slack. */
function alone({ nodes, segments }: LaidRun, routes: Routes): Dug[] {
	return segments.map(({ from, to, route, byHand }) => {
		const [a, b] = [nodes[from]!.terminal, nodes[to]!.terminal];
		return byHand || a === b ? route : (routes.anyRoute(a, b) ?? route);
	});
}

/** Metres; there is at least one run. */
export function routeLength({ runs, routes, fixtures, reached, supplyAt }: Laid): RouteLength {
	const laid = runs.flatMap(({ segments }) => segments.map(({ route }) => route));
	const length = laid.reduce((sum, route) => sum + route.length, 0);
	const nodes = [0, ...reached];
	const at = nodes.map((terminal) => (terminal === 0 ? supplyAt : fixtures[terminal - 1]!.at));
	const asLaid = laidLengths(runs, routes.size);
	const exact = (a: number, b: number) => Math.min(routes.anyLength(a, b), asLaid(a, b));
	const links = shortestLinks(nodes.length, runs.length, {
		least: (a, b) => distance(at[a]!, at[b]!),
		exact: (a, b) => exact(nodes[a]!, nodes[b]!)
	});
	const bound = links.reduce((sum, link) => sum + link.length, 0);
	const idOf = (node: number) => (node === 0 ? supplyNode : fixtures[nodes[node]! - 1]!.id);
	const { trench } = trenchLength(laid);
	const trenchApart = trenchLength(runs.flatMap((run) => alone(run, routes))).laid;
	return {
		length,
		bound,
		// A length that is the bound is a hair's rounding above or below it.
		gap: length - bound > 1e-9 ? length / bound - 1 : 0,
		links: links.map((link) => ({ from: idOf(link.a), to: idOf(link.b), length: link.length })),
		trench,
		trenchApart,
		savedBySharing: trenchApart - trench
	};
}
