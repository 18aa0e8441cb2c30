/**
 * Two edges from which a person finds a place with a tape: one to measure from along the front, one to measure out from. The
 * corners of the front and the house front serve everywhere; an edge that is much nearer, and that the tape meets square, is better.
 */
import { distanceToPolygon, nearestOnSegment, sidesOf, type Line, type Point } from '../../domain/shared/geometry';
import { formatLength } from '../../domain/shared/units';
import { areaWords, distanceToStrip, type Site } from '../../domain/site';
import { calledThe, type Units } from '../../domain/yard';
import { keyOf } from './thing';
import type { FromEdge } from './types';

/** An edge counts as much nearer below this part of the usual way; and not at all beyond so many metres: common practice, no source. */
const nearer = 0.5;
const farthest = 3;
/** The tape is square when it runs within this angle of along the front, or of straight out from it: 15 degrees. */
const square = Math.cos((15 * Math.PI) / 180);
/** On it for someone with a tape, metres. */
const touching = 0.005;

interface Edge {
	/** Key of the thing it is an edge of. */
	key: string;
	/** `the edge of the front walk`. */
	name: string;
	sides: readonly (readonly [Point, Point])[];
	/** Metres inside it, below zero outside; null where it has no inside. */
	inside: ((p: Point) => number) | null;
}
export interface Edges {
	site: Site;
	/** x of the corners of the front, from left to right; one while the house is not told. */
	corners: { x: number; name: string }[];
	edges: Edge[];
}
const stretches = (line: Line): [Point, Point][] => line.slice(1).map((b, i) => [line[i]!, b]);

/** The edges of a site, made once for all its things. */
export function edgesOf(site: Site): Edges {
	const strips = site.strips.map((strip): Edge => ({
		key: keyOf(strip.kind, strip.id),
		name: `the edge of ${calledThe(strip.name, strip.kind)}`,
		sides: [...stretches(strip.left), ...stretches(strip.right)],
		inside: (p) => -distanceToStrip(p, strip)
	}));
	const areas = site.areas
		// Round edges are met square nowhere twice.
		.filter(({ kind, sort }) => kind !== 'seating' && (kind !== 'water' || sort === 'pool'))
		.map((area): Edge => ({
			key: keyOf(area.kind, area.id),
			name: `the edge of ${calledThe(area.name, areaWords[area.kind])}`,
			sides: sidesOf(area.polygon),
			inside: (p) => -distanceToPolygon(p, area.polygon)
		}));
	const walls = site.walls
		.filter((wall) => wall.of === 'garden')
		.map((wall): Edge => ({
			key: keyOf('wall', wall.id),
			name: calledThe(wall.name, 'garden wall'),
			sides: [[wall.from, wall.to]],
			inside: null
		}));
	const xs = site.walls.filter(({ front }) => front).flatMap(({ from, to }) => [from.x, to.x]);
	return {
		site,
		corners: [
			{ x: 0, name: 'the left corner of the front' },
			...(xs.length > 0 ? [{ x: Math.max(...xs), name: 'the right corner of the front' }] : [])
		],
		edges: [...strips, ...areas, ...walls]
	};
}

interface Found {
	/** From the edge to the point: along the front, and out. */
	x: number;
	y: number;
	distance: number;
}
/** The nearest place of an edge, where a tape from it meets the edge square; null where it meets a corner. */
function squareOn({ sides }: Edge, p: Point): Found | null {
	let best: (Found & { t: number }) | null = null;
	for (const [a, b] of sides) {
		const { point, t, distance } = nearestOnSegment(p, a, b);
		if (best && distance >= best.distance - 1e-9) continue;
		best = { x: p.x - point.x, y: p.y - point.y, distance, t };
	}
	return best && best.t > 1e-6 && best.t < 1 - 1e-6 ? best : null;
}
const worded = (distance: number, edge: string, words: string): FromEdge => ({ edge, distance, words });

