import type { TeacherNotes } from '../types';

export const sensorNotes: TeacherNotes = {
	aim: 'Learners link the light that a sensor gets to the height of the sun, and tell early minutes from wasted hours.',
	misconceptions: [
		{
			belief: 'A sensor knows what time dusk is.',
			answer: 'It only measures the light that falls on it. Cover one with a hand: it takes that for night.'
		},
		{
			belief: 'A tenth of the light comes ten times as early.',
			answer:
				'At dusk the light falls by the same factor every few minutes. Halve 160 again and again: how often, to 16?'
		},
		{
			belief: 'The sun sinks equally fast all year.',
			answer: 'Its path meets the horizon at a flatter slant around midsummer and far from the equator.'
		}
	],
	curriculum: ['ratio', 'halving and doubling', 'angles and the sun’s path', 'time differences'],
	course: [
		{ minutes: 1, words: 'Read the curve together: when do the lamps come on this month?' },
		{ minutes: 1, words: 'Everyone predicts and writes one reason; show of hands.' },
		{ minutes: 2, words: 'Reveal. Work out 16 ÷ 0.1, then follow the working from the sun’s height to minutes.' },
		{ minutes: 1, words: 'Move the slider down to 2 %. Where in a garden would a sensor see so little?' }
	],
	cautions: ['Nobody looks into the sun, not even near the horizon or through dark glass.']
};
