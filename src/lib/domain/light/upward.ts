/** Light sent above the horizontal, and what of it goes to the sky: by rays that carry equal parts of a source's lumens. */
import type { Photometry, Vector } from '../photometry';
import type { Site, Tree } from '../site';
import { candelaAlong, type Emitter } from './emitter';
import { meetsCrown } from './crowns';
import { isBlocked, type Shadows } from './shadows';
import type { PlanLight } from './types';

/** Rays by source: rings about the axis, and rays round each. */
const rings = 10;
const round = 12;
/** Metres along a ray beyond which nothing of a yard stands. */
const far = 200;

/**
 * Cosines off the axis of rings that carry equal lumens, for a source that is the same all round: the middles of ten equal
 * parts of ∫ I(γ) d(cos γ), summed in 2,000 steps.
 */
const kept = new WeakMap<Photometry, readonly number[]>();
function ringsOf(photometry: Photometry): readonly number[] {
	const known = kept.get(photometry);
	if (known) return known;
	const steps = 2000;
	const middle = (k: number): number => 1 - (2 * (k + 0.5)) / steps;
	let total = 0;
	for (let k = 0; k < steps; k++) total += photometry.candela(middle(k), 0);
	const cosines: number[] = [];
	let sum = 0;
	for (let k = 0; k < steps && cosines.length < rings; k++) {
		sum += photometry.candela(middle(k), 0);
		while (cosines.length < rings && sum >= (total * (cosines.length + 0.5)) / rings) cosines.push(middle(k));
	}
	kept.set(photometry, cosines);
	return cosines;
}
/** Unit vector off the axis by an angle whose cosine is given, `part` of the way round. */
function rayOf({ frame }: Emitter, cosine: number, part: number): Vector {
	const sine = Math.sqrt(Math.max(0, 1 - cosine * cosine));
	const [a, b] = [sine * Math.cos(2 * Math.PI * part), sine * Math.sin(2 * Math.PI * part)];
	const { axis, zero, ninety } = frame;
	return {
		x: cosine * axis.x + a * zero.x + b * ninety.x,
		y: cosine * axis.y + a * zero.y + b * ninety.y,
		z: cosine * axis.z + a * zero.z + b * ninety.z
	};
}
/** Trees whose crowns a ray may meet, nearest first: the lamp's own catches most of its light. Those further off count as sky. */
const near = 40;
function treesRound({ x, y }: Emitter, trees: readonly Tree[]): Tree[] {
	const away = (tree: Tree): number => Math.hypot(tree.at.x - x, tree.at.y - y) - tree.spread / 2;
	return trees.filter((tree) => away(tree) < near).sort((a, b) => away(a) - away(b));
}
/** Parts of a source's lumens above the horizontal, and of those past every crown, wall and roof. */
function partsOf(emitter: Emitter, site: Site, shadows: Shadows): { up: number; sky: number } {
	// Straight down under a shade: nothing rises.
	if (emitter.az < 0 && emitter.least >= Math.hypot(emitter.ax, emitter.ay)) return { up: 0, sky: 0 };
	const trees = treesRound(emitter, site.trees);
	const symmetric = emitter.table !== null;
	const cosines = symmetric ? ringsOf(emitter.photometry) : evenRings;
	let all = 0;
	let up = 0;
	let sky = 0;
	for (const cosine of cosines) {
		for (let k = 0; k < round; k++) {
			const ray = rayOf(emitter, cosine, (k + 0.5) / round);
			const weight = symmetric ? 1 : candelaAlong(emitter, ray.x, ray.y, ray.z);
			all += weight;
			if (ray.z <= 0 || weight === 0) continue;
			up += weight;
			const { x, y, z } = emitter;
			const isCaught =
				meetsCrown(trees, emitter, ray) ||
				isBlocked(shadows, x, y, z, x + far * ray.x, y + far * ray.y, z + far * ray.z);
			if (!isCaught) sky += weight;
		}
	}
	return all > 0 ? { up: up / all, sky: sky / all } : { up: 0, sky: 0 };
}
const evenRings: readonly number[] = Array.from({ length: 2 * rings }, (_, k) => 1 - (k + 0.5) / rings);

/**
 * `lumens` of all fixtures above the horizontal, maintained; their share of all lumens; and the share that meets neither a
 * crown (taken to catch what it meets) nor a wall or roof. Within about two hundredths of a source's lumens: 120 rays each.
 */
export function upwardOf(emitters: readonly Emitter[], site: Site, shadows: Shadows): PlanLight['upward'] {
	let [all, up, sky] = [0, 0, 0];
	for (const emitter of emitters) {
		const lumens = emitter.scale * emitter.photometry.lumens;
		const parts = partsOf(emitter, site, shadows);
		all += lumens;
		up += lumens * parts.up;
		sky += lumens * parts.sky;
	}
	return { lumens: up, share: all > 0 ? up / all : 0, skyShare: all > 0 ? sky / all : 0 };
}
