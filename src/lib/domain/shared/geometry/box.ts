import type { Box, Point } from './types';

/** The box round the points; a box of no size at the origin for none. */
export function boxOf(points: Iterable<Point>): Box {
	const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
	for (const p of points) {
		box.minX = Math.min(box.minX, p.x);
		box.minY = Math.min(box.minY, p.y);
		box.maxX = Math.max(box.maxX, p.x);
		box.maxY = Math.max(box.maxY, p.y);
	}
	return box.minX > box.maxX ? { minX: 0, minY: 0, maxX: 0, maxY: 0 } : box;
}
export const padded = (box: Box, by: number): Box => ({
	minX: box.minX - by,
	minY: box.minY - by,
	maxX: box.maxX + by,
	maxY: box.maxY + by
});
/** Whether two boxes share a point. */
export const boxesMeet = (a: Box, b: Box): boolean =>
	a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;
