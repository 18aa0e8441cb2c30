/** Colour of lamps: from colour temperature to linear red, green and blue of the sRGB primaries. */

/**
 * CIE 1931 chromaticity of a full radiator, `kelvin` 1667 to 25,000: the cubic approximation of Kim et al. (2002), US patent
 * 7,024,034, coefficients from memory; held against published points of the locus in the test.
 */
export function planckian(kelvin: number): { x: number; y: number } {
	const t = Math.min(Math.max(kelvin, 1667), 25000);
	const k = 1000 / t;
	const x =
		t < 4000
			? ((-0.2661239 * k - 0.234358) * k + 0.8776956) * k + 0.17991
			: ((-3.0258469 * k + 2.1070379) * k + 0.2226347) * k + 0.24039;
	const y =
		t < 2222
			? ((-1.1063814 * x - 1.3481102) * x + 2.18555832) * x - 0.20219683
			: t < 4000
				? ((-0.9549476 * x - 1.37418593) * x + 2.09137015) * x - 0.16748867
				: ((3.081758 * x - 5.8733867) * x + 3.75112997) * x - 0.37001483;
	return { x, y };
}

/** Shares of red, green and blue in one candela per square metre of light of that chromaticity: IEC 61966-2-1, linear. */
export function linearOf({ x, y }: { x: number; y: number }): [number, number, number] {
	const X = x / y;
	const Z = (1 - x - y) / y;
	return [
		Math.max(0, 3.2406 * X - 1.5372 - 0.4986 * Z),
		Math.max(0, -0.9689 * X + 1.8758 + 0.0415 * Z),
		Math.max(0, 0.0557 * X - 0.204 + 1.057 * Z)
	];
}
/** Luminance of linear sRGB: the middle row of IEC 61966-2-1's matrix. */
export const luminanceOf = (r: number, g: number, b: number): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

const kept = new Map<number, readonly [number, number, number]>();
/** Linear sRGB of luminance 1 at a colour temperature, kelvin. */
export function colourAt(kelvin: number): readonly [number, number, number] {
	const known = kept.get(kelvin);
	if (known) return known;
	const [r, g, b] = linearOf(planckian(kelvin));
	const y = luminanceOf(r, g, b);
	const colour = [r / y, g / y, b / y] as const;
	if (kept.size > 64) kept.clear();
	kept.set(kelvin, colour);
	return colour;
}
