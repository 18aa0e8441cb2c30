/** Bends of a cable between two lights. Metres, in the yard's frame. */
import type { RunSegment } from '$lib/domain/cable';
import { nearestOnSegment, type Point } from '$lib/domain/shared/geometry';
import type { RunLink, YardPoint } from '$lib/domain/yard';
import { mostBends } from './links';

/** A tenth of a millimetre: what a tape or a tap can mean, without the dust of arithmetic. */
const tidy = (metres: number): number => Math.round(metres * 1e4) / 1e4;
export const asBend = ({ x, y }: Point): YardPoint => ({ along: tidy(x), out: tidy(y) });
export const asPoint = ({ along, out }: YardPoint): Point => ({ x: along, y: out });

/** Twice the area of the triangle that a bend makes with its neighbours, m²: how much it matters. */
const weight = (a: Point, b: Point, c: Point): number =>
	Math.abs((b.x - a.x) * (c.y - a.y) - (c.x - a.x) * (b.y - a.y));

/** A line with at most so many inner points: the one that matters least goes first (Visvalingam and Whyatt 1993). */
export function fewer(line: readonly Point[], most: number): readonly Point[] {
	let kept = line;
	while (kept.length - 2 > most) {
		const weights = kept.slice(1, -1).map((p, k) => weight(kept[k]!, p, kept[k + 2]!));
		const least = weights.indexOf(Math.min(...weights)) + 1;
		kept = kept.filter((_, k) => k !== least);
	}
	return kept;
}

/** The bends told, or where none are the corners of the way that the plan found: moving one makes the way one's own. */
export const bendsOf = (link: RunLink, segment: Pick<RunSegment, 'path'> | undefined): YardPoint[] =>
	link.via ?? (segment ? fewer(segment.path, mostBends).slice(1, -1).map(asBend) : []);

/** Bends with one more, between the two places it lies nearest to the line of. `ends`: where the cable starts and ends. */
export function bentAt(bends: readonly YardPoint[], ends: readonly [Point, Point], at: YardPoint): YardPoint[] {
	const line = [ends[0], ...bends.map(asPoint), ends[1]];
	const off = line.slice(1).map((p, k) => nearestOnSegment(asPoint(at), line[k]!, p).distance);
	return bends.toSpliced(off.indexOf(Math.min(...off)), 0, at);
}
export const movedBend = (bends: readonly YardPoint[], index: number, at: YardPoint): YardPoint[] =>
	bends.with(index, at);
export const withoutBend = (bends: readonly YardPoint[], index: number): YardPoint[] => bends.toSpliced(index, 1);
