/**
 * Walls and what is set in them. Albedos by finish are from memory (light paint 0.6 to 0.7, brick 0.2 to 0.4, dark brick or stained
 * wood 0.1 to 0.2); patterns are drawn by place: courses on rough walls, boards on smooth ones.
 */
import type { Opening, Wall } from '../domain/site';
import { line, paint, sharpness, type Hit } from './hit';
import { hash3, noise2 } from './noise';
import type { Scene } from './scene';

type Paint = readonly [number, number, number];
const rough: Record<Wall['finish'], Paint> = {
	light: [0.62, 0.57, 0.49],
	medium: [0.5, 0.31, 0.225],
	dark: [0.21, 0.14, 0.11]
};
const smooth: Record<Wall['finish'], Paint> = {
	light: [0.64, 0.61, 0.55],
	medium: [0.36, 0.36, 0.33],
	dark: [0.14, 0.155, 0.165]
};
const trim: Paint = [0.6, 0.58, 0.54];
const frame = 0.09;

/** Masonry in courses: bricks, or wider stones on garden walls and light fronts. The joints stand back, so that grazing light shows each course. */
function masonry(hit: Hit, wall: Wall, along: number): void {
	const stone = wall.of === 'garden' || wall.finish === 'light';
	const [high, wide] = stone ? [0.19, 0.42] : [0.075, 0.225];
	const seen = sharpness(hit, high);
	const course = Math.floor(hit.z / high);
	const shift = stone ? hash3(course, 3, 5) : 0.5 * (course & 1);
	const place = along / wide + shift;
	const brick = Math.floor(place);
	const up = hit.z / high - course;
	const across = place - brick;
	const joint = 0.012;
	const bed = line(hit, Math.min(up, 1 - up) * high, joint);
	const seam = Math.max(bed, line(hit, Math.min(across, 1 - across) * wide, joint));
	const own = 0.82 + 0.36 * hash3(brick, course, 11);
	const blotch = 0.9 + 0.2 * noise2(along * 0.7, hit.z * 0.7, 3);
	const [r, g, b] = rough[wall.finish];
	const tone = blotch * (1 + (own - 1) * Math.max(0.25, seen)) * (1 - 0.4 * seam);
	paint(hit, r, g, b, tone);
	// The lower edge of a course looks a little down, its upper edge a little up.
	const lean = seen * (0.06 * (up - 0.5) + 0.035 * (hash3(brick, course, 17) - 0.5));
	tilt(hit, lean, seen * 0.1 * (hash3(brick, course, 23) - 0.5));
}
/** Boards lying over each other: each looks a little down, with a dark line under it. */
function boards(hit: Hit, wall: Wall, along: number): void {
	const high = 0.16;
	const seen = sharpness(hit, high);
	const up = hit.z / high - Math.floor(hit.z / high);
	const [r, g, b] = smooth[wall.finish];
	const grain = 0.95 + 0.1 * noise2(along * 0.9, hit.z * 5, 7);
	paint(hit, r, g, b, grain * (1 - 0.6 * line(hit, Math.min(up, 1 - up) * high, 0.018)));
	tilt(hit, 0.05 * seen * (0.5 - up), 0);
}
/** Turns the normal up by `lean` and sideways by `side`, radians, small. */
function tilt(hit: Hit, lean: number, side: number): void {
	const [tx, ty] = [-hit.ny, hit.nx];
	const nx = hit.nx + tx * side;
	const ny = hit.ny + ty * side;
	const nz = hit.nz + lean;
	const size = Math.sqrt(nx * nx + ny * ny + nz * nz);
	hit.nx = nx / size;
	hit.ny = ny / size;
	hit.nz = nz / size;
}

