/**
 * Cheapest ways over weighted ground by other means than the plan's: the rate at a place by looking what lies there, its
 * integral by sampling, and Dijkstra's algorithm over a fine grid. No visibility, no corners, no intervals.
 */
import { inPolygon, segmentDistance, sidesOf, type Point } from '../shared/geometry';
import type { LayingCosts } from './costs';
import type { Bed } from './lawn-edges';
import type { Obstacle } from './obstacles';

export interface Weighted {
	obstacles: readonly Obstacle[];
	beds: readonly Bed[];
	roots: readonly { at: Point; radius: number }[];
	/** Waters grown by the distance of rule water.clear, corners square: a little more than a tape would mark. */
	waters: readonly (readonly Point[])[];
}
const followed = new Set(['house', 'porch', 'seating', 'paved', 'walk', 'drive', 'wall']);

const boxHolds = (p: Point, ring: readonly Point[], by: number): boolean =>
	ring.some((q) => q.x >= p.x - by) &&
	ring.some((q) => q.x <= p.x + by) &&
	ring.some((q) => q.y >= p.y - by) &&
	ring.some((q) => q.y <= p.y + by);

/** Whether a line of unit direction (ux, uy) follows the side a-b at p: within `reach` of it, ends stretched by `beyond`, and 10° of its direction. */
function follows(p: Point, ux: number, uy: number, a: Point, b: Point, reach: number, beyond: number): boolean {
	const length = Math.hypot(b.x - a.x, b.y - a.y);
	const [sx, sy] = [(b.x - a.x) / length, (b.y - a.y) / length];
	if (Math.abs(sx * uy - sy * ux) > 0.1736) return false;
	const along = sx * (p.x - a.x) + sy * (p.y - a.y);
	const off = Math.abs(sx * (p.y - a.y) - sy * (p.x - a.x));
	return off <= reach + 1e-7 && along >= -beyond - 1e-7 && along <= length + beyond + 1e-7;
}
/** What a metre at p costs to a line of unit direction (ux, uy). */
function rateAt(
	{ obstacles, beds, roots, waters }: Weighted,
	costs: LayingCosts,
	p: Point,
	ux: number,
	uy: number
): number {
	const wet = waters.filter((ring) => boxHolds(p, ring, 0) && inPolygon(p, ring)).length;
	const base = (): number => {
		if (roots.some(({ at, radius }) => Math.hypot(p.x - at.x, p.y - at.y) < radius)) return costs.amongRoots;
		if (
			beds.some(
				({ shape, edges }) =>
					boxHolds(p, shape.ring, 0.2) && edges.some(({ from, to }) => follows(p, ux, uy, from, to, 0.15, 0))
			)
		)
			return costs.lawnEdge;
		const isAlong = ({ kind, ring, clearance }: Obstacle) =>
			followed.has(kind) &&
			boxHolds(p, ring, 1) &&
			sidesOf(ring).some(([a, b]) => follows(p, ux, uy, a, b, 0.6, clearance));
		if (obstacles.some(isAlong)) return costs.alongEdge;
		if (beds.some(({ shape }) => inPolygon(p, shape.ring))) return costs.inBed;
		return costs.metre;
	};
	return base() + wet * costs.nearWater;
}
/** Metres of open ground that the line a-b is worth, by `samples` places along it. */
export function sampledCost(ground: Weighted, costs: LayingCosts, a: Point, b: Point, samples: number): number {
	const length = Math.hypot(b.x - a.x, b.y - a.y);
	if (length < 1e-9) return 0;
	const [ux, uy] = [(b.x - a.x) / length, (b.y - a.y) / length];
	let sum = 0;
	for (let k = 0; k < samples; k++) {
		const t = ((k + 0.5) / samples) * length;
		sum += rateAt(ground, costs, { x: a.x + ux * t, y: a.y + uy * t }, ux, uy);
	}
	return (sum / samples) * length;
}
/** Metres from a segment to an obstacle's boundary, below zero where it runs inside; far off, a little more than its clearance. */
export function gap(o: Obstacle, a: Point, b: Point): number {
	const by = o.clearance + 0.01;
	if (Math.min(a.x, b.x) > o.maxX + by || Math.max(a.x, b.x) < o.minX - by) return by;
	if (Math.min(a.y, b.y) > o.maxY + by || Math.max(a.y, b.y) < o.minY - by) return by;
	if (o.round) return segmentDistance(a, b, o.round.at, o.round.at) - o.round.radius;
	if (o.ring.length > 2 && inPolygon(a, o.ring)) return -1;
	return Math.min(...sidesOf(o.ring).map(([p, q]) => segmentDistance(a, b, p, q)));
}

/**
 * Steps to 16 neighbours: a way in any direction is made of two of them no more than 26.57° apart, so that over even ground
 * the grid's is at most 1 / cos 13.28° = 1.0275 times as long.
 */
const steps: readonly [number, number][] = [
	[1, 0],
	[0, 1],
	[1, 1],
	[1, -1],
	[2, 1],
	[2, -1],
	[1, 2],
	[1, -2]
];
export interface Lattice {
	/** Cells along each side of the square from (0, 0), and metres of each. */
	cells: number;
	cell: number;
}
/** Cost of the cheapest way from grid point to grid point; Infinity where the grid has none. Never less than the cheapest of all, but for sampling. */
export function cheapestOverGrid(
	ground: Weighted,
	costs: LayingCosts,
	from: Point,
	to: Point,
	{ cells, cell }: Lattice
): number {
	const n = cells + 1;
	const at = (k: number): Point => ({ x: (k % n) * cell, y: Math.floor(k / n) * cell });
	const links: [number, number][][] = Array.from({ length: n * n }, () => []);
	for (let k = 0; k < n * n; k++) {
		for (const [dx, dy] of steps) {
			const [x, y] = [(k % n) + dx, Math.floor(k / n) + dy];
			if (x < 0 || y < 0 || x >= n || y >= n) continue;
			const [a, b] = [at(k), at(y * n + x)];
			if (!ground.obstacles.every((o) => gap(o, a, b) >= o.clearance - 1e-6)) continue;
			const cost = sampledCost(ground, costs, a, b, 4);
			links[k]!.push([y * n + x, cost]);
			links[y * n + x]!.push([k, cost]);
		}
	}
	const reach = new Float64Array(n * n).fill(Infinity);
	const done = new Uint8Array(n * n);
	const index = (p: Point) => Math.round(p.y / cell) * n + Math.round(p.x / cell);
	reach[index(from)] = 0;
	for (;;) {
		let near = -1;
		for (let k = 0; k < n * n; k++) if (!done[k] && reach[k]! < (near < 0 ? Infinity : reach[near]!)) near = k;
		if (near < 0 || near === index(to)) return reach[index(to)]!;
		done[near] = 1;
		for (const [next, cost] of links[near]!) reach[next] = Math.min(reach[next]!, reach[near]! + cost);
	}
}
