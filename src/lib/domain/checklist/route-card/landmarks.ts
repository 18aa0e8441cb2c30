import {
	between as midway,
	distance,
	lineLength,
	magnitude,
	nearestOnLine,
	pointAt,
	subtract,
	turnBetween,
	type Line,
	type Point,
	type Polygon
} from '../../shared/geometry';
import { formatLength } from '../../shared/units';
import { areaWords, type Site } from '../../site';
import { calledThe } from '../../yard';

/** As far as a thing may be off to be told by, metres. */
const reach = 1;
/** On it for someone with a tape, metres. */
const touching = 0.02;

/** An edge that one can follow or measure from. */
interface Edge {
	/** Where one goes along it: `along the front walk`. */
	along: string;
	/** Where one measures from it: `the edge of the front walk`. */
	from: string;
	line: Line;
}
/** A point that one can measure from. */
interface Spot {
	from: string;
	at: Point;
	/** Metres to its outside: of a trunk. */
	radius: number;
}
export interface Landmarks {
	edges: Edge[];
	spots: Spot[];
	site: Site;
}
const closed = (ring: Polygon): Line => (ring.length > 0 ? [...ring, ring[0]!] : []);
/** Walls by where they stand: their own names hold numbers that mean nothing on the ground. */
function wallEdges({ walls }: Site): Edge[] {
	return walls.map((wall) => {
		const { id, name, front, from, to } = wall;
		const line = [from, to];
		if (wall.of === 'garden') return { along: `along ${calledThe(name, 'wall')}`, from: calledThe(name, 'wall'), line };
		const side = id === 'left' || id === 'right' ? id : null;
		if (side) return { along: `along the ${side} side of the house`, from: `the ${side} side of the house`, line };
		const what = front ? 'the front of the house' : 'the side of the front that stands out';
		return { along: `along ${what}`, from: what, line };
	});
}
function cornersOf({ house, walls }: Site): Spot[] {
	const front = walls.filter((wall) => wall.of === 'house' && wall.front).flatMap((wall) => [wall.from, wall.to]);
	const xs = front.map((p) => p.x);
	const [left, right] = [Math.min(...xs), Math.max(...xs)];
	const corners = house.map((at) => {
		const isFront = front.some((p) => distance(p, at) < touching);
		const [isLeft, isRight] = [left, right].map((x) => Math.abs(at.x - x) < touching);
		return { at, of: isFront && (isLeft ? 'left' : isRight ? 'right' : '') };
	});
	// Of two that are as near, the one that has a name is told, whichever way the outline runs.
	const ranked = corners.toSorted((a, b) => Number(Boolean(b.of)) - Number(Boolean(a.of)));
	return ranked.map(({ at, of }) => ({
		from: of ? `the ${of} front corner of the house` : 'a corner of the house',
		at,
		radius: 0
	}));
}
export function landmarksOf(site: Site): Landmarks {
	const strips = site.strips.flatMap((strip): Edge[] => {
		const the = calledThe(strip.name, strip.kind);
		return [strip.left, strip.right].map((line) => ({ along: `along ${the}`, from: `the edge of ${the}`, line }));
	});
	const areas = site.areas.map((area): Edge => {
		const the = calledThe(area.name, areaWords[area.kind]);
		return { along: `along the edge of ${the}`, from: `the edge of ${the}`, line: closed(area.polygon) };
	});
	return {
		site,
		edges: [...wallEdges(site), ...strips, ...areas].filter(({ line }) => line.length >= 2),
		spots: [
			...cornersOf(site),
			...site.trees.map((tree) => ({
				from: `the trunk of ${calledThe(tree.name, 'tree')}`,
				at: tree.at,
				radius: tree.trunkDiameter / 2
			}))
		]
	};
}

/** How far off, no finer than a tape held out over grass: centimetres, or half inches. */
const off = (metres: number, { units }: Site): string =>
	formatLength(units === 'metres' ? Math.round(metres * 100) / 100 : metres, units);
const between = (metres: number, from: string, site: Site): string =>
	metres < touching ? `at ${from}` : `${off(metres, site)} from ${from}`;

