/** Pictures of lessons as data: metres, volts, lux. `routes/class/pictures` draws each kind. What has changed is marked. */
import type { Plan } from '../plan';

export interface XY {
	x: number;
	y: number;
}
export interface Measure {
	from: XY;
	to: XY;
	/** In the learner's units. */
	text: string;
	changed?: boolean;
}
/** A part of a yard from above, by the plan's own drawing. x along the front, y out towards the street. */
export interface PlanPicture {
	kind: 'plan';
	/** What it shows, one sentence, for who cannot see it. */
	alt: string;
	plan: Plan;
	/** Metres of the yard. */
	frame: { left: number; top: number; width: number; height: number };
	measures: Measure[];
	points: { at: XY; text: string }[];
}
/** From the side: x from the lit thing's middle, z up from the ground. */
export interface SidePicture {
	kind: 'side';
	alt: string;
	tree: { height: number; spread: number; crownBase: number; trunk: number } | null;
	wall: { height: number } | null;
	/** Null before it stands. */
	lamp: {
		x: number;
		z: number;
		/** Degrees from upright, towards the lit thing. */ lean: number;
		beamAngle: number;
	} | null;
	/** What its beam covers, between two points. */
	lit: { from: { x: number; z: number }; to: { x: number; z: number } } | null;
	measures: { from: { x: number; z: number }; to: { x: number; z: number }; text: string; changed?: boolean }[];
}
/** A walk from above with the light along its middle. */
export interface StripPicture {
	kind: 'strip';
	alt: string;
	length: number;
	width: number;
	lamps: { at: XY; label: string }[];
	/** Along the middle. */
	lux: { x: number; lux: number }[];
	/** Least and average, marked on the curve, with their texts. */
	marked: { x: number | null; lux: number; text: string; changed?: boolean }[];
}
export interface RunPicture {
	kind: 'run';
	alt: string;
	arrangement: 'series' | 'parallel' | 'chain' | 'tee' | 'both ends';
	/** A diagram of what is asked: the light is not drawn, nor its share written. */
	unlit?: boolean;
	supply: { text: string };
	/** In order from the supply; `share` of the light it gives at rated volts, 0 to 1. */
	lamps: { label: string; volts: string; share: number; state: 'fine' | 'dim' | 'off' | 'over'; changed?: boolean }[];
	/** Before each lamp: `6 m`, `3.2 A`. */
	cables: { length: string; amps: string }[];
}
export interface LoadPicture {
	kind: 'load';
	alt: string;
	/** VA. */
	rated: number;
	limit: number;
	/** Both with the unit; without a `limitText` the limit is not drawn. */
	ratedText: string;
	limitText: string;
	parts: { label: string; voltAmps: number; text: string }[];
}
/** Where a drive meets the street, from above, and what a turning car sweeps. */
export interface SweepPicture {
	kind: 'sweep';
	alt: string;
	drive: XY[];
	street: XY[];
	swept: XY[];
	/** What is shown, metres; all of it when absent. */
	frame?: { left: number; top: number; width: number; height: number };
	/** `head`: its diameter, metres. */
	lamps: { at: XY; label: string; state: 'clear' | 'struck'; head?: number }[];
	measures: Measure[];
}
/** A year: one value a day or a month, from January. */
export interface YearPicture {
	kind: 'year';
	alt: string;
	/** `clock`: minutes after noon; else the unit, as written at the axis. */
	unit: string;
	lines: { label: string; values: number[]; changed?: boolean }[];
}
export interface BarsPicture {
	kind: 'bars';
	alt: string;
	unit: string;
	/** Value of the longest bar that there is room for: the same while a lever is moved; absent: the largest shown. */
	most?: number;
	bars: { label: string; value: number; text: string; changed?: boolean }[];
}
/** Who may do what. */
export interface RolesPicture {
	kind: 'roles';
	alt: string;
	rows: { work: string; who: 'you' | 'electrician' | 'utility' | 'nobody'; words: string; marked?: boolean }[];
}
export type LessonPicture =
	| PlanPicture
	| SidePicture
	| StripPicture
	| RunPicture
	| LoadPicture
	| SweepPicture
	| YearPicture
	| BarsPicture
	| RolesPicture;
