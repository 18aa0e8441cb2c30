/** Where a light set by hand shines. Metres above the ground for z. */
import { directionOf, distance, moved, nearestOnLine, nearestOnSegment, type Point } from '../../shared/geometry';
import { rules } from '../../shared/rules';
import type { Site } from '../../site';
import type { AddedFixture, FixtureEdit } from '../../yard';
import type { Pick as Picker } from '../models';
import { heightOf as numberHeight } from '../number';
import type { Fixture, Technique } from '../types';
import { aimUnder } from '../wall-openings';

interface Spot {
	x: number;
	y: number;
	z: number;
}
/** Metres along the beam at which the point is set that a bearing and a tilt aim at. */
const ahead = 3;

/** The point of an aim told by hand, from a lamp at a place and a height. */
export function aimTold(
	aim: NonNullable<FixtureEdit['aim'] | AddedFixture['aim']>,
	at: Point,
	height: number,
	faces: number
): Spot {
	if ('along' in aim) return { x: aim.along, y: aim.out, z: aim.height };
	const tilt = (aim.tilt * Math.PI) / 180;
	return { ...moved(at, directionOf(aim.bearing, faces), ahead * Math.sin(tilt)), z: height + ahead * Math.cos(tilt) };
}

/** The wall that a light shines at: its own, else the nearest. */
function wallFor(site: Site, target: Fixture['target'], at: Point) {
	const away = (wall: Site['walls'][number]): number => nearestOnSegment(at, wall.from, wall.to).distance;
	const own = target.kind === 'wall' ? site.walls.find(({ id }) => id === target.id) : undefined;
	return own ?? site.walls.toSorted((a, b) => away(a) - away(b))[0];
}

/** What a light of this kind aims at from a place when nobody says; null for a head that is not aimed. `planned`: what the plan has it aim at. */
export function aimFrom(
	{ site, pick }: { site: Site; pick: Picker },
	target: Fixture['target'],
	technique: Technique,
	at: Point,
	planned?: Spot
): Spot | null {
	if (target.kind === 'number' && technique !== 'uplight') {
		const number = site.houseNumber.find(({ id }) => id === target.id);
		if (number) return { ...number.at, z: numberHeight(site, number) };
	}
	switch (technique) {
		case 'uplight': {
			const tree = site.trees.find(({ id }) => target.kind === 'tree' && id === target.id);
			return tree ? { ...tree.at, z: Math.max((tree.crownBase + tree.height) / 2, 0.3) } : { ...at, z: ahead };
		}
		case 'wash':
		case 'graze': {
			const wall = wallFor(site, target, at);
			if (!wall) return { ...at, z: ahead };
			const lit = Math.min(wall.height, rules['wall.setback'].figures.mostLit);
			// One that shines up into a gable still does from a step aside.
			if (planned && planned.z > wall.height && wall.peak !== null) return planned;
			const near = nearestOnSegment(at, wall.from, wall.to);
			// Wall washes share a beam and a height.
			const { lampHeight, lamp } = pick({ body: 'wash', strength: 'soft' });
			const beam = { wanted: lit / 2, setback: near.distance, lampHeight, beamAngle: lamp.beamAngle };
			return { ...near.point, z: technique === 'graze' ? lit : aimUnder(wall, near.t * wall.length, beam) };
		}
		case 'step': {
			const near = site.strips
				.flatMap(({ centre }) => nearestOnLine(at, centre) ?? [])
				.toSorted((a, b) => a.distance - b.distance)[0];
			return near ? { ...near.point, z: 0 } : { ...at, z: 0 };
		}
		case 'number': {
			const number = site.houseNumber.toSorted((a, b) => distance(a.at, at) - distance(b.at, at))[0];
			return number ? { ...number.at, z: numberHeight(site, number) } : { ...at, z: 0 };
		}
		default:
			return null;
	}
}

/** Order of walking of a light beside a walk, a drive or its steps. */
export function orderAt(
	site: Site,
	{ kind, id }: Fixture['target'],
	at: Point
): { strip: number; at: number } | undefined {
	const strip = site.strips.findIndex((one) =>
		kind === 'steps' ? one.steps.some((flight) => flight.id === id) : one.kind === kind && one.id === id
	);
	const near = strip < 0 ? null : nearestOnLine(at, site.strips[strip]!.centre);
	return near ? { strip, at: near.at } : undefined;
}