/** What a point is near: `300 mm from the trunk of the maple`; empty where nothing is within a metre. */
export function nearWords({ spots, edges, site }: Landmarks, at: Point): string {
	const least = <T>(list: readonly T[], off: (one: T) => number): { one: T; off: number } | null =>
		list.reduce<{ one: T; off: number } | null>((best, one) => {
			const metres = Math.max(0, off(one));
			return metres <= reach && (!best || metres < best.off - 1e-9) ? { one, off: metres } : best;
		}, null);
	const spot = least(spots, (one) => distance(one.at, at) - one.radius);
	const edge = least(edges, ({ line }) => nearestOnLine(at, line)?.distance ?? Infinity);
	// A corner or a trunk is one place, an edge is many: a spot is told where an edge is little nearer.
	const found = spot && (!edge || spot.off < edge.off + reach / 2) ? spot : edge;
	return found ? between(found.off, found.one.from, site) : '';
}

/** A path that bends with an edge keeps this near to it, and as even, metres. */
const nearEdge = 0.5;
const evenly = 0.1;
/** A path longer than its ends are apart by this is told as bent. */
const bent = 1.01;
/**
 * The edge that a path follows round its bends, as `alongEdge` has it: every turn and the middle of every step as far off. Null
 * where there is none, or the path has no turn.
 */
export function followedEdge({ edges, site }: Landmarks, path: Line): { words: string; from: string } | null {
	if (path.length < 3) return null;
	const at = path.flatMap((p, i) => (i === 0 ? [p] : [midway(path[i - 1]!, p, 0.5), p]));
	let best: { mean: number; words: string; from: string } | null = null;
	for (const { along, from, line } of edges) {
		const offs = at.map((p) => nearestOnLine(p, line)!.distance);
		const most = Math.max(...offs);
		const mean = offs.reduce((sum, one) => sum + one, 0) / offs.length;
		if (most > nearEdge || most - Math.min(...offs) > evenly || (best && mean > best.mean - 1e-9)) continue;
		best = { mean, from, words: `${along} and round its bend${mean >= 0.05 ? `, ${off(mean, site)} off it` : ''}` };
	}
	return best;
}

/** Angle between a stretch and an edge beyond which it does not go along it, degrees. */
const askew = 25;
/** A shorter stretch goes along nothing, metres; nor one that has less than this share of its length beside the edge. */
const leastAlong = 0.5;
const leastFollowed = 0.63;
const places = [0.05, 0.25, 0.5, 0.75, 0.95] as const;
/**
 * The edge that a stretch goes along, in words: `along the drive, 300 mm off it`, and how one would measure from it; null
 * where there is none.
 */
export function alongEdge({ edges, site }: Landmarks, path: Line): { words: string; from: string } | null {
	const length = lineLength(path);
	if (length < leastAlong) return null;
	const isBent = length > bent * distance(path[0]!, path.at(-1)!);
	const followed = isBent ? followedEdge({ edges, site, spots: [] }, path) : null;
	if (followed) return followed;
	let best: { mean: number; words: string; from: string } | null = null;
	for (const { along, from, line } of edges) {
		const near = places.map((share) => nearestOnLine(pointAt(path, share * length), line)!);
		const offs = near.map((one) => one.distance);
		const mean = offs.reduce((sum, one) => sum + one, 0) / offs.length;
		if (Math.max(...offs) > reach || (best && mean > best.mean - 1e-9)) continue;
		const edge = subtract(near.at(-1)!.point, near[0]!.point);
		// Beside the end of an edge the nearest point stands still.
		if (magnitude(edge) < leastFollowed * distance(path[0]!, path.at(-1)!)) continue;
		if (Math.abs(turnBetween(subtract(path.at(-1)!, path[0]!), edge)) > askew) continue;
		const even = Math.max(...offs) - Math.min(...offs) < 0.1;
		best = { mean, from, words: even && mean >= 0.05 ? `${along}, ${off(mean, site)} off it` : along };
	}
	return best;
}
