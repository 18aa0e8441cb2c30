/**
 * When the drawing is drawn anew while it is moved: only once its words would be too large or too small, or what is seen is mostly what
 * was not; rarely, and the more rarely the longer one drawing takes. At rest what was drawn is first shown where it now lies, and drawn anew after.
 */
import { tick, untrack } from 'svelte';
import { afterPaint } from '../../ui/after-paint.svelte';
import type { Viewport } from './types';

/** ms between two drawings while a gesture runs, and how many times its own time a drawing waits. */
const least = 80;
const share = 6;

/** So many times as large or as small, or moved by this share of its width: what was drawn will no longer do. */
const most = { scale: 2, moved: 0.6 };
function isSpent(drawn: Viewport, view: Viewport): boolean {
	const times = view.scale / drawn.scale;
	const moved = Math.hypot(view.centre.x - drawn.centre.x, view.centre.y - drawn.centre.y) * view.scale;
	return times > most.scale || times < 1 / most.scale || moved > most.moved * view.width;
}

const isSameSize = (a: Viewport, b: Viewport): boolean => a.width === b.width && a.height === b.height;

export class Redraw {
	/** What the drawing was drawn for. */
	drawnFor = $state.raw<Viewport | null>(null);
	#next: Viewport | null = null;
	#timer: ReturnType<typeof setTimeout> | null = null;
	#callOff: (() => void) | null = null;
	#last = -Infinity;
	#took = 0;

	/** Asks for a drawing of a viewport: at once where none of its size is there, at rest after the next frame, while busy when its time has come. */
	ask(view: Viewport, isBusy: boolean): void {
		this.#next = view;
		const drawn = untrack(() => this.drawnFor);
		if (drawn === null || !isSameSize(drawn, view)) return this.#draw();
		this.#callOff?.();
		this.#callOff = isBusy ? null : afterPaint(() => this.#draw());
		if (isBusy && isSpent(drawn, view))
			this.#timer ??= setTimeout(() => this.#draw(), Math.max(0, this.#last + this.#wait - performance.now()));
	}
	/** Nothing more is drawn: the board is gone. */
	stop(): void {
		if (this.#timer !== null) clearTimeout(this.#timer);
		this.#timer = null;
		this.#callOff?.();
		this.#callOff = null;
	}
	get #wait(): number {
		return Math.max(least, share * this.#took);
	}
	#draw(): void {
		this.stop();
		if (!this.#next || this.#next === untrack(() => this.drawnFor)) return;
		const start = performance.now();
		this.drawnFor = this.#next;
		void tick().then(() => {
			this.#last = performance.now();
			this.#took = this.#last - start;
		});
	}
}
