/** What a step is done for; where it changes afterwards, the step is to be looked at again. */
export interface DoneFor {
	/** A place, a way over the ground, cable laid, a tap of the transformer, hours of light. */
	kind: 'place' | 'ground' | 'cable' | 'tap' | 'hours';
	/** It in a few characters, metres and volts: `2.4,1.2`, `awg-12,34.5`. */
	mark: string;
}
/** A part of a step that is ticked by itself: one light, one run. */
export interface ChecklistItem {
	/** `aim/oak/1`: unlike the id of any step. */
	id: string;
	label: string;
	doneFor?: DoneFor;
}
export interface ChecklistStep {
	/** Says what is done, never in which place of the list it stands, so that a tick stays with its step: `leg/oak/1`. */
	id: string;
	/** What to do, imperative, in the person's units. */
	text: string;
	/** What to watch for, beside the step that it guards. */
	cautions: string[];
	/** Where it defers: local code, authority, maker, licensed electrician. */
	defers: string[];
	rule: string | null;
	/** Absent where it is the same in any plan. */
	doneFor?: DoneFor;
	/** Where it is done bit by bit: it is done when all of them are. */
	items?: ChecklistItem[];
}
export interface ChecklistPart {
	id: 'before' | 'supply' | 'trench' | 'fixtures' | 'connections' | 'first-night' | 'upkeep';
	title: string;
	steps: ChecklistStep[];
}
export interface FirstNightRow {
	fixture: string;
	label: string;
	/** Where to aim, in words; empty when it is not aimed. */
	aim: string;
	expectedVolts: number | null;
	low: number | null;
	high: number | null;
}
export interface Checklist {
	parts: ChecklistPart[];
	firstNight: FirstNightRow[];
}
