/** Measured on the drawing: between two points or things, straight, along the front and out from it, and edge to edge. */
import { distance, inPolygon, nearestOnSegment, segmentMeeting, type Point } from '../../domain/shared/geometry';
import { formatLength } from '../../domain/shared/units';
import type { Units } from '../../domain/yard';
import type { DrawnThing } from '../things/types';

/** One end of a measure: a point, or a thing by the point that stands for it. */
export interface End {
	at: Point;
	thing: DrawnThing | null;
	/** `T2`, `the edge of Front walk`, `the first point`. */
	words: string;
}
export interface Measure {
	from: End;
	to: End;
	/** Metres; along and out never below zero. */
	straight: number;
	along: number;
	out: number;
	/** From edge to edge, where an end is a thing with an extent: metres, and where. 0: they touch or lie on one another. */
	nearest: { distance: number; from: Point; to: Point } | null;
	words: string;
}

interface Extent {
	line: readonly Point[];
	closed: boolean;
	reach: number;
}
const extentOf = ({ at, thing }: End): Extent =>
	thing?.line && thing.line.length > 0
		? { line: thing.line, closed: thing.closed && thing.line.length > 2, reach: thing.reach }
		: { line: [thing?.at ?? at], closed: false, reach: thing?.reach ?? 0 };

/** Its straight pieces; of a single point one without length. */
function piecesOf({ line, closed }: Extent): [Point, Point][] {
	if (line.length === 1) return [[line[0]!, line[0]!]];
	const open = line.slice(1).map((p, k): [Point, Point] => [line[k]!, p]);
	return closed ? [...open, [line.at(-1)!, line[0]!]] : open;
}
interface Gap {
	distance: number;
	from: Point;
	to: Point;
}
/** Shortest way between two straight pieces: from an end of one, unless they cross. */
function pieceGap([a, b]: [Point, Point], [c, d]: [Point, Point]): Gap {
	const meeting = segmentMeeting(a, b, c, d);
	if (meeting) return { distance: 0, from: meeting.point, to: meeting.point };
	const gaps = [
		...[a, b].map((from): Gap => {
			const { point, distance } = nearestOnSegment(from, c, d);
			return { distance, from, to: point };
		}),
		...[c, d].map((to): Gap => {
			const { point, distance } = nearestOnSegment(to, a, b);
			return { distance, from: point, to };
		})
	];
	return gaps.reduce((best, gap) => (gap.distance < best.distance ? gap : best));
}
const lies = (p: Point, { line, closed }: Extent): boolean => closed && inPolygon(p, line);
const moved = (from: Point, to: Point, by: number, whole: number): Point => ({
	x: from.x + ((to.x - from.x) * by) / whole,
	y: from.y + ((to.y - from.y) * by) / whole
});

/** Between the edges of two extents: of their lines, less what each reaches round its line. */
function edgeGap(a: Extent, b: Extent): Gap {
	if (lies(a.line[0]!, b)) return { distance: 0, from: a.line[0]!, to: a.line[0]! };
	if (lies(b.line[0]!, a)) return { distance: 0, from: b.line[0]!, to: b.line[0]! };
	const others = piecesOf(b);
	const gap = piecesOf(a)
		.flatMap((piece) => others.map((other) => pieceGap(piece, other)))
		.reduce((best, one) => (one.distance < best.distance ? one : best));
	const left = gap.distance - a.reach - b.reach;
	if (!(left > 0)) return { distance: 0, from: gap.from, to: gap.to };
	return {
		distance: left,
		from: moved(gap.from, gap.to, a.reach, gap.distance),
		to: moved(gap.to, gap.from, b.reach, gap.distance)
	};
}

const hasExtent = ({ thing }: End): boolean => thing !== null && ((thing.line?.length ?? 0) > 1 || thing.reach > 0);

/** The measure between two ends, in words in the person's units. */
export function measureOf(from: End, to: End, units: Units): Measure {
	const straight = distance(from.at, to.at);
	const along = Math.abs(to.at.x - from.at.x);
	const out = Math.abs(to.at.y - from.at.y);
	const nearest = hasExtent(from) || hasExtent(to) ? edgeGap(extentOf(from), extentOf(to)) : null;
	const length = (metres: number) => formatLength(metres, units);
	const gap =
		nearest === null
			? ''
			: nearest.distance > 0
				? ` Edge to edge ${length(nearest.distance)}.`
				: ' They touch or lie on one another.';
	const words = `From ${from.words} to ${to.words}: ${length(straight)} straight; ${length(along)} along the front, ${length(out)} out.${gap}`;
	return { from, to, straight, along, out, nearest, words };
}

/** What an end on a thing is called: its label, or its name. */
export const endOn = (thing: DrawnThing, at: Point): End => ({
	at: thing.at ?? at,
	thing,
	words: thing.label ?? thing.name
});
export const endAt = (at: Point, words: string): End => ({ at, thing: null, words });
