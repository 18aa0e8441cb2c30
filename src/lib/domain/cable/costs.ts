/**
 * What a route is judged by, in metres of hand-dug trench in open ground. Working weights of ours (common practice, no
 * source): how much longer a way round may be before another crossing, or the water's edge, is the better choice.
 */
export interface LayingCosts {
	/** A metre of cable and trench in open ground. */
	metre: number;
	/** A metre beside a wall or the edge of paving: the edge is easier to follow, and to find again. */
	alongEdge: number;
	/** Added to each metre closer to water than rule water.clear allows. */
	nearWater: number;
	/** Once for each crossing of paving. */
	crossing: { sleeve: number; joint: number; bore: number; undeclared: number };
	/** Added to each metre bored under paving, declared or not. */
	boreMetre: number;
	/** Once for each run: one more cable up the wall and one more pair of terminals. */
	run: number;
}
export const layingCosts: LayingCosts = {
	metre: 1,
	alongEdge: 0.9,
	nearWater: 2,
	crossing: { sleeve: 0.5, joint: 2, bore: 6, undeclared: 12 },
	boreMetre: 2,
	run: 3
};

/** Price put on a metre of trench, in the currency of the catalogue, when runs are compared by money (our weight, no source). */
export const trenchPricePerMetre = 2;

/** Metres kept between a cable and what it goes round (common practice, no source). */
export const clearances = { house: 0.15, trunk: 0.15, water: 0.3, paving: 0.1, wall: 0.15 } as const;

/** Metres within which a cable counts as lying beside an edge. */
export const besideEdge = 0.6;
