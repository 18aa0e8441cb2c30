/** Tables in place of roots, powers and logarithms: a picture has a million pixels, and the slider wants one every few milliseconds. */

/** sRGB code value, 0 to 1, of a linear value from 0 to 1: IEC 61966-2-1. */
export const encode = (value: number): number =>
	value <= 0.0031308 ? 12.92 * value : 1.055 * value ** (1 / 2.4) - 0.055;

/** Steps of a linear value from 0 to 1: at the dark end, where the code is steepest, one step is a fifth of a code value. */
export const codeSteps = 16384;
/** Code values 0 to 255 by step; half a step more where it is rounded down. */
export const codes = Uint8ClampedArray.from({ length: codeSteps + 1 }, (_, i) => 255 * encode(i / codeSteps));

/**
 * A positive number in place: the exponent and the first bits of the mantissa of its single-precision form (IEEE 754), which go up
 * evenly within an octave. One step is at most 1/512 of the number; from 2⁻⁴⁰ to 2³⁰, beyond which the ends stand.
 */
const mantissa = 9;
const shift = 23 - mantissa;
const first = (127 - 40) << mantissa;
export const octaves = 70 << mantissa;
const single = new Float32Array(1);
const bits = new Uint32Array(single.buffer);
/** The place of a number in a table by octaves. */
export function placeOf(value: number): number {
	single[0] = value;
	const place = (bits[0]! >>> shift) - first;
	return place < 0 ? 0 : place >= octaves ? octaves - 1 : place;
}
/** The number in the middle of a place. */
export function numberAt(place: number): number {
	bits[0] = ((place + first) << shift) | (1 << (shift - 1));
	return single[0]!;
}

/** Powers of numbers from 0 to `most`, by even steps: `table[value · scale]`. */
export interface Powers {
	table: Float32Array;
	scale: number;
}
const powerSteps = 8192;
export const newPowers = (most: number): Powers => ({
	table: new Float32Array(powerSteps + 1),
	scale: powerSteps / most
});
export function fillPowers({ table, scale }: Powers, exponent: number, times: number): void {
	for (let i = 0; i <= powerSteps; i++) table[i] = times * (i / scale) ** exponent;
}
