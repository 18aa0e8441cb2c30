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
/** Adds a pixel's light to its cell. */
export function gather({ columns, light }: Veil, column: number, row: number, r: number, g: number, b: number): void {
	const q = (Math.floor(row / cell) * columns + Math.floor(column / cell)) * 3;
	const part = 1 / (cell * cell);
	light[q]! += part * Math.min(most, r);
	light[q + 1]! += part * Math.min(most, g);
	light[q + 2]! += part * Math.min(most, b);
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
/** The veil at a pixel's channel, between its four cells. */
export function veilAt({ columns, rows, light }: Veil, column: number, row: number, channel: number): number {
	const x = Math.max(0, (column + 0.5) / cell - 0.5);
	const y = Math.max(0, (row + 0.5) / cell - 0.5);
	const i = Math.min(columns - 2, Math.floor(x));
	const j = Math.min(rows - 2, Math.floor(y));
	const u = x - i;
	const v = y - j;
	const q = (j * columns + i) * 3 + channel;
	const low = light[q]! + (light[q + 3]! - light[q]!) * u;
	const next = q + columns * 3;
	const high = light[next]! + (light[next + 3]! - light[next]!) * u;
	return low + (high - low) * v;
}
