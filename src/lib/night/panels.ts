/** Flat pieces of what stands in the yard, metres, z up. Either side of a panel may be looked at. */
import type { Vector } from '../domain/photometry';
import type { Wall } from '../domain/site';

export type Material =
	'wall' | 'roof' | 'trim' | 'soffit' | 'slab' | 'post' | 'stone' | 'gate' | 'sign' | 'box' | 'neighbour';
export interface Panel {
	origin: Vector;
	/** Unit vectors in the panel, square to each other, and its normal. */
	u: Vector;
	v: Vector;
	n: Vector;
	/** Corners as u, v, u, v …; null where it is the whole of its box. */
	ring: Float64Array | null;
	u0: number;
	u1: number;
	v0: number;
	v1: number;
	corners: readonly Vector[];
	surface: number;
	material: Material;
	/** The wall it is the face of. */
	wall: Wall | null;
}
const minus = (a: Vector, b: Vector): Vector => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z;
const unit = (a: Vector): Vector => {
	const size = Math.hypot(a.x, a.y, a.z) || 1;
	return { x: a.x / size, y: a.y / size, z: a.z / size };
};

/** A panel from the corners of a flat ring, three or more; u runs from the first to the second. Null for one without area. */
export function panelOf(
	corners: readonly Vector[],
	surface: number,
	material: Material,
	wall: Wall | null = null
): Panel | null {
	const [origin, second] = corners;
	if (!origin || !second) return null;
	const u = unit(minus(second, origin));
	const far = corners
		.map((p) => {
			const d = minus(p, origin);
			const along = dot(d, u);
			return { x: d.x - along * u.x, y: d.y - along * u.y, z: d.z - along * u.z };
		})
		.reduce((best, d) => (dot(d, d) > dot(best, best) ? d : best));
	if (dot(far, far) < 1e-8 || dot(minus(second, origin), u) < 1e-6) return null;
	const v = unit(far);
	const flat = corners.map((p) => [dot(minus(p, origin), u), dot(minus(p, origin), v)] as const);
	const us = flat.map(([a]) => a);
	const vs = flat.map(([, b]) => b);
	const box = { u0: Math.min(...us), u1: Math.max(...us), v0: Math.min(...vs), v1: Math.max(...vs) };
	const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;
	const whole =
		corners.length === 4 &&
		flat.every(([a, b]) => (near(a, box.u0) || near(a, box.u1)) && (near(b, box.v0) || near(b, box.v1)));
	return {
		origin,
		u,
		v,
		n: { x: u.y * v.z - u.z * v.y, y: u.z * v.x - u.x * v.z, z: u.x * v.y - u.y * v.x },
		ring: whole ? null : Float64Array.from(flat.flat()),
		...box,
		corners,
		surface,
		material,
		wall
	};
}

/** Whether a place in a panel's own measures lies on it. */
export function onPanel(panel: Panel, a: number, b: number): boolean {
	if (a < panel.u0 || a > panel.u1 || b < panel.v0 || b > panel.v1) return false;
	const { ring } = panel;
	if (!ring) return true;
	let inside = false;
	for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
		const bi = ring[i + 1]!;
		const bj = ring[j + 1]!;
		if (bi > b !== bj > b && a < ((ring[j]! - ring[i]!) * (b - bi)) / (bj - bi) + ring[i]!) inside = !inside;
	}
	return inside;
}

/** The sides and the top of an upright body over a ring on the ground, from `low` to `high`. */
export function bodyOf(
	ring: readonly { x: number; y: number }[],
	low: number,
	high: number,
	surface: number,
	material: Material
): Panel[] {
	const at = (p: { x: number; y: number }, z: number): Vector => ({ x: p.x, y: p.y, z });
	const sides = ring.map((p, i) => {
		const q = ring[(i + 1) % ring.length]!;
		return panelOf([at(p, low), at(q, low), at(q, high), at(p, high)], surface, material);
	});
	return [
		...sides,
		panelOf(
			ring.map((p) => at(p, high)),
			surface,
			material
		)
	].filter((panel) => panel !== null);
}
