import type { Finding } from '../../shared/findings';
import { distance, distanceToPolygon, lengthInside, nearestOnSegment, type Point } from '../../shared/geometry';
import { rules } from '../../shared/rules';
import { formatLength } from '../../shared/units';
import type { Fixture } from '../../placement';
import type { ExistingLight, Site, Tree, Wall } from '../../site';
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
	underEaves: boolean;
	canopies: Tree[];
	porch: string | null;
	lamps: { fixture: Fixture; distance: number }[];
	existing: { light: ExistingLight; distance: number }[];
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

/**
 * Rules sensor.shade and sensor.light by distance alone: the light that lamps throw on the sensor is not computed here.
 */
export function faultsOf(spot: Spot, site: Site, fixtures: readonly Fixture[]): Faults {
	const { at } = spot;
	const clear = rules['sensor.light'].figures.clear;
	const near = site.walls.filter((wall) => nearestOnSegment(at, wall.from, wall.to).distance <= wallReach);
	return {
		insideHouse: distanceToPolygon(at, site.house) < -0.15,
		offWall: spot.on === 'wall' && near.length === 0,
		underEaves:
			near.some((wall) => wall.of === 'house') &&
			spot.height > site.eaves - rules['sensor.shade'].figures.fromEaves + 1e-9,
		canopies: site.trees.filter((tree) => distance(at, tree.at) < tree.spread / 2 && spot.height < tree.height),
		porch:
			site.areas.find(
				(area) => area.kind === 'porch' && area.sort !== 'open' && distanceToPolygon(at, area.polygon) < 0.1
			)?.id ?? null,
		lamps: fixtures
			.filter((fixture) => distance(at, fixture.at) < clear && !shielded(at, fixture.at, site))
			.map((fixture) => ({ fixture, distance: distance(at, fixture.at) }))
			.sort((a, b) => a.distance - b.distance),
		existing: site.existing
			.map((light) => ({ light, distance: distance(at, light.at) }))
			.filter((one) => one.distance < Math.max(clear, one.light.reach) && !shielded(at, one.light.at, site)),
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
/** The faults of a spot in words, one finding each. */
export function faultFindings(faults: Faults, site: Site, yard: Yard): Finding[] {
	const about = { kind: 'power', id: 'sensor' };
	const found: Finding[] = [];
	const say = (code: string, message: string, rule: 'sensor.shade' | 'sensor.light'): void => {
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
		const lower = Math.max(0, site.eaves - rules['sensor.shade'].figures.fromEaves);
		say(
			'eaves',
			`The sensor would hang close under the eaves and switch the lights on early${early}. Hang it no higher than ${length(lower)}.`,
			'sensor.shade'
		);
	}
	const lamp = faults.lamps[0];
	if (lamp) {
		const labels = faults.lamps.map((one) => one.fixture.label).join(', ');
		const which =
			faults.lamps.length === 1
				? `${labels} stands ${length(lamp.distance)} from it`
				: `${labels} stand near it, the nearest ${length(lamp.distance)} off`;
		say(
			'lamps',
			`Lamplight may reach the sensor and make it switch off or blink: ${which}. Keep ${length(rules['sensor.light'].figures.clear)} clear, or put a corner of the house or a hood between.`,
			'sensor.light'
		);
	}
	for (const { light, distance: metres } of faults.existing) {
		say(
			'existing',
			`${light.name} shines ${length(metres)} from the sensor and may hold the lights off. Move the sensor out of its light, or put a hood or a corner of the house between.`,
			'sensor.light'
		);
	}
	return found;
}
