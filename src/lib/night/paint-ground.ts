/**
 * The ground, by what lies there. Albedos from memory: lawn 0.2, concrete and paving 0.3 to 0.35, gravel 0.25, asphalt 0.1, mulch 0.08,
 * water 0.02 with a mirror on it.
 */
import { streetDepth, within, type Ground, type Region } from './ground';
import { line, paint, sharpness, type Hit } from './hit';
import { hash3, noise2 } from './noise';
import type { Scene } from './scene';

/** What a hit on level ground at z = 0 looks like. The normal is straight up before, and may lean after. */
export function paintGround(hit: Hit, scene: Scene): void {
	const { x, y } = hit;
	hit.surface = scene.lawn;
	let kind: Ground = 'lawn';
	let flight: Region['flight'] = null;
	if (y > scene.streetEdge) {
		kind = y < scene.streetEdge + streetDepth ? 'street' : 'verge';
		hit.surface = scene.street;
	} else {
		for (const region of scene.regions) {
			if (!within(region, x, y)) continue;
			({ kind, surface: hit.surface, flight } = region);
			break;
		}
	}
	painters[kind](hit, Math.abs(x - scene.centre), y, scene);
	if (flight) nosings(hit, flight, x, y);
}
/** The edges of treads: a pale nosing, and below it the riser in its own shade. Widths in metres on the ground. */
const [nosing, riser] = [0.05, 0.09];
function nosings(hit: Hit, { x, y, dx, dy, going }: NonNullable<Region['flight']>, px: number, py: number): void {
	const along = ((px - x) * dx + (py - y) * dy) / going;
	const edge = Math.round(along);
	const off = (along - edge) * going;
	const shade = line(hit, off + riser / 2, riser);
	const pale = line(hit, off - nosing / 2, nosing);
	const by = (1 - 0.72 * shade) * (1 + 0.35 * pale);
	paint(hit, hit.red, hit.green, hit.blue, by);
}
const painters: Record<Ground, (hit: Hit, x: number, y: number, scene: Scene) => void> = {
	lawn,
	verge: lawn,
	street(hit, x, y, scene) {
		const grain = 1 + sharpness(hit, 0.05) * 0.3 * (noise2(x * 40, y * 40, 21) - 0.5);
		const kerb = y < scene.streetEdge + 0.15;
		if (kerb) paint(hit, 0.33, 0.325, 0.31, grain);
		else paint(hit, 0.1, 0.1, 0.105, grain * (0.85 + 0.3 * noise2(x * 0.4, y * 0.4, 22)));
	},
	walk: paved,
	paved,
	tread: paved,
	seating(hit, x, y) {
		flags(hit, x, y, 0.45);
	},
	drive(hit, x, y) {
		const seen = sharpness(hit, 0.06);
		const grain = 1 + 0.5 * seen * (hash3(Math.floor(x * 45), Math.floor(y * 45), 31) - 0.5);
		paint(hit, 0.27, 0.26, 0.24, grain * (0.86 + 0.28 * noise2(x * 0.8, y * 0.8, 32)));
	},
	bed(hit, x, y) {
		const seen = sharpness(hit, 0.06);
		const grain = 1 + seen * (hash3(Math.floor(x * 34), Math.floor(y * 34), 41) - 0.5);
		paint(hit, 0.1, 0.072, 0.05, grain * (0.7 + 0.6 * noise2(x * 2, y * 2, 42)));
	},
	water(hit) {
		paint(hit, 0.012, 0.018, 0.018);
		hit.mirror = 0.25;
	}
};
function lawn(hit: Hit, x: number, y: number): void {
	const fine = sharpness(hit, 0.05);
	const blade = hash3(Math.floor(x * 60), Math.floor(y * 26), 51) - 0.5;
	const tuft = noise2(x * 5, y * 3.2, 52) - 0.5;
	const patch = noise2(x * 0.45, y * 0.45, 53) - 0.5;
	const tone = 1 + 0.55 * fine * blade + 0.34 * sharpness(hit, 0.3) * tuft + 0.4 * patch;
	paint(hit, 0.16 + 0.035 * patch, 0.225, 0.075, tone);
	// Blades stand up: seen flat they look towards the eye as much as to the sky.
	hit.nx += 0.35 * fine * blade;
	hit.ny += 0.25 * fine * tuft;
	const size = Math.sqrt(hit.nx * hit.nx + hit.ny * hit.ny + hit.nz * hit.nz);
	hit.nx /= size;
	hit.ny /= size;
	hit.nz /= size;
}
function paved(hit: Hit, x: number, y: number): void {
	flags(hit, x, y, 0.6);
}
/** Slabs with joints, each of its own tone. */
function flags(hit: Hit, x: number, y: number, size: number): void {
	const row = Math.floor(y / size);
	const place = x / size + 0.5 * (row & 1);
	const column = Math.floor(place);
	const seen = sharpness(hit, size);
	const edge = Math.min(place - column, column + 1 - place, y / size - row, row + 1 - y / size) * size;
	const grain = 0.94 + 0.12 * noise2(x * 14, y * 14, 61);
	const tone = (1 + 0.22 * seen * (hash3(column, row, 62) - 0.5)) * grain * (1 - 0.5 * line(hit, edge, 0.02));
	paint(hit, 0.37, 0.35, 0.315, tone);
}
