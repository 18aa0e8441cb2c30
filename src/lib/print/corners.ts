/** Check measures for staking out: a point is right when its distances from two corners of the house are right too. */
import type { Point } from '../domain/shared/geometry';
import type { Site } from '../domain/site';

/** Left and right corner of the front, as seen from the street; null until the front is known. */
export function frontCorners(site: Site): { left: Point; right: Point } | null {
	const ends = site.walls.filter((wall) => wall.of === 'house' && wall.front).flatMap((wall) => [wall.from, wall.to]);
	if (ends.length === 0) return null;
	const left = ends.reduce((a, b) => (b.x < a.x ? b : a));
	const right = ends.reduce((a, b) => (b.x > a.x ? b : a));
	return right.x > left.x ? { left, right } : null;
}
