import { distance, type Point } from '../shared/geometry';

/**
 * Things by distance from a place, to the micrometre, then from the front out: an order that a mirror keeps, so that where
 * two trees cost the same a yard and its mirror image get the same one.
 */
export function nearestFirst<T extends { at: Point }>(from: Point, things: readonly T[]): T[] {
	const whole = (metres: number) => Math.round(metres * 1e6);
	const far = new Map(things.map((one) => [one, whole(distance(one.at, from))]));
	return things.toSorted((a, b) => far.get(a)! - far.get(b)! || whole(a.at.y) - whole(b.at.y));
}
