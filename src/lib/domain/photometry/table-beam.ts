import { tablePhotometry, type CandelaTable } from './table';

export interface TableBeam {
	/** Full angles in the planes C0–C180 and C90–C270, degrees, 1 to 179. */
	first: number;
	second: number;
	/** Candela that they are half of. */
	of: number;
	/** There is no light on the axis: they are those at half the greatest intensity, as far out as it goes. */
	byPeak: boolean;
}
/** Of the greatest candela: less than this on the axis is none. */
const dark = 1e-3;

/**
 * How wide the beam of a table is: in each of the two planes the angle between the directions, either side of the axis, in
 * which the intensity has fallen to half of that on the axis (CIE S 017:2020, 17-27-077); between its angles straight lines.
 * Where it never falls so far, the table's last angle ends it.
 */
export function tableBeam(table: CandelaTable): TableBeam {
	const { candela } = tablePhotometry(table);
	const peak = table.candela.reduce((a, b) => Math.max(a, b), 0);
	const centre = candela(1, 0);
	const byPeak = centre <= dark * peak;
	const of = byPeak ? peak : centre;
	const at = (gamma: number, azimuth: number): number => candela(Math.cos((gamma * Math.PI) / 180), azimuth);
	const half = (azimuth: number): number => {
		const values = table.vertical.map((gamma) => at(gamma, azimuth));
		const isBeyond = (value: number): boolean => value < of / 2;
		const i = byPeak ? values.findLastIndex((value) => !isBeyond(value)) + 1 : values.findIndex(isBeyond);
		if (i < 0 || i >= values.length) return table.vertical.at(-1)!;
		if (i === 0) return 0;
		const [g0, g1] = [table.vertical[i - 1]!, table.vertical[i]!];
		const [v0, v1] = [values[i - 1]!, values[i]!];
		return g0 + ((v0 - of / 2) / (v0 - v1)) * (g1 - g0);
	};
	const full = (azimuth: number): number => Math.min(179, Math.max(1, half(azimuth) + half(azimuth + 180)));
	return { first: full(0), second: full(90), of, byPeak };
}