/** A window: frame, bars and dark glass, which mirrors what lies before it. */
function windowAt(hit: Hit, opening: Opening, a: number): void {
	const wide = opening.end - opening.start;
	const high = opening.head - opening.sill;
	const u = a - opening.start;
	const v = hit.z - opening.sill;
	const edge = Math.min(u, wide - u, v, high - v);
	const sashes = Math.max(1, Math.round(wide / 0.75));
	const pane = wide / sashes;
	const toBar = Math.min(Math.abs(u - pane * Math.round(u / pane)), Math.abs(v - high * 0.5));
	if (edge < 0.05) return paint(hit, trim[0], trim[1], trim[2], edge < 0.012 ? 0.5 : 0.92);
	const bar = line(hit, toBar, 0.03);
	// Curtains drawn half: a little paler towards the sides.
	const curtain = Math.max(0, 1 - Math.min(u, wide - u) / (0.2 * wide)) * (0.8 + 0.2 * Math.sin(u * 38));
	const glass = 0.018 + 0.05 * Math.min(1, 3 * curtain);
	hit.mirror = 0.1 * (1 - bar);
	paint(hit, glass + (trim[0] - glass) * bar, glass + (trim[1] - glass) * bar, glass + (trim[2] - glass) * bar);
}
function doorAt(hit: Hit, opening: Opening, a: number): void {
	const wide = opening.end - opening.start;
	const high = opening.head - opening.sill;
	const u = (a - opening.start) / wide;
	const v = (hit.z - opening.sill) / high;
	const edge = Math.min(a - opening.start, opening.end - a, opening.head - hit.z);
	if (edge < 0.06) return paint(hit, trim[0], trim[1], trim[2]);
	const leafU = Math.abs(u - 0.5);
	const panel = leafU > 0.07 && leafU < 0.34 && ((v > 0.08 && v < 0.42) || (v > 0.5 && v < 0.9));
	const rim = panel && (leafU < 0.1 || leafU > 0.31 || v < 0.1 || v > 0.88 || (v > 0.4 && v < 0.52));
	paint(hit, 0.19, 0.085, 0.06, rim ? 0.55 : panel ? 1.15 : 1);
	if (Math.hypot((u - 0.87) * wide, (v - 0.46) * high) < 0.035) paint(hit, 0.5, 0.42, 0.25);
}
function garageAt(hit: Hit, opening: Opening, a: number): void {
	const edge = Math.min(a - opening.start, opening.end - a, opening.head - hit.z);
	if (edge < 0.08) return paint(hit, trim[0], trim[1], trim[2]);
	const rows = (hit.z - opening.sill) / ((opening.head - opening.sill) / 4);
	const columns = (a - opening.start) / 0.6;
	const v = rows - Math.floor(rows);
	const u = columns - Math.floor(columns);
	const seen = sharpness(hit, 0.2);
	const groove = v < 0.04 || v > 0.97;
	const inset = u > 0.1 && u < 0.9 && v > 0.18 && v < 0.82;
	paint(hit, 0.5, 0.49, 0.46, groove ? 1 - 0.6 * seen : inset ? 0.93 : 1);
	if (inset && (v < 0.24 || u < 0.14)) paint(hit, 0.5, 0.49, 0.46, 0.75);
}

/** The face of a wall at the hit, with its windows and doors. Eaves shade it from the sky by day. */
export function paintWall(hit: Hit, wall: Wall, scene: Pick<Scene, 'centre' | 'openings'>): void {
	const top = wall.height - hit.z;
	hit.open = wall.of === 'house' ? 1 - 0.55 * Math.exp(-Math.max(0, top) / 0.7) : 1;
	for (const opening of wall.openings) {
		if (hit.a < opening.start - frame || hit.a > opening.end + frame) continue;
		if (hit.z < opening.sill - frame || hit.z > opening.head + frame) continue;
		const inside = hit.a > opening.start && hit.a < opening.end && hit.z > opening.sill && hit.z < opening.head;
		if (!inside) return paint(hit, trim[0], trim[1], trim[2]);
		hit.surface = scene.openings[opening.kind];
		if (opening.kind === 'window') return windowAt(hit, opening, hit.a);
		return opening.kind === 'door' ? doorAt(hit, opening, hit.a) : garageAt(hit, opening, hit.a);
	}
	// By world place rather than from the wall's end, and alike on both hands of the middle.
	const sideways = Math.abs(wall.outward.y) < 0.7;
	const along = sideways ? hit.y : Math.abs(hit.x - scene.centre);
	if (wall.texture === 'rough') masonry(hit, wall, along);
	else boards(hit, wall, along);
}
