import type { Finding } from '../../shared/findings';
import { distance, distanceToPolygon, lengthInside, nearestOnSegment, type Point } from '../../shared/geometry';
import { rules } from '../../shared/rules';
import { formatLength } from '../../shared/units';
import type { Fixture } from '../../placement';
import { wallTop, type Site, type Tree, type Wall } from '../../site';
import type { Yard } from '../../yard/schema';
import { minutesEarly, shadedShare } from './early';

export interface Spot {
	at: Point;
	on: 'wall' | 'post';
	/** Above the ground, metres. */
	height: number;
}
/** What a spot for the sensor suffers from. Distances in metres. */
export interface Faults {
	insideHouse: boolean;
	offWall: boolean;
	/** How high the roof's edge is there; null away from the house. */
	roofEdge: number | null;
	underEaves: boolean;
	canopies: Tree[];
	porch: string | null;
	/** Lamps nearer than rule sensor.light has it, the nearest first, those behind the house left out. */
	lamps: { fixture: Fixture; distance: number }[];
	window: boolean;
}
const wallReach = 0.5;
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
/** Rule sensor.shade, and lamps that are near. What they throw on the spot: `lamplightOf`. */
export function faultsOf(spot: Spot, site: Site, fixtures: readonly Fixture[]): Faults {
	const { at } = spot;
	const clear = rules['sensor.light'].figures.clear;
	const near = site.walls.filter((wall) => nearestOnSegment(at, wall.from, wall.to).distance <= wallReach);
	const roofEdge = roofEdgeAt(at, near);
	return {
		insideHouse: distanceToPolygon(at, site.house) < -0.15,
		offWall: spot.on === 'wall' && near.length === 0,
		roofEdge,
		underEaves: roofEdge !== null && spot.height > roofEdge - rules['sensor.shade'].figures.fromEaves + 1e-9,
		canopies: site.trees.filter((tree) => distance(at, tree.at) < tree.spread / 2 && spot.height < tree.height),
		porch:
			site.areas.find(
				(area) => area.kind === 'porch' && area.sort !== 'open' && distanceToPolygon(at, area.polygon) < 0.1
			)?.id ?? null,
		lamps: fixtures
			.filter((fixture) => distance(at, fixture.at) < clear && !shielded(at, fixture.at, site))
			.map((fixture) => ({ fixture, distance: distance(at, fixture.at) }))
			.sort((a, b) => a.distance - b.distance),
		window: near.some((wall) => wall.length > 0 && openingNear(at, wall))
	};
}
/** How much too early, in brackets: from the light that a shaded spot gets, which is from memory. */
function earlyInWords(yard: Yard): string {
	const minutes = minutesEarly(yard);
	if (!minutes) return '';
	const [least, most] = [Math.round(minutes.least), Math.round(minutes.most)];
	const span = least === most ? `${least}` : `${least} to ${most}`;
	return ` (by ${span} minutes through the year if ${shadedShare * 100} % of the sky’s light gets there; that share is from memory)`;
}
/** The faults of a spot in words, but for the light on it; one finding each. */
export function shadeFindings(faults: Faults, site: Site, yard: Yard): Finding[] {
	const about = { kind: 'power', id: 'sensor' };
	const found: Finding[] = [];
	const say = (code: string, message: string, rule: 'sensor.shade'): void => {
		found.push({ code: `dusk.sensor-${code}`, rank: 'look', message, about, rule });
	};
	const length = (metres: number): string => formatLength(metres, site.units);
	const early = faults.porch || faults.underEaves || faults.canopies.length > 0 ? earlyInWords(yard) : '';
	if (faults.insideHouse)
		say(
			'inside',
			'The spot for the sensor lies inside the house. Move it to an outside wall or a post that sees the sky.',
			'sensor.shade'
		);
	else if (faults.offWall)
		say(
			'off-wall',
			'The sensor is to hang on a wall, and no wall is near its spot. Move it to a wall or put it on a post.',
			'sensor.shade'
		);
	if (faults.porch)
		say(
			'porch',
			`The sensor would hang under the porch roof and switch the lights on early${early}. Move it out from under the roof.`,
			'sensor.shade'
		);
	for (const tree of faults.canopies) {
		say(
			'canopy',
			`The sensor would hang under the canopy of ${tree.name} and switch the lights on early${early}. Move it out past the drip line, ${length(tree.spread / 2)} from the trunk.`,
			'sensor.shade'
		);
	}
	if (faults.underEaves) {
		const lower = Math.max(0, faults.roofEdge! - rules['sensor.shade'].figures.fromEaves);
		say(
			'eaves',
			`The sensor would hang close under the eaves and switch the lights on early${early}. Hang it no higher than ${length(lower)}.`,
			'sensor.shade'
		);
	}
	return found;
}
