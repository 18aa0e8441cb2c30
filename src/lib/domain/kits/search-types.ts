/** Which of a shelf to buy, as numbers alone: no yards, no words. Every index is into the lists given here. */

export interface Offer {
	/** Price of one, hundredths: whole, not negative. */
	cents: number;
	/** How many there are; Infinity: as many as wanted. */
	stock: number;
	isKit: boolean;
	/** By product: how many of it are in one. */
	fixtures: Map<number, number>;
	/** The transformer in it; null: none. */
	transformer: number | null;
	/** By cable size: metres in one, all of its pieces together. */
	cable: Map<number, number>;
	connectors: number;
}
export interface Problem {
	/** By need: how many lights, and which products would do. */
	needs: { count: number; products: number[] }[];
	/** By run: metres of cable. */
	runs: number[];
	connectors: number;
	/** How many products, transformers and cable sizes there are. */
	products: number;
	transformers: number;
	sizes: number;
	offers: Offer[];
	/**
	 * By product, the first product with a lamp that is electrically the same: `passes` then makes no difference between them, and what fails with one
	 * is not tried with the other. Absent: no two are alike.
	 */
	alike?: number[];
	/** True where the lamps get their volts and nothing is overloaded. Pure; may be asked often, and is best asked seldom. */
	passes: (setup: SetupIndex) => boolean;
	/**
	 * Part of a setup that can never pass, whatever the rest (a transformer too small for the least lamps): true cuts off all
	 * setups with it. Absent: nothing is known. The more it tells, the fewer setups are tried: with cable that is too thin for any lamps, every
	 * choice of lamps is tried otherwise. It may come to know more as it is asked.
	 */
	hopeless?: (part: { transformer: number; products: (number | null)[]; sizes: (number | null)[] }) => boolean;
}
/** How far a search goes. */
export interface Limits {
	/** Branches looked at until it breaks off being exact, … */
	steps: number;
	/** … and further ones, in haste, to find anything at all. */
	haste: number;
}
export interface SetupIndex {
	/** By need. */
	products: number[];
	/** By run. */
	sizes: number[];
	transformer: number;
}
export interface Purchase {
	setup: SetupIndex;
	/** By offer: how many. */
	counts: number[];
	cents: number;
}
export interface SearchWish {
	/** How many to give: the cheapest, and after it the cheapest of each other choice of kits. */
	most: number;
	/** Counts of these offers are at least so many: what is the cheapest with this kit in it? */
	atLeast?: Map<number, number>;
	/** Absent: `limits` of the search. */
	limits?: Limits;
}
/** Something wanted that nothing on the shelf can serve, by its index in the problem; transformer and connectors have index 0. */
export interface Lack {
	kind: 'connectors' | 'transformer' | 'run' | 'need';
	index: number;
}
/** What a search found, and how sure it is. */
export interface Found {
	purchases: Purchase[];
	/** False where the search broke off before it was sure: what is given can be bought and passes, but there may be cheaper. */
	isProven: boolean;
	/** Branches looked at. */
	steps: number;
	/** What nothing on the shelf can serve; then there are no purchases. */
	lacks: Lack[];
}
