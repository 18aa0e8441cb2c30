/**
 * What fingers, pen or mouse on the board mean, told apart by how many there are, how far and how long. Knows nothing of yards, nor of the
 * page: px from the upper left corner of the board, milliseconds.
 */
import type { Point } from './types';

export interface Press extends Point {
	id: number;
	touch: boolean;
	time: number;
}
/** What the board does about it. `G`: what can be dragged. */
export interface Hand<G> {
	/** What a press here takes hold of; null: nothing. */
	grab: (at: Point, touch: boolean) => G | null;
	/** A drag on empty ground moves the drawing. Otherwise a finger scrolls the page. */
	mayPan: () => boolean;
	/** A finger held still aims, and sets its point where it is lifted. */
	mayAim: () => boolean;
	pan: (dx: number, dy: number) => void;
	/** Two fingers are down: what is shown now is what they pull at. */
	startPinch: () => void;
	/** Since then their middle has come from one place to another, and they are so many times as far apart. */
	pinch: (from: Point, to: Point, factor: number) => void;
	drag: (grabbed: G, at: Point, touch: boolean) => void;
	drop: (grabbed: G, at: Point) => void;
	/** What was dragged goes back to where it was. */
	giveUp: (grabbed: G) => void;
	tap: (at: Point, count: 1 | 2) => void;
	/** A pointer points here; null: it does no more. */
	aim: (at: Point | null, touch: boolean) => void;
	/** A pan or a pinch is over. */
	settle: () => void;
	/** Runs later; gives back what takes it back. */
	later: (run: () => void, ms: number) => () => void;
}

/** px that a hand may tremble before a press is a drag. */
const tremble = { touch: 9, mouse: 4 };
/** A finger that rests as long aims, ms. */
export const holdTime = 220;
/** Two taps within this are one double tap, ms and px. */
const double = { time: 320, apart: 26 };

type Doing<G> =
	| { what: 'nothing' }
	| { what: 'press'; start: Press; grabbed: G | null; calm: () => void }
	| { what: 'drag'; id: number; grabbed: G }
	| { what: 'pan'; id: number; last: Point }
	| { what: 'aim'; id: number }
	/** A finger too many was there: nothing until all are lifted. */
	| { what: 'pinch'; middle: Point; apart: number };

const between = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

export class Gesture<G> {
	#hand: Hand<G>;
	#fingers = new Map<number, Press>();
	#doing: Doing<G> = { what: 'nothing' };
	#lastTap: Press | null = null;

