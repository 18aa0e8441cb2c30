/** Beams and the eyes of people on walks and drives: the part of rule tree.aim that speaks of the line of sight. */
import type { Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import { towards, type Vector } from '../photometry';
import type { Site } from '../site';
import { courseOf } from './course';
import { PointGrid } from './grid';

/** Where eyes may be, by place; heights in metres. */
export type Sight = PointGrid<number>;

/** Eye height of someone walking, metres (from memory); at the wheel it is the figure of rule drive.sight. */
const walking = 1.6;
/** Metres within which a beam `lean` degrees off upright can come too near to an eye at the height of a walker's. */
const reachOf = (lean: number): number =>
	walking * Math.tan((Math.min(rules['tree.aim'].figures.clearOfSight + lean, 80) * Math.PI) / 180);

export function sightOf(site: Site): Sight {
	const sight: Sight = new PointGrid(3);
	for (const strip of site.strips) {
		const course = courseOf(strip);
		const steps = Math.max(1, Math.ceil(course.length / 0.75));
		const eye = strip.kind === 'drive' ? rules['drive.sight'].figures.eye : walking;
		for (let i = 0; i <= steps; i++) sight.add(course.centre((course.length * i) / steps), eye);
	}
	return sight;
}

/** Smallest angle, degrees, between a beam and the lines from the lamp to the eyes round it; 180 when nobody is near. */
export function sightAngle(sight: Sight, at: Point, height: number, aim: Vector): number {
	const lamp = { x: at.x, y: at.y, z: height };
	const axis = towards(lamp, aim);
	let least = 180;
	const reach = reachOf((Math.acos(Math.min(1, axis.z)) * 180) / Math.PI);
	sight.some(at, reach, (eye, _, where) => {
		const line = towards(lamp, { x: where.x, y: where.y, z: eye });
		const cosine = Math.min(1, Math.max(-1, axis.x * line.x + axis.y * line.y + axis.z * line.z));
		least = Math.min(least, (Math.acos(cosine) * 180) / Math.PI);
		return false;
	});
	return least;
}

/** The first place from which the beam keeps clear of eyes, else the one that keeps furthest; null when there is none. */
export function clearestOf(
	sight: Sight,
	places: Iterable<Point>,
	height: number,
	aim: Vector
): { at: Point; clear: boolean } | null {
	const { clearOfSight } = rules['tree.aim'].figures;
	let best: Point | null = null;
	let widest = -1;
	for (const at of places) {
		const angle = sightAngle(sight, at, height, aim);
		if (angle > clearOfSight) return { at, clear: true };
		if (angle > widest + 1e-9) {
			widest = angle;
			best = at;
		}
	}
	return best && { at: best, clear: false };
}
