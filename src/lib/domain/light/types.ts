/**
 * The light of the plan: what lands where, against what it should be. Metres in the frame of the site, z up; lux,
 * candela, lumens. All values are maintained: after dirt and age (rule light.maintained).
 */
import type { Assumption, Finding } from '../shared/findings';
import type { Working } from '../shared/working';
import type { Photometry, Vector } from '../photometry';
import type { Shadows } from './shadows';

/** One fixture as a source: what its lamp gives at the volts that the circuit gives it. */
export interface LightSource {
	/** Of the fixture, or of the existing light. */
	id: string;
	at: Vector;
	/** Unit vector along the beam. */
	axis: Vector;
	photometry: Photometry;
	/** Lumens at its volts, maintained; and as rated. */
	lumens: number;
	ratedLumens: number;
	/** It is there already; absent for the fixtures of the plan. */
	existing?: true;
}

/** The light of a yard, to be asked at any point of any surface. Houses, garden walls and free walls cast shadows; crowns do not. */
export interface LightField {
	sources: readonly LightSource[];
	/** What keeps light from getting there. */
	shadows: Shadows;
	/** Lux at a point on a surface with that unit normal, from all sources. */
	lux: (point: Vector, normal: Vector) => number;
	/** The share of one source, an index of `sources`. */
	share: (source: number, point: Vector, normal: Vector) => number;
}

/** Horizontal light on the ground: row by row from the corner of least x and least y; cell centres are `step` apart. */
export interface LightMap {
	/** Centre of the first cell. */
	x: number;
	y: number;
	step: number;
	columns: number;
	rows: number;
	lux: Float32Array;
}

export type ReceiverKind =
	'walk' | 'drive' | 'steps' | 'wall' | 'boundary' | 'neighbour-window' | 'crown' | 'seating' | 'sensor';
/** A surface with what lands on it against what should. */
export interface Receiver {
	id: string;
	kind: ReceiverKind;
	/** What it is called: `the front walk`. */
	name: string;
	/** Lux; evenness is average ÷ least, Infinity never: null where the least is none. */
	average: number;
	least: number;
	most: number;
	evenness: number | null;
	/** What of it the fixtures of the plan give; the rest comes from lights that are there already. */
	fromPlan: { average: number; most: number };
	/** Bounds in force, null where there is none, with the rule that sets them. */
	aim: { low: number | null; high: number | null; evenness: number | null; rule: string } | null;
	verdict: 'right' | 'short' | 'patchy' | 'too-bright' | 'spills' | 'no-aim';
	points: number;
	working?: Working;
}

/** A lamp seen from an eye. */
export interface Glare {
	fixture: string;
	/** Who looks: on a walk, driving, seated, or at a window of the house. */
	eye: { kind: 'walk' | 'drive' | 'seat' | 'window'; id: string; at: Vector };
	/** Whether the bare source is seen from there, and the intensity towards the eye, candela. */
	bare: boolean;
	candela: number;
	/** What turns it away, one sentence; null where nothing needs to. */
	remedy: string | null;
}

/** The part `light` of the plan. */
export interface PlanLight {
	receivers: Receiver[];
	glare: Glare[];
	/** Lumens of the fixtures sent above the horizontal; as a share of all their lumens; and the share of all that meets neither crown nor wall. */
	upward: { lumens: number; share: number; skyShare: number };
	findings: Finding[];
	assumptions: Assumption[];
}
