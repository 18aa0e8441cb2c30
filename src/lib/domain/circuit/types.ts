/**
 * A two-wire network. Knows nothing of yards. Resistances are there-and-back (both conductors), ohms; volts are
 * between the two conductors.
 */
export type Load =
	| { kind: 'led'; voltAmps: number; minVolts: number; maxVolts: number }
	| { kind: 'halogen'; watts: number; ratedVolts: number; minVolts: number; maxVolts: number }
	| { kind: 'resistance'; ohms: number };
export interface Network {
	/** Open-circuit volts of the tap. */
	sourceVolts: number;
	/** Ohms in series with the tap: the transformer's regulation as seen from this network. */
	sourceOhms: number;
	/** Number of nodes; node 0 is the supply. */
	nodes: number;
	segments: { from: number; to: number; ohms: number }[];
	loads: { node: number; load: Load }[];
	/** Further feeds beside node 0, each an open-circuit voltage behind ohms greater than zero: a ring fed from two taps. */
	feeds?: { node: number; volts: number; ohms: number }[];
}
export type Solution =
	| {
			ok: true;
			/** By node, volts. */
			volts: number[];
			/** By segment, amperes, positive from `from` to `to`. */
			segmentAmps: number[];
			/** By load, amperes and volt-amperes drawn. */
			loadAmps: number[];
			loadVoltAmps: number[];
			sourceAmps: number;
			/** By further feed, amperes into the network (negative: the feed is driven backwards); absent without feeds. */
			feedAmps?: number[];
			steps: number;
	  }
	| { ok: false; why: 'no-solution' | 'island' | 'bad-network' | 'step-limit'; at: number; message: string };

export type CableSystem = 'awg' | 'mm2';
export interface CableSize {
	system: CableSystem;
	/** AWG gauge number, or cross-section in mm². */
	size: number;
}

// ---- choosing cable, tap and transformer ------------------------------------------------------------------------

/**
 * How the supply's cable enters a run: at its near end; at a lamp in its middle, from which the cable goes on to both
 * sides (a tee); or at a hub, from which each lamp has a lead of its own.
 */
export type Feed = 'end' | 'middle' | 'hub';

/** One run as lengths: node 0 is the supply. A tree, or a network with rings. */
export interface RunShape {
	id: string;
	/** Absent: fed at its end. */
	feed?: Feed;
	/** What laying it costs beside its cable, currency: digging, joints. Absent: 0. */
	laying?: number;
	nodes: number;
	/** Metres of cable laid (slack included). */
	segments: { from: number; to: number; metres: number }[];
	/** `alike`: lamps with one value are seen together and should look alike (rule cable.volts); null: no such wish. */
	loads: { id: string; node: number; load: Load; alike: string | null }[];
}
/** One run and the ways it may be laid: the same loads, by id, in other shapes. */
export interface RunWays {
	/** The plain way: no other takes less cable or costs less to lay. All ways bear its id. */
	shape: RunShape;
	/** The other ways, made only when one of them could be better. */
	others?: () => RunShape[];
	/**
	 * Held by hand: nothing else is chosen for this run. A size without a price is taken to be in hand already, at no
	 * price; a tap that no transformer has is tried all the same, with the problem `no-tap`.
	 */
	held?: { size?: CableSize; tapVolts?: number };
}
export interface TransformerOption {
	id: string;
	voltAmps: number;
	taps: number[];
	secondaries: number;
	regulation: number;
	price: number;
}
export interface ChooseOptions {
	sizes: CableSize[];
	/** Currency per metre by size. */
	pricePerMetre: (size: CableSize) => number;
	/** Ascending by rating. */
	transformers: TransformerOption[];
	/** Conductor temperatures, °C. */
	temperatures: { nominal: number; hot: number; cold: number };
	/** Fractions: corners of length and mains (rule cable.corners), load limit (rule supply.load), room for growth. */
	corners: { length: number; mains: number };
	loadLimit: number;
	growth: number;
	/** Amperes, per secondary (rule supply.secondary). */
	secondaryAmps: number;
}
export interface ChosenRun {
	id: string;
	/** The way taken. */
	shape: RunShape;
	size: CableSize;
	tapVolts: number;
	/** Index of the transformer's secondary it hangs on. */
	secondary: number;
	ohmsPerKm: number;
	ampsLimit: number;
	nominal: Solution;
	/** Hot, long, mains low; cold, short, mains high (rule cable.corners). */
	low: Solution;
	high: Solution;
	/** By load id, in the order of the shape: volts nominal and worst-case band; null where there is no solution. */
	lamps: { id: string; volts: number | null; low: number | null; high: number | null }[];
}
export interface ChoiceProblem {
	code:
		| 'no-solution'
		| 'lamp-low'
		| 'lamp-high'
		| 'uneven'
		| 'cable-amps'
		| 'secondary-amps'
		| 'transformer-load'
		/** The run is held on a tap that the transformer does not have; `value` is that tap. */
		| 'no-tap'
		| 'bad-network';
	run: string | null;
	load: string | null;
	/** Value found, limit it broke; volts, amperes or volt-amperes. */
	value: number | null;
	limit: number | null;
	/** True when the nominal case is right and only a corner (rule cable.corners) breaks the limit. */
	cornerOnly: boolean;
	/** What would cure it, each tried by solving, the cheapest first. Worked out when first read. */
	cures: Cure[];
}
/** A change that puts a problem right, solved before it is offered. The caller puts it into words. */
export interface Cure {
	kind: 'thicker' | 'tap' | 'feed' | 'split' | 'led' | 'larger-transformer';
	/** Change in the cost of the whole choice, currency: cable, laying, transformer; not lamps. */
	cost: number;
	size?: CableSize;
	tapVolts?: number;
	feed?: Feed;
	/** By new run, ids of its loads, where the run is split. */
	groups?: string[][];
	/** Id, where a larger one is wanted. */
	transformer?: string;
	/** What the lamp named then gets, nominal. */
	volts?: number;
}
/** A choice that was not taken, and why. */
export interface Alternative {
	run: string;
	size: CableSize;
	tapVolts: number;
	/** The way to lay the run, and how that is fed. */
	shape: RunShape;
	feed: Feed;
	/** Cost of the whole with it less the cost of the choice, currency. */
	costDifference: number;
	/** Null: it keeps every limit and is dearer. Otherwise the worst that it would break. */
	problem: Omit<ChoiceProblem, 'cures'> | null;
}
export interface Choice {
	transformer: TransformerOption;
	runs: ChosenRun[];
	/** Taken at the terminals in the nominal case, cable losses included. */
	loadVoltAmps: number;
	loadWatts: number;
	/** Price of cable, laying and transformer. */
	cost: number;
	/** By run at most two: the next dearer that keeps every limit too, and the next cheaper, which does not. Worked out when first read. */
	alternatives: Alternative[];
	/** Empty when every limit is met. */
	problems: ChoiceProblem[];
}
