/** Leaves of a crown, one by one, the same every time. Metres. */
import { columnOf, depthOf, rowOf, type Camera } from './camera';
import type { Crown } from './crown';
import { sequence } from './noise';

/** One leaf, or a spray of them where a pixel is larger than a leaf; one object used again and again. */
export interface Leaf {
	x: number;
	y: number;
	z: number;
	/** Along it, a unit vector, and across its face. */
	lx: number;
	ly: number;
	lz: number;
	nx: number;
	ny: number;
	nz: number;
	/** Half its length and half its width. */
	long: number;
	wide: number;
	/** Its clump: number, middle and radius. */
	clump: number;
	cx: number;
	cy: number;
	cz: number;
	radius: number;
	/** How light its green is, about 1. */
	tone: number;
	/** Part of the sky's light that gets to it. */
	open: number;
}
/** Half length of a leaf or spray, metres; half its length on the picture is never under `leastPixels`. */
const leafHalf = 0.045;
const leastPixels = 1.55;
/** How often leaves of a clump lie one behind the other. */
const cover = 1.7;

/** About how many leaves of a crown come into the picture at so many pixels a metre. */
export function leafCount(crown: Crown, pixels: number, camera: Camera): number {
	const half = Math.max(leafHalf, leastPixels / pixels);
	let sum = 0;
	for (const { x, y, z, radius } of crown.clumps) {
		const depth = depthOf(camera, y, z);
		const [column, row] = [columnOf(camera, x, depth), rowOf(camera, y, z, depth)];
		const reach = radius * pixels;
		const out = column < -reach || column > camera.width + reach || row < -reach || row > camera.height + reach;
		if (!out) sum += (cover * radius * radius) / (half * half * 0.55);
	}
	return sum;
}

/** Every leaf, told to `emit`. `pixels` per metre; `coarser` above 1 makes fewer and larger sprays. */
export function growLeaves(crown: Crown, pixels: number, coarser: number, emit: (leaf: Leaf) => void): void {
	if (crown.tree.form === 'palm') return growFronds(crown, emit);
	const next = sequence(crown.seed ^ 0x2545f491);
	const { tree, hand } = crown;
	const half = Math.max(tree.form === 'conical' ? leafHalf * 0.8 : leafHalf, leastPixels / pixels) * coarser;
	const slim = tree.form === 'conical' || tree.form === 'weeping' ? 0.34 : 0.55;
	const tall = Math.max(0.2, tree.height - tree.crownBase);
	const leaf: Leaf = blank();
	for (const clump of crown.clumps) {
		const count = Math.max(3, Math.round((cover * clump.radius * clump.radius) / (half * half * slim)));
		const up = (clump.z - tree.crownBase) / tall;
		leaf.clump++;
		leaf.cx = clump.x;
		leaf.cy = clump.y;
		leaf.cz = clump.z;
		leaf.radius = clump.radius;
		for (let i = 0; i < count; i++) {
			const cosine = 2 * next() - 1;
			const turn = 2 * Math.PI * next();
			const out = next() ** 0.42;
			const sine = Math.sqrt(1 - cosine * cosine);
			const ux = sine * Math.cos(turn);
			const uy = sine * Math.sin(turn);
			const uz = cosine;
			const r = clump.radius * out;
			leaf.x = clump.x + hand * r * ux;
			leaf.y = clump.y + r * uy;
			leaf.z = Math.max(0.04, clump.z + r * uz * clump.flat);
			turned(leaf, hand, next, ux, uy, uz, tree.form === 'weeping' ? 1.6 : 0.35);
			leaf.long = half * (0.75 + 0.5 * next());
			leaf.wide = leaf.long * slim;
			leaf.tone = (0.72 + 0.3 * clump.tone) * (0.8 + 0.4 * next());
			const shell = Math.max(clump.out * clump.out, up * up * up);
			leaf.open = (0.12 + 0.88 * shell) * (0.35 + 0.65 * up) * (0.55 + 0.45 * out * (0.5 + 0.5 * uz));
			emit(leaf);
		}
	}
}
const blank = (): Leaf => ({
	x: 0,
	y: 0,
	z: 0,
	lx: 1,
	ly: 0,
	lz: 0,
	nx: 0,
	ny: 0,
	nz: 1,
	long: 0.05,
	wide: 0.03,
	clump: -1,
	cx: 0,
	cy: 0,
	cz: 0,
	radius: 0,
	tone: 1,
	open: 1
});
/** Faces out of its clump and upwards, more or less; hangs by `droop`. */
function turned(leaf: Leaf, hand: number, next: () => number, ux: number, uy: number, uz: number, droop: number): void {
	let nx = 0.6 * ux + 1.3 * (next() - 0.5);
	let ny = 0.6 * uy + 1.3 * (next() - 0.5);
	let nz = 0.6 * uz + 0.45 + 1.1 * (next() - 0.5);
	const size = Math.sqrt(nx * nx + ny * ny + nz * nz) || 1;
	nx /= size;
	ny /= size;
	nz /= size;
	let lx = next() - 0.5;
	let ly = next() - 0.5;
	let lz = next() - 0.5 - droop;
	const along = lx * nx + ly * ny + lz * nz;
	lx -= along * nx;
	ly -= along * ny;
	lz -= along * nz;
	const length = Math.sqrt(lx * lx + ly * ly + lz * lz) || 1;
	leaf.nx = hand * nx;
	leaf.ny = ny;
	leaf.nz = nz;
	leaf.lx = (hand * lx) / length;
	leaf.ly = ly / length;
	leaf.lz = lz / length;
}

