/** The light on a wall as a grid that stands upright: x along the front as on the plan, heights as −y, lux. Metres. */
import type { LightField } from '../../domain/light';
import type { Point } from '../../domain/shared/geometry';
import type { Wall } from '../../domain/site';
import type { Grid } from '../light-map/contours';

/** Heights below this are trodden earth and planting: light there is not looked at, metres. */
const foot = 0.02;

/** Height of a wall's upper edge, `s` metres along it: its eaves, or the slope of its gable. */
export function topAt({ height, peak, length }: Pick<Wall, 'height' | 'peak' | 'length'>, s: number): number {
	if (peak === null || !(length > 0)) return height;
	return peak - (peak - height) * Math.min(1, Math.abs((2 * s) / length - 1));
}
export const highest = ({ height, peak }: Pick<Wall, 'height' | 'peak'>): number => Math.max(height, peak ?? 0);

/** A point of the wall in the yard's frame, z up. */
const onWall = ({ from, to, length }: Wall, s: number, z: number) => ({
	x: from.x + ((to.x - from.x) * s) / length,
	y: from.y + ((to.y - from.y) * s) / length,
	z
});
/** Lux on the face of a wall. */
export const wallLux = (field: LightField, wall: Wall, s: number, z: number): number =>
	field.lux(onWall(wall, s, z), { x: wall.outward.x, y: wall.outward.y, z: 0 });

/** A grid over the whole face and one node past each of its edges, so that its lines run to the edge. */
export function wallGrid(field: LightField, wall: Wall, step: number): Grid {
	const tall = highest(wall);
	const columns = Math.ceil(wall.length / step) + 2;
	const rows = Math.ceil(tall / step) + 2;
	const within = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));
	const values = new Float32Array(columns * rows);
	for (let row = 0; row < rows; row++)
		for (let column = 0; column < columns; column++) {
			const s = within((column - 0.5) * step, 0.01, wall.length - 0.01);
			const z = within(tall - (row - 0.5) * step, foot, topAt(wall, s) - 0.01);
			values[row * columns + column] = wallLux(field, wall, s, z);
		}
	return { x: wall.from.x - 0.5 * step, y: -(tall + 0.5 * step), step, columns, rows, values };
}
/** Keeps a point of the drawing on the face of the wall. */
export const keptOn =
	(wall: Wall) =>
	({ x, y }: Point): Point => {
		const s = Math.min(wall.length, Math.max(0, x - wall.from.x));
		return { x: wall.from.x + s, y: -Math.min(topAt(wall, s), Math.max(0, -y)) };
	};
