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
	/** True where the lamps get their volts and nothing is overloaded. Pure; may be asked often, and is best asked seldom. */
	passes: (setup: SetupIndex) => boolean;
	/**
	 * Part of a setup that can never pass, whatever the rest (a transformer too small for the least lamps): true cuts off all
	 * setups with it. Absent: nothing is known.
	 */
	hopeless?: (part: { transformer: number; products: (number | null)[]; sizes: (number | null)[] }) => boolean;
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
}
