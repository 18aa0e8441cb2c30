import { bearingOf, directionOf, distance, distanceToPolygon, moved, type Point } from '../../shared/geometry';
import { rules } from '../../shared/rules';
import { wallTop, type Site, type Wall } from '../../site';
import type { PowerPoint } from '../types';
import { awayFromSun, type Spot } from './spot';

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

function alongWall(wall: Wall, site: Site): Spot[] {
	const spots: Spot[] = [];
	if (!(wall.length > 2 * inset)) return spots;
	const unit: Point = { x: (wall.to.x - wall.from.x) / wall.length, y: (wall.to.y - wall.from.y) / wall.length };
	const faces = bearingOf(wall.outward, site.faces);
	for (let at = inset; at <= wall.length - inset + 1e-9; at += step) {
		if (wall.openings.some((opening) => at > opening.start - inset && at < opening.end + inset)) continue;
		// Just off the wall, so that the house hides only what stands behind it.
		spots.push({
			at: moved(moved(wall.from, unit, at), wall.outward, 0.05),
			on: 'wall',
			height: sensorHeight(wallTop(wall, at)),
			faces
		});
	}
	return spots;
}
/** Whether a post may stand there: on the lot, off paving and the house, clear of water. */
export function fitsPost(at: Point, site: Site): boolean {
	const clear = rules['water.clear'].figures.clear;
	if (at.x < site.leftBoundary + inset || at.x > site.rightBoundary - inset || at.y > site.street - inset) return false;
	if (distanceToPolygon(at, site.house) < inset) return false;
	if (site.strips.some((strip) => distanceToPolygon(at, strip.polygon) < inset)) return false;
	return site.areas.every(
		(area) => distanceToPolygon(at, area.polygon) >= (area.kind === 'water' ? clear : inset) || area.kind === 'bed'
	);
}
/** A spot to try, and what it costs before its faults: metres of lead, a new post counted as two. */
export interface Candidate {
	spot: Spot;
	lead: number;
	cost: number;
	/** A new post, which may not fit there. */
	isNew: boolean;
}
/** Places to try for the sensor, the cheapest first: on the transformer's own post, along the walls of the house, on posts round it. */
export function candidates(site: Site, supply: PowerPoint, latitude: number): Candidate[] {
	const post = (at: Point): Spot => ({
		at,
		on: 'post',
		height: sensorHeight(site.eaves),
		faces: awayFromSun(latitude)
	});
	const candidate = (spot: Spot, isNew: boolean): Candidate => {
		const lead = distance(spot.at, supply.at);
		return { spot, lead, cost: lead + (isNew ? 2 : 0), isNew };
	};
	const walls = site.walls.filter(({ of }) => of === 'house').flatMap((wall) => alongWall(wall, site));
	const posts = ringRadii.flatMap((radius) =>
		Array.from({ length: 12 }, (_, i) => post(moved(supply.at, directionOf(i * 30, 0), radius)))
	);
	return [
		...(supply.on === 'post' ? [candidate(post(supply.at), false)] : []),
		...walls.map((spot) => candidate(spot, false)).filter(({ lead }) => lead <= reach),
		...posts.map((spot) => candidate(spot, true))
	].sort((a, b) => a.cost - b.cost);
}
