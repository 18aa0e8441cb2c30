/** Pointers, fingers and the wheel of a board's element, handed on in px from its upper left corner. */
import type { Attachment } from 'svelte/attachments';
import type { Gesture, Press } from './gesture';
import { wheelFactor } from './keys';
import type { Point } from './types';

export interface Listening<G> {
	gesture: Gesture<G>;
	/** A gesture runs, or is over. */
	busy: (isBusy: boolean) => void;
	/** Closer or wider by a factor about a point, px. False: it can go no further, and the page scrolls. */
	wheel: (factor: number, about: Point, isHeld: boolean) => boolean;
}
/** ms without a turn after which the wheel is at rest. */
const restAfter = 140;

const placeOf = (node: HTMLElement, event: MouseEvent): Point => {
	const box = node.getBoundingClientRect();
	return { x: event.clientX - box.left - node.clientLeft, y: event.clientY - box.top - node.clientTop };
};
const pressOf = (node: HTMLElement, event: PointerEvent): Press => ({
	...placeOf(node, event),
	id: event.pointerId,
	touch: event.pointerType === 'touch',
	time: event.timeStamp
});
/** A button that lies over the board answers for itself. */
const isOwn = (event: Event): boolean => event.target instanceof Element && event.target.closest('.over') !== null;

/** What listens on the board. A wheel turn counts while Ctrl is held or the focus is on the board; else it is the page's. */
export function listening<G>({ gesture, busy, wheel }: Listening<G>): Attachment<HTMLElement> {
	return (node) => {
		let rest: ReturnType<typeof setTimeout> | undefined;
		const stops: (() => void)[] = [];
		// Not passive: what the board uses is kept from scrolling the page.
		const on = <K extends keyof HTMLElementEventMap>(name: K, run: (event: HTMLElementEventMap[K]) => void) => {
			node.addEventListener(name, run, { passive: false });
			stops.push(() => node.removeEventListener(name, run));
		};
		const after = () => busy(gesture.isBusy);
		const keep = (event: TouchEvent) => {
			if (gesture.owns && event.cancelable) event.preventDefault();
		};
		on('pointerdown', (event) => {
			if (event.button === 0 && !isOwn(event)) gesture.down(pressOf(node, event));
			after();
		});
		on('pointermove', (event) => {
			gesture.move(pressOf(node, event));
			// Not at the press: a click would then go to the board whatever was pressed in it.
			if (gesture.isBusy && event.buttons > 0 && !node.hasPointerCapture(event.pointerId))
				node.setPointerCapture(event.pointerId);
			after();
		});
		on('pointerup', (event) => {
			gesture.up(pressOf(node, event));
			after();
		});
		on('pointercancel', (event) => {
			gesture.cancel(event.pointerId);
			after();
		});
		on('pointerleave', (event) => gesture.leave(event.pointerType === 'touch'));
		on('touchstart', keep);
		on('touchmove', keep);
		// A long press on a phone would otherwise open a menu over the glass.
		on('contextmenu', (event) => {
			if (gesture.isBusy) event.preventDefault();
		});
		on('wheel', (event) => {
			if (!event.ctrlKey && !node.contains(document.activeElement)) return;
			if (!wheel(wheelFactor(event), placeOf(node, event), event.ctrlKey)) return;
			event.preventDefault();
			busy(true);
			clearTimeout(rest);
			rest = setTimeout(after, restAfter);
		});
		return () => {
			clearTimeout(rest);
			for (const stop of stops) stop();
		};
	};
}
