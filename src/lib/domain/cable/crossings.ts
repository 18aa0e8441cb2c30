import {
	directionAt,
	distance,
	leftOf,
	moved,
	nearestOnLine,
	pointAt,
	segmentMeeting,
	sidesOf,
	type Point
} from '../shared/geometry';
import type { Crossing, Site, Strip } from '../site';
import { beyondEdge, type Ground } from './ground';
import { boundaryDistance, insideOf, nearestOn, type Obstacle } from './obstacles';
import type { SegmentCrossing } from './types';

/** A way under paving, from one side to the other. */
export interface Portal {
	from: Point;
	to: Point;
	/** Index of the strip among the ground's obstacles. */
	obstacle: number;
	crossing: SegmentCrossing;
}

/** Metres between bores that might be made, and from them to the ends of the strip. */
const boreEvery = 1.5;
const boreAtLeast = 4;
const fromEnds = 0.5;
const mostBores = 40;
/** Only terminals this near to a strip suggest a place for a bore. */
const suggests = 4;

/** Stations, metres along the centre line, at which a bore could be made: beside terminals and every few metres. */
function boreStations(strip: Strip, terminals: readonly Point[]): number[] {
	const regular = Math.max(1, Math.round(strip.length / boreAtLeast));
	const wanted = Array.from({ length: regular }, (_, i) => ((i + 0.5) * strip.length) / regular);
	for (const p of terminals) {
		const near = nearestOnLine(p, strip.centre);
		if (near && near.distance < strip.width / 2 + suggests) wanted.push(near.at);
	}
	const every = Math.max(boreEvery, strip.length / mostBores);
	const kept: number[] = [];
	for (const at of wanted.toSorted((a, b) => a - b)) {
		if (at < fromEnds || at > strip.length - fromEnds) continue;
		if (strip.steps.some((flight) => at > flight.start - fromEnds && at < flight.end + fromEnds)) continue;
		if (kept.length === 0 || at - kept.at(-1)! >= every - 1e-9) kept.push(at);
	}
	return kept;
}

/** Its two ends in open ground, moved clear of the edge, or what keeps them from it. */
type Ends = { from: Point; to: Point; obstacle: number } | { blockedBy: string };
function endsIn(ground: Ground, strip: Strip, left: Point, right: Point): Ends {
	const obstacle = ground.obstacles.findIndex((o) => o.kind === strip.kind && o.id === strip.id);
	const own = ground.obstacles[obstacle];
	if (!own) return { blockedBy: strip.name };
	const outside = (p: Point) => {
		const near = nearestOn(own, p);
		return near.inside || near.distance < beyondEdge ? moved(near.at, near.outward, beyondEdge) : p;
	};
	const from = outside(left);
	const to = outside(right);
	if ([from, to].every((p) => ground.free(p, -1)) && ground.open(from, to, null, null, obstacle))
		return { from, to, obstacle };
	const inTheWay = ground.obstacles.find(
		(o) =>
			o !== own &&
			([from, to].some((p) => insideOf(o, p.x, p.y) || boundaryDistance(o, p.x, p.y) < o.clearance) ||
				segmentsOf(o).some(([p, q]) => segmentMeeting(from, to, p, q) !== null))
	);
	return { blockedBy: (inTheWay ?? own).name || (inTheWay ?? own).kind };
}
const segmentsOf = ({ ring }: Obstacle) => (ring.length < 2 ? [] : sidesOf(ring));

/** Declared crossings and bores that could be made, both ends in open ground and nothing else in between. */
export function portalsOf(site: Site, ground: Ground, terminals: readonly Point[]): Portal[] {
	const portals: Portal[] = [];
	const add = (strip: Strip, left: Point, right: Point, crossing: string | null, kind: SegmentCrossing['kind']) => {
		const ends = endsIn(ground, strip, left, right);
		if ('blockedBy' in ends) return;
		const { from, to, obstacle } = ends;
		const length = distance(from, to);
		portals.push({ from, to, obstacle, crossing: { strip: strip.id, crossing, kind, length } });
	};
	for (const strip of site.strips) {
		for (const c of strip.crossings) add(strip, c.left, c.right, c.id, c.kind);
		for (const at of boreStations(strip, terminals)) {
			const middle = pointAt(strip.centre, at);
			const left = leftOf(directionAt(strip.centre, at));
			const reach = strip.width / 2 + beyondEdge;
			add(strip, moved(middle, left, reach), moved(middle, left, -reach), null, 'bore');
		}
	}
	return portals;
}

/** A crossing that was declared and cannot be used, and what its ends come out in or too near to. */
export interface DeadCrossing {
	strip: Strip;
	crossing: Crossing;
	blockedBy: string;
}
/** Declared crossings whose ends are not both in open ground within the lot, or with something else in between. */
export const deadCrossings = (site: Site, ground: Ground): DeadCrossing[] =>
	site.strips.flatMap((strip) =>
		strip.crossings.flatMap((crossing) => {
			const ends = endsIn(ground, strip, crossing.left, crossing.right);
			if ('blockedBy' in ends) return [{ strip, crossing, blockedBy: ends.blockedBy }];
			const { leftBoundary, rightBoundary, street } = site;
			const outside = [ends.from, ends.to].some(({ x, y }) => x < leftBoundary || x > rightBoundary || y > street);
			return outside ? [{ strip, crossing, blockedBy: '' }] : [];
		})
	);
