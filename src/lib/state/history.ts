/** Undo and redo as values: a past, a present, a future, each state whole and never changed. */

/** What one change was, for the button that takes it back. */
interface Entry<T> {
	state: T;
	label: string;
}
export interface History<T> {
	readonly now: T;
	/** Oldest first; each with the label of the change that left it. */
	readonly past: readonly Entry<T>[];
	/** Nearest first; each with the label of the change that leads to it. */
	readonly future: readonly Entry<T>[];
}
const kept = 300;

export const historyOf = <T>(now: T): History<T> => ({ now, past: [], future: [] });

/** The history after a change to `next`; the same history when nothing changed. */
export const changed = <T>(history: History<T>, next: T, label: string): History<T> =>
	next === history.now
		? history
		: { now: next, past: [...history.past, { state: history.now, label }].slice(-kept), future: [] };

export function undone<T>(history: History<T>): History<T> {
	const last = history.past.at(-1);
	if (!last) return history;
	return {
		now: last.state,
		past: history.past.slice(0, -1),
		future: [{ state: history.now, label: last.label }, ...history.future]
	};
}
export function redone<T>(history: History<T>): History<T> {
	const [next, ...future] = history.future;
	if (!next) return history;
	return { now: next.state, past: [...history.past, { state: history.now, label: next.label }], future };
}
