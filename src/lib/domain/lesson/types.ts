/**
 * Lessons, and the problems of the worksheets. Lengths in metres inside; what a learner reads is text in their units. Everything is worked out by
 * the engine; the texts hold no figure that was typed in.
 */
import type { Plan } from '../plan';
import type { UnitSystem } from '../shared/units';
import type { Working } from '../shared/working';
import type { LessonPicture } from './pictures';
import type { Random } from './random';

/** In the order they are taught. */
export const lessonIds = [
	'offset',
	'canopy',
	'beam',
	'spacing',
	'setback',
	'series',
	'drop',
	'load',
	'sensor',
	'energy',
	'safety'
] as const;
export type LessonId = (typeof lessonIds)[number];

/** A number as it is shown: `text` has the digits, and what follows from it follows from just these. */
export interface Given {
	/** A single word, as in an expression: `L`, `V0`, `θ`. */
	symbol: string;
	/** As in a sentence: `length of the cable, one way`. */
	name: string;
	/** Digits and a point, a minus sign where need be: `12.5`. */
	text: string;
	unit: string;
}
/** One step of a solution, before it is reckoned. */
export interface StepRule {
	symbol: string;
	/** As in a sentence: `volts lost in the cable`. */
	label: string;
	/** Arithmetic over the symbols of givens and of earlier steps (`shared/evaluate.ts`). */
	expression: string;
	unit: string;
	/** To which the result is rounded; later steps go on from the rounded number. */
	decimals: number;
	/** The rule in words. */
	rule: string;
	/** Id of a source in `shared/sources.ts`. */
	source: string;
}
/** A step with its numbers put in: `line` redone gives `text`. */
export interface Step extends StepRule {
	/** `2 × 12 × 0.0157 × 3.5` */
	line: string;
	/** The result as shown, without its unit. */
	text: string;
}
export type Answer =
	/** The last step's result. */
	| { type: 'number'; text: string; unit: string; decimals: number }
	/** Just one of them is right. */
	| { type: 'choice'; choices: string[]; right: number };

/** One problem of a worksheet, in words and numbers. */
export interface Problem {
	/** Id of its kind. */
	kind: string;
	/** What is given, as sentences; every given's number and unit stands in them. */
	story: string;
	/** What is asked; for a number it says to how many decimals. */
	ask: string;
	givens: Given[];
	/** The solution, in order; the last is the answer of a number. A choice may have none. */
	steps: Step[];
	answer: Answer;
	/** One sentence for the key: why, where the steps do not say it. */
	because: string;
	/** What the engine gives for the same, not rounded; null for a choice that is no matter of reckoning. */
	engine: number | null;
	picture?: LessonPicture;
}
/** How much of the working is printed: all of it; all but one step; most steps left out; the question alone. */
export const levels = ['solved', 'one', 'several', 'all'] as const;
export type Level = (typeof levels)[number];

/**
 * A kind of problem. `Drawn` are its numbers. `draw` picks them; `pose` makes the problem of any such numbers, also of a textbook's; null where these numbers
 * make no sensible problem (the rounded steps end elsewhere than the engine, a figure is out of its range).
 */
export interface ProblemKind<Drawn = unknown> {
	/** `drop.last-lamp`: the lesson's id and a word. */
	id: string;
	lesson: LessonId;
	/** As in a list: `Volts at the last lamp of a run`. */
	title: string;
	/** Those it can be set at: `one` wants two steps, `several` three; a choice without steps has `solved` and `all` alone. */
	levels: readonly Level[];
	draw(random: Random, units: UnitSystem): Drawn;
	pose(drawn: Drawn, units: UnitSystem): Problem | null;
}

/** A figure beside a picture. */
export interface Figure {
	label: string;
	/** With its unit: `10.4 V`. */
	text: string;
	/** Other than it was before the reveal, or before the slider was moved. */
	changed?: boolean;
}
export interface Choice {
	id: string;
	/** At most 60 characters. */
	words: string;
}
/** Words are at most 130 characters a sentence, three sentences a scene, four figures: they are read from the back of a room. */
export interface Scene {
	words: string[];
	picture: LessonPicture;
	figures: Figure[];
}
export interface Reveal extends Scene {
	/** Id of the choice that holds: found by the engine, not written down. */
	right: string;
	/** The working of the figure that was asked for, and of what it rests on. */
	workings: Working[];
	/** Rules that might have come in and did not, each with its reason. */
	whyNot: { rule: string; words: string }[];
}
/** What would change it: the one thing that is moved. */
export interface Lever {
	/** `Thickness of the cable` */
	label: string;
	/** Numbers that it may stand at, from first to last. */
	values: readonly number[];
	start: number;
	/** With its unit, in the person's units. */
	text(value: number): string;
}
export interface Moment extends Scene {
	workings: Working[];
}
export interface Lesson {
	id: LessonId;
	title: string;
	minutes: number;
	/** One sentence that stays. */
	idea: string;
	/** What the class sees first. */
	scene(units: UnitSystem): Scene;
	/** What they are to predict, one sentence. */
	question(units: UnitSystem): string;
	/** Three or four. */
	choices(units: UnitSystem): Choice[];
	reveal(units: UnitSystem): Reveal;
	lever(units: UnitSystem): Lever;
	/** What the engine gives with the lever there. Pure; at most 50 ms. */
	at(value: number, units: UnitSystem): Moment;
	notes: TeacherNotes;
}
export interface TeacherNotes {
	aim: string;
	/** What learners often believe, and what helps. Common practice, no source. */
	misconceptions: { belief: string; answer: string }[];
	/** `Ohm’s law`, `inverse square`, `trigonometry`, `scale drawing`. */
	curriculum: string[];
	/** What is needed, minutes by minute. */
	course: { minutes: number; words: string }[];
	/** Said to the class where a hand could come to harm; none where nothing can. */
	cautions: string[];
}
/** The plan that a picture is drawn of. */
export type PicturePlan = Plan;
