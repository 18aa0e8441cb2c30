import {
	between,
	distance,
	inPolygon,
	lengthInside,
	lineLength,
	nearestOnSegment,
	subtract,
	turnBetween,
	type Line
} from '../../shared/geometry';
import type { SegmentCrossing } from '../../cable';
import type { Site } from '../../site';
import { turnsWorthSaying } from '../route';
import { followedEdge, type Landmarks } from './landmarks';

/** A stretch of a route between two places at which one stops. */
export interface Stretch {
	path: Line;
	crossing: SegmentCrossing | null;
}
/** A shorter stretch is walked together with its neighbour, metres. */
const shortest = 0.3;
/** As far as the straight line between stops may leave the route, metres: what a cable keeps from paving. */
const mostOff = 0.1;

/** Places in the path at which each crossing begins: the step as long as the crossing, with its middle under the paving. */
function crossingSteps(path: Line, crossings: readonly SegmentCrossing[], site: Site): Map<number, SegmentCrossing> {
	const found = new Map<number, SegmentCrossing>();
	let from = 1;
	for (const crossing of crossings) {
		const ring = site.strips.find((strip) => strip.id === crossing.strip)?.polygon ?? [];
		const step = path.findIndex((b, i) => {
			if (i < from) return false;
			const a = path[i - 1]!;
			return Math.abs(distance(a, b) - crossing.length) < 1e-6 && inPolygon(between(a, b, 0.5), ring);
		});
		if (step < 0) continue;
		found.set(step - 1, crossing);
		from = step + 1;
	}
	return found;
}
const offLine = (path: Line): number =>
	Math.max(0, ...path.slice(1, -1).map((p) => nearestOnSegment(p, path[0]!, path.at(-1)!).distance));

/** Parts of an open stretch: at the turns worth a stake, short ones put to a neighbour where that keeps to the route. */
function partsOf(path: Line): Line[] {
	const turns = new Set(turnsWorthSaying(path));
	const stops = path.flatMap((p, i) => (i === 0 || i === path.length - 1 || turns.has(p) ? [i] : []));
	const part = (k: number, over = 1): Line => path.slice(stops[k]!, stops[k + over]! + 1);
	for (let k = 0; k + 1 < stops.length;) {
		// Left out is the stop whose loss leaves the route least.
		const offs = [k, k + 1].map((stop) =>
			stop > 0 && stop + 1 < stops.length ? offLine(part(stop - 1, 2)) : Infinity
		);
		const [first, second] = offs as [number, number];
		const drop = second < first - 1e-9 ? 1 : 0;
		if (lineLength(part(k)) < shortest && offs[drop]! <= mostOff + 1e-9) {
			stops.splice(k + drop, 1);
			k = Math.max(0, k - 1);
		} else k += 1;
	}
	return stops.slice(1).map((_, k) => part(k));
}

/** A sharper turn is a corner, and gets its stake whatever lies beside it, degrees. */
const corner = 50;
/** Whose trench a stretch lies in that is open already; null where it has to be dug. */
export type Held = (path: Line) => string | null;
/** Parts that go on round the bend of one edge put together: one follows it, and needs no stakes on the way. */
function joined(parts: readonly Line[], landmarks: Landmarks, held: Held): Line[] {
	const found: Line[] = [];
	for (const part of parts) {
		const before = found.at(-1);
		const whole = before && [...before, ...part.slice(1)];
		const turn = before ? Math.abs(turnBetween(stepAt(before, before.length - 1), stepAt(part, 1))) : 0;
		const isOne = before && turn < corner && held(before) === held(part);
		if (whole && isOne && followedEdge(landmarks, whole)) found[found.length - 1] = whole;
		else found.push(part);
	}
	return found;
}
const stepAt = (path: Line, end: number) => subtract(path[end]!, path[end - 1]!);

/**
 * A route from node to node, cut at its bends and at both ends of each crossing. Together the stretches are the path. A
 * crossing that is no step of its own is put to the stretch that runs under its paving.
 */
export function stretchesOf(
	path: Line,
	crossings: readonly SegmentCrossing[],
	landmarks: Landmarks,
	held: Held
): Stretch[] {
	const { site } = landmarks;
	const steps = crossingSteps(path, crossings, site);
	const stretches: Stretch[] = [];
	let start = 0;
	const open = (end: number) => {
		if (end > start)
			for (const part of joined(partsOf(path.slice(start, end + 1)), landmarks, held))
				stretches.push({ path: part, crossing: null });
	};
	for (const [step, crossing] of steps) {
		open(step);
		stretches.push({ path: path.slice(step, step + 2), crossing });
		start = step + 1;
	}
	open(path.length - 1);
	const matched = new Set(steps.values());
	for (const crossing of crossings) {
		if (matched.has(crossing)) continue;
		const under = stretches.find((one) => one.crossing === null && runsUnder(one.path, crossing, site));
		if (under) under.crossing = crossing;
	}
	return stretches;
}
function runsUnder(path: Line, { strip }: SegmentCrossing, site: Site): boolean {
	const ring = site.strips.find(({ id }) => id === strip)?.polygon ?? [];
	return path.some((b, i) => i > 0 && lengthInside(path[i - 1]!, b, ring) > 1e-6);
}
