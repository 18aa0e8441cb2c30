/**
 * Ways to lay a run as mere numbers: many are weighed, those worth trying are shown to the circuit as shapes, and only what it
 * takes is laid out.
 */
import type { Feed, RunShape } from '../circuit';
import {
	branchesAt,
	cableLength,
	layingCost,
	type LaidRoute,
	type LaidSegment,
	type LaidWay,
	type Laying
} from './laid';

/** By lamp or supply: those that hang from it, or are joined to it; terminal 0 is the supply. */
export type Hanging = ReadonlyMap<number, readonly number[]>;

/** Terminals by place, the supply first; at a hub the second is the bare hub itself. `from[k]`: place before that of k + 1. */
export interface Draft {
	feed: Feed;
	terminals: number[];
	from: number[];
	/** By place after the first, as `from`: where the person drew the cable to it; null, or none at all: the plan's own way. */
	drawn?: readonly (DrawnCable | null)[];
}
/** A cable that the person drew: led from bend to bend, or by the plan's own way. */
export interface DrawnCable {
	route: LaidRoute;
	isBent: boolean;
}

/** Along a tree, level by level. */
export function treeDraft(feed: Feed, hanging: Hanging): Draft {
	const terminals = [0];
	const from: number[] = [];
	for (let at = 0; at < terminals.length; at++)
		for (const next of hanging.get(terminals[at]!) ?? []) {
			from.push(at);
			terminals.push(next);
		}
	return { feed, terminals, from };
}

/** Along the cable between lamps, entered at `entry`. `near`: by lamp those it is joined to. */
export function enteredDraft(near: Hanging, entry: number): Draft {
	const terminals = [0, entry];
	const from = [0];
	for (let at = 1; at < terminals.length; at++)
		for (const next of near.get(terminals[at]!) ?? []) {
			// In a tree only the lamp before it has been met.
			if (next === terminals[from[at - 1]!]) continue;
			from.push(at);
			terminals.push(next);
		}
	return { feed: 'middle', terminals, from };
}

/** A hub beside a lamp, and a lead to each. Null where a lamp has no way to it. */
export function hubDraft(members: readonly number[], beside: number, { routes }: Laying): Draft | null {
	for (const terminal of members) if (routes.length(beside, terminal) === Infinity) return null;
	const from = Array<number>(members.length + 1).fill(1, 1);
	from[0] = 0;
	return { feed: 'hub', terminals: [0, beside, ...members], from };
}

/** The lamp at the hub hangs from it by nothing but its slack. */
const isAtHub = ({ feed, terminals }: Draft, place: number): boolean =>
	feed === 'hub' && place > 1 && terminals[place] === terminals[1];

/** A way as the circuit sees it, and what it is laid out from. */
export interface Drafted {
	draft: Draft;
	shape: RunShape;
}
/** Numbers by place, to be overwritten by each draft that is measured. */
const scratch = { size: 0, through: new Float64Array(), moment: new Float64Array(), met: new Int32Array() };
function scratchFor(places: number): typeof scratch {
	if (places <= scratch.size) return scratch;
	const size = 2 * places;
	return Object.assign(scratch, {
		size,
		through: new Float64Array(size),
		moment: new Float64Array(size),
		met: new Int32Array(size)
	});
}

/** Metres of trench from the place before to place `p`. */
const trenchTo = (draft: Draft, p: number, { routes }: Laying): number =>
	isAtHub(draft, p)
		? 0
		: (draft.drawn?.[p - 1]?.route.length ?? routes.length(draft.terminals[draft.from[p - 1]!]!, draft.terminals[p]!));

/** The way with this draft: what it costs beside its cable is digging and branches. */
export function drafted(id: string, draft: Draft, laying: Laying): Drafted {
	const { feed, terminals, from } = draft;
	const places = terminals.length;
	const { met } = scratchFor(places);
	met.fill(0, 0, places);
	let trench = 0;
	const segments: RunShape['segments'] = [];
	for (let p = 1; p < places; p++) {
		const before = from[p - 1]!;
		const length = trenchTo(draft, p, laying);
		trench += length;
		met[before]!++;
		met[p]!++;
		segments.push({ from: before, to: p, metres: cableLength(length, before === 0, laying.mountHeight) });
	}
	const loads: RunShape['loads'] = [];
	for (let node = feed === 'hub' ? 2 : 1; node < places; node++) {
		const { id: load, load: law, alike } = laying.loads[terminals[node]! - 1]!;
		loads.push({ id: load, node, load: law, alike });
	}
	const cost = layingCost(trench, branchesAt(met, places), laying.connectorPrice);
	return { draft, shape: { id, feed, laying: cost, nodes: places, segments, loads } };
}

/** Laid out in the ground. */
export function lay({ draft, shape }: Drafted, { routes, fixtures }: Laying): LaidWay {
	const { feed, terminals } = draft;
	const segments = shape.segments.map(({ from, to, metres }): LaidSegment => {
		const terminal = terminals[to]!;
		const drawn = draft.drawn?.[to - 1];
		if (drawn) {
			const bent = drawn.isBent && ({ isBent: true } as const);
			return { from, to, length: metres, route: drawn.route, byHand: true, ...bent };
		}
		if (!isAtHub(draft, to)) return { from, to, length: metres, route: routes.route(terminals[from]!, terminal)! };
		const { at } = fixtures[terminal - 1]!;
		return { from, to, length: metres, route: { length: 0, path: [at, at], crossings: [] } };
	});
	return {
		nodes: terminals.map((terminal, place) => ({ terminal, bare: feed === 'hub' && place === 1 })),
		segments,
		shape
	};
}

/** What is known of a way before it is laid: metres of cable, cost of laying, volt-ampere metres as in `Demand`. */
export interface Weight {
	metres: number;
	laying: number;
	worst: number;
	/** Zero where all lamps are LED. */
	unevenness: number;
}

/**
 * What decides between ways: cable, laying, the drop to the far lamp, and where there are filaments, which have a narrow
 * window and should look alike, how far the drops are apart. Figures as those of `drafted` and `demandOf`.
 */
export function weigh(draft: Draft, laying: Laying): Weight {
	const { feed, terminals, from } = draft;
	const { loads, mountHeight } = laying;
	const places = terminals.length;
	const firstLamp = feed === 'hub' ? 2 : 1;
	const { through, moment, met } = scratchFor(places);
	through.fill(0, 0, places);
	met.fill(0, 0, places);
	moment[0] = 0;
	let isWide = true;
	for (let p = firstLamp; p < places; p++) {
		const { demand, load } = loads[terminals[p]! - 1]!;
		through[p] = demand;
		if (load.kind !== 'led') isWide = false;
	}
	for (let p = places - 1; p > 0; p--) through[from[p - 1]!]! += through[p]!;
	let trench = 0;
	let metres = 0;
	let worst = 0;
	let least = Infinity;
	for (let p = 1; p < places; p++) {
		const before = from[p - 1]!;
		const length = trenchTo(draft, p, laying);
		const cable = cableLength(length, before === 0, mountHeight);
		trench += length;
		metres += cable;
		met[before]!++;
		met[p]!++;
		moment[p] = moment[before]! + cable * through[p]!;
		if (p < firstLamp) continue;
		if (moment[p]! > worst) worst = moment[p]!;
		if (moment[p]! < least) least = moment[p]!;
	}
	const cost = layingCost(trench, branchesAt(met, places), laying.connectorPrice);
	return { metres, laying: cost, worst, unevenness: isWide ? 0 : worst - least };
}
