/** What panels look like. Albedos from memory; the finish of the house's walls is in `paint-wall.ts`. */
import { line, paint, sharpness, type Hit } from './hit';
import { hash3, noise2 } from './noise';
import { paintWall } from './paint-wall';
import type { Panel } from './panels';
import type { Scene } from './scene';

export function paintPanel(hit: Hit, panel: Panel, scene: Scene): void {
	hit.open = 1;
	hit.mirror = 0;
	hit.surface = panel.surface;
	const across = Math.abs(hit.x - scene.centre);
	switch (panel.material) {
		case 'wall':
			return panel.wall ? paintWall(hit, panel.wall, scene) : paint(hit, 0.4, 0.4, 0.4);
		case 'roof': {
			const seen = sharpness(hit, 0.22);
			const up = hit.b / 0.22;
			const row = Math.floor(up);
			const shingle = hash3(Math.floor((across + hit.y * 0.3) / 0.3 + 0.5 * (row & 1)), row, 71) - 0.5;
			const tone = (1 + seen * 0.35 * shingle) * (up - row < 0.14 ? 1 - 0.35 * seen : 1);
			return paint(hit, 0.085, 0.082, 0.085, tone * (0.85 + 0.3 * noise2(across * 0.8, hit.b * 0.8, 72)));
		}
		case 'trim':
			return paint(hit, 0.55, 0.53, 0.49);
		case 'soffit':
			hit.open = 0.5;
			return paint(hit, 0.55, 0.53, 0.49);
		case 'slab':
			return paint(hit, 0.33, 0.32, 0.3, 0.92 + 0.16 * noise2(across * 9, hit.y * 9 + hit.z * 9, 73));
		case 'gate':
			return paint(hit, 0.16, 0.11, 0.075, hit.a * 9 - Math.floor(hit.a * 9) < 0.14 ? 0.3 : 1);
		case 'post':
		case 'stone': {
			const row = Math.floor(hit.z / 0.19);
			const stone = hash3(Math.floor(hit.a / 0.34 + 0.5 * (row & 1)), row, 74);
			const seam = hit.z / 0.19 - row < 0.08 ? 0.7 : 1;
			return paint(hit, 0.4, 0.37, 0.32, (0.8 + 0.4 * stone) * (1 - sharpness(hit, 0.19) * (1 - seam)));
		}
		case 'sign': {
			// What is written on it nobody was asked: a pale board with a dark rim.
			const rim = Math.min(hit.a - panel.u0, panel.u1 - hit.a, hit.b - panel.v0, panel.v1 - hit.b);
			return paint(hit, 0.5, 0.48, 0.42, 1 - 0.8 * line(hit, rim - 0.03, 0.02));
		}
		case 'box':
			return paint(hit, 0.09, 0.095, 0.09);
		case 'neighbour':
			if (panel.wall) paintWall(hit, panel.wall, scene);
			hit.surface = panel.surface;
			return paint(hit, hit.red, hit.green, hit.blue, 0.6);
	}
}
