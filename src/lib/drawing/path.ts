/** Path data and walking along lines. Metres throughout; printed to the millimetre. */
import type { Box, Line, Point, Polygon } from '../domain/shared/geometry';

/** A number as written into the SVG: to the millimetre, never `-0`. */
export const mm = (value: number): number => Math.round(value * 1000) / 1000 || 0;

export const moveTo = (p: Point): string => `M${mm(p.x)} ${mm(p.y)}`;
export const lineTo = (p: Point): string => `L${mm(p.x)} ${mm(p.y)}`;

/** Open polyline. */
export const openPath = (line: Line): string => line.map((p, index) => (index === 0 ? moveTo(p) : lineTo(p))).join('');
/** Closed ring. */
export const closedPath = (ring: Polygon): string => (ring.length > 0 ? `${openPath(ring)}Z` : '');
export const segmentPath = (a: Point, b: Point): string => openPath([a, b]);
/** Two half turns: SVG cannot draw a full circle with one arc. */
export const circlePath = (at: Point, r: number): string =>
	`M${mm(at.x - r)} ${mm(at.y)}a${mm(r)} ${mm(r)} 0 1 1 ${mm(2 * r)} 0a${mm(r)} ${mm(r)} 0 1 1 ${mm(-2 * r)} 0Z`;
export const rectPath = (box: Box): string =>
	closedPath([
		{ x: box.minX, y: box.minY },
		{ x: box.maxX, y: box.minY },
		{ x: box.maxX, y: box.maxY },
		{ x: box.minX, y: box.maxY }
	]);

export const between = (a: Point, b: Point, t: number): Point => ({
	x: a.x + (b.x - a.x) * t,
	y: a.y + (b.y - a.y) * t
});
export const shifted = (p: Point, dx: number, dy: number): Point => ({ x: p.x + dx, y: p.y + dy });
export const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);
export const lineLength = (line: Line): number =>
	line.reduce((sum, p, index) => (index === 0 ? 0 : sum + distance(line[index - 1]!, p)), 0);

/**
 * The point `d` metres along a line and the unit vector of travel there; clamped to the ends. Null for a line without
 * length.
 */
export function pointAlong(line: Line, d: number): { at: Point; ahead: Point } | null {
	let rest = Math.max(0, d);
	let last: { at: Point; ahead: Point } | null = null;
	for (let i = 1; i < line.length; i++) {
		const a = line[i - 1]!;
		const b = line[i]!;
		const size = distance(a, b);
		if (size === 0) continue;
		const ahead = { x: (b.x - a.x) / size, y: (b.y - a.y) / size };
		if (rest <= size) return { at: between(a, b, rest / size), ahead };
		rest -= size;
		last = { at: b, ahead };
	}
	return last;
}

/** Smallest box round the points; null when there are none. */
export function boxAround(points: readonly Point[]): Box | null {
	const sound = points.filter((p) => Number.isFinite(p.x) && Number.isFinite(p.y));
	if (sound.length === 0) return null;
	const xs = sound.map((p) => p.x);
	const ys = sound.map((p) => p.y);
	return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}
/** Area centroid of a ring (shoelace); its box's middle when the ring has no area. */
export function centroid(ring: Polygon): Point {
	let area = 0;
	let x = 0;
	let y = 0;
	ring.forEach((p, index) => {
		const q = ring[(index + 1) % ring.length]!;
		const cross = p.x * q.y - q.x * p.y;
		area += cross;
		x += (p.x + q.x) * cross;
		y += (p.y + q.y) * cross;
	});
	if (Math.abs(area) > 1e-9) return { x: x / (3 * area), y: y / (3 * area) };
	const box = boxAround(ring);
	return box ? { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 } : { x: 0, y: 0 };
}
