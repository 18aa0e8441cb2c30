/** A run as it is redone by hand, and what that comes to beside the plan. */
import type { UnitSystem } from '../../shared/units';
import type { Working, WorkingInput } from '../../shared/working';
import type { CableSize } from '../types';

export type LampKind = 'led' | 'halogen';
/** A run of the plan: a tree of two-wire cable from the supply. */
export interface HandRun {
	size: CableSize;
	/** As the label on the tap says. */
	tapVolts: number;
	/** Of the plan's copper, °C, and one conductor's ohms per kilometre at it. */
	celsius: number;
	ohmsPerKm: number;
	/**
	 * Node 0 is the supply. `voltAmps` as marked on the lamp; `volts` are the plan's, null where it has no solution. A lamp's
	 * amperes in the plan are what its cables bring and do not take on.
	 */
	nodes: { name: string; lamp: { kind: LampKind; voltAmps: number } | null; volts: number | null }[];
	/** Metres of cable laid; the plan's amperes, positive from `from` to `to`, null where it has no solution. */
	segments: { from: number; to: number; metres: number; amps: number | null }[];
}
export interface HandOptions {
	/** Of the lengths in the sums: feet go with ohms in 1000 ft, metres with ohms in a kilometre. */
	units: UnitSystem;
}

export type CauseKind = 'led' | 'halogen' | 'sag' | 'copper' | 'strands' | 'place' | 'constant';
/** One thing changed on the way from the plan to the sum by hand. */
export interface Cause {
	kind: CauseKind;
	/** A few words, and a sentence or two with the figures behind it. */
	label: string;
	why: string;
	/** What it adds to the volts at the lamp (below zero: takes), and what they are then. Not rounded. */
	volts: number;
	after: number;
	/** The same from volts in thousandths, so that what is shown adds up as shown. */
	working: Working;
}
export interface Against {
	/** The plan's volts at the lamp. */
	planVolts: number;
	/** By hand less plan, volts: the sum of the causes. */
	difference: number;
	/** In the order in which they are changed, each on top of those before it. */
	causes: Cause[];
}
/** One segment of the run, from the supply outwards, branch by branch. */
export interface HandRow {
	/** Node numbers. */
	from: number;
	to: number;
	isLamp: boolean;
	metres: number;
	/** Through the cable; of both conductors; lost in it; left at its far end. */
	amps: number;
	ohms: number;
	drop: number;
	volts: number;
	planVolts: number | null;
	difference: number | null;
	/** Of `volts`, opening to `amps` and `ohms`. */
	working: Working;
	/** Of `difference`. */
	differenceWorking: Working | null;
}
export interface Handbook {
	/** NEC Chapter 9 Table 8 stranded at 75 °C, or 0.0225 Ω·mm²/m as IEC 60364-5-52:2009 Annex G has it. */
	basis: 'table8' | 'annexG';
	/** What is looked up: one conductor's ohms in a thousand of the unit of length. */
	ohms: WorkingInput;
	rows: HandRow[];
	/** At the lowest lamp. */
	volts: number;
	/** The same volts in one go, with K = 12.9 and circular mils; null for mm². */
	byFormula: Working | null;
	/** Null where the plan has no solution. */
	against: Against | null;
}
export interface Thumb {
	/** Of all lamps of the run. */
	voltAmps: number;
	/** VA × length for each volt. */
	constant: WorkingInput;
	/** At the lowest lamp. */
	volts: number;
	working: Working;
	/** Null where the plan has no solution. */
	against: Against | null;
}
export interface ByHand {
	/** Lamp with the fewest volts by the handbook, the farthest of equals: node, and metres of cable to it. */
	lowest: { node: number; metres: number };
	handbook: Handbook;
	thumb: Thumb;
}
