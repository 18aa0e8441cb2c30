import type { Point } from '../shared/geometry';
import type { Assumption, Finding } from '../shared/findings';
import type { CableSize } from '../circuit';
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
}
export interface Run {
	id: string;
	/** As written on the drawing: `run 1`. */
	name: string;
	tapVolts: number;
	cable: CableSize;
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
	working?: Working;
}
export interface Cabling {
	/** Null while there is nothing to feed or nowhere to hang it. */
	supply: Supply | null;
	runs: Run[];
	findings: Finding[];
	assumptions: Assumption[];
}
