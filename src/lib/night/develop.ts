/**
 * From luminance to a picture for a screen, the way an eye sees it that has adapted to the lit yard. A photographic tone curve keeps bright
 * walls from burning out: Reinhard, Stark, Shirley and Ferwerda, "Photographic tone reproduction for digital images", ACM SIGGRAPH
 * 2002, equations 1, 2 and 4. Encoded by IEC 61966-2-1.
 */
import { adaptation } from './adapt';
import { luminanceOf } from './colour';
import { exposureOf } from './exposure';
import { dayLux } from './sky';
import type { DevelopedPicture, LuminancePicture } from './types';
import { gather, newVeil, spread, veilAt, veilPart } from './veil';

/** Light left of the sky of 1 klx at night: 0.08 lx, a clear night in a suburb's glow with some moon (from memory: full moon 0.1 to 0.3 lx). */
const nightSky = 8e-5;
/** The white that the eye has adapted to by night and by day, kelvin: between lamps and sky, our assumption. */
const whites = { night: 4200, day: 6504 } as const;

const within = (value: number): number => Math.min(1, Math.max(0, value));
/** Part of the full day's sky light at a place of the slider, 0 night to 1 day: geometric between, slower at the dark end. */
export const skyPart = (daylight: number): number => nightSky ** (1 - within(daylight) ** 1.8);

/** sRGB code value, 0 to 1, of a linear value from 0 to 1: IEC 61966-2-1. */
export const encode = (value: number): number =>
	value <= 0.0031308 ? 12.92 * value : 1.055 * value ** (1 / 2.4) - 0.055;
const steps = 4096;
/** Code values by the root of the linear value, which spreads the dark end. */
const encoded = Uint8ClampedArray.from({ length: steps + 1 }, (_, i) => 255 * encode((i / steps) ** 2));
const code = (value: number): number => encoded[Math.min(steps, (Math.sqrt(Math.max(0, value)) * steps + 0.5) | 0)]!;

/** Display luminance of a scaled luminance: equation 4 of Reinhard et al. 2002. `white`: the least that is shown as white. */
export const tone = (scaled: number, white: number): number => (scaled * (1 + scaled / (white * white))) / (1 + scaled);

/** Luminance of an even sky in the picture `sky`, cd/m². */
const even = dayLux / Math.PI;
/** Colour of the sky's light against day's: blue at dusk and after. */
function tintAt(daylight: number): [number, number, number] {
	const blue = 1 - within(daylight) ** 1.5;
	return [1 - 0.42 * blue, 1 - 0.2 * blue, 1 + 0.5 * blue];
}
/**
 * Log₁₀ of the luminance, cd/m², at which rods have taken over from cones and at which cones see alone (CIE 191:2010 puts twilight
 * vision at 0.005 to 5); by rods one sees nearly without colour, and a little blue. `most`: how far that goes; from memory.
 */
const rods = { all: -2.7, none: -0.4, most: 0.6 } as const;
const rodColour = [0.75, 0.98, 1.55] as const;

/**
 * The picture at a place of the slider, `daylight` 0 night to 1 day, blue hour between. Steps: sky light mixed in by its part, white adapted
 * (Bradford), dim places paled (rods), exposed by `exposureOf`, tone curve, a faint veil from the eye, sRGB.
 */
export function develop(picture: LuminancePicture, daylight: number): DevelopedPicture {
	const { lamps, sky, surface, view } = picture;
	const { width, height } = view;
	const part = skyPart(daylight);
	const [tr, tg, tb] = tintAt(daylight).map((share) => share * part) as [number, number, number];
	const [hr, hg, hb] = tintAt(daylight).map((share) => part * even * share ** 0.6) as [number, number, number];
	// As the day goes, the sky overhead darkens before that at the horizon: a look, not a figure.
	const deep = 1 + 1.3 * (1 - within(daylight));
	const { key, white } = exposureOf(picture, [tr, tg, tb], daylight);
	// Whites between two temperatures go by their reciprocals, which eyes find even.
	const m = adaptation(1 / (1 / whites.night + within(daylight) * (1 / whites.day - 1 / whites.night)));
	const shown = new Float32Array(width * height * 3);
	const veil = newVeil(width, height);
	for (let p = 0, q = 0; p < width * height; p++, q += 3) {
		let r0 = lamps[q]!;
		let g0 = lamps[q + 1]!;
		let b0 = lamps[q + 2]!;
		if (surface[p] === 0) {
			r0 += hr * (sky[q]! / even) ** deep;
			g0 += hg * (sky[q + 1]! / even) ** deep;
			b0 += hb * (sky[q + 2]! / even) ** deep;
		} else {
			r0 += tr * sky[q]!;
			g0 += tg * sky[q + 1]!;
			b0 += tb * sky[q + 2]!;
		}
		let r = Math.max(0, m[0]! * r0 + m[1]! * g0 + m[2]! * b0);
		let g = Math.max(0, m[3]! * r0 + m[4]! * g0 + m[5]! * b0);
		let b = Math.max(0, m[6]! * r0 + m[7]! * g0 + m[8]! * b0);
		const luminance = luminanceOf(r, g, b);
		if (luminance <= 0) continue;
		const dim = within((rods.none - Math.log10(luminance)) / (rods.none - rods.all)) * rods.most;
		const by = tone(key * luminance, white) / luminance;
		r = by * (r + (luminance * rodColour[0] - r) * dim);
		g = by * (g + (luminance * rodColour[1] - g) * dim);
		b = by * (b + (luminance * rodColour[2] - b) * dim);
		shown[q] = r;
		shown[q + 1] = g;
		shown[q + 2] = b;
		gather(veil, p % width, (p / width) | 0, r, g, b);
	}
	spread(veil);
	return { width, height, pixels: coded(shown, veil, width, height) };
}
function coded(
	shown: Float32Array,
	veil: ReturnType<typeof newVeil>,
	width: number,
	height: number
): Uint8ClampedArray {
	const pixels = new Uint8ClampedArray(width * height * 4);
	for (let row = 0, q = 0, o = 0; row < height; row++)
		for (let column = 0; column < width; column++, q += 3, o += 4) {
			let r = (1 - veilPart) * shown[q]! + veilPart * veilAt(veil, column, row, 0);
			let g = (1 - veilPart) * shown[q + 1]! + veilPart * veilAt(veil, column, row, 1);
			let b = (1 - veilPart) * shown[q + 2]! + veilPart * veilAt(veil, column, row, 2);
			const most = Math.max(r, g, b);
			if (most > 1) {
				// What a screen cannot show at that lightness pales towards white rather than shift its hue.
				const light = Math.min(1, luminanceOf(r, g, b));
				const pale = (1 - light) / Math.max(1e-9, most - light);
				r = light + (r - light) * pale;
				g = light + (g - light) * pale;
				b = light + (b - light) * pale;
			}
			pixels[o] = code(r);
			pixels[o + 1] = code(g);
			pixels[o + 2] = code(b);
			pixels[o + 3] = 255;
		}
	return pixels;
}
