/** How far the work has come: the list with what is ticked of it. */
import type { Site } from '../../site';
import type { Checklist, ChecklistItem, ChecklistPart, ChecklistStep } from '../types';
import { isSame, wasWords } from './done-for';
import { readEntry } from './entry';
import { goneWords } from './gone';
import { guardNotes, type GuardNote } from './guards';
import { targetsOf } from './tick';

export interface Ticked {
	done: boolean;
	/** In words, what it was done for where that is not what it is for now; such a step is not done. */
	was: string | null;
}
export interface ItemProgress extends Ticked {
	item: ChecklistItem;
}
export interface StepProgress extends Ticked {
	step: ChecklistStep;
	items: ItemProgress[];
}
export interface PartProgress {
	part: ChecklistPart;
	steps: StepProgress[];
	/** Of its steps; upkeep comes round again and is never done. */
	done: number;
	isDone: boolean;
	comesRound: boolean;
}
export interface Progress {
	parts: PartProgress[];
	/** Steps done, of all but those that come round. */
	done: number;
	of: number;
	/** The first that is open; null where none is. */
	next: ChecklistStep | null;
	/** Guards passed over. */
	notes: GuardNote[];
	/** Ticks of steps that are no longer on the list, as the yard has them, with their words. */
	gone: { entry: string; says: string }[];
}

function ticked({ id, doneFor }: Pick<ChecklistItem, 'id' | 'doneFor'>, marks: Marks, site: Site): Ticked {
	const mark = marks.get(id);
	if (mark === undefined) return { done: false, was: null };
	if (!doneFor || mark === null || isSame(doneFor, mark)) return { done: true, was: null };
	return { done: false, was: wasWords(doneFor.kind, mark, site) };
}
type Marks = ReadonlyMap<string, string | null>;

function stepProgress(step: ChecklistStep, marks: Marks, site: Site): StepProgress {
	const items = (step.items ?? []).map((item) => ({ item, ...ticked(item, marks, site) }));
	if (items.length === 0) return { step, items, ...ticked(step, marks, site) };
	return { step, items, done: items.every(({ done }) => done), was: null };
}
function partProgress(part: ChecklistPart, marks: Marks, site: Site): PartProgress {
	const steps = part.steps.map((step) => stepProgress(step, marks, site));
	const done = steps.filter((one) => one.done).length;
	const comesRound = part.id === 'upkeep';
	return { part, steps, done, isDone: !comesRound && done === steps.length, comesRound };
}

/** `done`: as in the yard, in any order; of ids that are on no list nothing is made but a line of `gone`. */
export function progressOf({ parts: list }: Checklist, site: Site, done: readonly string[]): Progress {
	const marks = new Map(done.map((entry) => [readEntry(entry).id, readEntry(entry).mark]));
	const parts = list.map((part) => partProgress(part, marks, site));
	const once = parts.filter((part) => !part.comesRound);
	const all = once.flatMap(({ part, steps }) => steps.map((step) => ({ ...step, part: part.id })));
	const known = new Set(once.flatMap(({ part }) => part.steps.flatMap((step) => targetsOf(step).map(({ id }) => id))));
	return {
		parts,
		done: all.filter((one) => one.done).length,
		of: all.length,
		next: all.find((one) => !one.done)?.step ?? null,
		notes: guardNotes(all),
		gone: [...new Set(done)]
			.filter((entry) => !known.has(readEntry(entry).id))
			.map((entry) => ({ entry, says: goneWords(entry, site) }))
	};
}
