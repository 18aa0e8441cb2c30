/** What a stage may say about the plan: stable codes, one shape. */

export type Rank = 'stop' | 'look' | 'note';

/** What a finding, reason or assumption is about: kind as in the yard ('tree', 'walk', 'fixture', 'run', …). */
export interface About {
	kind: string;
	id: string;
}
/** A change to the person's answers that puts a finding right; tried out on the whole circuit before it is offered. */
export interface Advice {
	/** Stable within its finding: `thicker-12`. */
	id: string;
	kind: 'thicker' | 'tap' | 'feed' | 'split' | 'lamps' | 'transformer';
	/** What to do, in a few words: `12 AWG cable on run 1`. */
	label: string;
	/** What comes of it, one sentence: `U3 then gets 10.9 V, at the worst 10.1.` */
	gives: string;
	/** Change in the cost of the plan, in the yard's currency: cable, digging, transformer, fixtures. Below zero: cheaper. */
	cost: number;
	/** Answers to change, all together, by path in the yard; null takes the answer back. */
	changes: { path: string; value: unknown }[];
}
export interface Finding {
	/** Stable, dotted: `stage.what`. */
	code: string;
	rank: Rank;
	/** A whole sentence or two in the person's words and units: what, where, what to do. */
	message: string;
	about: About | null;
	/** Id of the trade rule behind it (`shared/rules.ts`), if any. */
	rule: string | null;
	/** What would put it right, the cheapest first. Absent where nothing that was tried does. */
	advice?: Advice[];
}
/** A value taken because the answer was absent or "not sure". */
export interface Assumption {
	/** Path of the answer in the yard, e.g. `trees.oak.spread`. */
	path: string;
	/** Whole sentence in the person's units. */
	message: string;
	about: About | null;
}
/** An answer without which the plan cannot be dug from. */
export interface Missing {
	path: string;
	message: string;
}
export const rankOrder: Record<Rank, number> = { stop: 0, look: 1, note: 2 };
