/** What the maps of the page are drawn from: the light of the ground and of the front walls. Run in a worker, or beside the page where there is none. */
import { lightField, lightMap, type LightField, type LightMap } from '$lib/domain/light';
import type { Plan } from '$lib/domain/plan';
import type { Box } from '$lib/domain/shared/geometry';
import { frontWalls } from '$lib/drawing/elevation/draw-elevation';
import { wallGrid } from '$lib/drawing/elevation/wall-light';
import type { Grid } from '$lib/drawing/light-map/contours';

/** Cells of a map, about: enough for smooth lines, few enough to be there at once. */
const cells = 40_000;
/** Nodes of a wall, about. */
const nodes = 6_000;
/** Between cells, metres, at the finest. */
const finest = 0.1;

export const fieldOf = ({ site, fixtures, runs }: Plan): LightField => lightField(site, fixtures, runs);

/** The ground of a box of the yard, and one cell more all round, so that its lines run to the edge. */
export function groundOf(field: LightField, box: Box): LightMap {
	const area = (box.maxX - box.minX) * (box.maxY - box.minY);
	const step = Math.max(finest, Math.sqrt(area / cells));
	const around = { minX: box.minX - step, minY: box.minY - step, maxX: box.maxX + step, maxY: box.maxY + step };
	return lightMap(field, around, step);
}
/** Every front wall by its id. */
export function wallsOf(field: LightField, { site }: Plan): Map<string, Grid> {
	const walls = frontWalls(site);
	const area = walls.reduce((sum, wall) => sum + wall.length * Math.max(wall.height, wall.peak ?? 0), 0);
	const step = Math.max(finest, Math.sqrt(area / nodes));
	return new Map(walls.map((wall) => [wall.id, wallGrid(field, wall, step)]));
}
