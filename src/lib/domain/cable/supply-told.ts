/** The transformer where the person wants it. */
import { distanceToPolygon, moved, nearestOnSegment, type Point } from '../shared/geometry';
import type { Assumption, Finding } from '../shared/findings';
import { formatLength } from '../shared/units';
import type { Site, Wall } from '../site';
import type { Yard } from '../yard';
import { supplyFinding } from './supply-findings';
import { aboutTransformer, houseWalls, offWall, suggestedHeight, type SupplySpot } from './supply-spot';

/** The person's spot, put just outside the wall it hangs on. */
export function toldSpot(site: Site, yard: Yard): SupplySpot | null {
	const told = yard.power.transformer;
	if (!told || told === 'suggest') return null;
	const point = { x: told.at.along, y: told.at.out };
	const findings: Finding[] = [];
	const assumptions: Assumption[] = [];
	const depth = site.house.length > 2 ? -distanceToPolygon(point, site.house) : -Infinity;
	if (depth > 0.3) {
		const message = `The transformer's spot lies ${formatLength(depth, site.units)} inside the house. The plan hangs it outside on the nearest wall; check that this is where you want it.`;
		findings.push(supplyFinding('inside', 'stop', 'supply.height', message));
	}
	let at = point;
	if (told.on === 'wall' || depth > 0) {
		const walls = told.on === 'wall' && depth <= 0 ? site.walls : houseWalls(site);
		const nearest = walls
			.filter((wall) => wall.length > 0)
			.map((wall) => ({ wall, near: nearestOnSegment(point, wall.from, wall.to) }))
			.reduce<{ wall: Wall; near: { point: Point; distance: number } } | null>(
				(best, one) => (best && best.near.distance <= one.near.distance ? best : one),
				null
			);
		if (nearest && (nearest.near.distance <= 1 || depth > 0)) {
			const { outward, from } = nearest.wall;
			// A garden wall is hung on from the side the spot lies; a house wall only from outside.
			const side = (point.x - from.x) * outward.x + (point.y - from.y) * outward.y;
			at = moved(nearest.near.point, outward, nearest.wall.of === 'garden' && side < 0 ? -offWall : offWall);
		} else if (told.on === 'wall') {
			const message = `No wall stands within ${formatLength(1, site.units)} of the transformer's spot. Hang it on a wall, or on a solid post.`;
			findings.push(supplyFinding('no-wall', 'look', 'supply.height', message));
		}
	}
	if (told.height === undefined) {
		const message = `The bottom of the transformer is taken to be ${formatLength(suggestedHeight, site.units)} above the ground.`;
		assumptions.push({ path: 'power.transformer.height', message, about: aboutTransformer });
	}
	return {
		at,
		on: told.on,
		mountHeight: told.height ?? suggestedHeight,
		suggested: false,
		because: [],
		findings,
		assumptions
	};
}
