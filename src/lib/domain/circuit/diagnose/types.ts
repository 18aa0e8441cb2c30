import type { CableSize, Network } from '../types';

/** Volts measured at a place of a run: node 0 is the transformer's terminals; any other, the lamp that hangs there. */
export interface Reading {
	node: number;
	volts: number;
}
/** A run as planned, and what was measured on it. */
export interface Inspected {
	/** A tree: each segment leads from the node nearer to the supply; ohms there and back. At most one load at a node, none at node 0. */
	network: Network;
	/** At most one a node, volts from zero up. */
	readings: readonly Reading[];
	/** The transformer's other taps; `sourceVolts` as in the network, which is on the tap planned. */
	otherTaps: readonly { tapVolts: number; sourceVolts: number }[];
	/** Sizes the cable could be by mistake, each with its ohms as a multiple of those planned. */
	otherSizes: readonly { size: CableSize; factor: number }[];
}
export type Fault =
	/** A bad connection somewhere on a segment: its far end, as a rule. */
	| { kind: 'splice'; segment: number }
	/** A bad connection between the cable and one lamp: what lies beyond is well. */
	| { kind: 'lead'; load: number }
	/** No current passes a segment. */
	| { kind: 'open'; segment: number }
	/** A lamp draws other volt-amperes than planned; next to none where it is dead. */
	| { kind: 'load'; load: number }
	| { kind: 'tap'; tapVolts: number }
	| { kind: 'size'; size: CableSize }
	/** The volts at the source are further off than the mains usually wander. */
	| { kind: 'mains' }
	/** No volts at the source. */
	| { kind: 'dead' };

export interface Suspect {
	fault: Fault;
	/** What it comes to: ohms of a bad connection, volt-amperes or mains as a multiple of what is planned; null where the fault says it all. */
	amount: number | null;
	/** How badly readings and fault agree: sum of squares, each over its variance. About the number of readings where all is as supposed. */
	misfit: number;
	/** Volts by reading if this is the fault. */
	volts: number[];
}
export interface Diagnosis {
	/**
	 * as-planned: the readings are such as mains, temperature and meter let expect. fault: a single fault explains them.
	 * unexplained: none of the single faults known here does; the best of them are told all the same. none: nothing was measured.
	 */
	verdict: 'as-planned' | 'fault' | 'unexplained' | 'none';
	/** As in `Suspect`, with nothing wrong. */
	misfit: number;
	/** Volts by reading with nothing wrong, at the mains and the lengths that suit the readings best. */
	volts: number[];
	/** Those that explain the readings about as well as the best, it first. Empty where all is as planned. */
	suspects: Suspect[];
}
