import type { TeacherNotes } from '../types';

export const notes: TeacherNotes = {
	aim: 'Learners give a place by along and out, find the distance across by Pythagoras, and use it to check a right angle.',
	misconceptions: [
		{
			belief: 'The way across is along and out added together.',
			answer:
				'Let two learners walk it: one round the corner, one straight. The straight way is shorter than the two sides, and longer than either.'
		},
		{
			belief: 'If both tapes are read with care, the place is right.',
			answer:
				'A tape that leans reads the same number. Swing a string about a nail: every place on the arc is as far out along the string.'
		},
		{
			belief: 'Out is always in front of the house.',
			answer: 'Behind the line of the front, out is negative: the number line goes on the other way.'
		}
	],
	curriculum: ['Pythagoras’ theorem', 'coordinates, negative numbers', 'scale drawing', 'sine and cosine (the slider)'],
	course: [
		{ minutes: 1, words: 'Show the scene. Name the base line (the front), along and out.' },
		{ minutes: 1, words: 'Each writes down a choice and one reason. No calculator yet.' },
		{ minutes: 1, words: 'Reveal. Read the working aloud, short sides first.' },
		{ minutes: 2, words: 'Lean the tape with the slider. Ask what the third tape tells that the first two cannot.' }
	],
	cautions: ['With real tapes outdoors: stay off the street and the drive, and look up before walking backwards.']
};
