/** Lines inside a bed along which its lights stand: so far in from some of its sides, clear of all others. Metres. */
import {
	between,
	distance,
	dot,
	inPolygon,
	lineLength,
	moved,
	rotated,
	subtract,
	turnBetween,
	type Line,
	type Point,
	type Polygon
} from '../shared/geometry';
import type { Side } from './bed-edges';

interface Span {
	from: number;
	to: number;
}
interface Piece extends Span {
	side: number;
	start: Point;
	end: Point;
}
const slack = 1e-7;
/** A row shorter than this is where a bed is just wide enough at one point, metres: no place to dig by. */
const shortest = 0.05;
/** Degrees between points of the arc round a corner that juts into the bed. */
const arcStep = 15;

/** Metres along a line from `p` in the direction `way` that lie nearer than `radius` to a point; null for none. */
export function nearPoint(p: Point, way: Point, centre: Point, radius: number): Span | null {
	const w = subtract(centre, p);
	const along = dot(w, way);
	const square = radius * radius - (dot(w, w) - along * along);
	if (square <= 0) return null;
	const half = Math.sqrt(square);
	return { from: along - half, to: along + half };
}
/** The same for a segment: what lies nearer to it than `radius` is convex, so it is one span. */
function nearSegment(p: Point, way: Point, a: Point, b: Point, radius: number): Span | null {
	const spans = [nearPoint(p, way, a, radius), nearPoint(p, way, b, radius)].filter((span) => span !== null);
	const size = distance(a, b);
	if (size > 0) {
		const u = { x: (b.x - a.x) / size, y: (b.y - a.y) / size };
		const along = slab(dot(subtract(p, a), u), dot(way, u), 0, size);
		const across = slab(u.x * (p.y - a.y) - u.y * (p.x - a.x), u.x * way.y - u.y * way.x, -radius, radius);
		if (along && across) {
			const from = Math.max(along.from, across.from);
			const to = Math.min(along.to, across.to);
			if (to > from) spans.push({ from, to });
		}
	}
	if (spans.length === 0) return null;
	return { from: Math.min(...spans.map(({ from }) => from)), to: Math.max(...spans.map(({ to }) => to)) };
}
/** Where `start` + `rate`·s lies between two bounds; null where never. */
function slab(start: number, rate: number, low: number, high: number): Span | null {
	if (Math.abs(rate) < 1e-12) return start > low && start < high ? { from: -Infinity, to: Infinity } : null;
	const [s, t] = [(low - start) / rate, (high - start) / rate];
	return { from: Math.min(s, t), to: Math.max(s, t) };
}
/** 0 to `length` without the spans. */
export function without(length: number, spans: readonly Span[]): Span[] {
	const kept: Span[] = [];
	let from = 0;
	for (const span of [...spans].sort((a, b) => a.from - b.from)) {
		if (span.from > from) kept.push({ from, to: Math.min(span.from, length) });
		from = Math.max(from, span.to);
		if (from >= length) return kept;
	}
	return [...kept, { from, to: length }];
}

/**
 * The lines `depth` metres in from the sides that `along` names and at least so far from each other such side, with a head of
 * `radius` keeping each side's own clear distance. Empty where the bed has no room for one.
 */
export function insetLines(
	sides: readonly Side[],
	ring: Polygon,
	along: (side: Side) => boolean,
	depth: number,
	radius: number
): Line[] {
	const pieces = sides.flatMap((side, i): Piece[] => {
		const size = distance(side.from, side.to);
		if (!along(side) || size === 0 || depth < side.clear + radius - slack) return [];
		const way = { x: (side.to.x - side.from.x) / size, y: (side.to.y - side.from.y) / size };
		const start = moved(side.from, side.outward, -depth);
		const taken = sides.flatMap((other, j) => {
			const need = (along(other) ? depth : other.clear + radius) - slack;
			return j === i || !near(side, other, depth + need)
				? []
				: (nearSegment(start, way, other.from, other.to, need) ?? []);
		});
		return without(size, taken)
			.map(({ from, to }) => ({ side: i, from, to, start: moved(start, way, from), end: moved(start, way, to) }))
			.filter((piece) => inPolygon(between(piece.start, piece.end, 0.5), ring));
	});
	return joined(sides, pieces, depth).filter((line) => lineLength(line) >= shortest);
}

/** Whether two sides could come within `reach` of each other, by their boxes: most of a large bed's do not. */
const near = (a: Side, b: Side, reach: number): boolean =>
	Math.max(a.from.x, a.to.x) + reach > Math.min(b.from.x, b.to.x) &&
	Math.max(b.from.x, b.to.x) + reach > Math.min(a.from.x, a.to.x) &&
	Math.max(a.from.y, a.to.y) + reach > Math.min(b.from.y, b.to.y) &&
	Math.max(b.from.y, b.to.y) + reach > Math.min(a.from.y, a.to.y);

/** Pieces that meet at a corner of the bed make one line; round a corner that juts into it runs an arc. */
function joined(sides: readonly Side[], pieces: readonly Piece[], depth: number): Line[] {
	const lines: Point[][] = [];
	let last: Piece | null = null;
	for (const piece of pieces) {
		const bridge = last && bridgeOf(sides, last, piece, depth);
		if (bridge) lines.at(-1)!.push(...bridge, piece.end);
		else lines.push([piece.start, piece.end]);
		last = piece;
	}
	// The side told last may go on round the corner of the side told first.
	const close = last && lines.length > 1 && bridgeOf(sides, last, pieces[0]!, depth);
	if (close) {
		const tail = lines.pop()!;
		lines[0] = [...tail, ...close, ...lines[0]!.slice(1)];
	}
	return lines;
}
/** Points between the end of one piece and the end of the next, neither among them; null where they do not meet. */
function bridgeOf(sides: readonly Side[], a: Piece, b: Piece, depth: number): Point[] | null {
	if (distance(a.end, b.start) < 1e-5) return [];
	const [before, after] = [sides[a.side]!, sides[b.side]!];
	const atCorner =
		distance(a.end, moved(before.to, before.outward, -depth)) < 1e-5 && distance(before.to, after.from) < 1e-6;
	if (!atCorner || distance(b.start, moved(after.from, after.outward, -depth)) > 1e-5) return null;
	const turn = turnBetween(before.outward, after.outward);
	const steps = Math.ceil(Math.abs(turn) / arcStep - 1e-6);
	const arc = Array.from({ length: Math.max(0, steps - 1) }, (_, i) =>
		moved(before.to, rotated(before.outward, (turn * (i + 1)) / steps), -depth)
	);
	return [...arc, b.start];
}
