/** Where an uplight stands off the bark, how many a tree takes and how they point: rules tree.offset, tree.count, tree.beam, tree.aim, tree.skirt. */
import { distance, type Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Figures } from '../shared/settings';
import type { Tree } from '../site';
import { isSkirted, rootFlare } from './conflicts';
import { stockBeamFor } from './models';

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** Metres from the bark to the lamp for a canopy of so many metres across (rule tree.offset). */
export function barkOffset(spread: number, figures: Figures): number {
	const { nearSpread, nearOffset, farSpread, farOffset } = figures['tree.offset'];
	const share = Math.min(1, Math.max(0, (spread - nearSpread) / (farSpread - nearSpread)));
	return nearOffset + share * (farOffset - nearOffset);
}

/** How many uplights a tree takes (rule tree.count). A columnar one takes two when it is tall. */
export function uplightCount(tree: Pick<Tree, 'form' | 'spread' | 'height'>): number {
	const { one, two, perFurther, columnarTall } = rules['tree.count'].figures;
	if (tree.form === 'columnar') return tree.height > columnarTall ? 2 : 1;
	if (tree.spread <= one) return 1;
	return tree.spread <= two ? 2 : 3 + Math.floor((tree.spread - two) / perFurther);
}

/** Degrees round the trunk from the side it is looked at from, as many to the left as to the right. */
export function bearingsRound(count: number): number[] {
	if (count === 1) return [0];
	// Two: both on the side that is looked at, a sixth of a turn off it, so that the crown has depth and nobody looks into a lamp behind the trunk.
	if (count === 2) return [-60, 60];
	const step = 360 / count;
	const list = count % 2 === 1 ? [0] : [];
	for (let k = 0; list.length < count; k++) {
		const angle = count % 2 === 1 ? (k + 1) * step : (k + 0.5) * step;
		list.push(-angle, angle);
	}
	return list;
}

export interface Aim {
	/** Metres from the bark to the lamp. */
	offset: number;
	/** What set it: the canopy; the lean, which brought it nearer; the branches at the ground; the foot of the trunk. */
	offsetBy: 'canopy' | 'lean' | 'skirt' | 'flare';
	/** Degrees of the beam needed for the crown, from where the lamp is. */
	needed: number;
	beam: number;
	/** Degrees from upright to the middle of the crown. */
	lean: number;
	aimHeight: number;
	held: boolean;
}

/** Metres from the bark, before anything else is in the way. */
function offsetOf(tree: Tree, rise: number, lampRadius: number, figures: Figures): Pick<Aim, 'offset' | 'offsetBy'> {
	const trunk = tree.trunkDiameter / 2;
	const flare = Math.max(0.05, rootFlare(tree.trunkDiameter)) + lampRadius;
	const skirt = isSkirted(tree) ? tree.spread / 2 + figures['tree.skirt'].clear + lampRadius - trunk : 0;
	if (skirt > flare) return { offset: skirt, offsetBy: 'skirt' };
	const wanted = barkOffset(tree.spread, figures);
	const furthest = rise * Math.tan((figures['tree.aim'].maxLean * Math.PI) / 180);
	// A low wide crown: nearer to the bark rather than laid over; never nearer than the nearest of the rule.
	const leant = Math.max(Math.min(wanted, furthest - trunk), Math.min(wanted, figures['tree.offset'].nearOffset));
	if (flare > leant) return { offset: flare, offsetBy: 'flare' };
	return { offset: leant, offsetBy: leant < wanted - 1e-9 ? 'lean' : 'canopy' };
}

/** Where the lamp stands off the bark and how it points. Heights in metres above the ground. */
export function treeAim(tree: Tree, lampHeight: number, lampRadius: number, figures: Figures): Aim {
	const { maxLean } = figures['tree.aim'];
	const middle = Math.max((tree.crownBase + tree.height) / 2, lampHeight + 0.1);
	const rise = middle - lampHeight;
	const { offset, offsetBy } = offsetOf(tree, rise, lampRadius, figures);
	const aside = tree.trunkDiameter / 2 + offset;
	const lean = degrees(Math.atan2(aside, rise));
	const held = lean > maxLean + 1e-9;
	const needed = 2 * degrees(Math.atan2(tree.spread / 2, rise));
	return {
		offset,
		offsetBy,
		needed,
		beam: stockBeamFor(needed),
		lean: Math.min(lean, maxLean),
		aimHeight: held ? lampHeight + aside / Math.tan((maxLean * Math.PI) / 180) : middle,
		held
	};
}

/** Metres a lamp stands off the bark: for checks. */
export const fromBark = (at: Point, tree: Tree): number => distance(at, tree.at) - tree.trunkDiameter / 2;
