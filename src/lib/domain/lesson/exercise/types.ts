/** An exercise: a small yard with its needs in words, a layout that a group drew for it, and how the rules hold there. Metres; texts in the learners' units. */
import type { Plan } from '../../plan';
import type { RuleId } from '../../shared/rules';
import type { UnitSystem } from '../../shared/units';
import type { Working } from '../../shared/working';
import type { Yard } from '../../yard';

/** Raised when what a code makes of an exercise changes in any way: it is printed on every task sheet. */
export const exerciseVersion = 1;
/** In the order of how much there is in them. */
export const exerciseIds = ['walk', 'drive', 'pool'] as const;
export type ExerciseId = (typeof exerciseIds)[number];

/** What a light is for; which walk, tree, drive or wall is the nearest of them. */
export const lightKinds = ['path', 'tree', 'drive', 'wall'] as const;
export type LightKind = (typeof lightKinds)[number];

export interface Exercise {
	id: ExerciseId;
	title: string;
	/** As the teacher gave it, without blanks round it. */
	code: string;
	version: number;
	units: UnitSystem;
	/** What has to be lit and what there is to mind, one sentence each. */
	needs: string[];
	/** The yard without any light of ours. */
	bare: Yard;
	/** The plan of it: what is drawn on the task sheet. */
	empty: Plan;
	/** What the engine would do with the same needs. */
	own: Plan;
	/** Kinds of light that its needs speak of, in their order. */
	kinds: LightKind[];
	/** What each kind's lamp takes, by the engine's own plan, VA. */
	voltAmps: Partial<Record<LightKind, number>>;
}
export interface LayoutLight {
	kind: LightKind;
	/** Metres along the house front from its left corner, and out from it. Any number: what is none is said. */
	along: number;
	out: number;
}
export interface LayoutSupply {
	along: number;
	out: number;
	/** Bottom edge above the ground, metres; null: not told. */
	height: number | null;
	/** Rating, VA; null: the engine takes the least that does. */
	voltAmps: number | null;
}
export interface Layout {
	lights: readonly LayoutLight[];
	supply: LayoutSupply | null;
}
/** More than that many lights are not marked: a yard so small takes a dozen. */
export const mostLights = 60;

export type MarkState = 'held' | 'nearly' | 'not' | 'none';
/** How one rule holds. */
export interface RuleRow {
	rule: RuleId;
	title: string;
	state: MarkState;
	/** With exact figures, one sentence each: what breaks it, else what keeps it. */
	facts: string[];
	/** One kind sentence on what to try; empty where it holds. */
	hint: string;
	/** Labels of the lights that it speaks of. */
	lights: string[];
	working: Working | null;
	/** Text of the source. */
	source: string;
}
export interface Marked {
	/** The plan with the lights as the group has them. */
	plan: Plan;
	/** Label on the plan of each light of the layout, in its order; null where it could not be placed. */
	labels: (string | null)[];
	/** What could not be taken as it stands, one sentence each. */
	problems: string[];
	rows: RuleRow[];
	/** Of the rules that apply: how many hold. */
	held: number;
	applies: number;
}
