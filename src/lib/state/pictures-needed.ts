import type { Yard } from '../domain/yard';
import type { History } from './history';

/** Names of the pictures that a yard, or any step of its undo or redo that can still be taken, would ask for. */
export function picturesNeeded({ now, past, future }: History<Yard>): Set<string> {
	const needed = new Set<string>();
	const note = ({ underlay }: Yard) => underlay && needed.add(underlay.picture);
	note(now);
	let state: Yard | null = now;
	for (const step of past.toReversed()) {
		state = step.back(state);
		if (!state) break;
		note(state);
	}
	state = now;
	for (const step of future) {
		state = step.forth(state);
		if (!state) break;
		note(state);
	}
	return needed;
}
