/** Where the pair at the mouth of a drive stands when gate posts stand there: rule drive.mouth. */
import type { FixtureModel } from '../shared/catalogue';
import type { Figures } from '../shared/settings';
import { postsMiddle, postSize, type Strip } from '../site';
import type { Cause } from './conflicts';
import type { Course, Side } from './course';

/** Steps tried further in where a drive that meets the street at a slant puts one of the two outside the lot, the same for both, metres. */
const steps = [0, 0.25, 0.5];

/** A place for a light of the pair: metres along the centre line, and of its stake out from the edge. */
export interface ByPost {
	at: number;
	out: number;
}
/** Metres from the edge to the stake of a lamp that keeps as clear of the post as of an edge. */
const outOf = ({ headDiameter }: FixtureModel, { clear }: Figures['drive.setback']): number =>
	postSize + clear + headDiameter / 2;

/**
 * Just outside the posts, where the posts leave the pair no room between them and the street: behind them it would stand
 * by an open leaf and be hidden from the street. The same place on both sides, so that the pair matches; null when the posts
 * stand further in, or where something stands there: a wall that runs on from a post would hide a light behind it. `cause`:
 * what keeps a light from standing `out` beside the edge at `at`.
 */
export function byPosts(
	course: Course,
	start: number,
	model: FixtureModel,
	figures: Figures['drive.setback'],
	cause: (at: number, side: Side, out: number) => Cause | null
): ByPost | null {
	const middle = postsMiddle(course.strip);
	if (middle === null || roomBefore(middle, start, model, figures)) return null;
	const out = outOf(model, figures);
	const sides: Side[] = ['left', 'right'];
	for (const step of steps) {
		const at = Math.min(middle + step, course.length);
		const causes = sides.map((side) => cause(at, side, out));
		if (causes.every((one) => one === null)) return { at, out };
		if (causes.some((one) => one !== null && one !== 'lot')) return null;
	}
	return null;
}
const roomBefore = (
	middle: number,
	start: number,
	{ headDiameter }: FixtureModel,
	{ clear }: Figures['drive.setback']
): boolean => middle - postSize / 2 - clear - headDiameter / 2 >= start - 1e-9;

/** How a light of the pair stands to the posts, as part of a sentence; empty without posts. `at`: metres along. */
export function postWords(strip: Strip, at: number, by: boolean, len: (metres: number) => string): string {
	const middle = postsMiddle(strip);
	if (middle === null) return '';
	if (by) return ', just outside the gate posts';
	return at < middle
		? `, where wheels leave the street (the gate posts stand ${len(middle)} in)`
		: ', just inside the gate posts';
}
