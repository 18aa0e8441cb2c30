/** From a pixel to what is seen there, thin things and leaves aside: those are laid over afterwards (`splat.ts`). */
import type { Camera } from './camera';
import { ceiling, columnOf, depthOf, rowOf } from './camera';
import { openAt } from './day';
import type { Hit } from './hit';
import { paintGround } from './paint-ground';
import { paintPanel } from './paint-panel';
import { onPanel, type Panel } from './panels';
import type { Scene } from './scene';

/** A panel with the pixels that it may cover. */
interface Seen {
	panel: Panel;
	left: number;
	right: number;
	top: number;
	bottom: number;
}
export interface Tracer {
	/** Sets up a row of pixels: which panels it crosses. */
	enterRow: (row: number) => void;
	/** The hit at a place in the picture, in pixels. False: sky. */
	cast: (column: number, row: number, hit: Hit) => boolean;
}

/** Panels in front of the camera with their boxes in the picture; one that reaches behind the eye may cover all of it. */
function seenBy(camera: Camera, panels: readonly Panel[]): Seen[] {
	return panels.flatMap((panel): Seen[] => {
		const box = { panel, left: Infinity, right: -Infinity, top: Infinity, bottom: -Infinity };
		let behind = 0;
		for (const { x, y, z } of panel.corners) {
			const depth = depthOf(camera, y, z);
			if (depth < 0.3) behind++;
			const [column, row] = [columnOf(camera, x, depth), rowOf(camera, y, z, depth)];
			box.left = Math.min(box.left, column);
			box.right = Math.max(box.right, column);
			box.top = Math.min(box.top, row);
			box.bottom = Math.max(box.bottom, row);
		}
		if (behind === panel.corners.length) return [];
		return [behind > 0 ? { panel, left: -1, right: camera.width, top: -1, bottom: camera.height } : box];
	});
}

export function tracer(scene: Scene, camera: Camera): Tracer {
	const street = camera.kind === 'street';
	const all = seenBy(camera, scene.panels);
	let row: Seen[] = [];
	return {
		enterRow(at) {
			row = all.filter((seen) => seen.top <= at + 1.5 && seen.bottom >= at - 0.5);
		},
		cast(column, line, hit) {
			// Along the ray by one metre of depth: dx, dy, dz.
			const dx = street ? (column - camera.column) / camera.scale : 0;
			const dz = street ? (camera.row - line) / camera.scale : -1;
			const dy = street ? -1 : 0;
			const ox = street ? camera.x : camera.x + (column - camera.column) / camera.scale;
			const oy = street ? camera.y : camera.y + (line - camera.row) / camera.scale;
			const oz = street ? camera.z : ceiling;
			let depth = dz < 0 ? -oz / dz : Infinity;
			let found: Panel | null = null;
			for (const { panel, left, right, top, bottom } of row) {
				if (column < left - 0.01 || column > right + 0.01 || line < top - 0.01 || line > bottom + 0.01) continue;
				const { origin, u, v, n } = panel;
				const facing = n.x * dx + n.y * dy + n.z * dz;
				if (facing > -1e-9 && facing < 1e-9) continue;
				const px = ox - origin.x;
				const py = oy - origin.y;
				const pz = oz - origin.z;
				const t = -(n.x * px + n.y * py + n.z * pz) / facing;
				if (t < 0.3 || t >= depth) continue;
				const qx = px + dx * t;
				const qy = py + dy * t;
				const qz = pz + dz * t;
				const a = qx * u.x + qy * u.y + qz * u.z;
				const b = qx * v.x + qy * v.y + qz * v.z;
				if (!onPanel(panel, a, b)) continue;
				depth = t;
				found = panel;
				hit.a = a;
				hit.b = b;
			}
			hit.depth = depth;
			if (depth === Infinity) return false;
			hit.x = ox + dx * depth;
			hit.y = oy + dy * depth;
			hit.z = oz + dz * depth;
			hit.foot = street ? depth / camera.scale : 1 / camera.scale;
			hit.mirror = 0;
			if (!found) {
				hit.z = 0;
				hit.nx = hit.ny = 0;
				hit.nz = 1;
				// Seen flat, a pixel spans more ground: the pattern goes by the middle of its two sides.
				if (street) hit.foot *= Math.sqrt(depth / camera.z);
				hit.open = openAt(scene, hit.x, hit.y);
				paintGround(hit, scene);
				return true;
			}
			const turn = found.n.x * dx + found.n.y * dy + found.n.z * dz > 0 ? -1 : 1;
			hit.nx = found.n.x * turn;
			hit.ny = found.n.y * turn;
			hit.nz = found.n.z * turn;
			paintPanel(hit, found, scene);
			return true;
		}
	};
}
