/** What keeps a lamp from standing at a point. Metres; frame of the site. */
import { boxOf, inPolygon, moved, padded, type Box, type Line, type Point, type Polygon } from '../shared/geometry';
import { rules, type RuleId } from '../shared/rules';
import type { Figures } from '../shared/settings';
import { leafOf, postsOf, type Site, type Tree, type Wall } from '../site';
import { PointGrid } from './grid';

export type Cause =
	| 'walk'
	| 'drive'
	| 'paved'
	| 'cars'
	| 'gate'
	| 'post'
	| 'house'
	| 'wall'
	| 'water'
	| 'porch'
	| 'seating'
	| 'door'
	| 'garage'
	| 'receptacle'
	| 'eaves'
	| 'trunk'
	| 'crown'
	| 'fixture'
	| 'lot';

/**
 * How a lamp stands: a path light keeps its distance from walks; one that shines up at a tree keeps out from under eaves; a
 * lamp on a wall or a step's cheek is in nobody's way at a door.
 */
export type Standing = 'path' | 'ground' | 'up' | 'mounted';

interface Obstacle {
	cause: Cause;
	ring: Polygon;
	/** An open line instead of a ring. */
	open: boolean;
	box: Box;
	/** Clear distance from the nearest part of the lamp, metres. */
	clear: number;
	/** A walk or drive: where it folds over itself its ring counts twice as outside, its centre line does not. */
	centre: Line;
	half: number;
}
const { flare } = rules['place.clear'].figures;
const slack = 1e-6;

/** Metres beyond the bark that the foot of a trunk spreads: no lamp stands on it. */
export const rootFlare = (trunkDiameter: number): number => flare * trunkDiameter;

/** Whether a tree is clothed to the ground, so that a lamp by its trunk would shine into twigs (rule tree.skirt). */
export const isSkirted = ({ form, crownBase }: Pick<Tree, 'form' | 'crownBase'>): boolean =>
	(form === 'conical' || form === 'columnar') && crownBase < rules['tree.skirt'].figures.base;

/** Metres from a point to a ring (0 inside) or an open line. Written out without objects: it is the inner loop. */
function away(p: Point, ring: Polygon, open: boolean): number {
	let least = Infinity;
	for (let i = open ? 1 : 0, j = open ? 0 : ring.length - 1; i < ring.length; j = i++) {
		const a = ring[j]!;
		const b = ring[i]!;
		const dx = b.x - a.x;
		const dy = b.y - a.y;
		const square = dx * dx + dy * dy;
		const t = square > 0 ? Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square)) : 0;
		const ex = p.x - a.x - dx * t;
		const ey = p.y - a.y - dy * t;
		least = Math.min(least, ex * ex + ey * ey);
	}
	return !open && inPolygon(p, ring) ? 0 : Math.sqrt(least);
}

/** Whether a point lies within `reach` of a centre line, beside it: beyond its ends there is no walk. */
function nearCentre(p: Point, line: Line, reach: number): boolean {
	for (let i = 1; i < line.length; i++) {
		const a = line[i - 1]!;
		const b = line[i]!;
		const dx = b.x - a.x;
		const dy = b.y - a.y;
		const square = dx * dx + dy * dy;
		const t = square > 0 ? ((p.x - a.x) * dx + (p.y - a.y) * dy) / square : -1;
		if ((t < 0 && i === 1) || (t > 1 && i === line.length - 1)) continue;
		const held = Math.min(1, Math.max(0, t));
		const ex = p.x - a.x - dx * held;
		const ey = p.y - a.y - dy * held;
		if (ex * ex + ey * ey < reach * reach) return true;
	}
	return false;
}

/** The strip of ground in front of an opening that has to stay free. */
function frontStrip(wall: Wall, start: number, end: number, depth: number): Polygon {
	const along = { x: (wall.to.x - wall.from.x) / wall.length, y: (wall.to.y - wall.from.y) / wall.length };
	const margin = rules['wall.openings'].figures.clear;
	const a = moved(wall.from, along, start - margin);
	const b = moved(wall.from, along, end + margin);
	return [a, b, moved(b, wall.outward, depth), moved(a, wall.outward, depth)];
}

function obstaclesOf(site: Site, figures: Figures): Obstacle[] {
	const { doorFront, garageFront, receptacle: receptacleFront, eaves } = figures['place.clear'];
	const frontOf = { door: doorFront, garage: garageFront } as const;
	const list: Obstacle[] = [];
	const add = (cause: Cause, ring: Polygon, clear: number, open = false, centre: Line = [], half = 0): void => {
		if (ring.length >= (open ? 2 : 3))
			list.push({ cause, ring, open, box: padded(boxOf([...ring, ...centre]), clear + half), clear, centre, half });
	};
	for (const area of site.areas) {
		if (area.kind === 'water') add('water', area.polygon, figures['water.clear'].clear);
		if (area.kind === 'porch') add('porch', area.polygon, 0.02);
		if (area.kind === 'seating') add('seating', area.polygon, 0.05);
	}
	add('house', site.house, 0.02);
	add('eaves', site.house, eaves);
	// One that is only supposed may be anywhere.
	if (site.receptacle?.known) add('receptacle', [site.receptacle.at, site.receptacle.at], receptacleFront, true);
	for (const strip of site.strips) {
		// Which post it hangs on and which way it opens is not known: the leaf reaches its own length from where it shuts.
		for (const gate of strip.gates) add('gate', leafOf(strip, gate), strip.width, true);
		for (const post of postsOf(strip)) add('post', post, 0.05);
	}
	for (const strip of site.strips)
		add(
			strip.kind,
			strip.polygon,
			strip.kind === 'drive' ? figures['drive.setback'].clear : 0.05,
			false,
			strip.centre,
			strip.width / 2
		);
	for (const area of site.areas) {
		if (area.kind !== 'paved') continue;
		if (area.sort === 'cars') add('cars', area.polygon, figures['drive.setback'].clear);
		else add('paved', area.polygon, 0.05);
	}
	for (const wall of site.walls) {
		if (wall.of === 'garden') add('wall', [wall.from, wall.to], 0.05, true);
		if (wall.length <= 0) continue;
		for (const { kind, start, end } of wall.openings)
			if (kind !== 'window') add(kind, frontStrip(wall, start, end, frontOf[kind]), 0);
	}
	return list;
}

