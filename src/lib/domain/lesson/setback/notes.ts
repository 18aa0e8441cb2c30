import type { TeacherNotes } from '../types';

export const notes: TeacherNotes = {
	aim: 'Learners tell by radius and distance whether a place lies inside an arc, and where a stake goes for a given setback and head.',
	misconceptions: [
		{
			belief: 'What stands clear of the drive’s edge is clear of the cars on it.',
			answer:
				'Along the straight, yes. Where the car turns in, its wheels cut the corner. Roll a toy car round a book’s corner: the rear wheel cuts closer than the front one.'
		},
		{
			belief: 'The nearer to the street, the worse.',
			answer:
				'C is nearly as near to the street as A and stays whole, since it stands further out: the arc has run out there.'
		},
		{
			belief: 'The setback is measured to the stake.',
			answer:
				'It is measured to the nearest part of the lamp. The head is wider than the stake by half its diameter on each side.'
		}
	],
	curriculum: ['circle: radius and arc', 'Pythagoras’ theorem', 'inequalities', 'scale drawing'],
	course: [
		{ minutes: 1, words: 'Show the scene. Let a learner trace a car’s way in with a finger.' },
		{ minutes: 1, words: 'Each writes down a choice and one reason.' },
		{ minutes: 1, words: 'Reveal. Find the arc’s centre: one radius from the edge and one from the street.' },
		{
			minutes: 2,
			words: 'Widen the arc with the slider, from a small car to a long van. Ask which lamp goes next, and why.'
		}
	],
	cautions: ['Measure on paper or in a school yard, not at a drive or a street in use.']
};
