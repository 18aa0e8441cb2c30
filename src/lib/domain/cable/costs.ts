import { rules } from '../shared/rules';
import type { Figures } from '../shared/settings';

/**
 * What a route is judged by, in metres of trench in open ground: how much longer a way round may be before another crossing,
 * a bed or the water's edge is the better choice. Figures of rules `ground.dig` and `ground.cross`; those in force in a
 * yard come from `layingCostsOf`.
 */
export interface LayingCosts {
	/** A metre of cable and trench in open ground. */
	metre: number;
	/** A metre beside a wall or the edge of paving: the edge is easier to follow, and to find again. */
	alongEdge: number;
	/** A metre along the edge of a bed against lawn: a slit with a spade, the sod lies back over it. */
	lawnEdge: number;
	/** A metre inside a bed. */
	inBed: number;
	/** A metre inside a root zone (rule tree.roots), whatever else is there. */
	amongRoots: number;
	/** Added to each metre closer to water than rule water.clear allows. */
	nearWater: number;
	/** Once for each crossing of paving. */
	crossing: { sleeve: number; joint: number; bore: number; undeclared: number };
	/** A metre bored under paving, declared or not. */
	bored: number;
	/** Once for each run: one more cable up the wall and one more pair of terminals. */
	run: number;
}
/** Once for each run (our weight, no source). */
const perRun = 3;

/** The laying costs that figures of rules come to. */
export function layingCostsOf(figures: Pick<Figures, 'ground.dig' | 'ground.cross'>): LayingCosts {
	const { edge, lawnEdge, bed, roots, water } = figures['ground.dig'];
	const { sleeve, joint, bore, undeclared, bored } = figures['ground.cross'];
	return {
		metre: 1,
		alongEdge: edge,
		lawnEdge,
		inBed: bed,
		amongRoots: roots,
		nearWater: water,
		crossing: { sleeve, joint, bore, undeclared },
		bored,
		run: perRun
	};
}
/** By the trade's own figures. */
export const layingCosts: LayingCosts = layingCostsOf({
	'ground.dig': rules['ground.dig'].figures,
	'ground.cross': rules['ground.cross'].figures
});

/** Price put on a metre of trench, in the currency of the catalogue, when runs are compared by money (our weight, no source). */
export const trenchPricePerMetre = 2;

/** Metres kept between a cable and what it goes round (common practice, no source). */
export const clearances = { house: 0.15, trunk: 0.15, water: 0.3, paving: 0.1, wall: 0.15 } as const;

/** Metres within which a cable counts as lying beside the edge of house, wall or paving. */
export const besideEdge = 0.6;
/** The same for the edge of a bed against lawn, which is tucked into. */
export const besideLawnEdge = 0.15;