/** What hangs on a wall, a post or a step's cheek is in nobody's way there. */
const inWayOfMounted = (cause: Cause): boolean => !['door', 'garage', 'receptacle', 'gate', 'post'].includes(cause);

export interface Ground {
	/** The first thing in the way of a lamp of radius `radius` at `p`; null when it may stand there. */
	blocked(p: Point, radius: number, standing: Standing): Cause | null;
	/** From now on a fixture stands here. */
	occupy(p: Point): void;
}

/** The ground of a site, to be asked and filled in a fixed order: same site, same answers. */
export function survey(site: Site, figures: Figures): Ground {
	const obstacles = obstaclesOf(site, figures);
	const walkClear = figures['path.setback'].low;
	const { apart } = figures['place.clear'];
	const fixtures = new PointGrid<null>(2);
	const trunks = new PointGrid<{ radius: number; cause: Cause }>(2);
	let widestTrunk = 0;
	for (const tree of site.trees) {
		const foot = tree.trunkDiameter / 2 + Math.max(0.05, rootFlare(tree.trunkDiameter));
		trunks.add(tree.at, { radius: foot, cause: 'trunk' });
		widestTrunk = Math.max(widestTrunk, foot);
		if (!isSkirted(tree) || tree.spread / 2 <= foot) continue;
		trunks.add(tree.at, { radius: tree.spread / 2, cause: 'crown' });
		widestTrunk = Math.max(widestTrunk, tree.spread / 2);
	}
	const inLot = (p: Point, radius: number): boolean =>
		p.y <= site.street - radius + slack &&
		p.x >= site.leftBoundary + radius - slack &&
		p.x <= site.rightBoundary - radius + slack;
	return {
		blocked(p, radius, standing) {
			if (!inLot(p, radius)) return 'lot';
			for (const { cause, ring, open, box, clear, centre, half } of obstacles) {
				if (standing === 'mounted' && !inWayOfMounted(cause)) continue;
				if (cause === 'eaves' && standing !== 'up') continue;
				// Shoes reach over the edge of a porch as over that of a walk.
				const underfoot = standing === 'path' && (cause === 'walk' || cause === 'porch');
				const need = radius + (underfoot ? walkClear : clear) - slack;
				// The box is padded by the least clear distance only: widen it to this lamp's need.
				const grow = need - clear;
				if (p.x < box.minX - grow || p.x > box.maxX + grow || p.y < box.minY - grow || p.y > box.maxY + grow) continue;
				if (away(p, ring, open) < need || (half > 0 && nearCentre(p, centre, half + need))) return cause;
			}
			let stem: Cause | null = null;
			trunks.some(p, widestTrunk + radius, (tree, distance) => {
				if (distance < tree.radius + radius - slack) stem = tree.cause;
				return stem === 'trunk';
			});
			if (stem) return stem;
			return fixtures.some(p, apart, (_, distance) => distance < apart - slack) ? 'fixture' : null;
		},
		occupy: (p) => fixtures.add(p, null)
	};
}

/** Why nothing could stand there, as the end of a sentence. `clear` is the distance to water in the person's units. */
export const causeWords = (cause: Cause, clear: string): string =>
	({
		walk: 'it would stand in the walk',
		drive: 'it would stand in the drive',
		paved: 'the ground there is paved',
		cars: 'cars use the paving there',
		gate: 'a gate may swing there',
		post: 'a gate post stands there',
		house: 'the house stands there',
		wall: 'a wall stands there',
		water: `it would be nearer than ${clear} to the water`,
		porch: 'the porch is there',
		seating: 'the seating place is there',
		door: 'it would stand in front of a door',
		garage: 'it would stand in front of the garage door',
		receptacle: 'it would be in the way of the receptacle',
		eaves: 'the eaves would catch its beam',
		trunk: 'a trunk stands there',
		crown: 'a tree is clothed to the ground there',
		fixture: 'another light stands there',
		lot: 'it would be outside your lot'
	})[cause];

const ruleOf: Partial<Record<Cause, RuleId>> = {
	walk: 'path.setback',
	drive: 'drive.setback',
	cars: 'drive.setback',
	water: 'water.clear',
	door: 'wall.openings',
	garage: 'wall.openings',
	crown: 'tree.skirt'
};
/** The rule that keeps a lamp from where a cause is. */
export const ruleFor = (cause: Cause): RuleId => ruleOf[cause] ?? 'place.clear';
