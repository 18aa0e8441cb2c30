/** Beams and the eyes of people on walks and drives, at windows and next door: the part of rule tree.aim that speaks of the line of sight. */
import { between, type Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import { towards, type Vector } from '../photometry';
import type { Site } from '../site';
import { courseOf } from './course';
import { PointGrid } from './grid';

export type Watcher = 'walk' | 'drive' | 'window' | 'neighbour';
export const watcherWords: Record<Watcher, string> = {
	walk: 'on the walk',
	drive: 'on the drive',
	window: 'at a window',
	neighbour: 'next door'
};
interface Eye {
	/** Height above the ground, metres. */
	eye: number;
	watcher: Watcher;
	/** Out of the window that it looks from; absent: it sees all round. */
	facing?: Point;
}
/** Eye height of someone walking or standing at a window of the ground floor, metres (from memory); at the wheel it is the figure of rule drive.sight. */
const standing = 1.6;
/** Of the eyes over the sill of a window, metres: a sill lies 0.9 m above its floor (from memory). */
const overSill = 0.7;
/** Metres between the places of eyes that are looked at. */
const step = 0.75;
/** Metres within which a beam `lean` degrees off upright can come too near to an eye at a height; a walker's unless given. */
const reachOf = (lean: number, eye = standing, clear: number = rules['tree.aim'].figures.clearOfSight): number =>
	eye * Math.tan((Math.min(clear + lean, 80) * Math.PI) / 180);

/** Where eyes may be, by place; those at windows of upper floors apart, since a beam comes near to them from further off. */
export class Sight {
	readonly #low = new PointGrid<Eye>(3);
	readonly #upper = new PointGrid<Eye>(3);
	#highest = 0;

	add(at: Point, seen: Eye): void {
		(seen.eye > standing + 1e-9 ? this.#upper : this.#low).add(at, seen);
		this.#highest = Math.max(this.#highest, seen.eye);
	}
	/** Looks at every eye that a beam from `at`, `lean` degrees off upright, can come too near to; others may be among them. */
	each(at: Point, lean: number, look: (seen: Eye, where: Point) => void): void {
		const seen = (eye: Eye, _: number, where: Point): boolean => {
			look(eye, where);
			return false;
		};
		this.#low.some(at, reachOf(lean), seen);
		if (this.#highest > standing + 1e-9) this.#upper.some(at, reachOf(lean, this.#highest, needed('window')), seen);
	}
}

/** `maxLean`: degrees by which a beam may lean. */
export function sightOf(site: Site, maxLean: number): Sight {
	const sight = new Sight();
	for (const strip of site.strips) {
		const course = courseOf(strip);
		const steps = Math.max(1, Math.ceil(course.length / step));
		const eye = strip.kind === 'drive' ? rules['drive.sight'].figures.eye : standing;
		for (let i = 0; i <= steps; i++)
			sight.add(course.centre((course.length * i) / steps), { eye, watcher: strip.kind });
	}
	for (const wall of site.walls) {
		if (wall.length <= 0) continue;
		for (const { kind, start, end, sill } of wall.openings) {
			if (kind !== 'window') continue;
			const eye = Math.max(standing, sill + overSill);
			const steps = Math.max(1, Math.ceil((end - start) / step));
			for (let i = 0; i <= steps; i++) {
				const at = between(wall.from, wall.to, (start + ((end - start) * i) / steps) / wall.length);
				sight.add(at, { eye, watcher: 'window', facing: wall.outward });
			}
		}
	}
	nextDoor(site, sight, maxLean);
	return sight;
}

/** Someone next door stands right at the boundary, as far along it as a beam from a lit tree could reach. */
function nextDoor(site: Site, sight: Sight, maxLean: number): void {
	const reach = reachOf(maxLean);
	for (const x of [site.leftBoundary, site.rightBoundary]) {
		const rows = new Set<number>();
		for (const { at, light } of site.trees) {
			if (light === 'none' || Math.abs(at.x - x) > reach) continue;
			for (let row = Math.floor((at.y - reach) / step); row <= (at.y + reach) / step; row++) rows.add(row);
		}
		for (const row of rows) sight.add({ x, y: row * step }, { eye: standing, watcher: 'neighbour' });
	}
}

/** Degrees by which a beam clears the eye it comes nearest to, over what the rule asks (below zero: too near), and whose eye; Infinity when nobody is near. */
export function sightOn(
	sight: Sight,
	at: Point,
	height: number,
	aim: Vector
): { spare: number; watcher: Watcher | null } {
	const lamp = { x: at.x, y: at.y, z: height };
	const axis = towards(lamp, aim);
	let spare = Infinity;
	let watcher: Watcher | null = null;
	const lean = (Math.acos(Math.min(1, axis.z)) * 180) / Math.PI;
	sight.each(at, lean, (seen, where) => {
		const x = where.x - lamp.x;
		const y = where.y - lamp.y;
		const z = seen.eye - lamp.z;
		// Nobody sees a lamp round the corner of the wall.
		if (seen.facing && seen.facing.x * x + seen.facing.y * y > 1e-9) return;
		const cosine = (axis.x * x + axis.y * y + axis.z * z) / (Math.sqrt(x * x + y * y + z * z) || 1);
		const over = (Math.acos(Math.min(1, Math.max(-1, cosine))) * 180) / Math.PI - needed(seen.watcher);
		if (over < spare) {
			spare = over;
			watcher = seen.watcher;
		}
	});
	return { spare, watcher };
}
/** Degrees between beam and eye that rule tree.aim asks for. */
const needed = (watcher: Watcher): number => {
	const { clearOfSight, clearOfWindow } = rules['tree.aim'].figures;
	return watcher === 'window' ? clearOfWindow : clearOfSight;
};

/** The first place from which the beam keeps clear of eyes, else the one that keeps furthest, with whose eyes it may meet; null when there is none. */
export function clearestOf(
	sight: Sight,
	places: Iterable<Point>,
	height: number,
	aim: Vector
): { at: Point; watcher: Watcher | null } | null {
	let best: { at: Point; watcher: Watcher | null } | null = null;
	let most = -Infinity;
	for (const at of places) {
		const { spare, watcher } = sightOn(sight, at, height, aim);
		if (spare > 0) return { at, watcher: null };
		if (spare > most + 1e-9) {
			most = spare;
			best = { at, watcher };
		}
	}
	return best;
}