const fronds = 22;
/** A palm's fronds: bows from the top of the trunk, with leaflets to both sides. */
function growFronds(crown: Crown, emit: (leaf: Leaf) => void): void {
	const { tree, hand } = crown;
	const next = sequence(crown.seed ^ 0x2545f491);
	const leaf = blank();
	const top = { x: tree.at.x + hand * 0.03 * tree.height, y: tree.at.y, z: tree.height - tree.spread * 0.18 };
	const reach = tree.spread / 2;
	leaf.clump = 0;
	leaf.cx = top.x;
	leaf.cy = top.y;
	leaf.cz = top.z;
	for (let frond = 0; frond < fronds; frond++) {
		const turn = 2.399963 * frond + 0.4 * next();
		// From nearly upright in the middle to hanging ones below.
		const rise = 1.15 - 1.5 * (frond / fronds) + 0.15 * next();
		const [cx, cy] = [Math.cos(turn), Math.sin(turn)];
		const tone = 0.75 + 0.5 * next();
		for (let i = 3; i < 60; i++) {
			const t = i / 60;
			const out = reach * (t - 0.22 * t * t * Math.abs(rise));
			const high = reach * (rise * t - 0.95 * t * t);
			for (const side of [-1, 1]) {
				const length = reach * 0.15 * Math.sin(Math.PI * Math.min(0.96, t * 0.86 + 0.12)) * (0.8 + 0.4 * next());
				// A leaflet runs out aslant from the rib and hangs at its tip.
				const lx = 0.75 * cx - side * cy;
				const ly = 0.75 * cy + side * cx;
				const lz = rise - 1.9 * t - 0.5 - 0.3 * next();
				const size = Math.hypot(lx, ly, lz);
				leaf.lx = (hand * lx) / size;
				leaf.ly = ly / size;
				leaf.lz = lz / size;
				leaf.x = top.x + hand * cx * out + leaf.lx * length;
				leaf.y = top.y + cy * out + leaf.ly * length;
				leaf.z = top.z + high + leaf.lz * length;
				leaf.nx = hand * cx * 0.4;
				leaf.ny = cy * 0.4;
				leaf.nz = 0.9;
				leaf.long = length;
				leaf.wide = Math.max(0.008, length * 0.045);
				leaf.tone = tone * (0.7 + 0.6 * next());
				leaf.open = 0.75;
				emit(leaf);
			}
		}
	}
}
