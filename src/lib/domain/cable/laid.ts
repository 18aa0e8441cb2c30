/** One run laid in the ground: nodes and lengths before its volts are known. */
import { rules } from '../shared/rules';
import type { Feed, RunShape } from '../circuit';
import type { Fixture } from '../placement';
import { trenchPricePerMetre } from './costs';
import { alikeOf, loadOf } from './loads';
import type { Route, Routes } from './paths';

/** A place in a run. Terminal 0 is the supply, terminal k the k-th fixture; `bare`: a hub beside it, no lamp of its own. */
export interface LaidNode {
	terminal: number;
	bare: boolean;
}
/** `from` and `to` are places in the run's nodes; segment k leads to node k + 1. */
export interface LaidSegment {
	from: number;
	to: number;
	/** Metres of cable laid: path, slack at both ends, the rise to the transformer; to the centimetre. */
	length: number;
	route: Route;
}
/** A way to lay a run: the supply first, each node after the one it hangs from. */
export interface LaidWay {
	nodes: LaidNode[];
	segments: LaidSegment[];
	shape: RunShape;
}
/** What lengths and prices of a way go by. `fixtures` are terminals 1, 2, … of `routes`. */
export interface Laying {
	routes: Routes;
	fixtures: readonly Fixture[];
	mountHeight: number;
	/** Currency, of one connector. */
	connectorPrice: number;
}

/** Metres of cable in a segment over a path of `length` metres; the first one of a run also climbs to the transformer. */
export function cableLength(length: number, first: boolean, mountHeight: number): number {
	const slack = 2 * rules['cable.slack'].figures.taken;
	const rise = first ? mountHeight + rules['cable.depth'].figures.lawn : 0;
	return Math.round((length + slack + rise) * 100) / 100;
}

/** Metres over the ground. */
export const trenchOf = ({ segments }: Pick<LaidWay, 'segments'>): number =>
	segments.reduce((metres, { route }) => metres + route.length, 0);

/** Metres of cable. */
export const metresOf = ({ segments }: Pick<LaidWay, 'segments'>): number =>
	segments.reduce((metres, { length }) => metres + length, 0);

/** Where n cables meet, two go straight through and n − 2 are led off; at the supply each has terminals of its own. */
function branchesOf(nodes: number, segments: readonly LaidSegment[]): number {
	const met = new Int32Array(nodes);
	for (const { from, to } of segments) {
		met[from]!++;
		met[to]!++;
	}
	return branchesAt(met);
}
/** `met`: by node, the ends of cables that meet there; node 0 is the supply. */
export function branchesAt(met: Int32Array): number {
	let branches = 0;
	for (let node = 1; node < met.length; node++) branches += Math.max(0, met[node]! - 2);
	return branches;
}

/** A connector to each conductor of a branch. Taps to the lamps are as many in every way, and are left out. */
const perBranch = 2;

/** What laying costs beside the cable: digging so many metres, and branches. */
export const layingCost = (trench: number, branches: number, connectorPrice: number): number =>
	trench * trenchPricePerMetre + perBranch * connectorPrice * branches;

/** The way with these nodes and legs, as the circuit sees it: what it costs beside its cable is digging and branches. */
export function wayOf(
	id: string,
	feed: Feed,
	nodes: LaidNode[],
	legs: readonly { from: number; route: Route }[],
	{ fixtures, mountHeight, connectorPrice }: Laying
): LaidWay {
	const segments = legs.map(({ from, route }, k): LaidSegment => ({
		from,
		to: k + 1,
		length: cableLength(route.length, from === 0, mountHeight),
		route
	}));
	return {
		nodes,
		segments,
		shape: {
			id,
			feed,
			laying: layingCost(trenchOf({ segments }), branchesOf(nodes.length, segments), connectorPrice),
			nodes: nodes.length,
			segments: segments.map(({ from, to, length }) => ({ from, to, metres: length })),
			loads: nodes.flatMap(({ terminal, bare }, node) => {
				if (terminal === 0 || bare) return [];
				const { id: load, lamp } = fixtures[terminal - 1]!;
				return [{ id: load, node, load: loadOf(lamp), alike: alikeOf(fixtures[terminal - 1]!) }];
			})
		}
	};
}
