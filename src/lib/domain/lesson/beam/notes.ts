import type { TeacherNotes } from '../types';

export const beamNotes: TeacherNotes = {
	aim: 'Learners work out the width of a beam from its angle and the light at a distance from the inverse square.',
	misconceptions: [
		{
			belief: 'Twice as far gives half the light.',
			answer:
				'Draw the patch on squared paper at both distances and count squares: four times as many for the same light.'
		},
		{
			belief: 'A beam has a sharp edge, and outside it is dark.',
			answer:
				'The edge is where half the intensity of the middle is left; light goes on beyond it. Look at the patch of a torch.'
		},
		{
			belief: 'A wider beam is a stronger lamp.',
			answer: 'The lumens stay the same; a wider beam spreads them over more wall, so the middle is dimmer.'
		}
	],
	curriculum: ['inverse square', 'trigonometry', 'scale drawing', 'squares and ratios'],
	course: [
		{ minutes: 1, words: 'Read the screen. With a torch: hold it near the board, then step back. What do you see?' },
		{ minutes: 1, words: 'Everyone predicts and writes one reason; show of hands.' },
		{ minutes: 2, words: 'Reveal. Redo the width with a tangent, then the light with the square of the distance.' },
		{ minutes: 1, words: 'Move the lamp to three times the nearest place: what should the light be? Check.' }
	],
	cautions: ['Nobody looks into the beam of a lamp or a torch, and nobody shines one at a face.']
};
