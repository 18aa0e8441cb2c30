/** The picture of a plan in luminance, band by band from the top. */
import type { Box } from '../domain/shared/geometry';
import { lightField, type LightField } from '../domain/light';
import type { Plan } from '../domain/plan';
import { cameraFor, type Camera } from './camera';
import { skyLux } from './day';
import { newHit, type Hit } from './hit';
import { lampsOf, type Landing, type Lamps } from './lamps';
import { litSplats } from './lit-splats';
import { sceneOf, type Scene } from './scene';
import { skyAt, skyline, type Colour } from './sky';
import { stripRows, type Target } from './splats';
import { tracer, type Tracer } from './trace';
import type { LuminancePicture, View } from './types';

/** Rows from `from` up to, but not including, `to` are finished. */
export type OnBand = (picture: LuminancePicture, from: number, to: number) => void;
export interface PictureOptions {
	/** What is shown from above, metres: the drawing's own box makes the picture lie over the drawing. Absent: the bounds of the site. */
	box?: Box;
	/** Where light comes from; absent: that of the plan. */
	field?: LightField;
}

/**
 * What is seen of a plan, in cd/m². Matt surfaces by L = ρ·E/π in each channel of linear sRGB, ρ from memory by material and E from
 * the light of the plan at the very pixel, with the surface's normal; lenses by a stated share of their lumens; no light is drawn in the
 * air. Light is direct only: what one surface throws on another is left out, and crowns dim their own lamps but cast no shadow.
 * Total and deterministic. `onBand` hears of each band of rows as it is done.
 */
export function luminancePicture(
	plan: Plan,
	view: View,
	onBand?: OnBand,
	options: PictureOptions = {}
): LuminancePicture {
	const bands = paintBands(plan, view, options);
	for (;;) {
		const step = bands.next();
		if (step.done) return step.value;
		onBand?.(step.value.picture, step.value.from, step.value.to);
	}
}

/** The same in steps: yields after each band of rows, so that whoever paints may stop or breathe in between. */
export function* paintBands(
	plan: Plan,
	view: View,
	options: PictureOptions = {}
): Generator<{ picture: LuminancePicture; from: number; to: number }, LuminancePicture> {
	const width = Math.max(1, Math.round(view.width));
	const height = Math.max(1, Math.round(view.height));
	const camera = cameraFor(plan, { kind: view.kind, width, height }, options.box);
	const scene = sceneOf(plan);
	const lamps = lampsOf(plan, options.field ?? lightField(plan.site, plan.fixtures, plan.runs));
	const splats = litSplats(scene, camera, lamps);
	const picture: LuminancePicture = {
		view: { kind: view.kind, width, height },
		lamps: new Float32Array(width * height * 3),
		sky: new Float32Array(width * height * 3),
		surface: new Uint16Array(width * height),
		surfaces: scene.surfaces,
		lux: new Float32Array(width * height)
	};
	const target: Target = { ...picture, width, height, depth: new Float32Array(width * height) };
	const rays = tracer(scene, camera);
	const pen: Pen = { scene, camera, lamps, rays, target, hit: newHit(), landing: newLanding(), colour: newColour() };
	for (let strip = 0; strip * stripRows < height; strip++) {
		const from = strip * stripRows;
		const to = Math.min(height, from + stripRows);
		for (let row = from; row < to; row++) paintRow(pen, row);
		splats.draw(target, strip);
		yield { picture, from, to };
	}
	return picture;
}
interface Pen {
	scene: Scene;
	camera: Camera;
	lamps: Lamps;
	rays: Tracer;
	target: Target;
	hit: Hit;
	landing: Landing;
	colour: Colour;
}
const newLanding = (): Landing => ({ lux: 0, red: 0, green: 0, blue: 0 });
const newColour = (): Colour => ({ red: 0, green: 0, blue: 0 });

/** Where rays are cast beside the middle of a pixel at an edge, in parts of a pixel: a turned grid of four. */
const around = [
	[-0.125, -0.375],
	[0.375, -0.125],
	[-0.375, 0.125],
	[0.125, 0.375]
] as const;

function paintRow(pen: Pen, row: number): void {
	const { target, rays, hit, scene } = pen;
	rays.enterRow(row);
	let last = -1;
	for (let column = 0; column < target.width; column++) {
		const p = row * target.width + column;
		const met = rays.cast(column + 0.5, row + 0.5, hit);
		const seen = met ? hit.surface : 0;
		target.depth[p] = met ? hit.depth : Infinity;
		shade(pen, met, column + 0.5, row + 0.5, p, 1, true);
		const aboveIt = row > 0 ? target.surface[p - target.width]! : seen;
		if (last >= 0 && (seen !== last || (seen !== aboveIt && aboveIt < scene.surfaces.length)))
			smooth(pen, column, row, p);
		last = seen;
	}
}
/** An edge: four rays instead of one. */
function smooth(pen: Pen, column: number, row: number, p: number): void {
	const { target, rays, hit } = pen;
	target.lamps.fill(0, p * 3, p * 3 + 3);
	target.sky.fill(0, p * 3, p * 3 + 3);
	for (const [dx, dy] of around) {
		const met = rays.cast(column + 0.5 + dx, row + 0.5 + dy, hit);
		shade(pen, met, column + 0.5 + dx, row + 0.5 + dy, p, 0.25, false);
	}
}
/** Adds `part` of what a ray meets to a pixel; `first`: also what it is and how many lux lie on it. */
function shade(pen: Pen, met: boolean, column: number, row: number, p: number, part: number, first: boolean): void {
	const { target, hit, landing, lamps, camera, colour, scene } = pen;
	const q = p * 3;
	if (!met) {
		const up = (camera.row - row) / camera.scale;
		const across = (column - camera.width / 2) / camera.scale;
		const trees = up < skyline(across);
		skyAt(up, colour);
		if (trees) dim(colour);
		target.sky[q] = target.sky[q]! + part * colour.red;
		target.sky[q + 1] = target.sky[q + 1]! + part * colour.green;
		target.sky[q + 2] = target.sky[q + 2]! + part * colour.blue;
		if (first) target.surface[p] = trees ? scene.beyond : 0;
		return;
	}
	lamps.onSurface(hit.x, hit.y, hit.z, hit.nx, hit.ny, hit.nz, landing);
	const by = part / Math.PI;
	const day = skyLux(hit.nz) * hit.open * by;
	target.lamps[q] = target.lamps[q]! + by * hit.red * landing.red;
	target.lamps[q + 1] = target.lamps[q + 1]! + by * hit.green * landing.green;
	target.lamps[q + 2] = target.lamps[q + 2]! + by * hit.blue * landing.blue;
	skyAt(hit.mirror > 0 ? 0.12 : 0, colour);
	const mirrored = part * hit.mirror * hit.open;
	target.sky[q] = target.sky[q]! + day * hit.red + mirrored * colour.red;
	target.sky[q + 1] = target.sky[q + 1]! + day * hit.green + mirrored * colour.green;
	target.sky[q + 2] = target.sky[q + 2]! + day * hit.blue + mirrored * colour.blue;
	if (first) {
		target.surface[p] = hit.surface;
		target.lux[p] = landing.lux;
	}
}
/** Trees far off: dark green before the sky. */
function dim(colour: Colour): void {
	colour.red *= 0.12;
	colour.green *= 0.15;
	colour.blue *= 0.13;
}
