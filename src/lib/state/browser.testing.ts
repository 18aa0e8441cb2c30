/** A store like a browser's, and clocks that a test moves, for the tests of keeping. */
import type { Timers } from './saver';
import type { Store } from './storage';

export interface TestStore extends Store {
	all(): Record<string, string>;
	/** What the next writes throw; null lets them pass. */
	failWith(error: Error | null): void;
}
export function makeStore(initial: Record<string, string> = {}): TestStore {
	const held = new Map(Object.entries(initial));
	let failure: Error | null = null;
	return {
		getItem: (key) => held.get(key) ?? null,
		setItem(key, text) {
			if (failure) throw failure;
			held.set(key, text);
		},
		removeItem: (key) => void held.delete(key),
		all: () => Object.fromEntries(held),
		failWith: (error) => void (failure = error)
	};
}
export const quotaError = () => Object.assign(new Error('full'), { name: 'QuotaExceededError' });

export interface TestTimers extends Timers {
	pass(ms: number): void;
}
export function makeTimers(): TestTimers {
	let now = 0;
	let next = 1;
	const waiting = new Map<number, { at: number; run: () => void }>();
	return {
		set(run, ms) {
			waiting.set(next, { at: now + ms, run });
			return next++;
		},
		clear: (id) => void waiting.delete(id),
		now: () => now,
		pass(ms) {
			const end = now + ms;
			for (;;) {
				const due = [...waiting].filter(([, { at }]) => at <= end).sort(([, a], [, b]) => a.at - b.at)[0];
				if (!due) break;
				waiting.delete(due[0]);
				now = Math.max(now, due[1].at);
				due[1].run();
			}
			now = end;
		}
	};
}
