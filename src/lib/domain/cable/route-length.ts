/** The length of all cable routes beside the least that it could be, and the trench they take. */
import { distance, type Point } from '../shared/geometry';
import type { Fixture } from '../placement';
import { supplyNode } from './assemble';
import { shortestLinks } from './bound';
import type { LaidRun } from './layout';
import type { Routes } from './paths';
import { trenchLength } from './trench';
import type { RouteLength } from './types';

/** What was laid, and between what: terminals 1, 2, … of `routes` are `fixtures`, of which `reached` have a way. */
export interface Laid {
	runs: readonly LaidRun[];
	routes: Routes;
	fixtures: readonly Fixture[];
	reached: readonly number[];
	supplyAt: Point;
}

/** Metres; there is at least one run. */
export function routeLength({ runs, routes, fixtures, reached, supplyAt }: Laid): RouteLength {
	const laid = runs.flatMap(({ segments }) => segments.map(({ route }) => route));
	const length = laid.reduce((sum, route) => sum + route.length, 0);
	const nodes = [0, ...reached];
	const at = nodes.map((terminal) => (terminal === 0 ? supplyAt : fixtures[terminal - 1]!.at));
	const links = shortestLinks(nodes.length, runs.length, {
		least: (a, b) => distance(at[a]!, at[b]!),
		exact: (a, b) => routes.anyLength(nodes[a]!, nodes[b]!)
	});
	const bound = links.reduce((sum, link) => sum + link.length, 0);
	const idOf = (node: number) => (node === 0 ? supplyNode : fixtures[nodes[node]! - 1]!.id);
	const { trench, laid: trenchApart } = trenchLength(laid);
	return {
		length,
		bound,
		// A length that is the bound is a hair's rounding above or below it.
		gap: length - bound > 1e-9 ? length / bound - 1 : 0,
		links: links.map((link) => ({ from: idOf(link.a), to: idOf(link.b), length: link.length })),
		trench,
		trenchApart
	};
}
