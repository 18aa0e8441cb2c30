/** Every thing on the drawing as a person means it: picked, heard, listed, moved. Metres in the yard's frame. */
import type { Point } from '../../domain/shared/geometry';

export type ThingKind =
	| 'section'
	| 'opening'
	| 'porch'
	| 'tree'
	| 'walk'
	| 'drive'
	| 'steps'
	| 'bed'
	| 'paved'
	| 'seating'
	| 'water'
	| 'light'
	| 'wall'
	| 'number'
	| 'receptacle'
	| 'transformer'
	| 'sensor'
	| 'fixture'
	| 'run';

/** What of a thing can be taken hold of. `index` counts the points of a line or outline; a thing with one place has handle 0. */
export interface Handle {
	index: number;
	at: Point;
	/** `Where it stands`, `First point`, `Bend 2`, `Corner 3`. */
	words: string;
}
/** How far from a named edge. */
export interface FromEdge {
	/** `the left corner of the front`, `the house front`, `the edge of Front walk`. */
	edge: string;
	/** Metres. */
	distance: number;
	/** `12 ft 6 in right of the left corner of the front`. */
	words: string;
}
export interface Neighbour {
	key: string;
	/** `P2, 8 ft 1 in of cable on`. */
	words: string;
}
export interface DrawnThing {
	/** `tree/oak`, `fixture/walk-1/path-2`: kind and id. Unique on a drawing. */
	key: string;
	kind: ThingKind;
	id: string;
	/** As on the drawing, where it has one: `T1`. */
	label: string | null;
	/** `Tree`, `Path light`. */
	kindWord: string;
	/** Its own name, or the kind and a number. */
	name: string;
	/** Its whole accessible name: kind, label, name, place. */
	said: string;
	/** Where it stands, of a thing with a place. */
	at: Point | null;
	/** Of a line (open) or an outline (closed). */
	line: readonly Point[] | null;
	closed: boolean;
	/** How far it reaches round `at` or to each side of `line`, metres. */
	reach: number;
	/** Two named edges where it has a place; of a line, of its first point. */
	fromEdges: readonly FromEdge[];
	/** Before and after it on its run of cable. */
	neighbours: readonly Neighbour[];
	/** Empty when nothing of it can be moved here. */
	handles: readonly Handle[];
}
