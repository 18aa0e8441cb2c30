import type { Point } from '../shared/geometry';
import type { Assumption, Finding } from '../shared/findings';
import type { CableSize, Feed } from '../circuit';
import type { Working } from '../shared/working';

export interface SegmentCrossing {
	/** The strip crossed, and the declared crossing used (null: none is declared, a bore is needed). */
	strip: string;
	crossing: string | null;
	kind: 'sleeve' | 'joint' | 'bore';
	length: number;
}
export interface RunNode {
	id: string;
	/** Fixture id; null at the supply and at bare tees or hubs. */
	fixture: string | null;
	at: Point;
	/** Nominal volts; null when the circuit has no solution (a stop finding says so). */
	volts: number | null;
	/** Worst-case band over the corners (rule cable.corners), volts; null as above. */
	band: { low: number; high: number } | null;
	working?: Working;
}
export interface RunSegment {
	from: string;
	to: string;
	/** Metres of cable laid, slack included. */
	length: number;
	/** Both conductors. */
	ohms: number;
	amps: number | null;
	/** Along the ground, node to node. */
	path: Point[];
	crossings: SegmentCrossing[];
	/** Laid between these two because the person drew it so. */
	byHand?: true;
}
/** A run in one worst case (rule cable.corners). */
export interface RunCorner {
	/** Fractions of nominal: mains, and lengths laid. */
	mains: number;
	length: number;
	/** Degrees Celsius of the copper, and one conductor's ohms per kilometre at it. */
	conductorTemperature: number;
	ohmsPerKm: number;
	/** By node and by segment, as in the run; null when there is no solution. */
	volts: number[] | null;
	amps: number[] | null;
}
/** What of a run the person has set: the rest is chosen. */
export type HandSet = 'lamps' | 'cable' | 'tap' | 'feed' | 'route';
/** How long the cable routes are together, and how short they could be. */
export interface RouteLength {
	/** Metres along the ground of all cables, slack and the rise to the transformer left out. */
	length: number;
	/** Metres. No layout with as many runs, whose cables take the cheapest ways (or the ways they have in the plan) and meet at lights only, is shorter (`bound.ts` says it exactly, and why). */
	bound: number;
	/** length ÷ bound − 1: of the length, no more than this part of the bound could be saved. */
	gap: number;
	/** What the bound is the sum of: the links of the shortest tree, by ids of nodes, metres. */
	links: { from: string; to: string; length: number }[];
	/** Metres to dig: what passes under paving left out, a trench that cables share counted once. */
	trench: number;
	/** Metres to dig if each of these cables took the way that is cheapest for it alone, in a trench of its own. */
	trenchApart: number;
	/** The one less the other, metres. Below zero where cables go round to share a dear crossing. */
	savedBySharing: number;
}
/** A way of doing it that was weighed and not taken. */
export interface RunnerUp {
	/** The run it would change, or null: the number of runs, the transformer. */
	run: string | null;
	/** What it is, in a few words: `14 AWG on run 2`, `one run`. */
	label: string;
	/** What it would cost more; below zero, less. Yard's currency. */
	costDifference: number;
	/** Why it lost, one sentence. */
	why: string;
	/** It keeps every limit, as solved; false too where it was too dear to be solved. */
	sound: boolean;
}
export interface Run {
	id: string;
	/** As written on the drawing: `run 1`. */
	name: string;
	tapVolts: number;
	cable: CableSize;
	/** Where the transformer's cable enters it. */
	feed: Feed;
	byHand: HandSet[];
	/** Degrees Celsius used for the nominal figures. */
	conductorTemperature: number;
	/** One conductor, ohms per kilometre at that temperature. */
	ohmsPerKm: number;
	/** Amperes leaving the supply; the lower of conductor and secondary limit. */
	amps: number | null;
	ampsLimit: number;
	loadVoltAmps: number;
	/** First node is the supply. */
	nodes: RunNode[];
	segments: RunSegment[];
	corners: { low: RunCorner; high: RunCorner };
}
/** Why the transformer hangs where it hangs: id of the rule, a sentence, id of the source. */
export interface SupplyReason {
	rule: string;
	because: string;
	source: string;
}
export interface Supply {
	at: Point;
	/** Wall it hangs on, or a post. */
	on: 'wall' | 'post';
	/** Bottom edge above grade, metres. */
	mountHeight: number;
	/** Catalogue id of the transformer. */
	model: string;
	ratedVoltAmps: number;
	/** Taken at the terminals, cable losses included. */
	loadVoltAmps: number;
	loadWatts: number;
	taps: number[];
	/** Fraction by which terminal volts sag at rated load. */
	regulation: number;
	/** Suggested by us rather than told. */
	suggested: boolean;
	/** Why there; empty where the person chose. */
	because: SupplyReason[];
	/**
	 * Currency, the sum by which layouts are compared: the transformer; cable by the metre laid, of each run's size, off the
	 * longest roll; digging at a price of ours for a metre in open ground, more or less as the ground is (rules `ground.dig`), a
	 * trench that cables share once; each sleeve, joint or bore once (rule `ground.cross`); connectors at branches; the start of each cable at the transformer.
	 * Lights, and connectors at lights, are the same in every layout and left out. `runnersUp` differ by this sum.
	 */
	cost: number;
	/** Absent where nothing is laid. */
	route?: RouteLength;
	/** Weighed and not taken. */
	runnersUp: RunnerUp[];
	working?: Working;
}
export interface Cabling {
	/** Null while there is nothing to feed or nowhere to hang it. */
	supply: Supply | null;
	runs: Run[];
	findings: Finding[];
	assumptions: Assumption[];
}
