/** Clearing the counter by itself when nobody is there: off until the shop chooses a time, which stays from customer to customer. */
import { browser } from '$app/environment';
import { IdleClock } from './idle-clock';

export const idleMinutes = [0, 2, 5, 10] as const;
export type IdleMinutes = (typeof idleMinutes)[number];
const key = 'duskwright/shop/idle';
/** Where what was picked at the counter, and where a yard in hand is kept: without either there is nobody's to clear. */
const someones = ['duskwright/counter', 'duskwright/yard'];
const signs = ['pointerdown', 'keydown', 'wheel', 'touchstart', 'input'] as const;

function read(): IdleMinutes {
	if (!browser) return 0;
	try {
		const kept = Number(localStorage.getItem(key));
		return idleMinutes.find((minutes) => minutes === kept) ?? 0;
	} catch {
		// Barred: what was chosen lasts as long as the page.
		return 0;
	}
}
const hasSomeones = (): boolean => {
	try {
		return someones.some((one) => localStorage.getItem(one) !== null);
	} catch {
		// Nothing can be looked up, so there may be something.
		return true;
	}
};

class Idle {
	/** 0: never. */
	minutes = $state<IdleMinutes>(read());
	/** The time is not remembered. */
	forgotten = $state(false);
	/** Whole seconds until it clears; null: no warning stands. */
	left = $state<number | null>(null);
	#clock: IdleClock | null = null;

	choose(minutes: IdleMinutes): void {
		this.minutes = minutes;
		this.putOff();
		try {
			localStorage.setItem(key, String(minutes));
		} catch {
			this.forgotten = true;
		}
	}
	putOff(): void {
		this.left = null;
		this.#clock?.touch(Date.now());
	}
	/** Watches this page; `over` is called once when the time is up. Returns what ends the watch. */
	watch(over: () => void): () => void {
		const clock = new IdleClock(Date.now());
		this.#clock = clock;
		const touched = () => this.putOff();
		for (const sign of signs) addEventListener(sign, touched, { passive: true });
		const timer = setInterval(() => this.#look(clock, over), 1000);
		return () => {
			clearInterval(timer);
			for (const sign of signs) removeEventListener(sign, touched);
			this.left = null;
		};
	}
	#look(clock: IdleClock, over: () => void): void {
		if (this.minutes === 0 || !hasSomeones()) return this.putOff();
		const state = clock.look(Date.now(), this.minutes * 60_000);
		this.left = state.is === 'warning' ? Math.ceil(state.leftMs / 1000) : null;
		if (state.is !== 'over') return;
		clock.touch(Date.now());
		over();
	}
}
export const idle = new Idle();
