/** Places where a transformer could hang. */
import { distance, distanceToPolygon, moved, nearestOnSegment, type Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Site, Wall } from '../site';
import { atOpening, besideReceptacle, cord, houseWalls, offWall, standsIn, waterGap } from './supply-spot';

/** A place on a wall, or on a post where `wall` is null. */
export interface Place {
	at: Point;
	/** On the wall's face; the post itself. */
	face: Point;
	wall: Wall | null;
	/** Metres from the receptacle, as the cord runs; from the middle of the lights where there is no receptacle. */
	far: number;
	/** What speaks against it; 0: nothing. The dearer, the sooner another place is taken. */
	faults: number;
}

const clear = rules['water.clear'].figures.clear;
/** Places along a wall, metres apart, and from its ends. */
const every = 0.25;
const fromEnd = 0.2;
const mostSteps = 400;
/** Top of a garden wall that carries a transformer hung at the usual height: its box is about 0.4 m tall (common practice, no source). */
const wallTall = 0.86;

const faultsAt = (site: Site, at: Point, wall: Wall | null, along: number): number =>
	(waterGap(site, at) < clear ? 200 : 0) +
	(wall && atOpening(wall, along) ? 100 : 0) +
	20 * standsIn(site, at).length +
	// A garden wall may run up to the house, and a post be told beside it.
	(wall?.of !== 'house' && distanceToPolygon(at, site.house) < offWall ? 500 : 0);

/** Places on a wall no further than `within` from `near`: every quarter of a metre, and either side of the receptacle. */
export function placesOn(site: Site, wall: Wall, near: Point, within: number): Place[] {
	const { from, to, length } = wall;
	const abreast = nearestOnSegment(near, from, to);
	if (abreast.distance > within) return [];
	const at = abreast.t * length;
	const inset = Math.min(fromEnd, length / 2);
	const steps = Math.min(mostSteps, Math.max(1, Math.round(length / every)));
	const regular = Array.from({ length: steps + 1 }, (_, i) => inset + ((length - 2 * inset) * i) / steps);
	const beside = [at - besideReceptacle, at + besideReceptacle].filter(
		(along) => along > inset - 1e-9 && along < length - inset + 1e-9
	);
	const { outward } = wall;
	const side = (near.x - from.x) * outward.x + (near.y - from.y) * outward.y;
	const off = wall.of === 'garden' && side < 0 ? -offWall : offWall;
	return [...regular, ...beside].flatMap((along): Place[] => {
		const t = along / length;
		const face = { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t };
		const far = distance(face, near);
		const spot = moved(face, outward, off);
		// Round an outer corner the box itself may be further off than its wall.
		if (far > within || distance(spot, near) > Math.hypot(within, offWall) + 1e-9) return [];
		return [{ at: spot, face, wall, far, faults: faultsAt(site, spot, wall, along) }];
	});
}
export const placesOnHouse = (site: Site, near: Point, within: number): Place[] =>
	houseWalls(site).flatMap((wall) => placesOn(site, wall, near, within));

const placesOnGardenWalls = (site: Site, near: Point, within: number): Place[] =>
	site.walls
		.filter((wall) => wall.of === 'garden' && wall.length > 0 && wall.height >= wallTall)
		.flatMap((wall) => placesOn(site, wall, near, within));

/** A solid post beside the receptacle, to each of four sides. */
const posts = (site: Site, near: Point): Place[] =>
	[
		[0, 1],
		[1, 0],
		[-1, 0],
		[0, -1]
	].map(([x, y]): Place => {
		const at = { x: near.x + x! * besideReceptacle, y: near.y + y! * besideReceptacle };
		return { at, face: at, wall: null, far: besideReceptacle, faults: faultsAt(site, at, null, 0) };
	});

/** How well a place lies for the plug: beside the receptacle, then towards the middle of the lights. Metres, less is better. */
const fromPlug = ({ far, at }: Place, load: Point): number =>
	Math.abs(far - besideReceptacle) + 0.01 * distance(at, load);

