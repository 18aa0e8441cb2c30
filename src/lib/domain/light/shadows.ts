/**
 * What keeps light from getting there: the sides of the house up to their eaves or gable, its top, its eaves, garden walls, roofs
 * over porches. Crowns let light through here, and roofs above the eaves are not modelled. Metres.
 */
import {
	boxOf,
	distance,
	inPolygon,
	moved,
	signedArea,
	sidesOf,
	towards,
	type Box,
	type Point,
	type Polygon
} from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Site, Wall } from '../site';

/** An upright wall from the ground to `height`, at its middle to `peak`. */
export interface Screen {
	ax: number;
	ay: number;
	dx: number;
	dy: number;
	/** Length squared; unit normal and its offset: the line is nx·x + ny·y = c. */
	square: number;
	nx: number;
	ny: number;
	c: number;
	height: number;
	peak: number;
}
/** A flat roof: light from above does not come below it within its outline, nor the other way. */
export interface Lid {
	z: number;
	ring: Polygon;
	box: Box;
}
export interface Shadows {
	readonly screens: readonly Screen[];
	readonly lids: readonly Lid[];
}

export function screenOf(a: Point, b: Point, height: number, peak: number | null): Screen | null {
	const dx = b.x - a.x;
	const dy = b.y - a.y;
	const length = Math.hypot(dx, dy);
	if (!(length > 1e-6) || !(height > 0)) return null;
	const [nx, ny] = [-dy / length, dx / length];
	const top = Math.max(height, peak ?? height);
	return { ax: a.x, ay: a.y, dx, dy, square: length * length, nx, ny, c: nx * a.x + ny * a.y, height, peak: top };
}
const joins = (wall: Wall, a: Point, b: Point): boolean =>
	(distance(wall.from, a) < 1e-6 && distance(wall.to, b) < 1e-6) ||
	(distance(wall.from, b) < 1e-6 && distance(wall.to, a) < 1e-6);

/** A side of the house: from corner to corner, up to its eaves, at its middle to the point of its gable; null without one. */
export interface HouseSide {
	a: Point;
	b: Point;
	height: number;
	peak: number | null;
}
/** The sides of the house, in the order of its ring. Those that are no wall of their own, such as its back, go up to the eaves. */
export function houseSides(site: Site): HouseSide[] {
	const ofHouse = site.walls.filter((wall) => wall.of === 'house');
	return sidesOf(site.house).map(([a, b]) => {
		const wall = ofHouse.find((one) => joins(one, a, b));
		return { a, b, height: wall?.height ?? site.eaves, peak: wall?.peak ?? null };
	});
}
/** The eaves as flat lids, metres. A gable has none. */
export const eavesLids = (sides: readonly HouseSide[], house: Polygon): Lid[] =>
	sides
		.filter(({ peak, height }) => peak === null || peak <= height)
		.map(({ a, b, height }) => lidOf(overhang(a, b, house), height));
export const lidOf = (ring: Polygon, z: number): Lid => ({ z, ring, box: boxOf(ring) });

/** All that casts shadows on a site. */
export function shadowsOf(site: Site): Shadows {
	const sides = houseSides(site);
	const free = site.walls
		.filter((wall) => wall.of === 'garden')
		.map((wall) => screenOf(wall.from, wall.to, wall.height, null));
	const porches = site.areas.filter(({ kind, sort }) => kind === 'porch' && sort !== 'open');
	return {
		screens: [...sides.map(({ a, b, height, peak }) => screenOf(a, b, height, peak)), ...free].filter(
			(screen) => screen !== null
		),
		lids: [
			...(site.house.length > 2 ? [lidOf(site.house, site.eaves)] : []),
			...eavesLids(sides, site.house),
			...porches.map((porch) => lidOf(porch.polygon, porch.under ?? site.eaves))
		]
	};
}

/** What the eaves cover before one side of the house: they are taken to reach out as far as rule place.clear has it. A gable has none. */
function overhang(a: Point, b: Point, house: Polygon): Polygon {
	const along = towards(a, b);
	const turn = signedArea(house) > 0 ? 1 : -1;
	const out = { x: along.y * turn, y: -along.x * turn };
	const reach = rules['place.clear'].figures.eaves;
	return [a, b, moved(b, out, reach), moved(a, out, reach)];
}

/** Whether something stands between two points. A point in the plane of a wall is not behind it. */
export function isBlocked(
	{ screens, lids }: Shadows,
	px: number,
	py: number,
	pz: number,
	sx: number,
	sy: number,
	sz: number
): boolean {
	for (let i = 0; i < screens.length; i++) if (stops(screens[i]!, px, py, pz, sx, sy, sz)) return true;
	for (let i = 0; i < lids.length; i++) {
		const { z, ring, box } = lids[i]!;
		const from = pz - z;
		const to = sz - z;
		if (from * to >= 0) continue;
		const t = from / (from - to);
		const x = px + t * (sx - px);
		const y = py + t * (sy - py);
		if (x < box.minX || x > box.maxX || y < box.minY || y > box.maxY) continue;
		if (inPolygon({ x, y }, ring)) return true;
	}
	return false;
}
function stops(wall: Screen, px: number, py: number, pz: number, sx: number, sy: number, sz: number): boolean {
	const from = wall.nx * px + wall.ny * py - wall.c;
	const to = wall.nx * sx + wall.ny * sy - wall.c;
	if (from * to >= 0) return false;
	const t = from / (from - to);
	const z = pz + t * (sz - pz);
	if (z >= wall.peak) return false;
	const u = ((px + t * (sx - px) - wall.ax) * wall.dx + (py + t * (sy - py) - wall.ay) * wall.dy) / wall.square;
	if (u < 0 || u > 1) return false;
	return z < wall.height + (wall.peak - wall.height) * (1 - Math.abs(2 * u - 1));
}
