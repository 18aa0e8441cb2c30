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
/** Where eyes may be, by place; heights in metres. */
export type Sight = PointGrid<{ eye: number; watcher: Watcher }>;

/** Eye height of someone walking or standing at a window of the ground floor, metres (from memory); at the wheel it is the figure of rule drive.sight. */
const standing = 1.6;
/** Metres between the places of eyes that are looked at. */
const step = 0.75;
/** Metres within which a beam `lean` degrees off upright can come too near to an eye at the height of a walker's. */
const reachOf = (lean: number): number =>
	standing * Math.tan((Math.min(rules['tree.aim'].figures.clearOfSight + lean, 80) * Math.PI) / 180);

/** `maxLean`: degrees by which a beam may lean. */
export function sightOf(site: Site, maxLean: number): Sight {
	const sight: Sight = new PointGrid(3);
	for (const strip of site.strips) {
		const course = courseOf(strip);
		const steps = Math.max(1, Math.ceil(course.length / step));
		const eye = strip.kind === 'drive' ? rules['drive.sight'].figures.eye : standing;
		for (let i = 0; i <= steps; i++)
			sight.add(course.centre((course.length * i) / steps), { eye, watcher: strip.kind });
	}
	for (const wall of site.walls) {
		if (wall.length <= 0) continue;
		for (const { kind, start, end } of wall.openings) {
			if (kind !== 'window') continue;
			const steps = Math.max(1, Math.ceil((end - start) / step));
			for (let i = 0; i <= steps; i++) {
				const at = between(wall.from, wall.to, (start + ((end - start) * i) / steps) / wall.length);
				sight.add(at, { eye: standing, watcher: 'window' });
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
	const reach = reachOf((Math.acos(Math.min(1, axis.z)) * 180) / Math.PI);
	sight.some(at, reach, (seen, _, where) => {
		const x = where.x - lamp.x;
		const y = where.y - lamp.y;
		const z = seen.eye - lamp.z;
		const cosine = (axis.x * x + axis.y * y + axis.z * z) / (Math.sqrt(x * x + y * y + z * z) || 1);
		const over = (Math.acos(Math.min(1, Math.max(-1, cosine))) * 180) / Math.PI - needed(seen.watcher);
		if (over < spare) {
			spare = over;
			watcher = seen.watcher;
		}
		return false;
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
