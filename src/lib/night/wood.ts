/** Trunks and branches of a crown, as strokes. */
import type { Crown } from './crown';
import { profile } from './crown';
import { sequence } from './noise';
import { stroke, type Stroke } from './strokes';

/** Bark about 0.15 (from memory: 0.1 to 0.3). */
const bark = [0.185, 0.15, 0.115] as const;
interface Place {
	x: number;
	y: number;
	z: number;
}
const mix = (a: Place, b: Place, t: number): Place => ({
	x: a.x + (b.x - a.x) * t,
	y: a.y + (b.y - a.y) * t,
	z: a.z + (b.z - a.z) * t
});

/** A bent line from one place towards another in so many pieces, thinner towards its end. */
function bent(
	from: Place,
	to: Place,
	lift: number,
	pieces: number,
	thick: readonly [number, number],
	surface: number,
	tree: number
): Stroke[] {
	const at = (t: number): Place => {
		const p = mix(from, to, t);
		return { ...p, z: p.z + lift * t * (1 - t) * 4 };
	};
	return Array.from({ length: pieces }, (_, i) => {
		const [s, e] = [i / pieces, (i + 1) / pieces];
		const radius = (t: number): number => thick[0] + (thick[1] - thick[0]) * t;
		return stroke(at(s), at(e), [radius(s), radius(e)], surface, bark, { tree });
	});
}

/** The wood of a tree. `index`: of the tree in the scene. */
export function woodOf(crown: Crown, surface: number, index: number): Stroke[] {
	const { tree, hand } = crown;
	const next = sequence(crown.seed ^ 0x5bd1e995);
	const r = tree.trunkDiameter / 2;
	const tall = tree.height - tree.crownBase;
	const foot: Place = { ...tree.at, z: 0 };
	if (tree.form === 'palm') {
		const top = { x: tree.at.x + hand * 0.03 * tree.height, y: tree.at.y, z: tree.height - tree.spread * 0.18 };
		return bent(foot, top, 0, Math.max(6, Math.round(tree.height * 3)), [r * 1.15, r * 0.8], surface, index);
	}
	const stems = tree.form === 'multi-stem' ? 4 : 1;
	const strokes: Stroke[] = [];
	const limbs: Place[] = [];
	for (let stem = 0; stem < stems; stem++) {
		const turn = (stem / stems) * 2 * Math.PI + next();
		const lean = stems > 1 ? 0.22 * tree.spread : 0.02 * tree.spread;
		const rise = tree.form === 'conical' || tree.form === 'columnar' ? 0.92 : tree.form === 'vase' ? 0.3 : 0.72;
		const top: Place = {
			x: tree.at.x + hand * lean * Math.cos(turn),
			y: tree.at.y + lean * Math.sin(turn),
			z: tree.crownBase + tall * rise
		};
		const thick = stems > 1 ? r * 0.6 : r;
		const fork = Math.max(0.1, Math.min(0.95, (tree.crownBase + 0.06 * tall) / top.z));
		const middle = mix(foot, top, fork);
		// A flare at the foot, then the bole, then what goes on within the crown.
		const flare = mix(foot, top, Math.min(0.3 * fork, (2.2 * r) / top.z));
		const wide = (t: number): number => thick * (1 + 0.4 * (1 - t) ** 2.2);
		for (let i = 0; i < 6; i++) {
			const [s, e] = [i / 6, (i + 1) / 6];
			strokes.push(
				stroke(mix(foot, flare, s), mix(foot, flare, e), [wide(s), wide(e)], surface, bark, { tree: index })
			);
		}
		const pieces = Math.max(3, Math.min(20, Math.round(middle.z / 0.22)));
		strokes.push(...bent(flare, middle, 0, pieces, [thick, thick * 0.86], surface, index));
		strokes.push(...bent(middle, top, 0, 6, [thick * 0.8, thick * 0.2], surface, index));
		const count = Math.round((tree.form === 'conical' ? 12 : 8) / stems + 1);
		for (let i = 0; i < count; i++) {
			const along = (i + 0.3 * next()) / count;
			const from = mix(middle, top, along * 0.9);
			const t = Math.min(
				0.93,
				(from.z - tree.crownBase) / tall + (tree.form === 'conical' ? 0.02 : 0.16 + 0.25 * next())
			);
			const reach = profile(tree.form, t) * (tree.spread / 2) * (0.55 + 0.25 * next());
			const angle = 2.399963 * i + next() * 0.8 + turn;
			const end: Place = {
				x: tree.at.x + hand * reach * Math.cos(angle),
				y: tree.at.y + reach * Math.sin(angle),
				z: tree.crownBase + t * tall
			};
			limbs.push(end, mix(from, end, 0.8), mix(from, end, 0.6), mix(from, end, 0.4));
			const heavy = thick * (0.52 - 0.3 * along);
			strokes.push(...bent(from, end, -0.06 * reach, 4, [heavy, heavy * 0.3], surface, index));
		}
	}
	return [...strokes, ...twigs(crown, limbs, surface, index)];
}
/** From each clump to the limb nearest to it. */
function twigs(crown: Crown, limbs: readonly Place[], surface: number, index: number): Stroke[] {
	const thin = Math.max(0.005, crown.tree.trunkDiameter * 0.04);
	const reach = 0.2 * Math.max(crown.tree.spread, crown.tree.height - crown.tree.crownBase);
	return crown.clumps.flatMap((clump) => {
		let best: Place | null = null;
		let least = Infinity;
		for (const limb of limbs) {
			// From below rather than from above: that is how wood grows.
			const square =
				(limb.x - clump.x) ** 2 +
				(limb.y - clump.y) ** 2 +
				0.6 * (limb.z - clump.z) ** 2 +
				(limb.z > clump.z ? 0.8 : 0);
			if (square < least) [least, best] = [square, limb];
		}
		return best && least < reach * reach
			? bent(best, clump, -0.05 * Math.sqrt(least), 2, [thin, thin * 0.5], surface, index)
			: [];
	});
}
