/** A worksheet as data: what stands on the sheet, and all that its key needs. */
import type { UnitSystem } from '../../shared/units';
import type { Lesson, LessonId, Level, Problem, ProblemKind } from '../types';

/** Sheets of one code with other numbers, for neighbours at a table. */
export const variants = ['A', 'B', 'C', 'D', 'E', 'F'] as const;
export type Variant = (typeof variants)[number];

/** What a teacher asks for. Any text is a code; any count is brought within its range, and that is said. */
export interface SheetRequest {
	code: string;
	lessons: readonly LessonId[];
	level: Level;
	count: number;
	units: UnitSystem;
	variant: Variant;
}
/** A step as it stands on a sheet: null where it is to be filled in. */
export interface SheetLine {
	label: string;
	symbol: string;
	/** With `toFind` in place of a number that an earlier line leaves out. */
	line: string | null;
	text: string | null;
	unit: string;
}
/** In a line: the number that is to be found first. */
export const toFind = '____';

export interface SheetProblem {
	/** From 1. */
	number: number;
	lesson: LessonId;
	title: string;
	/** As it was set: another than was asked where its kind does not have that one. */
	level: Level;
	/** Whole, with all steps: what the key is written from. */
	problem: Problem;
	/** Indices of the steps to fill in. */
	blanks: readonly number[];
	/** What is printed of the solution; empty at level `all`. */
	lines: readonly SheetLine[];
	/** The answer is to be found, not printed. */
	open: boolean;
}
export interface Sheet {
	/** As it was understood. */
	code: string;
	variant: Variant;
	units: UnitSystem;
	level: Level;
	lessons: readonly LessonId[];
	/** Printed on every page: makes the sheet again (`readMark`). */
	mark: string;
	version: number;
	problems: readonly SheetProblem[];
	/** What is other than asked, in whole sentences. */
	said: readonly string[];
}
/** What sheets are made from: the lessons as they are taught, or a test's own. */
export interface Stock {
	kinds: readonly ProblemKind[];
	lessons: readonly Pick<Lesson, 'id' | 'title'>[];
}
