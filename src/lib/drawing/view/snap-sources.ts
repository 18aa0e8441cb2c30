/** What a point on the drawing can be drawn to: corners and edges of what is built, and the lines through what stands. */
import type { Plan } from '../../domain/plan';
import type { Line, Point, Polygon } from '../../domain/shared/geometry';
import type { Units } from '../../domain/yard';
import type { Box } from './types';

/** A straight edge, metres. `key`: of the thing it belongs to, null for what cannot be moved. */
export interface Edge {
	from: Point;
	to: Point;
	box: Box;
	words: string;
	key: string | null;
}
export interface Corner {
	at: Point;
	words: string;
	key: string | null;
}
/** Something that stands at a point: lines along the front and out from it go through it. */
export interface Standing {
	at: Point;
	/** As on the drawing: `T2`, `Oak`. */
	name: string;
	key: string;
}
export interface SnapSources {
	units: Units;
	corners: readonly Corner[];
	edges: readonly Edge[];
	/** Sorted by x, and by y: those near a pointer are found by halving. */
	byX: readonly Standing[];
	byY: readonly Standing[];
	/** The most that the drawing holds: ends of guides, metres. */
	bounds: Box;
}

/** An edge shorter than this is a chord of a curve: its ends are no corners to measure to, metres. */
const chord = 0.3;
/** A line that turns by less is still the same edge, as sine. */
const straight = 0.02;

const boxOfEdge = (a: Point, b: Point): Box => ({
	minX: Math.min(a.x, b.x),
	minY: Math.min(a.y, b.y),
	maxX: Math.max(a.x, b.x),
	maxY: Math.max(a.y, b.y)
});
const isPlace = (p: Point): boolean => Number.isFinite(p.x) && Number.isFinite(p.y);

class Collected {
	corners: Corner[] = [];
	edges: Edge[] = [];
	#seen = new Set<string>();

