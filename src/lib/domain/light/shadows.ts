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

/** All that casts shadows on a site. Sides of the house that are no wall of their own, such as its back, go up to the eaves. */
export function shadowsOf(site: Site): Shadows {
	const ofHouse = site.walls.filter((wall) => wall.of === 'house');
	const sides = sidesOf(site.house).map(([a, b]) => {
		const wall = ofHouse.find((one) => joins(one, a, b));
		return { a, b, height: wall?.height ?? site.eaves, peak: wall?.peak ?? null };
	});
	const free = site.walls
		.filter((wall) => wall.of === 'garden')
		.map((wall) => screenOf(wall.from, wall.to, wall.height, null));
	const lid = (ring: Polygon, z: number): Lid => ({ z, ring, box: boxOf(ring) });
	const porches = site.areas.filter(({ kind, sort }) => kind === 'porch' && sort !== 'open');
	return {
		screens: [...sides.map(({ a, b, height, peak }) => screenOf(a, b, height, peak)), ...free].filter(
			(screen) => screen !== null
		),
		lids: [
			...(site.house.length > 2 ? [lid(site.house, site.eaves)] : []),
			...sides
				.filter(({ peak, height }) => peak === null || peak <= height)
				.map(({ a, b, height }) => lid(overhang(a, b, site.house), height)),
			...porches.map((porch) => lid(porch.polygon, porch.under ?? site.eaves))
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
