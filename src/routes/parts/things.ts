import type { Question } from '$lib/flow';

const things: Record<NonNullable<Question['each']>, string> = {
	trees: 'tree',
	walks: 'walk',
	drives: 'drive',
	'spots.beds': 'bed',
	'spots.paved': 'paved area',
	'spots.seating': 'seating place',
	'spots.water': 'water',
	'spots.lights': 'light',
	'spots.walls': 'wall',
	'spots.numbers': 'house number or sign'
};
/** What a question is asked for, when no item in particular is meant. */
export const thingOf = (question: Question): string => (question.each ? things[question.each] : '');
