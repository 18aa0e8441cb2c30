/** Where light is measured on the surfaces of a yard. Metres; every grid is the same in a yard and its mirror image. */
import { between, directionAt, inPolygon, moved, pointAt, rightOf, type Point } from '../shared/geometry';
import type { Vector } from '../photometry';
import { wallTop, type Area, type Steps, type Strip, type Wall } from '../site';
import type { Spot } from './probe';

export const up: Vector = { x: 0, y: 0, z: 1 };
const on = ({ x, y }: Point, z: number, normal: Vector): Spot => ({ point: { x, y, z }, normal });

/** Points across a walk, a drive or a tread: the middles of three lanes as wide as one another. */
const across = [-1 / 3, 0, 1 / 3] as const;
/** Rows along a strip, metres apart; on a very long one further apart, so that there are at most so many. */
const walkStep = 0.5;
const driveStep = 1;
const mostRows = 400;

const rowsIn = (length: number, step: number, most: number): number =>
	Math.min(most, Math.max(1, Math.ceil(length / step - 1e-9)));
/** Middles of so many equal parts of a length. */
const middles = (from: number, to: number, parts: number): number[] =>
	Array.from({ length: parts }, (_, i) => from + ((to - from) * (i + 0.5)) / parts);

/** Three lanes, a row every 0.5 m on a walk and every metre on a drive, on the ground. */
export function stripSpots(strip: Strip): Spot[] {
	const rows = rowsIn(strip.length, strip.kind === 'walk' ? walkStep : driveStep, mostRows);
	return middles(0, strip.length, rows).flatMap((at) => rowAcross(strip, at));
}
function rowAcross(strip: Strip, at: number): Spot[] {
	const middle = pointAt(strip.centre, at);
	const right = rightOf(directionAt(strip.centre, at));
	return across.map((share) => on(moved(middle, right, share * strip.width), 0, up));
}
/** Three points across the middle of each tread, from the foot up; each as if its own tread were the ground. */
export const treadSpots = (strip: Strip, steps: Steps): Spot[][] =>
	middles(steps.start, steps.end, Math.max(1, steps.treads)).map((at) => rowAcross(strip, at));

/** A point in each 0.5 m square whose middle lies inside; the centre of a place too small for one. */
export function areaSpots(area: Area): Spot[] {
	const { polygon, centre } = area;
	const xs = polygon.map((p) => Math.abs(p.x - centre.x));
	const ys = polygon.map((p) => Math.abs(p.y - centre.y));
	const [w, h] = [Math.max(0, ...xs), Math.max(0, ...ys)];
	const columns = rowsIn(2 * w, walkStep, 40);
	const rows = rowsIn(2 * h, walkStep, 40);
	const spots = middles(centre.y - h, centre.y + h, rows).flatMap((y) =>
		middles(centre.x - w, centre.x + w, columns).flatMap((x) =>
			inPolygon({ x, y }, polygon) ? [on({ x, y }, 0, up)] : []
		)
	);
	return spots.length > 0 ? spots : [on(centre, 0, up)];
}

/** Cells on a wall, metres at the most; larger on a wall that would have more than so many. */
const wallStep = 0.28;
const mostCells = 600;
const hair = 1e-4;

/** The face of a wall up to its eaves or the slope of its gable, `most` metres at the highest, openings left out. */
export function wallSpots(wall: Wall, most: number): Spot[] {
	const top = Math.min(most, Math.max(wall.height, wall.peak ?? wall.height));
	const step = Math.max(wallStep, Math.sqrt((wall.length * top) / mostCells));
	const columns = rowsIn(wall.length, step, mostCells);
	const rows = rowsIn(top, step, mostCells);
	const normal = { x: wall.outward.x, y: wall.outward.y, z: 0 };
	// A hair off the middles: level with a step light a row would lie on the very edge of its light.
	return middles(0, wall.length, columns).flatMap((at) => {
		const foot = between(wall.from, wall.to, at / wall.length);
		const here = wallTop(wall, at);
		return middles(hair, top + hair, rows).flatMap((z) =>
			z > here || isOpen(wall, at, z) ? [] : [on(foot, z, normal)]
		);
	});
}
/** A cell whose middle lies on the frame counts as wall. */
const edge = 1e-6;
const isOpen = (wall: Wall, at: number, z: number): boolean =>
	wall.openings.some(({ start, end, sill, head }) => at > start + edge && at < end - edge && z > sill && z < head);

/** Upright spots along a line at some heights, `step` metres apart, all facing one way. */
export function uprightSpots(from: Point, to: Point, step: number, heights: readonly number[], facing: Point): Spot[] {
	const length = Math.hypot(to.x - from.x, to.y - from.y);
	const normal = { x: facing.x, y: facing.y, z: 0 };
	return middles(0, 1, rowsIn(length, step, 60)).flatMap((share) =>
		heights.map((z) => on(between(from, to, share), z, normal))
	);
}
