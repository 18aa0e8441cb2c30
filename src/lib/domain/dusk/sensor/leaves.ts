/** Crowns through the year: when they are in leaf, and how much of the sky's light comes through. */
import type { Tree } from '../../site';
import type { Yard } from '../../yard/schema';
import { rules } from '../../shared/rules';

/** Parts of the light that pass a crown in leaf and a bare one (rule sensor.shade). */
export const throughCrown = (): { leafOn: number; leafOff: number } => {
	const { leafOn, leafOff } = rules['sensor.shade'].figures;
	return { leafOn, leafOff };
};
/** May to October in the north, November to April in the south, and all year by the equator: from memory. */
const inLeafNorth = { from: 5, to: 10 } as const;
const byEquator = 23.5;

/** Whether trees that shed their leaves bear them on the 21st of a month (1 to 12), at a latitude in degrees. */
export function inLeaf(month: number, latitude: number): boolean {
	if (Math.abs(latitude) < byEquator) return true;
	const northern = latitude >= 0 ? month : ((month + 5) % 12) + 1;
	return northern >= inLeafNorth.from && northern <= inLeafNorth.to;
}
/** As told; else a cone or a palm is taken to keep its leaves, any other form to shed them (common practice, no source). */
export function keepsLeaves(tree: Pick<Tree, 'id' | 'form'>, yard: Pick<Yard, 'trees'>): boolean {
	const told = yard.trees?.find(({ id }) => id === tree.id)?.leaf;
	return told ? told === 'keeps' : tree.form === 'conical' || tree.form === 'palm';
}
