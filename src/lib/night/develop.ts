/**
 * From luminance to a picture for a screen, the way an eye sees it that has adapted to the lit yard. A photographic tone curve keeps bright
 * walls from burning out: Reinhard, Stark, Shirley and Ferwerda, "Photographic tone reproduction for digital images", ACM SIGGRAPH
 * 2002, equations 1, 2 and 4. Encoded by IEC 61966-2-1.
 */
import { adaptation } from './adapt';
import { luminanceOf } from './colour';
import { exposureOf } from './exposure';
import { dayLux } from './sky';
import { codes, codeSteps, fillPowers, newPowers, numberAt, octaves, placeOf } from './tables';
import type { DevelopedPicture, LuminancePicture } from './types';
import { gatherLine, newVeil, spread, veilLine, veilPart } from './veil';

/** Light left of the sky of 1 klx at night: 0.08 lx, a clear night in a suburb's glow with some moon (from memory: full moon 0.1 to 0.3 lx). */
const nightSky = 8e-5;
/** The white that the eye has adapted to by night and by day, kelvin: between lamps and sky, our assumption. */
const whites = { night: 4200, day: 6504 } as const;

const within = (value: number): number => Math.min(1, Math.max(0, value));
/** Part of the full day's sky light at a place of the slider, 0 night to 1 day: geometric between, slower at the dark end. */
export const skyPart = (daylight: number): number => nightSky ** (1 - within(daylight) ** 1.8);

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
/** How far a place of that luminance is seen by rods, 0 to `rods.most`. */
export const dimness = (luminance: number): number =>
	within((rods.none - Math.log10(luminance)) / (rods.none - rods.all)) * rods.most;

/** What depends on the hour alone. */
export interface Hour {
	/** The sky's light by channel: on surfaces, and the sky itself, which goes with a power of its own brightness. */
	onThings: readonly [number, number, number];
	ofSky: readonly [number, number, number];
	/** As the day goes, the sky overhead darkens before that at the horizon: a look, not a figure. */
	deep: number;
	/** Linear sRGB to linear sRGB, for the white that the eye has adapted to. */
	white: readonly number[];
}
/** `daylight`: 0 night to 1 day, blue hour between. */
export function hourOf(daylight: number): Hour {
	const part = skyPart(daylight);
	const tint = tintAt(daylight);
	return {
		onThings: tint.map((share) => share * part) as [number, number, number],
		ofSky: tint.map((share) => part * even * share ** 0.6) as [number, number, number],
		deep: 1 + 1.3 * (1 - within(daylight)),
		// Whites between two temperatures go by their reciprocals, which eyes find even.
		white: adaptation(1 / (1 / whites.night + within(daylight) * (1 / whites.day - 1 / whites.night)))
	};
}

/** Develops one picture at any place of the slider. */
export type Developer = (daylight: number) => DevelopedPicture;
/**
 * For one picture, at places of the slider from 0 night to 1 day. Steps: sky light mixed in by its part, white adapted (Bradford), dim
 * places paled (rods), exposed by `exposureOf`, tone curve, a faint veil from the eye, sRGB. Room and tables are made once; the slow way, pixel by
 * pixel without tables, is in the test.
 */
