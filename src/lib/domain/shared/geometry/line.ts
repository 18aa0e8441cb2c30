import type { Line, Point } from './types';
import { nearestOnSegment, segmentMeeting } from './segment';
import { between, cross, distance, dot, magnitude, moved, rightOf, subtract, towards, turnBetween } from './vector';

const origin: Point = { x: 0, y: 0 };

/** Metres along a line through all its points. */
export function lineLength(line: Line): number {
	let sum = 0;
	for (let i = 1; i < line.length; i++) sum += distance(line[i - 1]!, line[i]!);
	return sum;
}
/** Metres from the first point to each point along the line. */
export function stations(line: Line): number[] {
	let sum = 0;
	return line.map((p, i) => (sum += i === 0 ? 0 : distance(line[i - 1]!, p)));
}
/** The line without points nearer than `least` metres to the one before; the last point always stays. */
export function withoutRepeats(line: Line, least = 1e-6): Line {
	const kept: Point[] = [];
	for (const p of line) if (kept.length === 0 || distance(kept.at(-1)!, p) >= least) kept.push(p);
	const last = line.at(-1);
	if (last && kept.length > 1 && kept.at(-1) !== last) kept[kept.length - 1] = last;
	return kept;
}
/** Segment that holds station `at`, and the fraction along it. Stations beyond the ends give the end segments. */
function locate(line: Line, at: number): { i: number; t: number } {
	let left = at;
	for (let i = 1; i < line.length; i++) {
		const size = distance(line[i - 1]!, line[i]!);
		if (size > 0 && (left <= size || i === line.length - 1)) return { i, t: Math.min(1, Math.max(0, left / size)) };
		left -= size;
	}
	return { i: line.length - 1, t: 1 };
}
/** The point `at` metres along a line, held to its ends. An empty line gives the origin. */
export function pointAt(line: Line, at: number): Point {
	if (line.length < 2) return line[0] ?? origin;
	const { i, t } = locate(line, at);
	return between(line[i - 1]!, line[i]!, t);
}
/** Unit vector along a line at station `at`; at a corner, that of the segment coming in. Zero for a line without length. */
export function directionAt(line: Line, at: number): Point {
	if (line.length < 2) return origin;
	const { i } = locate(line, at);
	return towards(line[i - 1]!, line[i]!);
}
/** The part of a line between two stations, held to its ends, `from` ≤ `to`. */
export function partOf(line: Line, from: number, to: number): Line {
	const at = stations(line);
	const inner = line.filter((_, i) => at[i]! > from + 1e-9 && at[i]! < to - 1e-9);
	return [pointAt(line, from), ...inner, pointAt(line, to)];
}
export interface NearestOnLine {
	point: Point;
	/** Metres along the line. */
	at: number;
	distance: number;
	/** Of the point asked about, seen going along the line; 'on' when it lies on it. */
	side: 'left' | 'right' | 'on';
}
/** The point of a line nearest to `p`; null for an empty line. */
export function nearestOnLine(p: Point, line: Line): NearestOnLine | null {
	const first = line[0];
	if (!first) return null;
	let best: NearestOnLine = { point: first, at: 0, distance: distance(p, first), side: 'on' };
	let along = 0;
	for (let i = 1; i < line.length; i++) {
		const a = line[i - 1]!;
		const b = line[i]!;
		const size = distance(a, b);
		const near = nearestOnSegment(p, a, b);
		if (near.distance < best.distance || i === 1) {
			const side = near.distance < 1e-9 ? 'on' : sideOf(p, a, b, near.t === 1 ? line[i + 1] : undefined);
			best = { point: near.point, at: along + near.t * size, distance: near.distance, side };
		}
		along += size;
	}
	return best;
}
/** Side of `p` along a–b; when its nearest place is the corner b, with the line going on to `next`, it lies outside the turn. */
function sideOf(p: Point, a: Point, b: Point, next: Point | undefined): 'left' | 'right' | 'on' {
	const corner = next ? cross(subtract(b, a), subtract(next, b)) : 0;
	const side = corner === 0 ? cross(subtract(b, a), subtract(p, a)) : -corner;
	return side === 0 ? 'on' : side > 0 ? 'right' : 'left';
}
/** Degrees by which the line turns at each inner point, positive to the right, with the station. */
export function turns(line: Line): { at: number; turn: number }[] {
	const at = stations(line);
	const found: { at: number; turn: number }[] = [];
	for (let i = 1; i < line.length - 1; i++) {
		found.push({
			at: at[i]!,
			turn: turnBetween(subtract(line[i]!, line[i - 1]!), subtract(line[i + 1]!, line[i]!))
		});
	}
	return found;
}
/** A mitre longer than this many offsets is cut: a hairpin would otherwise throw its corner across the yard. */
const longestMitre = 3;
/**
 * The line moved sideways by `offset` metres, positive to its right, negative to its left: one point per point, corners
 * mitred. On the inside of a bend tighter than the offset the result folds over itself.
 */
