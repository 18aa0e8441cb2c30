/**
 * What lies over one way of looking: the upright half plane from a point along a level unit vector is cut with each obstacle,
 * which covers it from one slope (height ÷ level distance, tan of the elevation) to another. Each cut is exact.
 */
import type { Lid, Screen } from '../../light';
import type { Crown } from './obstacles';

export interface Eye {
	x: number;
	y: number;
	z: number;
}
/** Slopes between which something covers the sky; the parts of the light that pass; how far off it begins, metres. */
export interface Cover {
	low: number;
	high: number;
	leafOn: number;
	leafOff: number;
	taker: number;
	distance: number;
}
type Add = (low: number, high: number, distance: number, leafOn: number, leafOff: number) => void;
/** Nearer than this is where the eye itself is, metres. */
const here = 1e-6;

/** An upright wall covers all from the ground to its top where the way meets it. */
export function coverOfScreen(wall: Screen, eye: Eye, dx: number, dy: number, add: Add): void {
	const across = wall.nx * dx + wall.ny * dy;
	if (across === 0) return;
	const distance = (wall.c - wall.nx * eye.x - wall.ny * eye.y) / across;
	if (!(distance > here)) return;
	const u = ((eye.x + distance * dx - wall.ax) * wall.dx + (eye.y + distance * dy - wall.ay) * wall.dy) / wall.square;
	if (u < 0 || u > 1) return;
	const top = wall.height + (wall.peak - wall.height) * (1 - Math.abs(2 * u - 1));
	if (top > eye.z) add(0, (top - eye.z) / distance, distance, 0, 0);
}
/** A flat roof over the eye's height covers from its far edge to its near one; to straight up where the eye is below it. */
export function coverOfLid({ z, ring }: Lid, eye: Eye, dx: number, dy: number, add: Add): void {
	const above = z - eye.z;
	if (!(above > 0)) return;
	let edges: number[] | null = null;
	for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
		const a = ring[j]!;
		const b = ring[i]!;
		// Which side of the way each end lies on: an edge from one side to the other is met once, so that edges count in pairs.
		const sideA = dx * (a.y - eye.y) - dy * (a.x - eye.x);
		const sideB = dx * (b.y - eye.y) - dy * (b.x - eye.x);
		if (sideA > 0 === sideB > 0) continue;
		const t = sideA / (sideA - sideB);
		(edges ??= []).push(dx * (a.x + t * (b.x - a.x) - eye.x) + dy * (a.y + t * (b.y - a.y) - eye.y));
	}
	if (!edges) return;
	if (edges.length > 2 || edges[0]! > edges[1]!) edges.sort((a, b) => a - b);
	for (let i = 0; i + 1 < edges.length; i += 2) {
		const [from, to] = [edges[i]!, edges[i + 1]!];
		if (to > here) add(above / to, from > here ? above / from : Infinity, Math.max(0, from), 0, 0);
	}
}
/**
 * A crown covers the slopes s for which the ray meets the ellipsoid. Squeezed to a unit ball about the origin the eye is q and the
 * ray v = (dx/r, dy/r, s/h): it meets where (q·v)² ≥ (q² − 1)v², a quadratic in s, and lies ahead where q·v < 0.
 */
export function coverOfCrown(crown: Crown, eye: Eye, dx: number, dy: number, add: Add): void {
	const { radius, half, leafOn, leafOff } = crown;
	const [qx, qy] = [(eye.x - crown.x) / radius, (eye.y - crown.y) / radius];
	const qz = (eye.z - crown.z) / half;
	const level = qx * qx + qy * qy;
	const outside = level + qz * qz - 1;
	if (outside <= 0) return add(0, Infinity, 0, leafOn, leafOff);
	const a = (qx * dx + qy * dy) / radius;
	const b = qz / half;
	// Beside the crown the slopes lie between the roots, under it above the greater one; just below its rim they run up to straight up.
	const square = (Math.abs(1 - level) < 1e-9 ? -1e-9 : 1 - level) / (half * half);
	const root = a * a * b * b - square * (a * a - outside / (radius * radius));
	if (!(root > 0)) return;
	const first = (-a * b - Math.sqrt(root)) / square;
	const second = (-a * b + Math.sqrt(root)) / square;
	if (square > 0) {
		if (qz < 0) add(Math.max(0, second), Infinity, 0, leafOn, leafOff);
	} else if (a + (b * (first + second)) / 2 < 0) {
		const [low, high] = [Math.min(first, second), Math.max(first, second)];
		if (high > 0) add(Math.max(0, low), high, Math.max(0, -a * radius * radius), leafOn, leafOff);
	}
}
