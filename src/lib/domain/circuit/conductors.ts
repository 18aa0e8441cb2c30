/**
 * Copper conductors: resistance by size and temperature, amperes by size. One conductor throughout; a two-wire run
 * of `metres` has `loopOhms`, there and back.
 */
import { metresPerFoot } from '../shared/units';
import { rules } from '../shared/rules';
import iec from './tables/iec60228.json';
import nec from './tables/nec-table8.json';
import type { CableSize, CableSystem } from './types';

/** IEC 60228: 2 = stiff stranded, 5 = flexible. Garden cable is flexible, and class 5 is the higher resistance. */
export type StrandClass = 2 | 5;

const feetPerKilometre = 1000 / metresPerFoot;

function gaugeArea(gauge: number): number {
	const diameter = 0.005 * 25.4 * 92 ** ((36 - gauge) / 39);
	return (Math.PI / 4) * diameter ** 2;
}
/** Of gauges 0 to 40, which are asked for again and again. */
const gaugeAreas = Array.from({ length: 41 }, (_, gauge) => gaugeArea(gauge));

/** As it is said and printed: `12 AWG`, `2.5 mm²`. */
export const sizeName = ({ system, size }: CableSize): string => (system === 'awg' ? `${size} AWG` : `${size} mm²`);

/** Cross-section of an AWG wire taken as solid, mm² (ASTM B258: d = 0.005 in × 92^((36−n)/39)). */
export const awgSquareMillimetres = (gauge: number): number => gaugeAreas[gauge] ?? gaugeArea(gauge);

/** Cross-section of a size, mm²; zero when the size is no size at all. */
export function squareMillimetres(size: CableSize): number {
	const area = size.system === 'awg' ? awgSquareMillimetres(size.size) : size.size;
	return Number.isFinite(area) && area > 0 ? area : 0;
}

interface Table {
	/** Thin to thick: cross-section mm², ohm/km of one conductor at `celsius`. */
	rows: { size: number; area: number; ohms: number }[];
	celsius: number;
	alpha: number;
}
const table = (
	entries: Record<string, number>,
	system: CableSystem,
	scale: number,
	celsius: number,
	alpha: number
): Table => ({
	rows: Object.entries(entries)
		.map(([size, ohms]) => ({
			size: Number(size),
			area: squareMillimetres({ system, size: Number(size) }),
			ohms: ohms * scale
		}))
		.toSorted((a, b) => a.area - b.area),
	celsius,
	alpha
});
const awg = table(nec.ohmsPerKft, 'awg', feetPerKilometre / 1000, nec.celsius, nec.alpha);
const metric = {
	2: table(iec.class2OhmsPerKm, 'mm2', 1, iec.celsius, iec.alpha),
	5: table(iec.class5OhmsPerKm, 'mm2', 1, iec.celsius, iec.alpha)
};

/** The table a system goes by: its temperature, °C, and the change of resistance with each degree, as a fraction of that there. */
export const resistanceLaw = (system: CableSystem): Pick<Table, 'celsius' | 'alpha'> =>
	system === 'awg' ? awg : metric[5];

/**
 * Resistance of ONE conductor, ohm/km, at a conductor temperature in °C. AWG: NEC Chapter 9 Table 8, stranded, with
 * R = R75 (1 + 0.00323 (t − 75)); mm²: IEC 60228, class 5 unless told otherwise, with R = R20 (1 + 0.00393 (t − 20)).
 * A size between or beyond the rows goes by cross-section from the nearest row. A size that is none gives Infinity.
 */
export function ohmsPerKm(size: CableSize, celsius: number, strands: StrandClass = 5): number {
	const { rows, celsius: base, alpha } = size.system === 'awg' ? awg : metric[strands];
	for (const own of rows) if (own.size === size.size) return own.ohms * (1 + alpha * (celsius - base));
	const area = squareMillimetres(size);
	if (area === 0) return Infinity;
	const apart = (row: { area: number }) => Math.abs(Math.log(row.area / area));
	const row = rows.reduce((best, next) => (apart(next) < apart(best) ? next : best));
	return ((row.ohms * row.area) / area) * (1 + alpha * (celsius - base));
}

/** Ohms of a two-wire cable `metres` long: both conductors. `perKm` as from `ohmsPerKm`. */
export const loopOhms = (perKm: number, metres: number): number => (2 * perKm * metres) / 1000;

const fuse = rules['cable.fuse'].figures;
const fuseByArea = [
	{ area: awgSquareMillimetres(10), amps: fuse.awg10 },
	{ area: awgSquareMillimetres(12), amps: fuse.awg12 },
	{ area: awgSquareMillimetres(14), amps: fuse.awg14 },
	{ area: awgSquareMillimetres(16), amps: fuse.awg16 },
	{ area: awgSquareMillimetres(18), amps: fuse.awg18 }
];

/**
 * Amperes a conductor may carry, rule cable.fuse. A mm² size takes the figure of the thickest gauge of no larger
 * cross-section: 1 mm² as 18 AWG 7 A, 1.5 as 16 AWG 10 A, 2.5 as 14 AWG 15 A, 4 as 12 AWG 20 A, 6 as 10 AWG 30 A.
 * Thicker than 10 AWG keeps 30 A, because the rule goes no further and the secondary's own limit comes first; thinner
 * than 18 AWG gives 0.
 */
export function ampsLimit(size: CableSize): number {
	const own = squareMillimetres(size);
	return fuseByArea.find(({ area }) => area <= own)?.amps ?? 0;
}

/** Sizes commonly sold as two-conductor garden cable, thin to thick. Common practice, no source. */
export function usualSizes(system: CableSystem): CableSize[] {
	const sizes = system === 'awg' ? [16, 14, 12, 10, 8] : [1.5, 2.5, 4, 6, 10];
	return sizes.map((size) => ({ system, size }));
}

/** Sort order thin to thick, by cross-section. */
export const byThickness = (a: CableSize, b: CableSize): number => squareMillimetres(a) - squareMillimetres(b);
