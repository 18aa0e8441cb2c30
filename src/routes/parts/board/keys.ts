/** What the keys do on the board. Letters but one are left to whoever listens for them. */
import type { Point } from '$lib/domain/shared/geometry';
import type { Units } from '$lib/domain/yard';
import { stepsOf } from './step';

export type KeyWish =
	/** The cross-hair, or what is held, by so many metres that way. */
	| { do: 'step'; way: Point; metres: number }
	/** To the thing that lies that way. */
	| { do: 'go'; way: Point }
	| { do: 'first' | 'last' | 'take' | 'set' | 'setDown' | 'remove' | 'back' | 'snap' };
export interface KeyState {
	/** A point is wanted: the keys move a cross-hair. */
	adding: boolean;
	/** A thing is held: the keys move it. */
	moving: boolean;
}
type Pressed = Pick<KeyboardEvent, 'key' | 'shiftKey' | 'ctrlKey' | 'metaKey' | 'altKey'>;

const ways: Readonly<Record<string, Point>> = {
	ArrowLeft: { x: -1, y: 0 },
	ArrowRight: { x: 1, y: 0 },
	ArrowUp: { x: 0, y: -1 },
	ArrowDown: { x: 0, y: 1 }
};
const strides: Readonly<Record<string, Point>> = {
	Home: { x: -1, y: 0 },
	End: { x: 1, y: 0 },
	PageUp: { x: 0, y: -1 },
	PageDown: { x: 0, y: 1 }
};
function wishWithPoint({ key, shiftKey }: Pressed, { moving }: KeyState, units: Units): KeyWish | null {
	const steps = stepsOf(units);
	const way = ways[key];
	if (way) return { do: 'step', way, metres: shiftKey ? steps.fine : steps.usual };
	const stride = strides[key];
	if (stride) return { do: 'step', way: stride, metres: steps.coarse };
	if (key === 'Enter' || key === ' ') return { do: moving ? 'setDown' : 'set' };
	return key === 's' || key === 'S' ? { do: 'snap' } : null;
}
function wishWithout({ key }: Pressed): KeyWish | null {
	const way = ways[key];
	if (way) return { do: 'go', way };
	if (key === 'Home') return { do: 'first' };
	if (key === 'End') return { do: 'last' };
	if (key === 'Enter' || key === ' ') return { do: 'take' };
	return null;
}

/** Null: the key is not the page's. Keys with Ctrl, Alt or the system's key never are. */
export function wishOf(event: Pressed, state: KeyState, units: Units): KeyWish | null {
	if (event.ctrlKey || event.metaKey || event.altKey) return null;
	if (event.key === 'Escape') return { do: 'back' };
	if (state.adding || state.moving) return wishWithPoint(event, state, units);
	if (event.key === 'Delete' || event.key === 'Backspace') return { do: 'remove' };
	return wishWithout(event);
}
