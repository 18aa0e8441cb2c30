import type { Photometry } from './types';

/** A symmetric photometry sampled for grids. A photometry itself; `values` and `reach` are for loops that look up inline. */
export interface Sampled extends Photometry {
	/** Candela at equal steps of `spread`, from 0 on the axis to `reach`; one more than there are cells. */
	values: Float64Array;
	/** `spread` of the last direction that has light; none beyond. */
	reach: number;
}

/**
 * What the samples are spaced by: sin(γ/2) ahead of the source, and the same seen from behind it, √2 − cos(γ/2): 0 on the axis, √2 right
 * behind. Costs one square root and, unlike the cosine, keeps its resolution near the axis, where narrow beams change most.
 */
export const spread = (cosine: number): number =>
	cosine >= 0
		? Math.sqrt(cosine < 1 ? (1 - cosine) / 2 : 0)
		: Math.SQRT2 - Math.sqrt(cosine > -1 ? (1 + cosine) / 2 : 0);

const cosineAt = (p: number): number => {
	const q = p <= Math.SQRT1_2 ? p : Math.SQRT2 - p;
	return p <= Math.SQRT1_2 ? 1 - 2 * q * q : 2 * q * q - 1;
};

/**
 * A symmetric photometry as straight lines between samples. With 1024 cells it is off the exact value by at most: for every law of the
 * catalogue 0.0001 of the greatest candela; for a table 0.03 times (0.06 where it has light behind) the greatest change of slope
 * at one of its angles, candela per degree. `lumens` are those of the original.
 */
export function tabulated(photometry: Photometry, cells = 1024): Sampled {
	const at = (p: number): number => photometry.candela(cosineAt(p), 0);
	const reach = lastLit(at, cells);
	const values = new Float64Array(cells + 1);
	for (let i = 0; i <= cells; i++) values[i] = at((reach * i) / cells);
	const scale = cells / reach;
	return {
		lumens: photometry.lumens,
		symmetric: true,
		values,
		reach,
		candela: (cosine) => {
			const x = spread(cosine) * scale;
			if (x >= cells) return x > cells * (1 + 1e-12) ? 0 : values[cells]!;
			const i = x | 0;
			return values[i]! + (x - i) * (values[i + 1]! - values[i]!);
		}
	};
}

/** The greatest `spread` with light, by halving: a rim ends the light at a sharp edge, which must not be smeared over a cell. */
function lastLit(at: (p: number) => number, cells: number): number {
	if (at(Math.SQRT2) > 0) return Math.SQRT2;
	let i = cells - 1;
	while (i > 0 && at((Math.SQRT2 * i) / cells) <= 0) i--;
	let lit = (Math.SQRT2 * i) / cells;
	let dark = (Math.SQRT2 * (i + 1)) / cells;
	for (let k = 0; k < 50; k++) {
		const middle = (lit + dark) / 2;
		if (at(middle) > 0) lit = middle;
		else dark = middle;
	}
	return Math.max(lit, 1 / cells);
}
