/** Leaves and thin round things, projected and lit: what `splats.ts` lays over the picture. */
import type { Camera } from './camera';
import { columnOf, depthOf, pixelsPerMetre, rowOf } from './camera';
import { colourAt } from './colour';
import type { Crown } from './crown';
import { skyLux } from './day';
import type { Landing, Lamps } from './lamps';
import { growLeaves, leafCount } from './leaves';
import type { Scene } from './scene';
import { Splats } from './splats';
import type { Stroke } from './strokes';

/** Leaves in one picture: more only make it slower. */
const mostLeaves = 170_000;
/** What a leaf lets through, as a part of what it throws back, by channel: it is yellower through than off (from memory). */
const through = [0.8, 0.7, 0.3] as const;
/** Part of the sky's light within a crown, for its wood. */
const inCrown = 0.35;

const landing = (): Landing => ({ lux: 0, red: 0, green: 0, blue: 0 });

export function litSplats(scene: Scene, camera: Camera, lamps: Lamps): Splats {
	const splats = new Splats();
	const pixels = scene.crowns.map(({ tree, middle }) =>
		pixelsPerMetre(camera, Math.max(1, depthOf(camera, tree.at.y, middle)))
	);
	const total = scene.crowns.reduce((sum, crown, i) => sum + leafCount(crown, pixels[i]!, camera), 0);
	const coarser = Math.sqrt(Math.max(1, total / mostLeaves));
	scene.crowns.forEach((crown, i) =>
		layLeaves(splats, crown, scene.crownSurface[i]!, camera, lamps, pixels[i]!, coarser)
	);
	for (const one of scene.strokes) layStroke(splats, one, scene, camera, lamps);
	splats.sort(camera.height);
	return splats;
}

function layLeaves(
	splats: Splats,
	crown: Crown,
	surface: number,
	camera: Camera,
	lamps: Lamps,
	pixels: number,
	coarser: number
): void {
	const street = camera.kind === 'street';
	const front = landing();
	const back = landing();
	const light = [0, 0, 0, 0, 0, 0];
	let clump = -1;
	growLeaves(crown, pixels, coarser, (leaf) => {
		const depth = depthOf(camera, leaf.y, leaf.z);
		if (depth < 0.5) return;
		const scale = pixelsPerMetre(camera, depth);
		const column = columnOf(camera, leaf.x, depth);
		const row = rowOf(camera, leaf.y, leaf.z, depth);
		const reach = leaf.long * scale;
		if (column < -reach || column > camera.width + reach || row < -reach || row > camera.height + reach) return;
		if (leaf.clump !== clump) {
			({ clump } = leaf);
			lamps.aimAt(leaf.cx, leaf.cy, leaf.cz, leaf.radius);
		}
		// The side that is looked at.
		const facing = street ? leaf.ny : leaf.nz;
		const turn = facing < 0 ? -1 : 1;
		const nx = leaf.nx * turn;
		const ny = leaf.ny * turn;
		const nz = leaf.nz * turn;
		lamps.onLeaf(crown, leaf, nx, ny, nz, front, back);
		const { paint } = crown;
		const by = leaf.tone / Math.PI;
		const day = leaf.open * by;
		const dayFront = skyLux(nz) * day;
		const dayBack = skyLux(-nz) * day;
		light[0] = paint[0] * by * (front.red + through[0] * back.red);
		light[1] = paint[1] * by * (front.green + through[1] * back.green);
		light[2] = paint[2] * by * (front.blue + through[2] * back.blue);
		for (let i = 0; i < 3; i++) light[3 + i] = paint[i]! * (dayFront + through[i]! * dayBack);
		const px = leaf.lx * scale;
		const py = (street ? -leaf.lz : leaf.ly) * scale;
		const shown = Math.hypot(px, py) || 1;
		const long = Math.max(leaf.wide * scale, leaf.long * shown);
		const wide = leaf.wide * scale * (0.45 + 0.55 * Math.abs(facing));
		splats.leaf(column, row, long, wide, px / shown, py / shown, depth, front.lux + back.lux, light, surface);
	});
}

