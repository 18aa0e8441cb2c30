/** A beam on a wall that it meets square on: how wide, and how bright. Metres, degrees, candela, lux, as new. */
import { beam, beamExponent, illuminance, type Distribution, type Vector } from '../../photometry';
import { fixed } from '../../shared/show-working';
import { metresPerFoot, type UnitSystem } from '../../shared/units';

/** Lumens on a square foot: 1 fc is this many lux. */
export const luxPerFootcandle = 1 / metresPerFoot ** 2;

/** Lux in words; in feet with footcandles behind. */
export function luxText(lux: number, units: UnitSystem): string {
	const number = (value: number): string => fixed(value, value < 9.95 ? 1 : 0);
	const both = units === 'feet' ? ` (${number(lux / luxPerFootcandle)} fc)` : '';
	return `${number(lux)} lx${both}`;
}
/**
 * Width of a beam so many metres away, from the law of the lamp: twice the distance from the axis at which its intensity has fallen to half
 * (CIE S 017:2020, 17-27-077). For cosⁿ that is where cos γ is the nth root of a half.
 */
export function beamWidth(beamAngle: number, distance: number): number {
	const cosine = 0.5 ** (1 / beamExponent(beamAngle));
	return (2 * distance * Math.sqrt(1 - cosine ** 2)) / cosine;
}
const along: Vector = { x: 1, y: 0, z: 0 };
const facing: Vector = { x: -1, y: 0, z: 0 };
/** Lux of a source so many metres straight ahead. */
export const aheadOf = (distribution: Distribution, distance: number): number =>
	illuminance({ at: { x: 0, y: 0, z: 0 }, axis: along, distribution }, { x: distance, y: 0, z: 0 }, facing);

export interface OnWall {
	distance: number;
	width: number;
	/** In the middle of the beam. */
	lux: number;
	candela: number;
}
/** What a lamp of so many lumens throws on a wall so many metres ahead. */
export function onWall({ lumens, beamAngle }: { lumens: number; beamAngle: number }, distance: number): OnWall {
	const distribution = beam(lumens, beamAngle);
	return {
		distance,
		width: beamWidth(beamAngle, distance),
		lux: aheadOf(distribution, distance),
		candela: distribution.centre
	};
}
