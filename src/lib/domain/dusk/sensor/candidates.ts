import { directionOf, distance, distanceToPolygon, moved, type Point } from '../../shared/geometry';
import { rules } from '../../shared/rules';
import type { Site, Wall } from '../../site';
import type { PowerPoint } from '../types';
import type { Spot } from './faults';

/** Within easy reach, and well below the eaves; metres. */
const usualHeight = 1.5;
const leastHeight = 0.5;
const step = 0.5;
/** Clear of corners and of the frames of openings, metres. */
const inset = 0.3;
const reach = 15;
const ringRadii = [1, 2, 3, 4.5, 6] as const;

export const sensorHeight = (site: Site): number =>
	Math.max(leastHeight, Math.min(usualHeight, site.eaves - rules['sensor.shade'].figures.fromEaves));

function alongWall(wall: Wall, height: number): Spot[] {
	const spots: Spot[] = [];
	if (!(wall.length > 2 * inset)) return spots;
	const unit: Point = { x: (wall.to.x - wall.from.x) / wall.length, y: (wall.to.y - wall.from.y) / wall.length };
	for (let at = inset; at <= wall.length - inset + 1e-9; at += step) {
		if (wall.openings.some((opening) => at > opening.start - inset && at < opening.end + inset)) continue;
		// Just off the wall, so that the house hides only what stands behind it.
		spots.push({ at: moved(moved(wall.from, unit, at), wall.outward, 0.05), on: 'wall', height });
	}
	return spots;
}
function fitForPost(at: Point, site: Site): boolean {
	const clear = rules['water.clear'].figures.clear;
	if (at.x < site.leftBoundary + inset || at.x > site.rightBoundary - inset || at.y > site.street - inset) return false;
	if (distanceToPolygon(at, site.house) < inset) return false;
	if (site.strips.some((strip) => distanceToPolygon(at, strip.polygon) < inset)) return false;
	return site.areas.every(
		(area) => distanceToPolygon(at, area.polygon) >= (area.kind === 'water' ? clear : inset) || area.kind === 'bed'
	);
}
/** Places to try for the sensor: along the walls of the house, on the transformer's own post, on posts round it. */
export function candidates(site: Site, supply: PowerPoint): Spot[] {
	const height = sensorHeight(site);
	const walls = site.walls
		.filter((wall) => wall.of === 'house')
		.flatMap((wall) => alongWall(wall, height))
		.filter((spot) => distance(spot.at, supply.at) <= reach);
	const own: Spot[] = supply.on === 'post' ? [{ at: supply.at, on: 'post', height }] : [];
	const posts: Spot[] = ringRadii.flatMap((radius) =>
		Array.from({ length: 12 }, (_, i) => moved(supply.at, directionOf(i * 30, 0), radius))
			.filter((at) => fitForPost(at, site))
			.map((at) => ({ at, on: 'post' as const, height }))
	);
	return [...own, ...walls, ...posts];
}
