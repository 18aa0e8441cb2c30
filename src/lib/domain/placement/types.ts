import type { Point } from '../shared/geometry';
import type { Assumption, Finding } from '../shared/findings';
import type { Lamp } from '../shared/catalogue';
import type { Working } from '../shared/working';

export type Technique = 'uplight' | 'wash' | 'graze' | 'path' | 'step' | 'drive' | 'area' | 'number';

export interface Reason {
	/** Id in `shared/rules.ts`. */
	rule: string;
	value: number | null;
	unit: string;
	/** Why, one sentence, in the person's units. */
	because: string;
	/** Id in `shared/sources.ts`. */
	source: string;
	working?: Working;
	/** It says why the light is not where it would stand without this rule. */
	notHere?: true;
}
export interface Fixture {
	/** Stable across replanning: target id, role, number: `oak/uplight-1`. */
	id: string;
	/** On the drawing: letter of what it lights, number in walking order: T1, P3. */
	label: string;
	target: { kind: 'tree' | 'wall' | 'walk' | 'drive' | 'steps' | 'bed' | 'seating' | 'number' | 'added'; id: string };
	technique: Technique;
	at: Point;
	/** Of the lamp above the ground, metres. */
	height: number;
	/** Bearing: degrees clockwise from north; tilt: degrees from straight up (0 = up, 180 = down). */
	aim: { bearing: number; tilt: number; point: { x: number; y: number; z: number } } | null;
	/** Id in `shared/catalogue.ts`. */
	model: string;
	mount: 'stake' | 'flush' | 'surface';
	lamp: Lamp;
	reasons: Reason[];
	/** Other things that it lights, which have no light of their own at its place (rule tree.group). */
	also?: Fixture['target'][];
	/** What of it was set by hand; absent for the plan's own. */
	byHand?: HandMark[];
	/** Of one set by hand: what the plan alone would have done; null when it would put no light there. */
	planned?: Pick<Fixture, 'at' | 'aim' | 'model'> | null;
}
export type HandMark = 'moved' | 'turned' | 'lamp' | 'added' | 'pinned';
export interface Placement {
	fixtures: Fixture[];
	findings: Finding[];
	assumptions: Assumption[];
}
