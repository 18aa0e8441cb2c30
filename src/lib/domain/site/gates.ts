/** Where the leaf of a gate hangs and where gate posts stand: for whoever keeps clear of them or draws them. */
import { directionAt, leftOf, moved, pointAt, type Point, type Polygon } from '../shared/geometry';
import type { Strip } from './types';

/** Side of a gate post, square, metres: our assumption (masonry piers run from about 0.3 to 0.6 m). */
export const postSize = 0.4;

/** The shut leaf, from the left edge of the walk to the right. Hung on either side it reaches no further than its length from this line. */
export function leafOf(strip: Strip, gate: { at: number }): [left: Point, right: Point] {
	const middle = pointAt(strip.centre, gate.at);
	const left = leftOf(directionAt(strip.centre, gate.at));
	return [moved(middle, left, strip.width / 2), moved(middle, left, -strip.width / 2)];
}
/** Metres along the centre line abreast of the middle of the posts; null without posts. They stand wholly beside the drive, not in the street. */
export function postsMiddle(strip: Strip): number | null {
	if (strip.posts === null) return null;
	const half = Math.min(postSize, strip.length) / 2;
	return Math.min(Math.max(strip.posts, half), strip.length - half);
}
/** The feet of the two posts, left one first, their inner faces flush with the edges; none without posts. */
export function postsOf(strip: Strip): Polygon[] {
	const at = postsMiddle(strip);
	if (at === null) return [];
	const ahead = directionAt(strip.centre, at);
	const middle = pointAt(strip.centre, at);
	return [1, -1].map((hand) => {
		const out = leftOf(ahead);
		const corner = (along: number, across: number): Point =>
			moved(moved(middle, ahead, along), out, hand * (strip.width / 2 + across));
		const half = postSize / 2;
		return [corner(-half, 0), corner(half, 0), corner(half, postSize), corner(-half, postSize)];
	});
}
