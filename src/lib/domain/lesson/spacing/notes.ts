import type { TeacherNotes } from '../types';

export const spacingNotes: TeacherNotes = {
	aim: 'Learners read a curve of light, work out an average and its ratio to the least, and see what each of them hides.',
	misconceptions: [
		{
			belief: 'If the average is right, the walk is right.',
			answer: 'Feet find the darkest spot. Cover the figure of the average and ask where one would stumble.'
		},
		{
			belief: 'One lamp in four fewer takes a quarter of the light everywhere.',
			answer: 'Under a lamp nothing changes. Midway both neighbours are further off; compare the two curves.'
		},
		{
			belief: '9 m with a light every 3 m takes 3 lights.',
			answer: 'Three gaps have four ends. Count fingers and the gaps between them.'
		}
	],
	curriculum: ['mean and least value', 'ratio', 'inverse square', 'reading a graph'],
	course: [
		{ minutes: 1, words: 'Read the screen. Who finds the darkest spot on the curve, and where is it on the walk?' },
		{ minutes: 1, words: 'Everyone predicts and writes one reason; show of hands.' },
		{ minutes: 2, words: 'Reveal. Redo average ÷ darkest, then the distance midway by Pythagoras.' },
		{ minutes: 1, words: 'Move the slider. At which spacing are both rules just kept with the fewest lights?' }
	],
	cautions: []
};
