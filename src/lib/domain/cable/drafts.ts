/** Ways to lay a run as mere numbers: many are weighed, and only those worth trying are laid out. */
import type { Feed } from '../circuit';
import { branchesAt, cableLength, layingCost, wayOf, type LaidWay, type Laying } from './laid';

/** By lamp or supply: those that hang from it, or are joined to it; terminal 0 is the supply. */
export type Hanging = ReadonlyMap<number, readonly number[]>;

/** Terminals by place, the supply first; at a hub the second is the bare hub itself. `from[k]`: place before that of k + 1. */
export interface Draft {
	feed: Feed;
	terminals: number[];
	from: number[];
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
	return { feed: 'hub', terminals: [0, beside, ...members], from: [0, ...members.map(() => 1)] };
}

/** The lamp at the hub hangs from it by nothing but its slack. */
const isAtHub = ({ feed, terminals }: Draft, place: number): boolean =>
	feed === 'hub' && place > 1 && terminals[place] === terminals[1];

export function lay(id: string, draft: Draft, laying: Laying): LaidWay {
	const { feed, terminals, from } = draft;
	const nodes = terminals.map((terminal, place) => ({ terminal, bare: feed === 'hub' && place === 1 }));
	const legs = from.map((before, k) => {
		const terminal = terminals[k + 1]!;
		if (!isAtHub(draft, k + 1)) return { from: before, route: laying.routes.route(terminals[before]!, terminal)! };
		const { at } = laying.fixtures[terminal - 1]!;
		return { from: before, route: { cost: 0, length: 0, path: [at, at], crossings: [] } };
	});
	return wayOf(id, feed, nodes, legs, laying);
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
 * window and should look alike, how far the drops are apart. Figures as those of `wayOf` and `demandOf`.
 */
export function weigh(draft: Draft, { routes, fixtures, mountHeight, connectorPrice }: Laying): Weight {
	const { feed, terminals, from } = draft;
	const places = terminals.length;
	const firstLamp = feed === 'hub' ? 2 : 1;
	const through = new Float64Array(places);
	let isWide = true;
	for (let p = firstLamp; p < places; p++) {
		const { lamp } = fixtures[terminals[p]! - 1]!;
		through[p] = lamp.kind === 'led' ? lamp.voltAmps : lamp.watts;
		if (lamp.kind !== 'led') isWide = false;
	}
	for (let p = places - 1; p > 0; p--) through[from[p - 1]!]! += through[p]!;
	const moment = new Float64Array(places);
	const met = new Int32Array(places);
	let [trench, metres, worst, least] = [0, 0, 0, Infinity];
	for (let p = 1; p < places; p++) {
		const before = from[p - 1]!;
		const length = isAtHub(draft, p) ? 0 : routes.length(terminals[before]!, terminals[p]!);
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
	const laying = layingCost(trench, branchesAt(met), connectorPrice);
	return { metres, laying, worst, unevenness: isWide ? 0 : worst - least };
}
