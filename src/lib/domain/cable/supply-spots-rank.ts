/**
 * What everything behind a transformer costs, estimated for several places at once, before a circuit is made. All places
 * share one graph of ways.
 */
import type { Point } from '../shared/geometry';
import type { Site } from '../site';
import type { LayingCosts } from './costs';
import { makeGraph } from './graph';
import { nearestFirst } from './nearest-first';
import { searcher } from './search';
import { minimumTreeCost } from './spanning';
import { groundOf } from './standing';
import { supplyReach } from './supply-spot';

/** A light as far as the transformer is concerned. */
export interface Light {
	at: Point;
	voltAmps: number;
}
export interface Downstream {
	/** Lights that have a way. */
	reached: number;
	/** In metres of trench in open ground. */
	cost: number;
}

/** Lights nearest the transformer that are looked at: what lies behind them is fed through them, wherever it hangs. */
const mostLights = 24;
/**
 * Metres of trench that a volt-ampere carried over a metre counts as. Digging alone is what one run would take; the further
 * the load, the more runs, or the thicker cable, it needs. Set by comparing estimates with places that were laid out in full
 * over some 300 seeded yards, 2026-11-29 (our figure, no source).
 */
const perVoltAmpereMetre = 0.02;

/** Cheapest ways from every spot, row by row, and among the lights: terminals `first` and on of the graph that `search` is over. */
function waysAmong(search: ReturnType<typeof searcher>, spots: number, count: number) {
	const lamps = Array.from({ length: count }, (_, k) => spots + k);
	const own = Array.from({ length: spots }, (_, k) => {
		const row = new Float64Array(count).fill(Infinity);
		const { terminals } = search(k, { direct: lamps, most: null, limit: Infinity });
		for (const { to, cost } of terminals) row[to - spots] = cost;
		return row;
	});
	const size = count + 1;
	const costs = new Float64Array(size * size).fill(Infinity);
	const dearest = lamps.map((_, k) => own.reduce((most, row) => Math.max(most, row[k]!), 0));
	const order = lamps.map((_, k) => k).toSorted((a, b) => dearest[a]! - dearest[b]! || a - b);
	order.forEach((k, place) => {
		const direct = order.slice(0, place).map((other) => spots + other);
		// A way between two lights that is dearer than either one's own from the transformer is in no minimum tree.
		for (const { to, cost } of search(spots + k, { direct, most: null, limit: dearest[k]! }).terminals) {
			const other = to - spots + 1;
			costs[(k + 1) * size + other] = costs[other * size + k + 1] = cost;
		}
	});
	return { own, size, costs };
}

/**
 * By place of `spots`: the minimum tree from it to the lights over the cheapest ways through the ground, and what carrying
 * the load so far counts as. At least one spot and one light.
 */
export function downstreamOf(
	site: Site,
	spots: readonly Point[],
	lights: readonly Light[],
	laying: LayingCosts
): Downstream[] {
	const ground = groundOf(site, true);
	const near = nearestFirst(spots[0]!, lights).slice(0, mostLights);
	const terminals = [
		...spots.map((at) => ground.terminal(at, supplyReach)),
		...near.map(({ at }) => ground.terminal(at))
	];
	const search = searcher(makeGraph(site, ground, terminals, laying), terminals.length);
	const { own, size, costs } = waysAmong(search, spots.length, near.length);
	const load = lights.reduce((sum, { voltAmps }) => sum + voltAmps, 0);
	return own.map((row) => {
		const members = near.flatMap((_, k) => (row[k]! < Infinity ? [k + 1] : []));
		members.forEach((node) => (costs[node] = row[node - 1]!));
		const fed = members.reduce((sum, node) => sum + near[node - 1]!.voltAmps, 0);
		const moment = members.reduce((sum, node) => sum + near[node - 1]!.voltAmps * row[node - 1]!, 0);
		// Lights beyond those looked at are taken to lie as far as these do.
		const carried = fed > 0 ? (moment / fed) * load : 0;
		return {
			reached: members.length,
			cost: minimumTreeCost({ size, costs }, members) + perVoltAmpereMetre * carried
		};
	});
}