	constructor(hand: Hand<G>) {
		this.#hand = hand;
	}
	/** The board uses the fingers: the page must not scroll with them. */
	get owns(): boolean {
		return (
			!['nothing', 'press'].includes(this.#doing.what) || (this.#doing.what === 'press' && this.#doing.grabbed !== null)
		);
	}
	get isBusy(): boolean {
		return ['drag', 'pan', 'pinch', 'aim'].includes(this.#doing.what);
	}

	down(press: Press): void {
		this.#fingers.set(press.id, press);
		if (this.#fingers.size > 1) return this.#startPinch();
		const grabbed = this.#hand.grab(press, press.touch);
		const waits = press.touch && grabbed === null && this.#hand.mayAim();
		const calm = waits ? this.#hand.later(() => this.#startAim(press.id), holdTime) : () => undefined;
		this.#doing = { what: 'press', start: press, grabbed, calm };
	}
	move(press: Press): void {
		const known = this.#fingers.has(press.id);
		if (known) this.#fingers.set(press.id, press);
		const doing = this.#doing;
		if (!known) {
			if (!press.touch && doing.what === 'nothing') this.#hand.aim(press, false);
		} else if (doing.what === 'press') this.#leave(doing, press);
		else if (doing.what === 'drag') this.#hand.drag(doing.grabbed, press, press.touch);
		else if (doing.what === 'aim') this.#hand.aim(press, press.touch);
		else if (doing.what === 'pan') {
			this.#hand.pan(press.x - doing.last.x, press.y - doing.last.y);
			doing.last = press;
		} else if (doing.what === 'pinch') this.#pinch(doing);
	}
	up(press: Press): void {
		if (!this.#fingers.delete(press.id)) return;
		const doing = this.#doing;
		if (doing.what === 'pinch') return this.#lift();
		this.#doing = { what: 'nothing' };
		if (doing.what === 'press') {
			doing.calm();
			this.#tap(press);
		} else if (doing.what === 'drag') this.#hand.drop(doing.grabbed, press);
		else if (doing.what === 'aim') {
			this.#hand.aim(null, press.touch);
			this.#hand.tap(press, 1);
		} else if (doing.what === 'pan') this.#hand.settle();
	}
	/** The browser took the finger for itself, or the page lost it. */
	cancel(id: number): void {
		if (!this.#fingers.delete(id)) return;
		if (this.#doing.what === 'pinch') return this.#lift();
		this.#stop();
		this.#doing = { what: 'nothing' };
	}
	/** The pointer has left the board. */
	leave(touch: boolean): void {
		if (!touch && this.#doing.what === 'nothing') this.#hand.aim(null, false);
	}

	/** Puts back what is under way. */
	#stop(): void {
		const doing = this.#doing;
		if (doing.what === 'press') doing.calm();
		else if (doing.what === 'drag') this.#hand.giveUp(doing.grabbed);
		else if (doing.what === 'aim') this.#hand.aim(null, true);
		else if (doing.what === 'pan') this.#hand.settle();
	}
	#leave(doing: Extract<Doing<G>, { what: 'press' }>, press: Press): void {
		const { start, grabbed } = doing;
		if (distance(start, press) < (press.touch ? tremble.touch : tremble.mouse)) return;
		doing.calm();
		this.#lastTap = null;
		if (grabbed !== null) {
			this.#doing = { what: 'drag', id: press.id, grabbed };
			this.#hand.drag(grabbed, press, press.touch);
		} else if (this.#hand.mayPan()) {
			this.#doing = { what: 'pan', id: press.id, last: press };
			this.#hand.aim(null, press.touch);
			this.#hand.pan(press.x - start.x, press.y - start.y);
		} else {
			// A finger scrolls the page from here; a mouse has left its place and sets nothing.
			this.#fingers.delete(press.id);
			this.#doing = { what: 'nothing' };
		}
	}
	#startAim(id: number): void {
		const press = this.#fingers.get(id);
		if (!press || this.#doing.what !== 'press') return;
		this.#doing = { what: 'aim', id };
		this.#hand.aim(press, press.touch);
	}
	#startPinch(): void {
		if (this.#doing.what !== 'pinch') this.#stop();
		const [a, b] = [...this.#fingers.values()];
		this.#lastTap = null;
		this.#hand.startPinch();
		this.#doing = { what: 'pinch', middle: between(a!, b!), apart: Math.max(1, distance(a!, b!)) };
	}
	#pinch(doing: Extract<Doing<G>, { what: 'pinch' }>): void {
		const [a, b] = [...this.#fingers.values()];
		if (!a || !b) return;
		this.#hand.pinch(doing.middle, between(a, b), Math.max(1, distance(a, b)) / doing.apart);
	}
	/** A finger left a pinch: with one more on the board it stays a pinch that waits; the last one ends it. */
	#lift(): void {
		if (this.#fingers.size > 1) return this.#startPinch();
		if (this.#fingers.size > 0) return;
		this.#doing = { what: 'nothing' };
		this.#hand.settle();
	}
	#tap(press: Press): void {
		const last = this.#lastTap;
		const isDouble = last !== null && press.time - last.time < double.time && distance(press, last) < double.apart;
		this.#lastTap = isDouble ? null : press;
		this.#hand.tap(press, isDouble ? 2 : 1);
	}
}
