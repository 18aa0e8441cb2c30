/** The ground of the frame as rings and lines, to find free places in. Metres. */
import { hypot, nearestOnLine, type Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import { sizes, type Frame } from './frame';
import type { KeepClear } from './types';

/** Usual garden pool, and metres of bare ground beyond what water has to be kept clear by. */
export const pool = { along: 8, out: 4, beyond: 1.6 } as const;
const waterClear = rules['water.clear'].figures.clear;

/** Middle of the pool, beside the house on the left; null: there is none. */
export const poolAt = (clear: readonly KeepClear[]): Point | null =>
	clear.includes('pool') ? { x: -(waterClear + pool.beyond + pool.along / 2), y: -5 } : null;

/** Of the street lamp, metres: how far round it one sees one's step. */
export const lampReach = 3.5;
/** Where the existing street lamp stands: over the start of the walk or the mouth of the drive; null: there is none. */
export function lampAt({ walk, drives, street, door }: Frame, clear: readonly KeepClear[]): Point | null {
	if (!clear.includes('street-lamp')) return null;
	const start = [walk[0], drives[0]?.line[0]].find((p) => p && Math.abs(p.y - street) < 1e-6);
	return { x: (start?.x ?? door) - 2, y: street + 0.6 };
}

export interface Ground {
	/** Metres to the house and to water; to the middle of the walk, and of a drive; Infinity where there is none. */
	toHouse: (p: Point) => number;
	toWalk: (p: Point) => number;
	toDrive: (p: Point) => number;
	toWater: (p: Point) => number;
	/** Left edge of the drive beside the house; beyond it cable would have to pass under it. */
	right: number;
}
const toLine = (p: Point, line: readonly Point[]): number => nearestOnLine(p, line)?.distance ?? Infinity;

export function groundOf(frame: Frame, clear: readonly KeepClear[], depth: number): Ground {
	const { width, walk, drives } = frame;
	const at = poolAt(clear);
	const beside = drives.map(({ line }) => Math.max(...line.map(({ x }) => x))).filter((x) => x > width);
	const boundary = clear.includes('neighbour') ? width + neighbourGap : Infinity;
	return {
		toHouse: toRectangle({ x: width / 2, y: -depth / 2 }, width, depth),
		toWalk: (p) => toLine(p, walk),
		toDrive: (p) => Math.min(Infinity, ...drives.map(({ line }) => toLine(p, line))),
		toWater: at ? toRectangle(at, pool.along, pool.out) : () => Infinity,
		right: Math.min(boundary, ...beside.map((x) => x - sizes.drive / 2))
	};
}
/** Metres to a rectangle about a middle; 0 inside. */
const toRectangle =
	({ x, y }: Point, along: number, out: number) =>
	(p: Point): number =>
		hypot(Math.max(0, Math.abs(p.x - x) - along / 2), Math.max(0, Math.abs(p.y - y) - out / 2));

/** From the house, or from the drive beside it, to the boundary next door: usual, and with a neighbour's window close. */
export const neighbourGap = 2.4;
export const usualGap = 6;
