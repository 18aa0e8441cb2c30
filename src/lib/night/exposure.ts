/** How bright a picture is shown: by what most of it is, and by what is lit in it. cd/m². */
import { luminanceOf } from './colour';
import type { LuminancePicture } from './types';

/**
 * The log-average is shown at this part of white: by day lighter than the photographer's grey card (0.18), as under an open
 * sky; by night far darker, so that night looks like night. From above there is no sky, and most of what is seen is dark ground.
 * Ours.
 */
const middle = { street: { night: 0.065, day: 0.26 }, above: { night: 0.018, day: 0.2 } } as const;
/**
 * Yet no more than this for what only one pixel in thirty passes: exposing for the dark would burn the lit walls. Our law; the
 * reference has the key chosen by hand.
 */
const lit = { share: 0.965, street: 1.05, above: 0.42 } as const;
/** Shown as white: so many times the scaled luminance of what only one pixel in 300 passes, at least `least`. */
const burnt = { share: 0.997, times: 1.15, least: 3 } as const;

/** Bins of a histogram over log luminance, from 1e-6 to 1e6. */
const bins = 480;
const [low, high] = [Math.log(1e-6), Math.log(1e6)];
const perBin = bins / (high - low);

/** `part`: what the sky's luminance is multiplied by, by channel. */
export function exposureOf(
	{ lamps, sky, view }: LuminancePicture,
	part: readonly [number, number, number],
	daylight: number
): { key: number; white: number } {
	const counts = new Uint32Array(bins);
	const pixels = view.width * view.height;
	// Every third pixel is enough for an average.
	const stride = pixels > 3000 ? 3 : 1;
	const luminance = luminanceOf;
	let sum = 0;
	let count = 0;
	for (let p = 0; p < pixels; p += stride) {
		const q = p * 3;
		const r = lamps[q]! + part[0] * sky[q]!;
		const g = lamps[q + 1]! + part[1] * sky[q + 1]!;
		const b = lamps[q + 2]! + part[2] * sky[q + 2]!;
		const log = Math.log(1e-6 + luminance(r, g, b));
		sum += log;
		count++;
		const bin = ((log - low) * perBin) | 0;
		counts[Math.min(bins - 1, Math.max(0, bin))]!++;
	}
	const average = Math.exp(sum / Math.max(1, count));
	const above = (share: number): number => {
		let left = Math.max(1, Math.round(count * (1 - share)));
		let bin = bins - 1;
		while (bin > 0 && (left -= counts[bin]!) > 0) bin--;
		return Math.exp(low + ((bin + 0.5) / bins) * (high - low));
	};
	const day = Math.min(1, Math.max(0, daylight)) ** 3;
	const { night, day: open } = middle[view.kind];
	const key = Math.min((night + (open - night) * day) / average, lit[view.kind] / above(lit.share));
	return { key, white: Math.max(burnt.least, burnt.times * key * above(burnt.share)) };
}