/** A thin round thing, lit at both ends: left, middle and right as seen. */
function layStroke(splats: Splats, one: Stroke, scene: Scene, camera: Camera, lamps: Lamps): void {
	const [da, db] = [depthOf(camera, one.ay, one.az), depthOf(camera, one.by, one.bz)];
	if (da < 0.5 || db < 0.5) return;
	const ends = [
		columnOf(camera, one.ax, da),
		rowOf(camera, one.ay, one.az, da),
		columnOf(camera, one.bx, db),
		rowOf(camera, one.by, one.bz, db)
	] as const;
	const halves = [one.ra * pixelsPerMetre(camera, da), one.rb * pixelsPerMetre(camera, db)] as const;
	const most = Math.max(halves[0], halves[1]);
	if (Math.max(ends[0], ends[2]) < -most || Math.min(ends[0], ends[2]) > camera.width + most) return;
	if (Math.max(ends[1], ends[3]) < -most || Math.min(ends[1], ends[3]) > camera.height + most) return;
	const light = Array.from({ length: 21 }, () => 0);
	const depth = (da + db) / 2 - Math.max(one.ra, one.rb);
	const paint = [one.red, one.green, one.blue];
	let lux = 0;
	if (one.glow > 0) {
		const colour = colourAt(one.kelvin);
		for (let i = 0; i < 18; i++) light[i] = one.glow * colour[i % 3]!;
	} else {
		const frame = frameOf(ends, camera.kind === 'street');
		const crown = one.tree >= 0 ? scene.crowns[one.tree]! : null;
		if (crown) lamps.aimAt((one.ax + one.bx) / 2, (one.ay + one.by) / 2, (one.az + one.bz) / 2, 0.3);
		const a = { x: one.ax, y: one.ay, z: one.az };
		const b = { x: one.bx, y: one.by, z: one.bz };
		lux =
			(lightEnd(light, 0, a, one.ra, paint, frame, crown, lamps) +
				lightEnd(light, 9, b, one.rb, paint, frame, crown, lamps)) /
			2;
	}
	const high = one.tree >= 0 && (one.az + one.bz) / 2 > scene.crowns[one.tree]!.tree.crownBase;
	for (let i = 0; i < 3; i++) light[18 + i] = (paint[i]! * (high ? inCrown : 0.8) * skyLux(0)) / Math.PI;
	splats.band(ends, halves, depth, lux, light, one.surface, one.tree >= 0);
}
interface Way {
	x: number;
	y: number;
	z: number;
}
/** Unit vectors in the yard: to the left of someone going along the thing on the picture, and towards the eye. */
function frameOf(ends: readonly [number, number, number, number], street: boolean): { side: Way; ahead: Way } {
	const size = Math.hypot(ends[2] - ends[0], ends[3] - ends[1]);
	const [sx, sv] = size > 0 ? [(ends[3] - ends[1]) / size, -(ends[2] - ends[0]) / size] : [-1, 0];
	return street
		? { side: { x: sx, y: 0, z: -sv }, ahead: { x: 0, y: 1, z: 0 } }
		: { side: { x: sx, y: sv, z: 0 }, ahead: { x: 0, y: 0, z: 1 } };
}
const front = landing();
const back = landing();
/** Writes the luminance at one end to `light` from `from` on: left, middle, right. Gives the lux at the middle. */
function lightEnd(
	light: number[],
	from: number,
	at: Way,
	radius: number,
	paint: readonly number[],
	{ side, ahead }: { side: Way; ahead: Way },
	crown: Crown | null,
	lamps: Lamps
): number {
	let lux = 0;
	for (let k = 0; k < 3; k++) {
		const aside = 0.87 * (1 - k);
		const to = k === 1 ? 1 : 0.5;
		const nx = side.x * aside + ahead.x * to;
		const ny = side.y * aside + ahead.y * to;
		const nz = side.z * aside + ahead.z * to;
		const [x, y, z] = [at.x + nx * radius, at.y + ny * radius, Math.max(0.02, at.z + nz * radius)];
		if (crown) lamps.onLeaf(crown, { x, y, z, cx: x, cy: y, cz: z, radius: 0 }, nx, ny, nz, front, back);
		else lamps.onSurface(x, y, z, nx, ny, nz, front);
		light[from + k * 3] = (paint[0]! * front.red) / Math.PI;
		light[from + k * 3 + 1] = (paint[1]! * front.green) / Math.PI;
		light[from + k * 3 + 2] = (paint[2]! * front.blue) / Math.PI;
		if (k === 1) ({ lux } = front);
	}
	return lux;
}
