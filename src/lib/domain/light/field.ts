/** The light of a yard, to be asked at any point of any surface. */
import type { Run } from '../cable';
import type { Vector } from '../photometry';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import { emitterOf, luxFrom, type Emitter } from './emitter';
import { isBlocked, shadowsOf, type Shadows } from './shadows';
import { sourcesOf } from './sources';
import type { LightField, LightSource } from './types';

/** Metres off its surface from which a point looks for its lamps, so that a wall does not shade itself. */
export const offSurface = 0.01;

/**
 * Lux of one source below which it counts as none, so that nobody asks what stands between. A sum is short by less than that
 * times the number of sources.
 */
export const negligible = 1e-3;

/** Lux from one source with what stands between. `point` in metres, `normal` a unit vector. */
export function litBy(emitter: Emitter, shadows: Shadows, point: Vector, normal: Vector): number {
	const lux = luxFrom(emitter, point, normal);
	if (lux < negligible) return 0;
	const x = point.x + offSurface * normal.x;
	const y = point.y + offSurface * normal.y;
	const z = point.z + offSurface * normal.z;
	return isBlocked(shadows, x, y, z, emitter.x, emitter.y, emitter.z) ? 0 : lux;
}

/** The field of sources behind what casts shadows. */
export function fieldOf(sources: readonly LightSource[], shadows: Shadows): LightField {
	const emitters = sources.map(emitterOf);
	return {
		sources,
		shadows,
		lux(point, normal) {
			let sum = 0;
			for (let i = 0; i < emitters.length; i++) sum += litBy(emitters[i]!, shadows, point, normal);
			return sum;
		},
		share: (source, point, normal) => {
			const emitter = emitters[source];
			return emitter ? litBy(emitter, shadows, point, normal) : 0;
		}
	};
}

/**
 * The light of a yard: its fixtures at the volts of their runs, and the lights that are there already. A fixture that no run
 * feeds yet, or whose circuit has no solution, is taken at its rated volts.
 */
export const lightField = (site: Site, fixtures: readonly Fixture[], runs: readonly Run[]): LightField =>
	fieldOf(sourcesOf(site, fixtures, runs), shadowsOf(site));
