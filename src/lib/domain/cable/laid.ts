/** One run laid in the ground: nodes and lengths before its volts are known. */
import { rules } from '../shared/rules';
import type { Load, RunShape } from '../circuit';
import type { Fixture } from '../placement';
import { trenchPricePerMetre } from './costs';
import { alikeOf, loadOf } from './loads';
import type { Route, Routes } from './paths';

/** A place in a run. Terminal 0 is the supply, terminal k the k-th fixture; `bare`: a hub beside it, no lamp of its own. */
export interface LaidNode {
	terminal: number;
	bare: boolean;
}
/** Where a cable lies, however its way was found. */
export type LaidRoute = Omit<Route, 'cost'>;
/** `from` and `to` are places in the run's nodes; segment k leads to node k + 1. */
export interface LaidSegment {
	from: number;
	to: number;
	/** Metres of cable laid: path, slack at both ends, the rise to the transformer; to the centimetre. */
	length: number;
	route: LaidRoute;
	/** Drawn by the person. */
	byHand?: true;
	/** Bent by the person too: it lies nowhere else. */
	isBent?: true;
}
/** A way to lay a run: the supply first, each node after the one it hangs from. */
export interface LaidWay {
	nodes: LaidNode[];
	segments: LaidSegment[];
	shape: RunShape;
}
/** A fixture as a load of the circuit. */
export interface FixtureLoad {
	id: string;
	load: Load;
	alike: string | null;
	/** What it asks of the cable: volt-amperes of an LED lamp, rated watts of a filament. */
	demand: number;
}
/** What lengths and prices of a way go by. `fixtures`, and `loads` in the same order, are terminals 1, 2, … of `routes`. */
export interface Laying {
	routes: Routes;
	fixtures: readonly Fixture[];
	loads: readonly FixtureLoad[];
	mountHeight: number;
	/** Currency, of one connector. */
	connectorPrice: number;
}
export const layingOf = (given: Omit<Laying, 'loads'>): Laying => ({
	...given,
	loads: given.fixtures.map((fixture) => ({
		id: fixture.id,
		load: loadOf(fixture.lamp),
		alike: alikeOf(fixture),
		demand: fixture.lamp.kind === 'led' ? fixture.lamp.voltAmps : fixture.lamp.watts
	}))
});

/** Metres of cable in a segment over a path of `length` metres; the first one of a run also climbs to the transformer. */
export function cableLength(length: number, first: boolean, mountHeight: number): number {
	const slack = 2 * rules['cable.slack'].figures.taken;
	const rise = first ? mountHeight + rules['cable.depth'].figures.lawn : 0;
	return Math.round((length + slack + rise) * 100) / 100;
}

/**
 * `met`: by node, the ends of cables that meet there; node 0 is the supply, of `nodes`. Where n cables meet, two go straight
 * through and n − 2 are led off; at the supply each has terminals of its own.
 */
export function branchesAt(met: Int32Array, nodes: number): number {
	let branches = 0;
	for (let node = 1; node < nodes; node++) branches += Math.max(0, met[node]! - 2);
	return branches;
}

/** A connector to each conductor of a branch. Taps to the lamps are as many in every way, and are left out. */
const perBranch = 2;

/** What laying costs beside the cable: digging so many metres, and branches. */
export const layingCost = (trench: number, branches: number, connectorPrice: number): number =>
	trench * trenchPricePerMetre + perBranch * connectorPrice * branches;

/** Currency: of the connectors at a way's branches. */
export function branchPrice({ nodes, segments }: Pick<LaidWay, 'nodes' | 'segments'>, connectorPrice: number): number {
	const met = new Int32Array(nodes.length);
	for (const { from, to } of segments) {
		met[from]!++;
		met[to]!++;
	}
	return perBranch * connectorPrice * branchesAt(met, nodes.length);
}
