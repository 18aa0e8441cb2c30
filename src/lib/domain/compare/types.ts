import type { CableSize } from '../circuit';
import type { Plan } from '../plan';
import type { Lamp } from '../shared/catalogue';
import type { Finding } from '../shared/findings';
import type { Working } from '../shared/working';
import type { ratedLife } from './figures';

export type Kind = Lamp['kind'];
/** Two ends of what is not known exactly; one figure twice where it is. */
export interface Range {
	low: number;
	high: number;
}
export interface WorkingRange {
	low: Working;
	high: Working;
}
/** One lamp at the volts that it gets with nominal mains. */
export interface LampAtWork {
	fixture: string;
	label: string;
	model: string;
	/** Null: it is on no run, or its run has no solution. */
	volts: number | null;
	/** Lumens at those volts; null: not known there. */
	light: Working | null;
	/** Per cent of its marked lumens; null as `light`. */
	percent: Working | null;
	/** Hours, shortest and longest; null: not known there. */
	life: WorkingRange | null;
	/** Lives used up in the years compared, fewest and most. */
	lives: WorkingRange | null;
}
export interface Volts {
	/** With nominal mains, and over the corners (rule cable.corners), volts. */
	nominal: Range;
	worst: Range | null;
	lowest: { label: string; working: Working | null };
	highest: { label: string; working: Working | null };
}
export interface Light {
	/** All lamps at rated volts, lumens. */
	rated: Working;
	/** Those lamps whose light is known at the volts they get, lumens; null: of none. */
	real: Working | null;
	lowest: { label: string; percent: Working } | null;
	highest: { label: string; percent: Working } | null;
	/** Labels of the lamps whose light is not known. */
	unknown: string[];
}
export interface Cable {
	sizes: { size: CableSize; metres: Working }[];
	price: Working;
}
/** What the shopping list comes to, by part, and in all. */
export interface Purchase {
	fixtures: Working;
	spares: Working;
	transformer: Working;
	rest: Working;
	total: Working;
}
/** Lamps (halogen) or whole fixtures (LED) that burn out in the years compared. */
export interface Replaced {
	count: WorkingRange;
	/** What they cost once the spares of the shopping list are used up. */
	cost: WorkingRange;
	/** Labels of the lamps whose life is not known: not counted. */
	unknown: string[];
}
/** The yard lit with one kind of lamp. */
export interface Side {
	kind: Kind;
	plan: Plan;
	lamps: LampAtWork[];
	/** Marked watts of all lamps. */
	watts: Working;
	cable: Cable;
	volts: Volts | null;
	light: Light;
	purchase: Purchase;
	replaced: Replaced;
	/** Purchase, power and lamps of the years compared. */
	total: WorkingRange;
	/** The same by the end of each year, from 0 (bought) to the last; currency. */
	byYear: Range[];
}
/** Something in which the two plans differ beside the lamp. Whole sentence. */
export interface Difference {
	code: 'only-led' | 'only-halogen' | 'no-model' | 'other-strength' | 'other-beam';
	message: string;
}
export interface Comparison {
	led: Side;
	halogen: Side;
	years: number;
	/** Hours that lamps are taken to last at rated volts: from memory. */
	ratedLife: typeof ratedLife;
	/** Places lit with either kind: fixture ids. */
	places: string[];
	differences: Difference[];
	/** What the person has set or owns and both plans keep; whole sentences. */
	kept: string[];
	/** Stops of both plans, and of one alone. */
	stops: { both: Finding[]; led: Finding[]; halogen: Finding[] };
	/**
	 * End of the first year from which LED has cost no more than halogen, and stays so; 0: from the start; null: not
	 * within the years compared. Earliest with halogen lamps dying soonest, latest with them lasting longest.
	 */
	ledAhead: { earliest: number | null; latest: number | null };
}
