/** Where the receptacle is put: so far from the nearest light, along the ground, as was answered. Metres. */
import { distance, hypot, moved, towards, type Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Frame } from './frame';
import { openingsOf } from './house';

/** How near to the answer is near enough. */
export const near = 1.5;
/** A little nearer than was answered, since cable takes slack at both ends and the way up to the terminals, less what the transformer's cord saves. */
const slack = 0.6;
/** Places tried along a wall, metres apart, the first so far from its corner, none further back than `furthest`. */
const grain = 0.25;
const fromCorner = 0.3;
const furthest = 56;
/** Room beside a door or a window for receptacle and transformer, metres. */
const clear = rules['wall.openings'].figures.clear + 0.1;

export interface Receptacle {
	at: Point;
	on: 'front' | 'side' | 'garage';
	/** Metres to the nearest light along the ground, as expected; null: nothing is lit. */
	way: number | null;
}
interface Wall {
	on: Receptacle['on'];
	from: Point;
	/** Where it may run to. */
	to: Point;
	/** Whether something may hang so far from `from`. */
	free: (along: number) => boolean;
}
/** Walls that may carry it: the left side of the house and the front that is not lit, or the garage where that is beyond the drive. */
function wallsOf(frame: Frame): Wall[] {
	const { garage, wall, width } = frame;
	const always = (): boolean => true;
	if (garage) return [{ on: 'garage', from: garage.from, to: { x: garage.from.x, y: -furthest }, free: always }];
	const openings = openingsOf(frame);
	const free = (along: number): boolean =>
		openings.every((one) => wall + along < one.along - clear || wall + along > one.along + one.width + clear);
	return [
		{ on: 'side', from: { x: 0, y: 0 }, to: { x: 0, y: -furthest }, free: always },
		{ on: 'front', from: { x: wall, y: 0 }, to: { x: width, y: 0 }, free }
	];
}

/** Metres along the ground from a place on a wall; from the left side of the house round its front corner. Infinity across the walk, where cable goes another way. */
function alongGround(from: Point, to: Point, on: Receptacle['on'], { walk, door }: Frame): number {
	if (on === 'front' && walk.length > 0 && from.x < door !== to.x < door) return Infinity;
	if (on !== 'side' || to.x <= 0) return distance(from, to);
	const corner = { x: 0, y: 0 };
	return distance(from, corner) + distance(corner, to);
}

/** The receptacle for an answer; where nothing is lit, beside the front's left corner. */
export function receptacleFor(asked: number, frame: Frame, lights: readonly Point[]): Receptacle {
	const wayFrom = (at: Point, on: Receptacle['on']): number | null =>
		lights.length === 0 ? null : Math.min(...lights.map((light) => alongGround(at, light, on, frame)));
	const places = wallsOf(frame).flatMap(({ on, from, to, free }): Receptacle[] => {
		const count = Math.floor((distance(from, to) - 2 * fromCorner) / grain);
		return Array.from({ length: Math.max(0, count) }, (_, k) => fromCorner + k * grain)
			.filter(free)
			.map((along) => moved(from, towards(from, to), along))
			.map((at) => ({ at, on, way: wayFrom(at, on) }));
	});
	// Of places as good, the one nearest the front's left corner.
	const worse = ({ at, way }: Receptacle): number =>
		Math.abs((way ?? asked) + slack - asked) + 0.01 * hypot(at.x, at.y);
	return places.reduce((best, one) => (worse(one) < worse(best) - 1e-9 ? one : best));
}