export function offsetLine(line: Line, offset: number): Line {
	const steps = line.slice(1).map((p, i) => rightOf(towards(line[i]!, p)));
	const sized = (n: Point | undefined): n is Point => n !== undefined && (n.x !== 0 || n.y !== 0);
	const coming: (Point | undefined)[] = [];
	const going: (Point | undefined)[] = [];
	line.forEach((_, i) => (coming[i] = sized(steps[i - 1]) ? steps[i - 1] : coming[i - 1]));
	for (let i = line.length - 1; i >= 0; i--) going[i] = sized(steps[i]) ? steps[i] : going[i + 1];
	return line.map((p, i) => {
		const before = coming[i] ?? going[i];
		const after = going[i] ?? coming[i];
		if (!before || !after) return p;
		// The mitre runs along n1 + n2 and is offset / cos(half the turn) long: (n1 + n2) / (1 + n1·n2).
		const open = 1 + dot(before, after);
		if (open < 1e-9) return moved(p, before, offset);
		const mitre = { x: (before.x + after.x) / open, y: (before.y + after.y) / open };
		const size = magnitude(mitre);
		return moved(p, mitre, size > longestMitre ? (offset * longestMitre) / size : offset);
	});
}
/**
 * A closed ring moved sideways by `offset` metres, positive to the right of its direction of travel, corners mitred. More than half
 * the ring's width inwards turns it inside out: ask for less.
 */
export function offsetRing(ring: Line, offset: number): Line {
	const first = ring[0];
	const last = ring.at(-1);
	if (!first || !last || ring.length < 3) return ring;
	return offsetLine([last, ...ring, first], offset).slice(1, -1);
}
export interface LineMeeting {
	point: Point;
	/** Metres along the first and the second line. */
	at: number;
	atOther: number;
}
/** Where two lines meet, in order along the first; a meeting at a shared corner is given once. */
export function lineMeetings(line: Line, other: Line): LineMeeting[] {
	const a = stations(line);
	const b = stations(other);
	const found: LineMeeting[] = [];
	for (let i = 1; i < line.length; i++) {
		for (let j = 1; j < other.length; j++) {
			const hit = segmentMeeting(line[i - 1]!, line[i]!, other[j - 1]!, other[j]!);
			if (!hit || found.some((f) => distance(f.point, hit.point) < 1e-6)) continue;
			found.push({
				point: hit.point,
				at: a[i - 1]! + hit.t * (a[i]! - a[i - 1]!),
				atOther: b[j - 1]! + hit.u * (b[j]! - b[j - 1]!)
			});
		}
	}
	return found.sort((p, q) => p.at - q.at);
}
/** Where a line crosses itself, by station of the first passing; neighbouring segments share a corner and do not count. */
export function selfMeetings(line: Line): LineMeeting[] {
	const points = withoutRepeats(line);
	const a = stations(points);
	const found: LineMeeting[] = [];
	for (let i = 1; i < points.length; i++) {
		for (let j = i + 2; j < points.length; j++) {
			const hit = segmentMeeting(points[i - 1]!, points[i]!, points[j - 1]!, points[j]!);
			if (!hit) continue;
			found.push({
				point: hit.point,
				at: a[i - 1]! + hit.t * (a[i]! - a[i - 1]!),
				atOther: a[j - 1]! + hit.u * (a[j]! - a[j - 1]!)
			});
		}
	}
	return found;
}
