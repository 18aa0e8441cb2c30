/** What a stage may say about the plan: stable codes, one shape. */

export type Rank = 'stop' | 'look' | 'note';

/** What a finding, reason or assumption is about: kind as in the yard ('tree', 'walk', 'fixture', 'run', …). */
export interface About {
	kind: string;
	id: string;
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
