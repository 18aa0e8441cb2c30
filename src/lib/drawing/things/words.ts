/** What each thing on the drawing is called. */
import type { Technique } from '../../domain/placement';
import { capital, type Yard } from '../../domain/yard';
import type { DrawnThing, ThingKind } from './types';

type Water = NonNullable<Yard['spots']['water']>[number]['kind'];
type Light = NonNullable<Yard['spots']['lights']>[number]['kind'];

export const waterWords: Readonly<Record<Water, string>> = {
	pond: 'Pond',
	pool: 'Swimming pool',
	spa: 'Spa',
	fountain: 'Fountain'
};
export const lightWords: Readonly<Record<Light, string>> = {
	'street-lamp': 'Street lamp',
	'porch-light': 'Porch light',
	other: 'Existing light'
};
export const openingWords = { door: 'Door', window: 'Window', garage: 'Garage door' } as const;
export const fixtureWords: Readonly<Record<Technique, string>> = {
	uplight: 'Uplight',
	wash: 'Wall wash',
	graze: 'Grazing light',
	path: 'Path light',
	step: 'Step light',
	drive: 'Drive light',
	area: 'Light for a seat or bed',
	number: 'Light for the number'
};
/** Headings of the groups of a list, in the order of the drawing. */
export const groupWords: Readonly<Record<ThingKind, string>> = {
	section: 'Parts of the front',
	opening: 'Doors and windows',
	porch: 'Porches',
	tree: 'Trees',
	walk: 'Walks',
	drive: 'Drives',
	steps: 'Steps',
	bed: 'Beds',
	paved: 'Paved areas',
	seating: 'Seating places',
	water: 'Water',
	light: 'Lights that are there',
	wall: 'Garden walls',
	number: 'House numbers and signs',
	receptacle: 'Receptacle',
	transformer: 'Transformer',
	sensor: 'Dusk sensor',
	fixture: 'Lights of the plan',
	run: 'Cable runs'
};
export const kindOrder = Object.keys(groupWords) as ThingKind[];

/** Its own name, or its kind, with a number where there are several. */
export function nameOr(own: string | undefined, kindWord: string, index: number, count: number): string {
	const name = own?.trim() ?? '';
	if (name !== '') return name;
	return count > 1 ? `${kindWord} ${index + 1}` : kindWord;
}

/** `Bend 2`, by the place of a point in a line of so many. */
export function pointWords(index: number, count: number, closed: boolean): string {
	if (closed) return `Corner ${index + 1}`;
	if (index === 0) return 'First point';
	return index === count - 1 ? 'Last point' : `Bend ${index}`;
}

type Named = Pick<DrawnThing, 'kindWord' | 'label' | 'name' | 'at' | 'line' | 'closed' | 'handles' | 'fromEdges'>;
/** Kind, label, name and place in one sentence, for those who hear the drawing. */
export function saidOf(thing: Named): string {
	const { kindWord, label, name } = thing;
	const kind = label ? `${kindWord} ${label}` : kindWord;
	// A name that begins with its kind says it already: `Path light, front walk`, `Bed 2`, `street lamp`.
	const begins = name.toLowerCase().startsWith(kindWord.toLowerCase());
	const own = begins ? name.slice(kindWord.length) : `, ${name}`;
	const who = `${kind}${own}`;
	return `${capital(who)}: ${placeWords(thing)}.`;
}
/** Where it is, or begins: `3 ft left of the edge of the front walk, 12 ft out from the house front`. */
export function placeWords({
	at,
	line,
	closed,
	handles,
	fromEdges
}: Omit<Named, 'kindWord' | 'label' | 'name'>): string {
	if (!at && !line) return 'not on the drawing yet';
	const where = fromEdges.map(({ words }) => words).join(', ');
	if (at || handles.length === 0) return where;
	const points = closed ? `${handles.length} corners` : handles.length > 2 ? `${handles.length} points` : '';
	return [points, closed ? `the first ${where}` : `begins ${where}`].filter(Boolean).join(', ');
}
