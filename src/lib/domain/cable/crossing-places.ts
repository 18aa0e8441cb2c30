/** Where a cable passes under paving: a crossing is known by its place, so that two cables through one bore are seen to share it. */
import { distance, type Point } from '../shared/geometry';
import type { SegmentCrossing } from './types';

/** A leg of a path is the crossing when it is as long to within this, metres. */
const rounding = 1e-6;

/** Legs (leg k ends at point k) of a path that are its crossings, in their order. */
export function crossedLegs(path: readonly Point[], crossings: readonly Pick<SegmentCrossing, 'length'>[]): number[] {
	const legs: number[] = [];
	for (let k = 1; k < path.length && legs.length < crossings.length; k++)
		if (Math.abs(distance(path[k - 1]!, path[k]!) - crossings[legs.length]!.length) < rounding) legs.push(k);
	return legs;
}

export interface PlacedCrossing {
	crossing: SegmentCrossing;
	/** The same for all cables through one sleeve, joint or bore, and for no others. */
	place: string;
	/** The leg of the path that it is, leg k ending at point k; 0 where none is. */
	leg: number;
}
/** Places are told apart by the centimetre. */
const whole = (metres: number): string => (Math.round(metres * 100) / 100 || 0).toFixed(2);
const middle = (a: Point, b: Point): string => `${whole((a.x + b.x) / 2)},${whole((a.y + b.y) / 2)}`;

/**
 * The crossings of a path with their places: a declared one by its id, a bore that none declared by its middle, or by that
 * of the path's ends where the path has no leg of its length.
 */
export function placedCrossings(path: readonly Point[], crossings: readonly SegmentCrossing[]): PlacedCrossing[] {
	const legs = crossedLegs(path, crossings);
	return crossings.map((crossing, k): PlacedCrossing => {
		const { strip, crossing: declared } = crossing;
		const leg = legs[k] ?? 0;
		if (declared !== null) return { crossing, leg, place: `${strip}/${declared}` };
		if (leg === 0) return { crossing, leg, place: `${strip}@${middle(path[0]!, path.at(-1)!)}?${k}` };
		return { crossing, leg, place: `${strip}@${middle(path[leg - 1]!, path[leg]!)}` };
	});
}