/** The least by `of`; of two alike to a nanometre, the first. */
export function least<T>(list: readonly T[], of: (one: T) => number): T | null {
	let best: T | null = null;
	let lowest = Infinity;
	for (const one of list) {
		const value = of(one);
		if (best && value > lowest - 1e-9) continue;
		best = one;
		lowest = value;
	}
	return best;
}

const isFree = ({ faults }: Place): boolean => faults === 0;

/** Of the places on each wall, those worth weighing: the ends of what is free, and what lies nearest the lights. */
function worthWeighing(places: readonly Place[], load: Point): Place[] {
	const walls = [...new Set(places.map(({ wall }) => wall))];
	return walls.flatMap((wall) => {
		const here = places.filter((place) => place.wall === wall);
		if (!wall) return here;
		const along = ({ face }: Place) => distance(face, wall.from);
		const nominated = [
			least(here, along),
			least(here, (place) => -along(place)),
			least(here, ({ at }) => distance(at, load))
		];
		return [...new Set(nominated)].flatMap((place) => place ?? []);
	});
}

/** By house wall, places free of faults that are worth weighing, however far from the receptacle. */
export function freeByWall(site: Site, load: Point): Place[][] {
	const near = site.receptacle?.at ?? load;
	return houseWalls(site)
		.map((wall) => worthWeighing(placesOn(site, wall, near, Infinity).filter(isFree), load))
		.filter((places) => places.length > 0);
}

/** Where the plan may hang it: `plain` is the place it takes unless another saves enough. */
export interface Choice {
	plain: Place;
	/** Free of faults, and worth weighing against `plain`. */
	others: Place[];
}
function choiceAmong(places: readonly Place[], load: Point): Choice | null {
	const free = places.filter(isFree);
	const plain = least(free, (place) => fromPlug(place, load));
	if (!plain) return null;
	// In an order that a mirror keeps.
	const whole = (place: Place) => Math.round(fromPlug(place, load) * 1e6);
	const others = worthWeighing(free, load).filter((place) => place !== plain);
	return { plain, others: others.toSorted((a, b) => whole(a) - whole(b) || b.at.y - a.at.y) };
}

/** Without a receptacle one has to be fitted anyway, and may be anywhere on the house. */
const besideLights = (site: Site, load: Point): Choice | null => choiceAmong(placesOnHouse(site, load, Infinity), load);

function besideThePlug(site: Site, near: Point, load: Point): Choice | null {
	const onHouse = placesOnHouse(site, near, cord);
	const choice = choiceAmong(onHouse, load) ?? choiceAmong(placesOnGardenWalls(site, near, cord), load);
	// A post in front of the house would stand at a door or a window; away from the house it serves.
	return choice ?? (onHouse.length > 0 ? null : choiceAmong(posts(site, near), load));
}

/** What is left when nothing within the cord is free of faults: the least of them, the cord among them. */
function leastFaulty(site: Site, near: Point, load: Point): Choice | null {
	const beyond = (far: number) => (far > cord ? 50 + 10 * (far - cord) : 0);
	const plain = least(
		placesOnHouse(site, near, Infinity),
		(place) => place.faults + beyond(place.far) + fromPlug(place, load)
	);
	return plain && { plain, others: [] };
}

/**
 * On the house within the cord's reach; else on a garden wall or a post beside the receptacle; else, with faults that are
 * then said, where there are the fewest. `load`: the middle of the lights. Null where there is neither house nor receptacle.
 */
export function choiceOf(site: Site, load: Point): Choice | null {
	if (!site.receptacle) return besideLights(site, load) ?? leastFaulty(site, load, load);
	const near = site.receptacle.at;
	const found = besideThePlug(site, near, load) ?? leastFaulty(site, near, load);
	if (found) return found;
	const post = posts(site, near)[0]!;
	return { plain: post, others: [] };
}
