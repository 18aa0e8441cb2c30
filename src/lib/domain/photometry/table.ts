/**
 * Measured light: candela by direction in type C photometry (IES LM-75, CIE 121: seen second-hand). The vertical angle counts
 * from the axis, 0 to 180 degrees; the C-planes, or horizontal angles, go round it (sense: `types.ts`).
 */
import { fullCircle } from './circle';
import { lookupOf } from './table-lookup';
import type { Photometry } from './types';

/**
 * How far the planes of a table reach, and what the rest of the circle repeats:
 * rotational: one plane, the same all round · quadrant: 0 to 90, mirrored in C0–C180 and in C90–C270 · bilateral: 0 to 180,
 * mirrored in C0–C180 · bilateral-90: 90 to 270, mirrored in C90–C270 · none: 0 to 360, both ends given.
 */
export type Symmetry = 'rotational' | 'quadrant' | 'bilateral' | 'bilateral-90' | 'none';
export interface CandelaTable {
	/** Degrees off the axis, ascending, two or more; no light outside them. */
	vertical: readonly number[];
	/** C-planes, degrees, ascending over the span that `symmetry` names. */
	horizontal: readonly number[];
	symmetry: Symmetry;
	/** Candela, plane after plane: `[plane × vertical.length + angle]`. */
	candela: Float64Array;
}

const radian = Math.PI / 180;

/** Mean over all azimuths at each vertical angle, candela: the trapezoid rule, exact for planes joined by straight lines. */
export function ringMeans({ vertical, horizontal, candela }: CandelaTable): Float64Array {
	const rings = vertical.length;
	if (horizontal.length === 1) return candela.slice(0, rings);
	const span = horizontal.at(-1)! - horizontal[0]!;
	const means = new Float64Array(rings);
	for (let plane = 1; plane < horizontal.length; plane++) {
		const weight = (horizontal[plane]! - horizontal[plane - 1]!) / (2 * span);
		const at = plane * rings;
		for (let i = 0; i < rings; i++) means[i]! += weight * (candela[at + i]! + candela[at - rings + i]!);
	}
	return means;
}

/**
 * Lumens between two vertical angles, degrees; all of them unless said otherwise. The exact integral of the interpolant: where
 * the mean m runs straight from m0 at γ0 to m1 at γ1 with slope b per radian,
 * ∫ m sin γ dγ = m0 cos γ0 − m1 cos γ1 + b (sin γ1 − sin γ0), and Φ = 2π times the sum.
 */
export function tableLumens(table: CandelaTable, from = 0, to = 180): number {
	const { vertical } = table;
	const means = ringMeans(table);
	let sum = 0;
	for (let i = 1; i < vertical.length; i++) {
		const [g0, g1] = [vertical[i - 1]!, vertical[i]!];
		const [a, b] = [Math.max(g0, from), Math.min(g1, to)];
		if (b <= a) continue;
		const slope = (means[i]! - means[i - 1]!) / (g1 - g0);
		const [m0, m1] = [means[i - 1]! + slope * (a - g0), means[i - 1]! + slope * (b - g0)];
		const [r0, r1] = [a * radian, b * radian];
		sum += m0 * Math.cos(r0) - m1 * Math.cos(r1) + (slope / radian) * (Math.sin(r1) - Math.sin(r0));
	}
	return 2 * Math.PI * sum;
}

/** The table as a source: between its angles straight lines both ways (bilinear in degrees); its lumens those of `tableLumens`. */
export function tablePhotometry(table: CandelaTable): Photometry {
	const lumens = tableLumens(table);
	if (table.horizontal.length === 1) return { lumens, symmetric: true, candela: alongOne(table) };
	return { lumens, symmetric: false, candela: acrossPlanes(fullCircle(table)) };
}

/** The edge of a table is measured too: 90 degrees comes out of the arc cosine a rounding off. */
const edge = 1e-9;

function alongOne({ vertical, candela }: CandelaTable): Photometry['candela'] {
	const { nodes, inverse, start, scale, buckets, cells } = lookupOf(vertical);
	const first = nodes[0]!;
	const [low, high] = [first - edge, nodes[cells]! + edge];
	return (cosine) => {
		const gamma = Math.acos(cosine > 1 ? 1 : cosine < -1 ? -1 : cosine) / radian;
		if (gamma < low || gamma > high) return 0;
		const b = (gamma - first) * scale;
		let i = start[b > 0 ? (b < buckets ? b | 0 : buckets) : 0]!;
		while (i < cells - 1 && gamma > nodes[i + 1]!) i++;
		return candela[i]! + (gamma - nodes[i]!) * inverse[i]! * (candela[i + 1]! - candela[i]!);
	};
}

/** Written out, not called: a light map asks for millions of directions, and a call in here costs as much as the sum. */
function acrossPlanes({ vertical, horizontal, candela }: CandelaTable): Photometry['candela'] {
	const v = lookupOf(vertical);
	const h = lookupOf(horizontal);
	const [vNodes, vInverse, vStart, vScale, vBuckets, vCells] = [
		v.nodes,
		v.inverse,
		v.start,
		v.scale,
		v.buckets,
		v.cells
	];
	const [hNodes, hInverse, hStart, hScale, hBuckets, hCells] = [
		h.nodes,
		h.inverse,
		h.start,
		h.scale,
		h.buckets,
		h.cells
	];
	const rings = vertical.length;
	const first = vNodes[0]!;
	const [low, high] = [first - edge, vNodes[vCells]! + edge];
	return (cosine, azimuth) => {
		const gamma = Math.acos(cosine > 1 ? 1 : cosine < -1 ? -1 : cosine) / radian;
		if (gamma < low || gamma > high) return 0;
		const b = (gamma - first) * vScale;
		let i = vStart[b > 0 ? (b < vBuckets ? b | 0 : vBuckets) : 0]!;
		while (i < vCells - 1 && gamma > vNodes[i + 1]!) i++;
		const t = (gamma - vNodes[i]!) * vInverse[i]!;
		const c = azimuth >= 0 && azimuth <= 360 ? azimuth : azimuth - 360 * Math.floor(azimuth / 360);
		const d = c * hScale;
		let j = hStart[d < hBuckets ? d | 0 : hBuckets]!;
		while (j < hCells - 1 && c > hNodes[j + 1]!) j++;
		const at = j * rings + i;
		const near = candela[at]! + t * (candela[at + 1]! - candela[at]!);
		const far = candela[at + rings]! + t * (candela[at + rings + 1]! - candela[at + rings]!);
		return near + (c - hNodes[j]!) * hInverse[j]! * (far - near);
	};
}

/**
 * The same light with the axis turned end for end, so that what went straight up goes along it. Azimuths then count the other
 * way round, as they are seen along the axis.
 */
export function turned({ vertical, horizontal, symmetry, candela }: CandelaTable): CandelaTable {
	// Planes of the two spans about C0–C180 read the same mirrored; the others change places with their mirror image.
	const swap = symmetry === 'none' || symmetry === 'bilateral-90';
	const rings = vertical.length;
	const out = new Float64Array(candela.length);
	for (let plane = 0; plane < horizontal.length; plane++) {
		const from = (swap ? horizontal.length - 1 - plane : plane) * rings;
		for (let i = 0; i < rings; i++) out[plane * rings + i] = candela[from + rings - 1 - i]!;
	}
	return {
		vertical: vertical.map((angle) => 180 - angle).reverse(),
		horizontal: swap ? horizontal.map((angle) => 360 - angle).reverse() : [...horizontal],
		symmetry,
		candela: out
	};
}
