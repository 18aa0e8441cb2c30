/** All chapters and questions, in the order in which they are asked. */
import { drive } from './chapters/drive';
import { house } from './chapters/house';
import { place } from './chapters/place';
import { power } from './chapters/power';
import { spots } from './chapters/spots';
import { trees } from './chapters/trees';
import { walks } from './chapters/walks';
import type { Chapter, Field, Question } from './types';

export const chapters: readonly Chapter[] = [
	{ id: 'place', title: 'Place', about: 'Where the yard is, for the sun and the dark.' },
	{ id: 'house', title: 'House', about: 'Its walls, and which of them to light.' },
	{ id: 'trees', title: 'Trees', about: 'Where they stand, how big they are, which to light.' },
	{ id: 'walks', title: 'Walks', about: 'The way people take to the door.' },
	{ id: 'drive', title: 'Drive', about: 'Its edges, its mouth, and where a cable can cross.' },
	{
		id: 'spots',
		title: 'Other spots',
		about: 'Beds, seats, water, lights that are there, garden walls, the house number.'
	},
	{ id: 'power', title: 'Power', about: 'Where it comes from, when it is on, what it costs.' }
];
export const questions: readonly Question[] = [...place, ...house, ...trees, ...walks, ...drive, ...spots, ...power];

/** The field that asks for a path (`@.spread`, `house.depth`), or null. */
export const fieldOf = (path: string, each?: Question['each']): Field | null =>
	questions
		.filter((question) => question.each === each || !path.startsWith('@'))
		.flatMap((question) => question.fields)
		.find((field) => field.path === path) ?? null;
