/** A spot for the sensor, and the way its window looks. Metres in the frame of the site; bearings in degrees clockwise from north. */
import { bearingOf, directionOf, dot, moved, nearestOnSegment, subtract, type Point } from '../../shared/geometry';
import type { Site, Wall } from '../../site';
import type { Pane } from './sky-share';

export interface Spot {
	at: Point;
	on: 'wall' | 'post';
	/** Above the ground. */
	height: number;
	/** Which way its window looks, level. */
	faces: number;
}
/** A sensor told within this of a wall hangs on it. */
export const wallReach = 0.5;
/** The window lies so far off the face of its wall, as the light stage's points do. */
const offFace = 0.01;

/** Metres from a point to the face of a wall, over zero on its outer side; a garden wall has two. */
const before = (at: Point, { from, outward }: Wall): number => dot(subtract(at, from), outward);

/** The wall that a spot hangs on: the nearest within reach, of two alike the one it lies more squarely before. Null where none is. */
export function wallOf(at: Point, walls: readonly Wall[]): Wall | null {
	let found: Wall | null = null;
	let least = wallReach;
	for (const wall of walls) {
		const { distance } = nearestOnSegment(at, wall.from, wall.to);
		const isNearer = distance < least - 1e-6;
		if (isNearer || (distance <= least + 1e-6 && (!found || before(at, wall) > before(at, found)))) {
			found = wall;
			least = Math.min(least, distance);
		}
	}
	return found;
}
/** On a post it looks away from the sun's side of the sky, north in the northern half of the world: common practice, no source. */
export const awayFromSun = (latitude: number): number => (latitude >= 0 ? 0 : 180);

/** Out from its wall; on a garden wall out from the side on which it hangs; on a post, or where no wall is, away from the sun. */
export function facingOf({ at, on }: Pick<Spot, 'at' | 'on'>, site: Site, latitude: number): number {
	const wall = on === 'wall' ? wallOf(at, site.walls) : null;
	if (!wall) return awayFromSun(latitude);
	const isBehind = wall.of === 'garden' && before(at, wall) < 0;
	return bearingOf(isBehind ? { x: -wall.outward.x, y: -wall.outward.y } : wall.outward, site.faces);
}
/** The window of a spot, brought out to the face where the spot was told on its wall's line or a little behind it. */
export function paneOf({ at, on, height, faces }: Spot, site: Site): Pane {
	const look = directionOf(faces, site.faces);
	const wall = on === 'wall' ? wallOf(at, site.walls) : null;
	const side = wall?.of === 'garden' && before(at, wall) < 0 ? -1 : 1;
	const lack = wall ? offFace - side * before(at, wall) : 0;
	const { x, y } = wall && lack > 0 ? moved(at, wall.outward, side * lack) : at;
	return { x, y, z: height, nx: look.x, ny: look.y };
}
