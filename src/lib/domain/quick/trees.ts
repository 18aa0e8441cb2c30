/** Where the trees stand that are to be lit: in the front lawn, either side of the walk, clear of it, of drives, house and water. */
import { distance, hypot, type Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Frame } from './frame';
import type { Ground } from './ground';
import type { QuickAnswers } from './types';

export type TreeClass = keyof QuickAnswers['trees'];
/** Metres: middling garden trees of a class, round in the crown (common practice, no source). */
export const treeSizes: Record<TreeClass, { spread: number; height: number; crownBase: number; trunk: number }> = {
	small: { spread: 3, height: 4, crownBase: 1.2, trunk: 0.1 },
	medium: { spread: 6, height: 7.8, crownBase: 2.2, trunk: 0.2 },
	large: { spread: 10, height: 12, crownBase: 3.2, trunk: 0.35 }
};
const classes = ['large', 'medium', 'small'] as const;

export interface QuickTree {
	id: string;
	name: string;
	kind: TreeClass;
	at: Point;
}

/** Places tried, metres apart; crowns may touch by this part of their widths. */
const grain = 0.5;
const touching = 0.9;
/** Bark to the edge of paving, so that its uplights stand in lawn. */
const offPaving = (spread: number): number => Math.max(1.5, 0.35 * spread);
const waterClear = rules['water.clear'].figures.clear + 1.8;
/** Trees stand no further back than this beside the house. */
const furthestBack = -18;
/** No tree stands further than this to either side of the door, metres: two rows of all that answers may hold, and a pool. */
const reach = 160;
/** Metres by which a place is worse for each tree on its side already: so that both sides get some. */
const balance = 4;

function isFree(p: Point, spread: number, frame: Frame, ground: Ground, trees: readonly QuickTree[]): boolean {
	const off = offPaving(spread);
	// The cheapest to ask first.
	return (
		p.x <= ground.right - off &&
		p.y <= frame.street - off &&
		ground.toHouse(p) >= spread / 2 + 0.7 &&
		trees.every(({ at, kind }) => distance(at, p) >= (touching * (treeSizes[kind].spread + spread)) / 2) &&
		ground.toWater(p) >= waterClear &&
		ground.toWalk(p) >= 0.6 + off &&
		ground.toDrive(p) >= 1.5 + off
	);
}
/** The nearest free place to the middle of the front lawn, the emptier side first; of two alike, the one further left. */
function placeFor(spread: number, frame: Frame, ground: Ground, trees: readonly QuickTree[]): Point {
	const middle = { x: frame.door, y: frame.street * 0.55 };
	const onLeft = trees.filter(({ at }) => at.x < frame.door).length;
	let best: Point | null = null;
	let least = Infinity;
	const tryColumn = (x: number): void => {
		const more = balance * (x < frame.door ? onLeft : trees.length - onLeft);
		for (let y = furthestBack; y <= frame.street; y += grain) {
			const cost = hypot(x - middle.x, y - middle.y) + more;
			if (cost >= least - 1e-9 || !isFree({ x, y }, spread, frame, ground, trees)) continue;
			best = { x, y };
			least = cost;
		}
	};
	// Outwards from the walk: once a column is further off than what was found, so are all beyond it.
	for (let off = 0; off <= reach && off < least; off += grain) {
		tryColumn(middle.x - off);
		if (off > 0) tryColumn(middle.x + off);
	}
	// As many trees as answers may hold find room within reach (a test fills it); were it not so, the rest would stand at its end.
	return best ?? { x: middle.x - reach, y: 0 };
}

/** Trees in the order large, medium, small; ids count within a class. */
export function treesIn(frame: Frame, ground: Ground, counts: QuickAnswers['trees']): QuickTree[] {
	const trees: QuickTree[] = [];
	for (const kind of classes)
		for (let k = 1; k <= counts[kind]; k++) {
			const name = counts[kind] > 1 ? `${kind} tree ${k}` : `${kind} tree`;
			const at = placeFor(treeSizes[kind].spread, frame, ground, trees);
			trees.push({ id: `${kind}-tree-${k}`, name, kind, at });
		}
	return trees;
}
