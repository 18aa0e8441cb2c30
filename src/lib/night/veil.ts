/**
 * Light that scatters within the eye lays a faint veil round what is bright (CIE 146:2002 gives its laws; here one soft disc with a few per cent
 * of the light, our simplification). It belongs to the eye: nothing glows in the air of the yard.
 */

/** Part of the light that goes into the veil, and pixels along one cell of the coarse grid that it is worked out on. */
export const veilPart = 0.05;
const cell = 8;
/** Brighter than this, in display white, counts as this: a lens is small but would veil the whole picture. */
const most = 3;

export interface Veil {
	columns: number;
	rows: number;
	/** Linear red, green, blue by cell. */
	light: Float32Array;
}
export const newVeil = (width: number, height: number): Veil => {
	const columns = Math.ceil(width / cell) + 1;
	const rows = Math.ceil(height / cell) + 1;
	return { columns, rows, light: new Float32Array(columns * rows * 3) };
};
/** Adds the light of a row of pixels to its cells: linear red, green, blue, from `from` on in `shown`. */
export function gatherLine(
	{ columns, light }: Veil,
	row: number,
	shown: Float32Array,
	from: number,
	width: number
): void {
	const part = 1 / (cell * cell);
	let at = ((row / cell) | 0) * columns * 3;
	for (let column = 0, q = from; column < width; at += 3) {
		const end = Math.min(width, column + cell);
		let [r, g, b] = [0, 0, 0];
		for (; column < end; column++, q += 3) {
			r += Math.min(most, shown[q]!);
			g += Math.min(most, shown[q + 1]!);
			b += Math.min(most, shown[q + 2]!);
		}
		light[at]! += part * r;
		light[at + 1]! += part * g;
		light[at + 2]! += part * b;
	}
}
/** Spreads it: three passes of a box of five cells along rows and along columns come close to a bell. */
export function spread(veil: Veil): void {
	const { columns, rows, light } = veil;
	const line = new Float32Array(Math.max(columns, rows));
	const pass = (start: number, stride: number, length: number): void => {
		for (let i = 0; i < length; i++) line[i] = light[start + i * stride]!;
		for (let i = 0; i < length; i++) {
			let sum = 0;
			for (let k = -2; k <= 2; k++) sum += line[Math.min(length - 1, Math.max(0, i + k))]!;
			light[start + i * stride] = sum / 5;
		}
	};
	for (let round = 0; round < 3; round++)
		for (let channel = 0; channel < 3; channel++) {
			for (let row = 0; row < rows; row++) pass(row * columns * 3 + channel, 3, columns);
			for (let column = 0; column < columns; column++) pass(column * 3 + channel, columns * 3, rows);
		}
}
/** What the veil adds to each pixel of a row, its part already taken: linear red, green, blue, between the four cells about it. */
export function veilLine({ columns, rows, light }: Veil, row: number, out: Float32Array): void {
	const y = Math.max(0, (row + 0.5) / cell - 0.5);
	const j = Math.min(rows - 2, Math.floor(y));
	const v = y - j;
	const width = out.length / 3;
	const upper = j * columns * 3;
	const lower = upper + columns * 3;
	for (let column = 0, o = 0; column < width; column++, o += 3) {
		const x = Math.max(0, (column + 0.5) / cell - 0.5);
		const i = Math.min(columns - 2, x | 0);
		const u = x - i;
		const [q, p] = [upper + i * 3, lower + i * 3];
		for (let k = 0; k < 3; k++) {
			const high = light[q + k]! + (light[q + 3 + k]! - light[q + k]!) * u;
			const low = light[p + k]! + (light[p + 3 + k]! - light[p + k]!) * u;
			out[o + k] = veilPart * (high + (low - high) * v);
		}
	}
}
