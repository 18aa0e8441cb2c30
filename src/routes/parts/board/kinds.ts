/** Kinds of thing that can be added on the drawing: their words, and how many points make one. */
import type { Addable } from './edits-types';

export interface KindWords {
	kind: Addable;
	/** On its button. */
	word: string;
	/** In a sentence: `a tree`. */
	one: string;
	closed: boolean;
	/** Points that it takes at least, and at most. */
	least: number;
	most: number;
	/** Where the first point goes. */
	first: string;
}
/** `limits.linePoints` of the schema, said here so that the picker does not carry the schema. */
const mostPoints = 60;
const place = (kind: Addable, word: string, one: string, first: string): KindWords => ({
	kind,
	word,
	one,
	closed: false,
	least: 1,
	most: 1,
	first
});
const line = (kind: Addable, word: string, one: string, first: string, most = mostPoints): KindWords => ({
	kind,
	word,
	one,
	closed: false,
	least: 2,
	most,
	first
});
const outline = (kind: Addable, word: string, one: string): KindWords => ({
	kind,
	word,
	one,
	closed: true,
	least: 3,
	most: mostPoints,
	first: 'its first corner'
});

/** In the order of the picker: the yard, then what is in it, then the lights and what feeds them. */
export const kinds: readonly KindWords[] = [
	place('tree', 'Tree', 'a tree', 'its trunk'),
	line('walk', 'Walk', 'a walk', 'its middle where it begins, at the street or the gate'),
	line('drive', 'Drive', 'a drive', 'its middle where it begins, at the street'),
	outline('bed', 'Bed', 'a bed'),
	outline('paved', 'Paving', 'a paved area'),
	place('seating', 'Seating', 'a seating place', 'its middle'),
	place('water', 'Water', 'water', 'its middle'),
	line('wall', 'Garden wall', 'a garden wall', 'one end of it', 2),
	place('light', 'Existing light', 'an existing light', 'where it stands'),
	place('number', 'House number', 'a house number', 'where it hangs'),
	place('fixture', 'Path light', 'a path light', 'where it stands'),
	place('receptacle', 'Receptacle', 'the receptacle', 'where it is'),
	place('transformer', 'Transformer', 'the transformer', 'where it hangs'),
	place('sensor', 'Sensor', 'the sensor', 'where it hangs')
];
export const kindOf = (kind: Addable): KindWords => kinds.find((one) => one.kind === kind)!;

/** What to do next while one is being drawn with so many points set. */
export function nextWords(kind: KindWords, set: number): string {
	const capital = kind.one.charAt(0).toUpperCase() + kind.one.slice(1);
	if (set === 0) return `${capital}: point to ${kind.first}.`;
	const point = kind.closed ? 'corner' : 'point';
	const count = `${set} ${point}${set === 1 ? '' : 's'} set`;
	if (set < kind.least) return `${capital}: ${count}. Point to the next ${point}.`;
	return `${capital}: ${count}. Point to the next ${point}, or press Done.`;
}
