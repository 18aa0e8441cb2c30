/** Where along a walk a light comes first, and how the straights between are filled: rules path.first and path.spacing. */
import type { Strip } from '../site';

export type First = 'entry' | 'bend' | 'junction' | 'foot' | 'head';
export interface Stop {
	/** Metres along the centre line. */
	at: number;
	/** Why it comes first; null: it fills a straight. */
	first: First | null;
	/** What else this light serves, too near for a light of its own. */
	also: First[];
}
/** In a crowd the one where a foot goes wrong soonest keeps its place. */
const weight: Record<First, number> = { head: 5, foot: 4, bend: 3, junction: 2, entry: 1 };

/** Metres beyond the flight at which its path light stands, and in from the ends of the walk: our assumptions. */
const beyondFlight = 0.3;
const inFromEnd = 0.5;

/** The places along a walk at which a light comes first, in order from the street. One light serves what lies within half a spacing of it. */
export function firstsOf(strip: Strip, spacing: number): Stop[] {
	const { length } = strip;
	const serves = spacing / 2;
	const list: Stop[] = [];
	const add = (at: number, first: First): void => {
		if (at >= -1e-9 && at <= length + 1e-9) list.push({ at: Math.min(Math.max(at, 0), length), first, also: [] });
	};
	add(Math.min(inFromEnd, length / 2), 'entry');
	for (const bend of strip.bends) add(bend.at, 'bend');
	for (const junction of strip.junctions)
		if (junction.at > serves && junction.at < length - serves) add(junction.at, 'junction');
	for (const flight of strip.steps) {
		add(Math.max(flight.start - beyondFlight, 0), 'foot');
		add(Math.min(flight.end + beyondFlight, length), 'head');
	}
	return joined(list, serves);
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
