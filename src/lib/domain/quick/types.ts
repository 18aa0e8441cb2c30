/** The quick survey of the counter: a dozen picks, from which a whole yard of usual shape is made. Lengths in metres. */
import type { Yard } from '../yard';

export type Shape = 'straight' | 'bent' | 'corner' | 'deep';
export type KeepClear = 'pool' | 'neighbour' | 'street-lamp' | 'drive-crossing';
export interface QuickAnswers {
	units: 'feet' | 'metres';
	/** Of the walk from street or drive to the door; 0: no walk to light. */
	walk: number;
	/** Of the drive's edge to mark; 0: none. */
	drive: number;
	/** Trees to light, by how wide their crowns are: about 3, 6 and 10 m. */
	trees: { small: number; medium: number; large: number };
	/** Of house wall to wash; 0: none. */
	wall: number;
	/** From the receptacle to the first light. */
	receptacle: number;
	shape: Shape;
	clear: KeepClear[];
	/** 12 V halogen lamps that the customer has, and of how many watts. */
	halogens: { count: number; watts: number } | null;
	/** A transformer and cable that the customer has. */
	transformer: number | null;
	cable: { size: number; metres: number } | null;
	lamp: 'led' | 'halogen';
}
export interface QuickAssumption {
	/** Path of the yard's answer that was made up. */
	path: string;
	/** One sentence: what was taken, and what follows if it is otherwise. */
	words: string;
}
export interface QuickYard {
	yard: Yard;
	assumptions: QuickAssumption[];
}
