/** A plan's figures, the numbers of its yard that may be moved, and what moves with them. */
import type { Finding } from '../../shared/findings';
import type { Working } from '../../shared/working';
import type { Yard } from '../../yard';

/** A figure of a plan. Its working is made when it is asked for: a yard has thousands, and few are read. */
export interface PlanFigure {
	/** The same through renaming and through any change that leaves the thing itself there: `light/oak/uplight-1/volts`. */
	key: string;
	/** What it is of: `T1, corner linden`, `run 1`, `June`. */
	place: string;
	/** `Volts at T1` */
	label: string;
	value: number;
	unit: string;
	/** With which it is shown. */
	decimals: number;
	/** As shown, with its unit: `11.64 V`. */
	text: string;
	/** Its arithmetic; the value there, shown, is `text`. */
	working(): Working;
}
/** A number of the yard that may be moved. */
export interface YardInput {
	/** Path of the answer: `trees.oak.spread`, `rules.path.spacing/spacing`. */
	id: string;
	/** What it is a number of, as in a list: `the corner linden`. */
	of: string;
	/** Id of that thing, to tell which figures are near. */
	about: string;
	/** `Across the canopy` */
	label: string;
	kind: 'length' | 'number' | 'list';
	/** Written after a number; lengths have their own. */
	unit: string;
	/** What is typed is so many times the value: 100 where it is typed in percent. */
	times: number;
	/** The value the plan goes by: told, taken for granted, or chosen by the plan. */
	start: number;
	/** What the yard takes: by its schema, or the range of the setting. */
	least: number;
	most: number;
	/** Where a slider may stand, ascending; `start` is one of them. Of a list: all there are. */
	stops: readonly number[];
	/** In the person's units: `6.40 m`, `12 AWG`. */
	text(value: number): string;
	/** A valid yard with this value, held within `least` and `most`; with `start`, the answer is as it was told, or untold again. */
	put(yard: Yard, value: number): Yard;
}
/** A figure that is not what it was. */
export interface Moved {
	key: string;
	place: string;
	label: string;
	/** As shown. */
	before: string;
	after: string;
	/** Of the larger of the two: 0 to 2, 0.1 for a tenth. What turns from one sign to the other has more than 1. */
	share: number;
	/** Against what it was, percent, below zero for less; null where it was nothing. */
	percent: number | null;
}
/** A light, a run or a surface that one of two plans has and the other has not; or one figure of what both have. */
export interface Gone {
	place: string;
	/** How many figures go with it. */
	figures: number;
}
export interface Dependents {
	/** Largest share first. */
	moved: Moved[];
	/** How many both plans have alike. */
	still: number;
	came: Gone[];
	went: Gone[];
	findings: { came: Finding[]; went: Finding[] };
}
/** What was tried of one input: the keys that moved with it, came or went. */
export interface Tried {
	input: string;
	moved: ReadonlySet<string>;
}
