/** A step as it is kept: its label and how the yard's file changed, to the character. */
import { readYard, writeYard, type Yard } from '../../domain/yard';
import type { Step } from '../history';
import { backward, forward, spliceOf, type Splice } from './splice';

export interface Kept extends Splice {
	label: string;
}
export interface KeptList {
	/** Number of the last step done: numbers go on over reloads, so a step keeps its own. */
	at: number;
	/** The file of the yard that stands there. */
	text: string;
	/** Oldest first; the last has number `at`. */
	past: readonly Kept[];
	/** Nearest first; the first has number `at + 1`. */
	future: readonly Kept[];
}
/** The step from one file to the next. */
export const keptOf = (label: string, before: string, after: string): Kept => ({ label, ...spliceOf(before, after) });

const yardIn = (text: string | null): Yard | null => {
	if (text === null) return null;
	const read = readYard(text);
	return read.ok ? read.yard : null;
};
/** A step of the history from a kept one. It holds no yard: it reads one from the yard beside it when it is wanted. */
export function stepOf(kept: Kept, onUnreadable: () => void): Step<Yard> {
	const told = (yard: Yard | null) => {
		if (yard === null) onUnreadable();
		return yard;
	};
	return {
		label: kept.label,
		back: (after) => told(yardIn(backward(writeYard(after), kept))),
		forth: (before) => told(yardIn(forward(writeYard(before), kept)))
	};
}
