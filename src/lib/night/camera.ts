/**
 * Where the yard is seen from. Both cameras look square at the drawing plane, so that uprights stay upright; a point is told by
 * column and row in pixels (0,0 the upper left corner of the picture) and by its depth in metres.
 */
import type { Box } from '../domain/shared/geometry';
import type { Plan } from '../domain/plan';
import type { View } from './types';
import { fitStreet } from './fit';

export interface Camera {
	kind: View['kind'];
	width: number;
	height: number;
	/** street: the eye. above: the middle of what is seen; z does not matter. */
	x: number;
	y: number;
	z: number;
	/** street: pixels per unit of slope. above: pixels per metre. */
	scale: number;
	/** Column and row of the eye's level gaze, or of the middle. */
	column: number;
	row: number;
}
/** Pixels per metre at a depth. */
export const pixelsPerMetre = (camera: Camera, depth: number): number =>
	camera.kind === 'street' ? camera.scale / Math.max(depth, 0.3) : camera.scale;

/** Depth: metres in front of the eye; from above, metres below a height that nothing reaches. */
export const ceiling = 100;
export const depthOf = (camera: Camera, y: number, z: number): number =>
	camera.kind === 'street' ? camera.y - y : ceiling - z;
export const columnOf = (camera: Camera, x: number, depth: number): number =>
	camera.column + (x - camera.x) * pixelsPerMetre(camera, depth);
export const rowOf = (camera: Camera, y: number, z: number, depth: number): number =>
	camera.kind === 'street'
		? camera.row - (z - camera.z) * pixelsPerMetre(camera, depth)
		: camera.row + (y - camera.y) * camera.scale;

/** Straight down on `box`, which is fitted whole into the picture; rows run from the house to the street, as on the plan. */
export function above(view: View, box: Box): Camera {
	const scale = Math.min(view.width / (box.maxX - box.minX), view.height / (box.maxY - box.minY));
	return {
		...view,
		x: (box.minX + box.maxX) / 2,
		y: (box.minY + box.maxY) / 2,
		z: ceiling,
		scale,
		column: view.width / 2,
		row: view.height / 2
	};
}
/** The camera for a view of a plan. `box`, metres: what is shown from above, the bounds of the site when absent. */
export const cameraFor = (plan: Plan, view: View, box?: Box): Camera =>
	view.kind === 'above' ? above(view, box ?? plan.site.bounds) : fitStreet(plan, view);