	edge(from: Point, to: Point, words: string, key: string | null): void {
		if (!isPlace(from) || !isPlace(to) || Math.hypot(to.x - from.x, to.y - from.y) < 1e-4) return;
		this.edges.push({ from, to, box: boxOfEdge(from, to), words, key });
	}
	corner(at: Point, words: string, key: string | null): void {
		const spot = `${at.x.toFixed(4)} ${at.y.toFixed(4)} ${key}`;
		if (!isPlace(at) || this.#seen.has(spot)) return;
		this.#seen.add(spot);
		this.corners.push({ at, words, key });
	}
	/** Its legs are edges; where it turns sharply or ends it has a corner. */
	line(points: Line, name: string, key: string | null, isClosed = false): void {
		const count = points.length;
		const legs = isClosed ? count : count - 1;
		for (let k = 0; k < legs; k += 1) this.edge(points[k]!, points[(k + 1) % count]!, `the edge of ${name}`, key);
		points.forEach((at, k) => {
			const isEnd = !isClosed && (k === 0 || k === count - 1);
			if (isEnd || turnsAt(points[(k + count - 1) % count]!, at, points[(k + 1) % count]!))
				this.corner(at, `a corner of ${name}`, key);
		});
	}
	ring(points: Polygon, name: string, key: string | null): void {
		if (points.length > 1) this.line(points, name, key, true);
	}
}
/** A turn to be found with a tape: sharp, and not one of the many of a curve. */
function turnsAt(before: Point, at: Point, after: Point): boolean {
	const [ax, ay, bx, by] = [at.x - before.x, at.y - before.y, after.x - at.x, after.y - at.y];
	const [a, b] = [Math.hypot(ax, ay), Math.hypot(bx, by)];
	if (a < 1e-6 || b < 1e-6) return false;
	const sine = (ax * by - ay * bx) / (a * b);
	return Math.abs(sine) > straight && (Math.max(a, b) > chord || Math.abs(sine) > 0.5);
}

function collectHouse(found: Collected, { site }: Plan): void {
	const { house } = site;
	for (const [k, at] of house.entries()) {
		const next = house[(k + 1) % house.length]!;
		const isFront = Math.abs(at.y) < 1e-6 && Math.abs(next.y) < 1e-6;
		found.edge(at, next, isFront ? 'the house front' : 'the edge of the house', null);
		if (turnsAt(house[(k + house.length - 1) % house.length]!, at, next)) {
			const isLeft = Math.abs(at.x) < 1e-6 && Math.abs(at.y) < 1e-6;
			found.corner(at, isLeft ? 'the left corner of the front' : 'a corner of the house', null);
		}
	}
	for (const wall of site.walls) {
		if (wall.of === 'garden') found.line([wall.from, wall.to], wall.name, `wall/${wall.id}`);
		const length = Math.max(1e-9, wall.length);
		for (const opening of wall.openings)
			for (const station of [opening.start, opening.end]) {
				const share = station / length;
				const at = {
					x: wall.from.x + (wall.to.x - wall.from.x) * share,
					y: wall.from.y + (wall.to.y - wall.from.y) * share
				};
				found.corner(at, `the side of the ${opening.kind === 'garage' ? 'garage door' : opening.kind}`, null);
			}
	}
}
function collectGround(found: Collected, { site }: Plan, bounds: Box): void {
	for (const strip of site.strips) {
		const key = `${strip.kind}/${strip.id}`;
		found.line(strip.left, strip.name, key);
		found.line(strip.right, strip.name, key);
		found.edge(strip.left[0]!, strip.right[0]!, `the end of ${strip.name}`, key);
		found.edge(strip.left.at(-1)!, strip.right.at(-1)!, `the end of ${strip.name}`, key);
	}
	for (const area of site.areas) found.ring(area.polygon, area.name, `${area.kind}/${area.id}`);
	const { street, leftBoundary, rightBoundary } = site;
	const ends = { left: Math.min(bounds.minX, leftBoundary), right: Math.max(bounds.maxX, rightBoundary) };
	found.edge({ x: ends.left, y: street }, { x: ends.right, y: street }, 'the edge of the street', null);
	for (const [x, side] of [
		[leftBoundary, 'left'],
		[rightBoundary, 'right']
	] as const) {
		found.edge({ x, y: bounds.minY }, { x, y: street }, `the ${side} boundary`, null);
		found.corner({ x, y: street }, `where the ${side} boundary meets the street`, null);
	}
}

/** Names as on the drawing; what has no place of its own is left away. */
function standingOf(plan: Plan): Standing[] {
	const { site, supply, dusk } = plan;
	return [
		...plan.fixtures.map(({ id, label, at }) => ({ at, name: label, key: `fixture/${id}` })),
		...site.trees.map(({ id, name, at }) => ({ at, name, key: `tree/${id}` })),
		...site.existing.map(({ id, name, at }) => ({ at, name, key: `light/${id}` })),
		...site.houseNumber.map(({ id, name, at }) => ({ at, name, key: `number/${id}` })),
		...(supply ? [{ at: supply.at, name: 'the transformer', key: 'transformer/transformer' }] : []),
		...(site.receptacle?.known
			? [{ at: site.receptacle.at, name: 'the receptacle', key: 'receptacle/receptacle' }]
			: []),
		...(dusk.sensor ? [{ at: dusk.sensor.at, name: 'the sensor', key: 'sensor/sensor' }] : [])
	].filter(({ at }) => isPlace(at));
}

/** All that a point may be drawn to on the drawing of a plan: made once a plan. */
export function snapSources(plan: Plan): SnapSources {
	const { bounds, units } = plan.site;
	const found = new Collected();
	collectHouse(found, plan);
	collectGround(found, plan, bounds);
	const standing = standingOf(plan);
	return {
		units,
		corners: found.corners,
		edges: found.edges,
		byX: standing.toSorted((a, b) => a.at.x - b.at.x),
		byY: standing.toSorted((a, b) => a.at.y - b.at.y),
		bounds
	};
}
