/** How much is to be dug, where cables lie in one trench. */
import type { Point } from '../shared/geometry';
import { crossedLegs } from './crossing-places';
import type { SegmentCrossing } from './types';

/** Cables nearer than this lie in one trench: about the width of a trenching spade (common practice, no source), metres. */
const spadeWidth = 0.1;
/** Sine of the angle up to which two lines count as side by side; at a wider one they part within a step. */
const sideBySide = 0.1;

interface Leg {
	x: number;
	y: number;
	/** Direction, and metres. */
	ux: number;
	uy: number;
	length: number;
	rate: number;
}
/** A path over the ground and what of it passes under paving, in its order. */
export interface Dug {
	path: readonly Point[];
	crossings: readonly Pick<SegmentCrossing, 'length'>[];
	/** By leg of the path: what a metre of trench there counts; absent: 1. */
	rates?: readonly number[];
}

/** The legs of a path that are dug: without those in a sleeve, a joint or a bore. */
function legsOf({ path, crossings, rates }: Dug): Leg[] {
	const legs: Leg[] = [];
	const crossed = crossings.length > 0 ? crossedLegs(path, crossings) : null;
	for (let k = 1; k < path.length; k++) {
		const { x, y } = path[k - 1]!;
		const dx = path[k]!.x - x;
		const dy = path[k]!.y - y;
		const length = Math.hypot(dx, dy);
		if (length > 0 && !crossed?.includes(k))
			legs.push({ x, y, ux: dx / length, uy: dy / length, length, rate: rates?.[k - 1] ?? 1 });
	}
	return legs;
}

/** The part of `leg`, from and to in metres along it, beside which `other` lies; null where none does. */
function beside(leg: Leg, other: Leg): [from: number, to: number] | null {
	const cross = leg.ux * other.uy - leg.uy * other.ux;
	if (cross > sideBySide || cross < -sideBySide) return null;
	const px = other.x - leg.x;
	const py = other.y - leg.y;
	const off = leg.ux * py - leg.uy * px;
	const reach = spadeWidth + Math.abs(cross) * other.length;
	if (off > reach || off < -reach) return null;
	const cos = leg.ux * other.ux + leg.uy * other.uy;
	const start = px * leg.ux + py * leg.uy;
	const end = start + cos * other.length;
	let from = Math.max(0, Math.min(start, end));
	let to = Math.min(leg.length, Math.max(start, end));
	// How far the other is off to the side changes by `slope` a metre along the leg.
	const slope = cross / cos;
	if (Math.abs(slope) > 1e-12) {
		const near = start + (-spadeWidth - off) / slope;
		const far = start + (spadeWidth - off) / slope;
		from = Math.max(from, Math.min(near, far));
		to = Math.min(to, Math.max(near, far));
	} else if (Math.abs(off) > spadeWidth) return null;
	return to > from ? [from, to] : null;
}

function covered(parts: [number, number][]): number {
	let sum = 0;
	let end = 0;
	for (const [from, to] of parts.sort((a, b) => a[0] - b[0])) {
		if (to <= end) continue;
		sum += to - Math.max(from, end);
		end = to;
	}
	return sum;
}

/** Metres of trench. */
export interface Trench {
	/** Where one cable lies beside another (within a spade's width, side by side) counted once. */
	trench: number;
	/** With each cable in a trench of its own. */
	laid: number;
	/** `trench` with each metre at its rate: where two share a stretch, at the rate of the first. */
	rated: number;
}
/** The trench for cables along these paths; what passes under paving is left out. */
export function trenchLength(dug: readonly Dug[]): Trench {
	const legs = dug.flatMap(legsOf);
	let trench = 0;
	let laid = 0;
	let rated = 0;
	legs.forEach((leg, k) => {
		const parts: [number, number][] = [];
		for (let other = 0; other < k; other++) {
			const part = beside(leg, legs[other]!);
			if (part) parts.push(part);
		}
		const fresh = leg.length - (parts.length === 0 ? 0 : covered(parts));
		laid += leg.length;
		trench += fresh;
		rated += fresh * leg.rate;
	});
	return { trench, laid, rated };
}
