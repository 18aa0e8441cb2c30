/** Where along a walk a light comes first, and how the straights between are filled: rules path.first and path.spacing. */
import type { Strip } from '../site';
import type { Stretch } from './paved-spans';

export type First = 'entry' | 'bend' | 'junction' | 'gate' | 'leaving' | 'foot' | 'head';
export interface Stop {
	/** Metres along the centre line. */
	at: number;
	/** Why it comes first; null: it fills a straight. */
	first: First | null;
	/** What else this light serves, too near for a light of its own. */
	also: First[];
}
/** In a crowd the one where a foot goes wrong soonest keeps its place. */
const weight: Record<First, number> = { head: 7, foot: 6, bend: 5, gate: 4, junction: 3, leaving: 2, entry: 1 };

/** Metres beyond the flight at which its path light stands, and in from the ends of the walk: our assumptions. */
const beyondFlight = 0.3;
const inFromEnd = 0.5;
/** Metres from the reach of a gate's leaf to the light beside it, the head's half width included: our assumption. */
const beyondLeaf = 0.15;

/**
 * The places along a walk at which a light comes first, in order from the street. One light serves what lies within half a
 * spacing of it. `paved`: where the walk runs over a patio or an apron, whose edges are not its own.
 */
export function firstsOf(strip: Strip, spacing: number, paved: readonly Stretch[] = []): Stop[] {
	const { length } = strip;
	const serves = spacing / 2;
	const list: Stop[] = [];
	const add = (at: number, first: First): void => {
		if (at >= -1e-9 && at <= length + 1e-9) list.push({ at: Math.min(Math.max(at, 0), length), first, also: [] });
	};
	const onPaving = (at: number): boolean => paved.some(({ start, end }) => at > start + 1e-9 && at < end - 1e-9);
	const entry = beginningOf(paved);
	if (entry < length - 1e-9) add(Math.min(entry + inFromEnd, (entry + length) / 2), 'entry');
	for (const { start, end } of paved) if (start > entry && end + serves < length) add(end + inFromEnd, 'leaving');
	for (const bend of strip.bends) if (!onPaving(bend.at)) add(bend.at, 'bend');
	for (const { at } of strip.junctions) if (at > serves && at < length - serves && !onPaving(at)) add(at, 'junction');
	for (const gate of strip.gates) add(byGate(strip, gate.at), 'gate');
	for (const flight of strip.steps) {
		add(Math.max(flight.start - beyondFlight, 0), 'foot');
		add(Math.min(flight.end + beyondFlight, length), 'head');
	}
	return joined(list, serves);
}
/** Where a walk that begins on other paving leaves it, metres along; 0 where it begins by itself. */
const beginningOf = ([first]: readonly Stretch[]): number => (first && first.start < inFromEnd ? first.end : 0);

/** Just before the reach of the leaf; just beyond it where there is no walk before. At the gate itself, where no light can stand, when there is neither. */
function byGate({ length, width }: Strip, at: number): number {
	const before = at - width - beyondLeaf;
	if (before >= inFromEnd - 1e-9) return before;
	const beyond = at + width + beyondLeaf;
	return beyond <= length + 1e-9 ? beyond : at;
}

/** Heaviest first; a lighter one within reach of one that stands is served by it. */
function joined(list: readonly Stop[], serves: number): Stop[] {
	const kept: Stop[] = [];
	for (const stop of [...list].sort((a, b) => weight[b.first!] - weight[a.first!] || a.at - b.at)) {
		const near = kept.find((other) => Math.abs(other.at - stop.at) < serves - 1e-9);
		if (near) near.also.push(stop.first!);
		else kept.push(stop);
	}
	return kept.sort((a, b) => a.at - b.at);
}

/**
 * Places that fill a straight evenly between two stops, none nearer than `spacing` to another. `open`: nothing stands at
 * `to` (the door); the last light then keeps half a step from it. `alternate`: neighbours stand on opposite edges, so that
 * the step may be a little under the spacing and the pools still meet.
 */
export function fill(from: number, to: number, spacing: number, open: boolean, fewer = 0, alternate = false): number[] {
	const gap = (to - from) / spacing;
	const whole = (steps: number): number => (alternate ? Math.round(steps) : Math.floor(steps + 1e-9));
	const most = open ? whole(gap - 0.5) : whole(gap) - 1;
	const count = Math.max(0, most - fewer);
	const step = (to - from) / (count + (open ? 0.5 : 1));
	return Array.from({ length: count }, (_, i) => from + step * (i + 1));
}
