/** Undo and redo as values: a past, a present, a future. */

/** One change. It knows the way from either side of it, so that it need not hold either. */
export interface Step<T> {
	/** What it was, for the button that takes it back. */
	readonly label: string;
	/** The state before it, given the one after it; null when that can no longer be told. */
	back(after: T): T | null;
	/** The state after it, given the one before it; null as above. */
	forth(before: T): T | null;
}
export interface History<T> {
	readonly now: T;
	/** Oldest first. */
	readonly past: readonly Step<T>[];
	/** Nearest first. */
	readonly future: readonly Step<T>[];
}
/** How many steps are kept; the oldest go first. */
export const mostSteps = 600;

export const historyOf = <T>(now: T): History<T> => ({ now, past: [], future: [] });

/** The history after a change to `next`; the same history when nothing changed. */
export function changed<T>(history: History<T>, next: T, label: string): History<T> {
	const before = history.now;
	if (next === before) return history;
	const step = { label, back: () => before, forth: () => next };
	return { now: next, past: [...history.past, step].slice(-mostSteps), future: [] };
}
/** One step back. A step that cannot be read ends the way back: the state in hand stays. */
export function undone<T>(history: History<T>): History<T> {
	const step = history.past.at(-1);
	if (!step) return history;
	const now = step.back(history.now);
	return now === null
		? { ...history, past: [] }
		: { now, past: history.past.slice(0, -1), future: [step, ...history.future] };
}
/** One step forward again; as with `undone`, a step that cannot be read ends the way. */
export function redone<T>(history: History<T>): History<T> {
	const [step, ...future] = history.future;
	if (!step) return history;
	const now = step.forth(history.now);
	return now === null ? { ...history, future: [] } : { now, past: [...history.past, step], future };
}
