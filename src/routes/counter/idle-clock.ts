/** When a page that nobody touches is cleared. Times in milliseconds of one clock. */

/** How long the warning stands before. */
export const warningMs = 20_000;

export type IdleState = { is: 'quiet' } | { is: 'warning'; leftMs: number } | { is: 'over' };

export class IdleClock {
	#touched: number;
	/** When the clearing comes, once the warning stands. It is counted from the warning: a computer that slept through its time warns first. */
	#end: number | null = null;

	constructor(now: number) {
		this.#touched = now;
	}
	/** Somebody is there. */
	touch(now: number): void {
		this.#touched = now;
		this.#end = null;
	}
	/** To be asked about once a second. `limitMs`: from the last touch to the clearing, longer than the warning. */
	look(now: number, limitMs: number): IdleState {
		if (this.#end === null && now - this.#touched >= limitMs - warningMs) this.#end = now + warningMs;
		if (this.#end === null) return { is: 'quiet' };
		return now >= this.#end ? { is: 'over' } : { is: 'warning', leftMs: this.#end - now };
	}
}