export function developer(picture: LuminancePicture): Developer {
	const { lamps, sky, surface, view } = picture;
	const { width, height } = view;
	const shown = new Float32Array(width * height * 3);
	const veil = newVeil(width, height);
	/** By place of a luminance: what a channel is multiplied by to be shown, and the part of it that rods see. */
	const [by, dim] = [new Float32Array(octaves), new Float32Array(octaves)];
	for (let i = 0; i < octaves; i++) dim[i] = dimness(numberAt(i));
	const powers = [newPowers(brightestSky), newPowers(brightestSky), newPowers(brightestSky)] as const;

	function expose(daylight: number): void {
		const { onThings, ofSky, deep, white: m } = hourOf(daylight);
		const [tr, tg, tb] = onThings;
		const { key, white } = exposureOf(picture, onThings, daylight);
		for (let i = 0; i < octaves; i++) {
			const luminance = numberAt(i);
			by[i] = tone(key * luminance, white) / luminance;
		}
		powers.forEach((one, i) => fillPowers(one, deep, ofSky[i]!));
		const [red, green, blue] = powers.map(({ table }) => table) as [Float32Array, Float32Array, Float32Array];
		const scale = powers[0].scale / even;
		const last = red.length - 1;
		const [m0, m1, m2, m3, m4, m5, m6, m7, m8] = m as [
			number,
			number,
			number,
			number,
			number,
			number,
			number,
			number,
			number
		];
		veil.light.fill(0);
		// Imports are looked up anew at each use; a million times that tells.
		const at = placeOf;
		for (let row = 0, p = 0, q = 0; row < height; row++) {
			for (const end = p + width; p < end; p++, q += 3) {
				let r0 = lamps[q]!;
				let g0 = lamps[q + 1]!;
				let b0 = lamps[q + 2]!;
				if (surface[p] === 0) {
					r0 += red[Math.min(last, (sky[q]! * scale + 0.5) | 0)]!;
					g0 += green[Math.min(last, (sky[q + 1]! * scale + 0.5) | 0)]!;
					b0 += blue[Math.min(last, (sky[q + 2]! * scale + 0.5) | 0)]!;
				} else {
					r0 += tr * sky[q]!;
					g0 += tg * sky[q + 1]!;
					b0 += tb * sky[q + 2]!;
				}
				const r = Math.max(0, m0 * r0 + m1 * g0 + m2 * b0);
				const g = Math.max(0, m3 * r0 + m4 * g0 + m5 * b0);
				const b = Math.max(0, m6 * r0 + m7 * g0 + m8 * b0);
				const luminance = 0.2126 * r + 0.7152 * g + 0.0722 * b;
				const place = at(luminance);
				const times = by[place]!;
				const pale = dim[place]!;
				const sr = times * (r + (luminance * rodColour[0] - r) * pale);
				const sg = times * (g + (luminance * rodColour[1] - g) * pale);
				const sb = times * (b + (luminance * rodColour[2] - b) * pale);
				shown[q] = sr;
				shown[q + 1] = sg;
				shown[q + 2] = sb;
			}
			gatherLine(veil, row, shown, q - 3 * width, width);
		}
		spread(veil);
	}
	return (daylight) => {
		expose(daylight);
		return { width, height, pixels: coded(shown, veil, width, height) };
	};
}
/** The picture at one place of the slider. */
export const develop = (picture: LuminancePicture, daylight: number): DevelopedPicture => developer(picture)(daylight);

/** The sky is nowhere brighter than so many times an even one. */
const brightestSky = 2;

function coded(
	shown: Float32Array,
	veil: ReturnType<typeof newVeil>,
	width: number,
	height: number
): Uint8ClampedArray {
	const pixels = new Uint8ClampedArray(width * height * 4);
	const over = new Float32Array(width * 3);
	const [table, steps, rest] = [codes, codeSteps, 1 - veilPart];
	for (let row = 0, q = 0, o = 0; row < height; row++) {
		veilLine(veil, row, over);
		for (let column = 0, v = 0; column < width; column++, q += 3, v += 3, o += 4) {
			let r = rest * shown[q]! + over[v]!;
			let g = rest * shown[q + 1]! + over[v + 1]!;
			let b = rest * shown[q + 2]! + over[v + 2]!;
			if (r > 1 || g > 1 || b > 1) {
				// What a screen cannot show at that lightness pales towards white rather than shift its hue.
				const light = Math.min(1, luminanceOf(r, g, b));
				const pale = (1 - light) / Math.max(1e-9, Math.max(r, g, b) - light);
				r = Math.min(1, light + (r - light) * pale);
				g = Math.min(1, light + (g - light) * pale);
				b = Math.min(1, light + (b - light) * pale);
			}
			pixels[o] = table[(r * steps + 0.5) | 0]!;
			pixels[o + 1] = table[(g * steps + 0.5) | 0]!;
			pixels[o + 2] = table[(b * steps + 0.5) | 0]!;
			pixels[o + 3] = 255;
		}
	}
	return pixels;
}