function usualAlong({ corners }: Edges, p: Point, units: Units): FromEdge {
	// The nearer corner: on the right half of a front one measures from the right. Of equals the left.
	const { x, name } = corners.reduce((a, b) => (Math.abs(p.x - b.x) < Math.abs(p.x - a.x) - 1e-9 ? b : a));
	const off = p.x - x;
	const far = Math.abs(off);
	if (far < touching) return worded(far, name, `level with ${name}`);
	return worded(far, name, `${formatLength(far, units)} ${off > 0 ? 'right' : 'left'} of ${name}`);
}
function usualOut({ site }: Edges, p: Point, units: Units): FromEdge {
	const fronts = site.walls.filter(({ front }) => front);
	const flush = fronts.every(({ from }) => from.y === fronts[0]!.from.y);
	// Where the front steps, the part that stands further out is met first.
	const behind = fronts
		.filter(({ from, to }) => p.x >= from.x - 1e-9 && p.x <= to.x + 1e-9 && p.y >= from.y - touching)
		.toSorted((a, b) => b.from.y - a.from.y)[0];
	if (behind) {
		const far = Math.abs(p.y - behind.from.y);
		const name = flush ? 'the house front' : 'the house front behind it';
		return worded(far, name, far < touching ? 'on the house front' : `${formatLength(far, units)} out from ${name}`);
	}
	const far = Math.abs(p.y);
	const name = 'the front line';
	if (far < touching) return worded(far, name, `on ${name}`);
	return worded(far, name, `${formatLength(far, units)} ${p.y > 0 ? 'out from' : 'behind'} ${name}`);
}
/** From without, the side one stands on says which edge it is; from within it is named. */
const within = {
	along: ['the right edge', 'the left edge'],
	out: ['the street-side edge', 'the house-side edge']
} as const;
const sides = { along: ['left of', 'right of'], out: ['towards the house from', 'out from'] } as const;
function edgeWords({ edge, found, isInside }: Better, way: Way, units: Units): FromEdge {
	const ahead = found[way === 'along' ? 'x' : 'y'] > 0 ? 1 : 0;
	const name = isInside ? edge.name.replace('the edge', within[way][ahead]) : edge.name;
	return worded(found.distance, name, `${formatLength(found.distance, units)} ${sides[way][ahead]} ${name}`);
}
type Way = 'along' | 'out';
interface Better {
	edge: Edge;
	found: Found;
	isInside: boolean;
}

/** Which way the tape runs; null: askew, too far, or where it touches, no way at all. */
function wayOf({ x, y, distance }: Found): Way | null {
	if (distance > farthest || distance < touching) return null;
	if (Math.abs(x) >= square * distance) return 'along';
	return Math.abs(y) >= square * distance ? 'out' : null;
}

/** The two edges for a place: first the one to measure from along the front, then out. `except`: key of the thing itself. */
export function fromEdgesOf(all: Edges, p: Point, except: string): FromEdge[] {
	const { units } = all.site;
	const usual = { along: usualAlong(all, p, units), out: usualOut(all, p, units) };
	const better: Record<Way, Better | null> = { along: null, out: null };
	for (const edge of all.edges) {
		if (edge.key === except) continue;
		const found = squareOn(edge, p);
		const way = found && wayOf(found);
		if (!way) continue;
		const least = Math.min(better[way]?.found.distance ?? Infinity, usual[way].distance * nearer);
		if (found.distance >= least - 1e-9) continue;
		const isInside = (edge.inside?.(p) ?? -1) > touching;
		// On a walk or a drive nobody measures from within.
		if (isInside && !/^(bed|paved|porch)\//.test(edge.key)) continue;
		better[way] = { edge, found, isInside };
	}
	return (['along', 'out'] as const).map((way) => {
		const one = better[way];
		return one ? edgeWords(one, way, units) : usual[way];
	});
}
