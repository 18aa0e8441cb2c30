/** Whether a lamp of the person's own can be reckoned with: the schema holds each figure to its range, not one to the other. */
import { tableLumens } from '../../photometry';
import type { OwnLamp } from '../../yard';

/** Less than this in all, lumens, lights nothing (our figure). */
const least = 1;

/** Angles nearer together than this, degrees, are one. */
const apart = 1e-6;
const climbs = (angles: readonly number[]): boolean =>
	angles.every((angle, i) => i === 0 || angle - angles[i - 1]! >= apart);

/** From where to where the planes of a symmetry go, degrees. */
const spans: Record<Exclude<OwnLamp['symmetry'], 'rotational'>, readonly [number, number]> = {
	quadrant: [0, 90],
	bilateral: [0, 180],
	'bilateral-90': [90, 270],
	none: [0, 360]
};

/** What is wrong with its table, the end of a sentence that begins with the lamp; null where nothing is. */
export function faultOf({ vertical, horizontal, symmetry, candela }: OwnLamp): string | null {
	const wanted = vertical.length * horizontal.length;
	if (candela.length !== wanted)
		return `has ${candela.length} candela where its ${vertical.length} angles in ${horizontal.length} ${horizontal.length === 1 ? 'plane' : 'planes'} want ${wanted}`;
	if (!climbs(vertical)) return 'has angles off its axis that do not climb from one to the next';
	if (!climbs(horizontal)) return 'has planes round its axis that do not climb from one to the next';
	if (symmetry === 'rotational' && horizontal.length !== 1)
		return `is said to be the same all round, yet has ${horizontal.length} planes`;
	if (symmetry !== 'rotational') {
		const [from, to] = spans[symmetry];
		if (horizontal.length < 2 || horizontal[0] !== from || horizontal.at(-1) !== to)
			return `has planes from ${horizontal[0]}° to ${horizontal.at(-1)}° where its symmetry (${symmetry}) wants ${from}° to ${to}°`;
	}
	const lumens = tableLumens({ vertical, horizontal, symmetry, candela: Float64Array.from(candela) });
	if (candela.every((value) => value === 0)) return 'has no light in its table: all candela are zero';
	return lumens < least ? 'gives less than one lumen in all' : null;
}
