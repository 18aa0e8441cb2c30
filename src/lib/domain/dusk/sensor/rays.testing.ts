/**
 * For tests: the share of the sky by rays thrown evenly over what a window sees, each asked of every obstacle in turn, by
 * means other than the slices of `skyShare`. Points of Halton's sequence stand for chance.
 */
import { inPolygon } from '../../shared/geometry';
import type { Obstacles } from './obstacles';
import type { Pane } from './sky-share';

function halton(index: number, base: number): number {
	let [part, value] = [1, 0];
	for (let i = index; i > 0; i = Math.floor(i / base)) {
		part /= base;
		value += part * (i % base);
	}
	return value;
}
type Ray = (t: number) => [x: number, y: number, z: number];

function meetsUpright(ray: Ray, ax: number, ay: number, dx: number, dy: number, top: (u: number) => number): boolean {
	const [x0, y0] = ray(0);
	const [x1, y1] = ray(1);
	const cross = (x1 - x0) * dy - (y1 - y0) * dx;
	const t = ((ax - x0) * dy - (ay - y0) * dx) / cross;
	const u = ((ax - x0) * (y1 - y0) - (ay - y0) * (x1 - x0)) / cross;
	return t > 1e-6 && u >= 0 && u <= 1 && ray(t)[2] < top(u);
}
/**
 * Rays are thrown so many to each equal part of cos θ dω over the half sphere before the window. `sky`: the part of them that goes
 * above the horizon; the shares are of those.
 */
export function shareByRays(obstacles: Obstacles, pane: Pane, rays: number) {
	let [seen, leafOn, leafOff] = [0, 0, 0];
	for (let i = 1; i <= rays; i++) {
		const [radius, angle] = [Math.sqrt(halton(i, 2)), 2 * Math.PI * halton(i, 3)];
		const [side, up, out] = [radius * Math.cos(angle), radius * Math.sin(angle), Math.sqrt(1 - radius * radius)];
		if (up <= 0) continue;
		const [vx, vy] = [out * pane.nx - side * pane.ny, out * pane.ny + side * pane.nx];
		const ray: Ray = (t) => [pane.x + t * vx, pane.y + t * vy, pane.z + t * up];
		seen += 1;
		const isBarred =
			obstacles.screens.some(({ shape: s }) =>
				meetsUpright(ray, s.ax, s.ay, s.dx, s.dy, (u) => s.height + (s.peak - s.height) * (1 - Math.abs(2 * u - 1)))
			) ||
			obstacles.lids.some(({ shape: { z, ring } }) => {
				const [x, y] = ray((z - pane.z) / up);
				return z > pane.z && inPolygon({ x, y }, ring);
			});
		if (isBarred) continue;
		const crowns = obstacles.crowns.filter(({ shape: c }) => {
			// Nearest point of the ray to the centre of the ball that the crown is squeezed to.
			const q = [(pane.x - c.x) / c.radius, (pane.y - c.y) / c.radius, (pane.z - c.z) / c.half] as const;
			const v = [vx / c.radius, vy / c.radius, up / c.half] as const;
			const t = Math.max(0, -(q[0] * v[0] + q[1] * v[1] + q[2] * v[2]) / (v[0] ** 2 + v[1] ** 2 + v[2] ** 2));
			return Math.hypot(q[0] + t * v[0], q[1] + t * v[1], q[2] + t * v[2]) < 1;
		});
		leafOn += crowns.reduce((passes, { shape }) => passes * shape.leafOn, 1);
		leafOff += crowns.reduce((passes, { shape }) => passes * shape.leafOff, 1);
	}
	return { leafOn: leafOn / seen, leafOff: leafOff / seen, sky: seen / rays };
}
