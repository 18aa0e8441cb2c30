import { directionOf, distance, distanceToPolygon, moved, type Point } from '../../shared/geometry';
import { rules } from '../../shared/rules';
import { wallTop, type Site, type Wall } from '../../site';
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

/** Height for a sensor below a roof whose edge is so high there. */
export const sensorHeight = (top: number): number =>
	Math.max(leastHeight, Math.min(usualHeight, top - rules['sensor.shade'].figures.fromEaves));

function alongWall(wall: Wall): Spot[] {
	const spots: Spot[] = [];
	if (!(wall.length > 2 * inset)) return spots;
	const unit: Point = { x: (wall.to.x - wall.from.x) / wall.length, y: (wall.to.y - wall.from.y) / wall.length };
	for (let at = inset; at <= wall.length - inset + 1e-9; at += step) {
		if (wall.openings.some((opening) => at > opening.start - inset && at < opening.end + inset)) continue;
		// Just off the wall, so that the house hides only what stands behind it.
		spots.push({
			at: moved(moved(wall.from, unit, at), wall.outward, 0.05),
			on: 'wall',
			height: sensorHeight(wallTop(wall, at))
		});
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
/**
 * Places to try for the sensor, one after the other: on the transformer's own post, along the walls of the house, on posts
 * round it. Whether a post may stand there is asked only of those that `isWanted`.
 */
export function* candidates(site: Site, supply: PowerPoint, isWanted: (spot: Spot) => boolean): Generator<Spot> {
	const height = sensorHeight(site.eaves);
	if (supply.on === 'post') {
		const own: Spot = { at: supply.at, on: 'post', height };
		if (isWanted(own)) yield own;
	}
	for (const wall of site.walls)
		if (wall.of === 'house')
			for (const spot of alongWall(wall)) if (distance(spot.at, supply.at) <= reach && isWanted(spot)) yield spot;
	for (const radius of ringRadii)
		for (let i = 0; i < 12; i++) {
			const post: Spot = { at: moved(supply.at, directionOf(i * 30, 0), radius), on: 'post', height };
			if (isWanted(post) && fitForPost(post.at, site)) yield post;
		}
}
