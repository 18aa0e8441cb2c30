import type { Point } from './types';

export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
export const subtract = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const scale = (a: Point, by: number): Point => ({ x: a.x * by, y: a.y * by });
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
/** z of the cross product; positive when `b` points to the right of `a`. */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
/**
 * Length of (x, y): scaled by the larger of the two as `Math.hypot` does it in V8, to the same bits, but without the list that
 * makes of what it is given. It is asked for by the ten thousand.
 */
export function hypot(x: number, y: number): number {
	const across = Math.abs(x);
	const up = Math.abs(y);
	const most = across > up ? across : up;
	// Nothing, endless, or no number at all.
	if (!(most > 0 && most < Infinity)) return Math.hypot(x, y);
	const ratio = (across > up ? up : across) / most;
	return Math.sqrt(1 + ratio * ratio) * most;
}
export const magnitude = (a: Point): number => hypot(a.x, a.y);
/** Metres between two points. */
export const distance = (a: Point, b: Point): number => hypot(a.x - b.x, a.y - b.y);
/** Unit vector along `a`; the zero vector stays zero. */
export function unit(a: Point): Point {
	const size = magnitude(a);
	return size > 0 ? { x: a.x / size, y: a.y / size } : { x: 0, y: 0 };
}
/** Unit vector from one point towards another; zero when they coincide. */
export const towards = (from: Point, to: Point): Point => unit(subtract(to, from));
/** A quarter turn to the right hand of `a`, same length. */
export const rightOf = (a: Point): Point => ({ x: -a.y, y: a.x });
/** A quarter turn to the left hand of `a`, same length. */
export const leftOf = (a: Point): Point => ({ x: a.y, y: -a.x });
/** The point a fraction `t` of the way from `a` to `b`. */
export const between = (a: Point, b: Point, t: number): Point => ({
	x: a.x + (b.x - a.x) * t,
	y: a.y + (b.y - a.y) * t
});
/** The point `metres` from `from` along a unit vector. */
export const moved = (from: Point, direction: Point, metres: number): Point => ({
	x: from.x + direction.x * metres,
	y: from.y + direction.y * metres
});
/** Turned about the origin, degrees, positive to the right (clockwise on the drawing). */
export function rotated(a: Point, degrees: number): Point {
	const angle = (degrees * Math.PI) / 180;
	const c = Math.cos(angle);
	const s = Math.sin(angle);
	return { x: a.x * c - a.y * s, y: a.x * s + a.y * c };
}
/** Turn from one direction to another, degrees in (−180, 180], positive to the right; 0 when either is zero. */
export function turnBetween(from: Point, to: Point): number {
	const side = cross(from, to);
	const ahead = dot(from, to);
	return side === 0 && ahead >= 0 ? 0 : (Math.atan2(side, ahead) * 180) / Math.PI;
}
/** An angle in degrees brought into [0, 360). */
export const wrapDegrees = (degrees: number): number => ((degrees % 360) + 360) % 360;
/** Compass bearing of a direction, degrees clockwise from north, for a house front that faces the bearing `faces`. */
export const bearingOf = (direction: Point, faces: number): number =>
	wrapDegrees(faces - (Math.atan2(direction.x, direction.y) * 180) / Math.PI);
/** Unit vector on the plan that points along a compass bearing; the inverse of `bearingOf`. */
export function directionOf(bearing: number, faces: number): Point {
	const angle = ((faces - bearing) * Math.PI) / 180;
	return { x: Math.sin(angle), y: Math.cos(angle) };
}
