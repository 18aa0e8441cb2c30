/** Where the magnifying glass stands. px from the upper left corner of the board. */
import type { Point } from './types';

/** Across, px. */
export const glassSize = 128;
export const glassTimes = 2.5;
/** Between the finger's middle and the rim, px: a fingertip covers about as much. */
const clear = 34;

/** Middle of the glass: above the finger, or else beside or below it, always wholly within the board where the board has room. */
export function glassAt(finger: Point, width: number, height: number): Point {
	const half = glassSize / 2;
	const off = half + clear;
	const within = (value: number, size: number) => Math.min(Math.max(value, half), Math.max(half, size - half));
	const choices: Point[] = [
		{ x: finger.x, y: finger.y - off },
		{ x: finger.x - off, y: finger.y },
		{ x: finger.x + off, y: finger.y },
		{ x: finger.x, y: finger.y + off }
	].map(({ x, y }) => ({ x: within(x, width), y: within(y, height) }));
	const away = (at: Point) => Math.hypot(at.x - finger.x, at.y - finger.y);
	// Held within the board a choice may come back over the finger.
	return (
		choices.find((at) => away(at) >= off - 1e-9) ?? choices.reduce((best, at) => (away(at) > away(best) ? at : best))
	);
}
