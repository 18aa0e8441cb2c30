import { fullCircle } from '../circle';
import { tableLumens, type CandelaTable } from '../table';

/** A table as an EULUMDAT file of absolute photometry, every digit kept. `watts` of the luminaire. */
export function writeEulumdat(table: CandelaTable, words: { name: string; watts?: number }): string {
	const lumens = tableLumens(table);
	const { vertical, horizontal, candela } = fullCircle(table);
	const rings = vertical.length;
	const angles = table.symmetry === 'rotational' ? [0] : horizontal.slice(0, -1);
	const isym = indicator(table, angles.length);
	const per = 1000 / lumens;
	const header = ['', isym === 1 ? 1 : 3, isym, angles.length, 0, rings, 0, '', words.name.slice(0, 78), '', '', ''];
	const sizes = Array.from({ length: 9 }, () => 0);
	const output = [(tableLumens(table, 0, 90) / lumens) * 100, 100, 1, 0];
	const lamps = [1, -1, '', lumens, '', '', words.watts ?? 0];
	const ratios = Array.from({ length: 10 }, () => 0);
	const intensities = storedOf(isym, angles.length).flatMap((plane) =>
		Array.from(candela.subarray(plane * rings, (plane + 1) * rings), (value) => value * per)
	);
	return [...header, ...sizes, ...output, ...lamps, ...ratios, ...angles, ...vertical, ...intensities, ''].join('\r\n');
}

/** The symmetry about a plane counts planes by halves and quarters of the circle; planes that do not divide so are written all. */
function indicator({ symmetry }: CandelaTable, count: number): number {
	if (symmetry === 'rotational') return 1;
	if (symmetry === 'bilateral' && count % 2 === 0) return 2;
	if (count % 4 !== 0) return 0;
	return symmetry === 'bilateral-90' ? 3 : symmetry === 'quadrant' ? 4 : 0;
}

/** Planes of the circle in the order of the file. */
function storedOf(isym: number, count: number): number[] {
	const all = Array.from({ length: count }, (_, plane) => plane);
	if (isym === 2) return all.slice(0, count / 2 + 1);
	if (isym === 3) return [...all.slice((3 * count) / 4), ...all.slice(0, count / 4 + 1)];
	return isym === 4 ? all.slice(0, count / 4 + 1) : all;
}
