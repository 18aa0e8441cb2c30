/** Crowns of trees as ellipsoids between crown base and top: how much light hangs in them, and which light they catch. */
import type { Vector } from '../photometry';
import type { Tree } from '../site';
import { candelaAlong, type Emitter } from './emitter';
import { Tally, type Levels, type Probe } from './probe';
import { isBlocked, type Shadows } from './shadows';

/** Parts of the way up the crown at which its light is told. */
export const crownLevels = [
	['low', 1 / 6],
	['middle', 1 / 2],
	['top', 5 / 6]
] as const;
/** Points round the mantle at each height. */
const round = 8;

/** Half-width of the crown part of the way up, metres. */
export const crownRadius = (tree: Pick<Tree, 'spread'>, part: number): number =>
	(tree.spread / 2) * Math.sqrt(Math.max(0, 1 - (2 * part - 1) ** 2));

export const isLit = (tree: Tree): boolean => tree.light !== 'none';

/**
 * Mean spherical illuminance, lux: leaves hang in all directions, and a surface turned every way gets a quarter of the
 * light that falls square to the beam, Σ I / 4d².
 */
function sphericalLux(emitters: readonly Emitter[], shadows: Shadows, p: Vector): number {
	let sum = 0;
	for (const emitter of emitters) {
		const x = p.x - emitter.x;
		const y = p.y - emitter.y;
		const z = p.z - emitter.z;
		const square = x * x + y * y + z * z;
		if (square === 0) continue;
		const distance = Math.sqrt(square);
		const candela = candelaAlong(emitter, x / distance, y / distance, z / distance);
		if (candela === 0 || isBlocked(shadows, p.x, p.y, p.z, emitter.x, emitter.y, emitter.z)) continue;
		sum += candela / (4 * square);
	}
	return sum;
}
/** Light on the mantle of a crown part of the way up. Leaves in front take none away. */
export function crownLux({ own, there, shadows }: Probe, tree: Tree, part: number): Levels {
	const tally = new Tally();
	const radius = crownRadius(tree, part);
	const z = tree.crownBase + part * (tree.height - tree.crownBase);
	for (let k = 0; k < round; k++) {
		const angle = (2 * Math.PI * (k + 0.5)) / round;
		const p = { x: tree.at.x + radius * Math.cos(angle), y: tree.at.y + radius * Math.sin(angle), z };
		tally.add(sphericalLux(own, shadows, p), sphericalLux(there, shadows, p));
	}
	return tally.levels();
}

/** Whether a ray from `at` along a unit vector meets a crown, or starts inside one. */
export function meetsCrown(trees: readonly Tree[], at: Vector, way: Vector): boolean {
	for (const tree of trees) {
		const half = (tree.height - tree.crownBase) / 2;
		const radius = tree.spread / 2;
		if (!(half > 0) || !(radius > 0)) continue;
		// Squeezed to a unit ball round the origin.
		const [px, py] = [(at.x - tree.at.x) / radius, (at.y - tree.at.y) / radius];
		const pz = (at.z - (tree.crownBase + half)) / half;
		const [vx, vy, vz] = [way.x / radius, way.y / radius, way.z / half];
		const c = px * px + py * py + pz * pz - 1;
		if (c <= 0) return true;
		const b = px * vx + py * vy + pz * vz;
		if (b < 0 && b * b >= c * (vx * vx + vy * vy + vz * vz)) return true;
	}
	return false;
}
