/** Places along a walk or a drive, by metres along its centre line and metres out from its edge. */
import {
	between,
	cross,
	dot,
	leftOf,
	moved,
	rightOf,
	stations,
	subtract,
	towards,
	unit,
	type Point
} from '../shared/geometry';
import type { Strip } from '../site';

export type Side = 'left' | 'right';
export const other = (side: Side): Side => (side === 'left' ? 'right' : 'left');

export interface Course {
	strip: Strip;
	length: number;
	/** Point of the centre line. */
	centre: (at: number) => Point;
	/** Unit vector along the walk, towards the house. */
	heading: (at: number) => Point;
	/** The point `out` metres outside the edge. */
	beside: (at: number, side: Side, out: number) => Point;
}

const north: Point = { x: 0, y: -1 };

/** Total for any strip: one without length has its first point, or the origin, everywhere. */
export function courseOf(strip: Strip): Course {
	const line = strip.centre;
	const at = stations(line);
	const length = at.at(-1) ?? 0;
	/** Index of the end point of the segment that holds a station. */
	const segment = (s: number): number => {
		let low = 1;
		let high = line.length - 1;
		while (low < high) {
			const mid = (low + high) >> 1;
			if (at[mid]! < s) low = mid + 1;
			else high = mid;
		}
		return low;
	};
	const direction = (i: number): Point => {
		const d = line[i - 1] && line[i] ? towards(line[i - 1]!, line[i]!) : north;
		return d.x === 0 && d.y === 0 ? north : d;
	};
	const centre = (s: number): Point => {
		if (line.length < 2) return line[0] ?? { x: 0, y: 0 };
		const i = segment(s);
		const size = at[i]! - at[i - 1]!;
		return size > 0 ? between(line[i - 1]!, line[i]!, Math.min(1, Math.max(0, (s - at[i - 1]!) / size))) : line[i]!;
	};
	const heading = (s: number): Point => (line.length < 2 ? north : direction(segment(s)));
	const beside = (s: number, side: Side, out: number): Point => {
		const turned = side === 'left' ? leftOf : rightOf;
		const half = strip.width / 2;
		const i = line.length < 2 ? 0 : segment(s);
		const corner = i > 0 && i < line.length - 1 && Math.abs(at[i]! - s) < 1e-6;
		if (!corner) return moved(centre(s), turned(heading(s)), half + out);
		const before = direction(i);
		const after = direction(i + 1);
		const normal = unit({ x: turned(before).x + turned(after).x, y: turned(before).y + turned(after).y });
		// Cosine of half the turn: edges meet at half / cosine from the corner of the centre line.
		const cosine = Math.max(0.3, dot(normal, turned(before)));
		const outer = cross(before, after) > 0 === (side === 'left');
		// Outside the bend the lamp stands off the corner of the edge; inside, off both edges.
		return outer
			? moved(moved(line[i]!, normal, half / cosine), normal, out)
			: moved(line[i]!, normal, (half + out) / cosine);
	};
	return { strip, length, centre, heading, beside };
}

/** The side on the outside of a turn at `at`: where the edge is missed. Null when the line does not turn there. */
export function outerSide(course: Course, at: number): Side | null {
	const reach = 0.5;
	const before = subtract(course.centre(at), course.centre(Math.max(0, at - reach)));
	const after = subtract(course.centre(Math.min(course.length, at + reach)), course.centre(at));
	const turn = cross(unit(before), unit(after));
	if (Math.abs(turn) < 1e-3) return null;
	return turn > 0 ? 'left' : 'right';
}

/**
 * The side that takes the first light when either may: outside the first bend, else towards the middle of the house
 * (`middle` = its x), so that a yard and its mirror image come out alike; dead straight for the middle: left.
 */
export function leadSide(course: Course, middle: number): Side {
	for (const bend of course.strip.bends) {
		const side = outerSide(course, bend.at);
		if (side) return side;
	}
	const start = course.centre(0);
	const left = leftOf(course.heading(0));
	const towardsHouse = left.x * (middle - start.x);
	return towardsHouse >= -1e-9 ? 'left' : 'right';
}

/** Metres along one edge of a walk or drive: outside a bend it is longer than the centre line, inside shorter. */
export interface Edge {
	length: number;
	/** Metres along the edge abreast of a place on the centre line. */
	along: (at: number) => number;
	/** The place on the centre line abreast of so many metres along the edge. */
	abreast: (along: number) => number;
}
/** Metres between the places at which an edge is measured. */
const sampled = 0.5;

/** The line `out` metres outside an edge, measured along itself. */
export function edgeOf(course: Course, side: Side, out: number): Edge {
	const corners = stations(course.strip.centre);
	const at = [...new Set([...corners, ...evenly(course.length)])].sort((a, b) => a - b);
	const unfolded = unfoldedOf(course, side, out, corners);
	const along: number[] = [];
	let last: Point | null = null;
	for (const s of at) {
		const p = course.beside(unfolded(s), side, out);
		along.push(last ? along.at(-1)! + Math.hypot(p.x - last.x, p.y - last.y) : 0);
		last = p;
	}
	return {
		length: along.at(-1) ?? 0,
		along: (s) => mapped(at, along, s),
		abreast: (metres) => mapped(along, at, metres)
	};
}
/**
 * Inside a bend the places abreast of the line just before and after it lie beyond where the edge turns: there the edge stands
 * still at its own corner. Gives the corner's place for those, any other for itself.
 */
function unfoldedOf(course: Course, side: Side, out: number, corners: readonly number[]): (at: number) => number {
	const turns = corners.slice(1, -1).flatMap((at) => {
		const corner = subtract(course.beside(at, side, out), course.centre(at));
		// How far the edge's corner lies back along the walk: none outside a bend.
		const short = dot(corner, course.heading(at));
		return short < -1e-9 ? [{ at, short: -short }] : [];
	});
	return (s) => turns.find(({ at, short }) => Math.abs(at - s) < short)?.at ?? s;
}
const evenly = (length: number): number[] =>
	Array.from({ length: Math.ceil(length / sampled) + 1 }, (_, i) => Math.min(length, i * sampled));

/** Straight between the two known places round `value`; the end's beyond the ends. */
function mapped(from: readonly number[], to: readonly number[], value: number): number {
	let low = 0;
	let high = from.length - 1;
	if (high < 0 || value <= from[0]!) return to[0] ?? 0;
	if (value >= from[high]!) return to[high]!;
	while (high - low > 1) {
		const mid = (low + high) >> 1;
		if (from[mid]! <= value) low = mid;
		else high = mid;
	}
	const size = from[high]! - from[low]!;
	return size > 0 ? to[low]! + ((to[high]! - to[low]!) * (value - from[low]!)) / size : to[low]!;
}
