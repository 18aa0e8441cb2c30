/** Ticks as the yard keeps them: sorted, one to an id. */
import type { ChecklistItem, ChecklistStep } from '../types';
import { entryOf, readEntry } from './entry';

type Target = Pick<ChecklistItem, 'id' | 'doneFor'>;

/** What a tick of a step writes down: its items where it has some, else itself. */
export const targetsOf = (step: ChecklistStep): readonly Target[] => step.items ?? [step];

/**
 * The ticks with those of `targets` set for what they are for now, or taken away. `done` may come in any order; what is
 * returned is sorted by code unit, one entry to an id, undefined where nothing is ticked.
 */
export function withTicks(
	done: readonly string[] | undefined,
	targets: readonly Target[],
	isOn: boolean
): string[] | undefined {
	const entries = new Map((done ?? []).map((entry) => [readEntry(entry).id, entry]));
	for (const { id, doneFor } of targets) {
		if (isOn) entries.set(id, entryOf(id, doneFor));
		else entries.delete(id);
	}
	return entries.size > 0 ? [...entries.values()].toSorted() : undefined;
}
