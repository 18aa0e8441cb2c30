/** Saves soon after the last change: a short pause collects what is typed, a longest wait keeps the promise of a second. */

export interface Timers {
	set(run: () => void, ms: number): number;
	clear(id: number): void;
	now(): number;
}
const pause = 250;
const longest = 900;

export interface Saver {
	/** Something changed. */
	touch(): void;
	/** Save now if anything is unsaved: the page is going away. */
	flush(): void;
	/** Something changed that is not saved yet. */
	pending(): boolean;
	/** What is unsaved need not be saved any more. */
	drop(): void;
}
export function makeSaver(save: () => void, timers: Timers): Saver {
	let timer: number | null = null;
	let since = 0;
	const drop = () => {
		if (timer !== null) timers.clear(timer);
		timer = null;
	};
	const run = () => {
		drop();
		save();
	};
	return {
		touch() {
			const now = timers.now();
			if (timer === null) since = now;
			else timers.clear(timer);
			timer = timers.set(run, Math.max(0, Math.min(pause, since + longest - now)));
		},
		flush() {
			if (timer !== null) run();
		},
		pending: () => timer !== null,
		drop
	};
}
