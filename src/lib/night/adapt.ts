/** Colours as an eye sees them that has adapted to a white: the Bradford transform with von Kries scaling (as in ICC profiles). */
import { planckian } from './colour';

type Matrix = readonly number[];
/** CIE XYZ of linear sRGB: IEC 61966-2-1; and the Bradford cone responses of XYZ (Lam, 1985). Row by row. */
const toXyz: Matrix = [0.4124, 0.3576, 0.1805, 0.2126, 0.7152, 0.0722, 0.0193, 0.1192, 0.9505];
const toCones: Matrix = [0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296];

function times(a: Matrix, b: Matrix): number[] {
	return Array.from({ length: 9 }, (_, i) => {
		const [row, column] = [3 * Math.floor(i / 3), i % 3];
		return a[row]! * b[column]! + a[row + 1]! * b[3 + column]! + a[row + 2]! * b[6 + column]!;
	});
}
function inverse(m: Matrix): number[] {
	const [a, b, c, d, e, f, g, h, i] = m as [number, number, number, number, number, number, number, number, number];
	const size = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
	return [
		e * i - f * h,
		c * h - b * i,
		b * f - c * e,
		f * g - d * i,
		a * i - c * g,
		c * d - a * f,
		d * h - e * g,
		b * g - a * h,
		a * e - b * d
	].map((value) => value / size);
}
const conesOf = ([x, y, z]: readonly [number, number, number]): number[] => [
	toCones[0]! * x + toCones[1]! * y + toCones[2]! * z,
	toCones[3]! * x + toCones[4]! * y + toCones[5]! * z,
	toCones[6]! * x + toCones[7]! * y + toCones[8]! * z
];
const xyzOf = ({ x, y }: { x: number; y: number }): [number, number, number] => [x / y, 1, (1 - x - y) / y];
/** White of sRGB: D65, CIE 15. */
const d65 = { x: 0.3127, y: 0.329 };

/** XYZ under a white of chromaticity `from` to what looks alike under `to`; nine numbers, row by row. */
export function bradford(from: { x: number; y: number }, to: { x: number; y: number }): number[] {
	const [a, b] = [conesOf(xyzOf(from)), conesOf(xyzOf(to))];
	const scaled = toCones.map((value, i) => (value * b[Math.floor(i / 3)]!) / a[Math.floor(i / 3)]!);
	return times(inverse(toCones), scaled);
}
/** Linear sRGB to linear sRGB, for an eye adapted to a full radiator of so many kelvin: that white comes out as the screen's white. */
export const adaptation = (kelvin: number): number[] =>
	times(inverse(toXyz), times(bradford(kelvin > 6490 ? d65 : planckian(kelvin), d65), toXyz));
