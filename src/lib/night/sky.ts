/**
 * What is seen above the horizon by day, and a dark line of trees at it. Both are drawn: nobody surveyed them. Luminance in cd/m² under 1 klx on
 * level ground, of which an even sky would be 1000/π ≈ 318 everywhere.
 */
import { noise2 } from './noise';

/** Lux on level ground of the picture `sky`. */
export const dayLux = 1000;
const even = dayLux / Math.PI;

/** A colour to write into. */
export interface Colour {
	red: number;
	green: number;
	blue: number;
}
/** Paler at the horizon, bluer overhead: `up` is the slope of the gaze, 0 level, 1 at 45°. */
export function skyAt(up: number, out: Colour): void {
	const t = Math.min(1, Math.max(0, up / 0.55));
	const k = even * (1.12 - 0.5 * t);
	out.red = k * (0.98 - 0.4 * t);
	out.green = k * (1 - 0.2 * t);
	out.blue = k * (1.04 + 0.3 * t);
}
/** Slope up to which trees beyond the yard stand, at a sideways slope from the middle of the view. */
export function skyline(across: number): number {
	const a = Math.abs(across);
	return (
		0.018 +
		0.05 * noise2(a * 5 + 7, 0.5, 81) * noise2(a * 2.1, 1.5, 82) +
		0.012 * noise2(a * 60, 2.5, 83) +
		0.006 * noise2(a * 190, 3.5, 84)
	);
}
