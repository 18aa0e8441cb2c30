/** What one ray meets: one object used again and again, so that a picture makes no rubbish. */
export interface Hit {
	/** Where, metres, and the normal of the surface there, towards the eye. */
	x: number;
	y: number;
	z: number;
	nx: number;
	ny: number;
	nz: number;
	/** Metres in front of the eye (from above: below the ceiling). */
	depth: number;
	/** On a panel: its own measures there. */
	a: number;
	b: number;
	/** Metres of surface that a pixel spans. */
	foot: number;
	/** Albedo in linear red, green, blue. */
	red: number;
	green: number;
	blue: number;
	/** Part of the light of the sky that gets there, 0 to 1. */
	open: number;
	/** Part of the light that is mirrored rather than scattered: 0 for all but glass and water. */
	mirror: number;
	surface: number;
}
export const newHit = (): Hit => ({
	x: 0,
	y: 0,
	z: 0,
	nx: 0,
	ny: 0,
	nz: 1,
	depth: Infinity,
	a: 0,
	b: 0,
	foot: 0.01,
	red: 0,
	green: 0,
	blue: 0,
	open: 1,
	mirror: 0,
	surface: 0
});
export function paint(hit: Hit, red: number, green: number, blue: number, by = 1): void {
	hit.red = red * by;
	hit.green = green * by;
	hit.blue = blue * by;
}
/** How much of a pattern of that period is still seen: all of it where a pixel is small, none where it spans half of it. */
export const sharpness = (hit: Hit, period: number): number =>
	Math.min(1, Math.max(0, 1.4 - (2.4 * hit.foot) / period));
/**
 * How much of a pixel a line covers whose middle is `off` metres away and which is `wide` metres wide, 0 to 1 (box filter): a line
 * thinner than a pixel grows fainter, not ragged.
 */
export function line(hit: Hit, off: number, wide: number): number {
	const { foot } = hit;
	const covered = Math.min(1, Math.max(0, (wide / 2 + foot / 2 - Math.abs(off)) / foot));
	return covered * Math.min(1, wide / foot);
}
