export interface ChecklistStep {
	id: string;
	/** What to do, imperative, in the person's units. */
	text: string;
	/** What to watch for, beside the step that it guards. */
	cautions: string[];
	/** Where it defers: local code, authority, maker, licensed electrician. */
	defers: string[];
	rule: string | null;
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
