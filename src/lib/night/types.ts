/** The yard after dark as pictures. Pure: arrays in, arrays out; pages put them on a canvas. Metres in the frame of the site, z up. */

/** From where it is seen: standing in the street and looking at the house, or straight down as on the plan. */
export type ViewKind = 'street' | 'above';
export interface View {
	kind: ViewKind;
	/** Pixels. */
	width: number;
	height: number;
}

/**
 * Luminance of what is seen, candela per square metre, per pixel in linear red, green and blue of the sRGB primaries: once by the
 * lamps alone and once by a full overcast day, so that the slider from day to night only mixes and develops.
 */
export interface LuminancePicture {
	view: View;
	/** width × height × 3. */
	lamps: Float32Array;
	sky: Float32Array;
	/** What each pixel sees, an index of `surfaces`; 0 is the sky. */
	surface: Uint16Array;
	surfaces: readonly { kind: string; name: string }[];
	/** Lux on the surface at each pixel by the lamps. */
	lux: Float32Array;
}

/** sRGB with alpha, row by row from the top left, as a canvas takes it. */
export interface DevelopedPicture {
	width: number;
	height: number;
	pixels: Uint8ClampedArray;
}
