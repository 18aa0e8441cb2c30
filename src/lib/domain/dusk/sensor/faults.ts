/** What speaks against a spot for the sensor at first sight, before anything is worked out: where it hangs, and what is close. Metres. */
import { distance, distanceToPolygon, lengthInside, nearestOnSegment, type Point } from '../../shared/geometry';
import { rules } from '../../shared/rules';
import type { Fixture } from '../../placement';
import { wallTop, type Area, type Site, type Tree, type Wall } from '../../site';
import { wallReach, type Spot } from './spot';

export interface Faults {
	insideHouse: boolean;
	offWall: boolean;
	/** How high the roof's edge is there; null away from the house. */
	roofEdge: number | null;
	underEaves: boolean;
	canopies: Tree[];
	porch: Area | null;
	/** Lamps nearer than rule sensor.light has it, the nearest first, those behind the house left out. */
	lamps: { fixture: Fixture; distance: number }[];
	window: boolean;
}
const windowReach = 0.6;
/** A house corner thinner than this does not hide a lamp. */
const shieldDepth = 0.1;

const openingNear = (at: Point, wall: Wall): boolean =>
	wall.openings.some((opening) => {
		const along = { x: (wall.to.x - wall.from.x) / wall.length, y: (wall.to.y - wall.from.y) / wall.length };
		const end = (metres: number): Point => ({ x: wall.from.x + along.x * metres, y: wall.from.y + along.y * metres });
		return nearestOnSegment(at, end(opening.start), end(opening.end)).distance < windowReach;
	});
/** A lamp or light whose way to the sensor is barred by the house does not count. */
const shielded = (from: Point, to: Point, site: Site): boolean =>
	site.house.length > 2 && lengthInside(from, to, site.house) > shieldDepth;

/** The lowest edge of the roof over a spot at the walls of the house: a gable's slope where it hangs on a gable. Null away from it. */
export function roofEdgeAt(at: Point, walls: readonly Wall[]): number | null {
	const tops = walls
		.filter(({ of, from, to }) => of === 'house' && nearestOnSegment(at, from, to).distance <= wallReach)
		.map((wall) => wallTop(wall, distance(wall.from, nearestOnSegment(at, wall.from, wall.to).point)));
	return tops.length > 0 ? Math.min(...tops) : null;
}
/** Rule sensor.shade as a rule of thumb, and lamps that are near. What they take and throw: `weigh`. */
export function faultsOf(spot: Omit<Spot, 'faces'>, site: Site, fixtures: readonly Fixture[]): Faults {
	const { at, height } = spot;
	const clear = rules['sensor.light'].figures.clear;
	const near = site.walls.filter((wall) => nearestOnSegment(at, wall.from, wall.to).distance <= wallReach);
	const roofEdge = roofEdgeAt(at, near);
	const isUnder = ({ kind, sort, polygon, under }: Area): boolean =>
		kind === 'porch' && sort !== 'open' && height < (under ?? site.eaves) && distanceToPolygon(at, polygon) < 0.1;
	return {
		insideHouse: distanceToPolygon(at, site.house) < -0.15,
		offWall: spot.on === 'wall' && near.length === 0,
		roofEdge,
		underEaves: roofEdge !== null && height > roofEdge - rules['sensor.shade'].figures.fromEaves + 1e-9,
		canopies: site.trees.filter((tree) => distance(at, tree.at) < tree.spread / 2 && height < tree.height),
		porch: site.areas.find(isUnder) ?? null,
		lamps: fixtures
			.filter((fixture) => distance(at, fixture.at) < clear && !shielded(at, fixture.at, site))
			.map((fixture) => ({ fixture, distance: distance(at, fixture.at) }))
			.sort((a, b) => a.distance - b.distance),
		window: near.some((wall) => wall.length > 0 && openingNear(at, wall))
	};
}
/** Whether it hangs where rule sensor.shade would not have it. */
export const isSheltered = ({ porch, canopies, underEaves }: Faults): boolean =>
	porch !== null || canopies.length > 0 || underEaves;
