/** The light of the sky on a day of 1 klx, and what shades it: house fronts, crowns and roofs. Lux. */
import type { Scene } from './scene';
import { dayLux } from './sky';

/** Part of the light on the ground that it gives back (lawn about 0.2). */
const groundAlbedo = 0.2;
/**
 * Lux on a surface with a normal that leans up by `nz`, under an even sky and over even ground: E = E₀·((1 + nz) + ρ(1 − nz))/2, the
 * view factors of a tilted plane (isotropic sky of Liu and Jordan, 1963).
 */
export const skyLux = (nz: number): number => (dayLux * (1 + nz + groundAlbedo * (1 - nz))) / 2;

/** Part of the sky's light that reaches the ground at a place: less before walls and under crowns. A shade for the eye, not a figure. */
export function openAt(scene: Scene, x: number, y: number): number {
	let open = 1;
	for (const [x0, x1, front] of scene.feet) {
		if (y < front || y > front + 5) continue;
		const aside = x < x0 ? x0 - x : x > x1 ? x - x1 : 0;
		open = Math.min(open, 1 - 0.45 * Math.exp(-(y - front + aside) / 1.3));
	}
	for (const { tree } of scene.crowns) {
		if (tree.spread < 0.1) continue;
		const r = tree.spread * 0.62;
		const square = ((x - tree.at.x) ** 2 + (y - tree.at.y) ** 2) / (r * r);
		if (square < 1) open *= 1 - 0.5 * (1 - square) * (1 - square);
	}
	return open;
}
