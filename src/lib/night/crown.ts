/** The shape of trees: crowns as solids of revolution by form, with their leaves in clumps, and the wood that carries them. Metres. */
import type { Tree } from '../domain/site';
import { sequence, seedOf } from './noise';

type Form = Tree['form'];
/** Radius of the crown as a fraction of half its spread, `t` from its lowest branches (0) to its top (1). */
export function profile(form: Form, t: number): number {
	if (t <= 0 || t >= 1) return 0;
	const dome = (from: number, power: number): number =>
		Math.sqrt(Math.max(0, 1 - Math.abs((t - from) / (t < from ? from : 1 - from)) ** power));
	switch (form) {
		case 'columnar':
			return dome(0.45, 3.2);
		case 'conical':
			return Math.min(1, t / 0.06) * (1 - t) ** 0.85;
		case 'spreading':
			return dome(0.5, 2.8);
		case 'vase':
			return Math.min(1, 0.22 + 0.95 * t ** 0.9) * dome(0.62, t > 0.62 ? 2.2 : 6);
		case 'weeping':
			return t < 0.45 ? 0.9 + 0.22 * t : dome(0.45, 2.2);
		default:
			return dome(0.44, 2.3);
	}
}

/** A handful of leaves: a flattened ball. */
export interface Clump {
	x: number;
	y: number;
	z: number;
	radius: number;
	/** Height over radius. */
	flat: number;
	/** How far out in the crown its middle lies: 0 at the trunk, 1 at the outline. */
	out: number;
	/** 0 to 1, of its own. */
	tone: number;
}
export interface Crown {
	tree: Tree;
	/** −1: everything about it is laid out the other way round, so that a mirrored yard has mirrored trees. */
	hand: 1 | -1;
	seed: number;
	clumps: Clump[];
	/** The ellipsoid about it, for the way of light through it: half height and middle. */
	middle: number;
	half: number;
	/** Its leaves' albedo. */
	paint: readonly [number, number, number];
}
/** Metres from the middle of a clump to its outside, for a crown so wide. */
const clumpRadius = (tree: Tree): number => {
	const tall = tree.height - tree.crownBase;
	return Math.min(0.62, Math.max(0.09, 0.13 * Math.min(tree.spread, tall) ** 0.8));
};

/** The crown of a tree, the same for the same tree every time. `centre`: x about which mirrored yards mirror. */
export function crownOf(tree: Tree, centre: number): Crown {
	const seed = seedOf(tree.id + tree.form);
	const next = sequence(seed);
	const hand = tree.at.x > centre ? -1 : 1;
	const tall = Math.max(0.2, tree.height - tree.crownBase);
	const half = tree.spread / 2;
	const radius = clumpRadius(tree);
	const warm = next();
	const crown: Crown = {
		tree,
		hand,
		seed,
		clumps: [],
		middle: tree.crownBase + tall / 2,
		half: tall / 2,
		// Leaf greens about an albedo of 0.2 (from memory: 0.1 to 0.25 in visible light), yellower or bluer by the tree.
		paint: [0.125 + 0.055 * warm, 0.22 + 0.02 * warm, 0.07 - 0.012 * warm]
	};
	if (tree.form === 'palm') return crown;
	const volume = (4 / 3) * Math.PI * half * half * (tall / 2) * 0.8;
	const count = Math.min(420, Math.max(24, Math.round((0.85 * volume) / ((4 / 3) * Math.PI * radius ** 3 * 0.6))));
	for (let i = 0, tries = 0; i < count && tries < 6000; tries++) {
		const t = 0.02 + 0.96 * next();
		const wide = profile(tree.form, t);
		if (next() > wide * wide + 0.08) continue;
		// Few leaves grow within the crown, but its top is closed over.
		const hollow = 0.14 * (1 - t * t * t);
		const out = Math.sqrt(hollow + (1 - hollow) * next());
		const angle = 2.399963 * i + next();
		// Ends of clumps lie on the outline, with some beyond it and some short of it, so that it is ragged.
		const reach = Math.max(0, wide * half - radius * 0.55) * out * (0.9 + 0.2 * next());
		crown.clumps.push({
			x: tree.at.x + hand * reach * Math.cos(angle),
			y: tree.at.y + reach * Math.sin(angle),
			z: tree.crownBase + t * tall + radius * 0.2 * (next() - 0.5),
			radius: radius * (0.55 + 0.8 * next()) * (tree.form === 'conical' ? 0.8 + 0.4 * (1 - t) : 1),
			flat: tree.form === 'conical' ? 0.45 : tree.form === 'weeping' ? 1.5 : tree.form === 'columnar' ? 1.3 : 0.62,
			out,
			tone: next()
		});
		i++;
	}
	return crown;
}

/**
 * Metres of crown on the straight way between two places: the chord of the ellipsoid about the crown.
 */
export function chord(crown: Crown, ax: number, ay: number, az: number, bx: number, by: number, bz: number): number {
	const r = crown.tree.spread / 2;
	const h = crown.half;
	const px = (ax - crown.tree.at.x) / r;
	const py = (ay - crown.tree.at.y) / r;
	const pz = (az - crown.middle) / h;
	const dx = (bx - ax) / r;
	const dy = (by - ay) / r;
	const dz = (bz - az) / h;
	const a = dx * dx + dy * dy + dz * dz;
	if (a < 1e-12) return 0;
	const b = px * dx + py * dy + pz * dz;
	const root = b * b - a * (px * px + py * py + pz * pz - 1);
	if (root <= 0) return 0;
	const half = Math.sqrt(root);
	const from = Math.max(0, (-b - half) / a);
	const to = Math.min(1, (-b + half) / a);
	return to <= from ? 0 : (to - from) * Math.sqrt((bx - ax) ** 2 + (by - ay) ** 2 + (bz - az) ** 2);
}
