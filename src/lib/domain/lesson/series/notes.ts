import type { TeacherNotes } from '../types';

/** Common practice, no source. */
export const seriesNotes: TeacherNotes = {
	aim: 'Lamps in parallel each have the whole volts; lamps in series share them. So garden lamps hang in parallel.',
	misconceptions: [
		{
			belief: 'The first lamp in series uses up current, so the next gets less.',
			answer: 'Cover the figures and ask how many amps come back. One current goes round; what is shared is the volts.'
		},
		{
			belief: 'Three lamps on one supply must each be dimmer, however they are connected.',
			answer: 'Show the parallel picture again: the volts stay, the amps add up. The supply pays, not the lamp.'
		},
		{
			belief: 'A cable with lamps along it, one after another, is a series circuit.',
			answer: 'Trace a finger along both conductors: each lamp bridges them. It looks like a row and is parallel.'
		}
	],
	curriculum: ['Ohm’s law', 'series and parallel circuits', 'power = volts × amps'],
	course: [
		{ minutes: 1, words: 'Show the lamps in parallel; everyone writes a prediction and a reason.' },
		{ minutes: 1, words: 'Hands up for each answer; let two neighbours with different answers talk.' },
		{ minutes: 2, words: 'Reveal. Work out the ohms of one lamp, then the loop’s amps, then the volts.' },
		{ minutes: 1, words: 'Slide the number of lamps; ask for the volts before each step.' }
	],
	cautions: [
		'If you show it with real lamps: a 12 V supply with its own plug, unplugged while anything is connected or moved.',
		'Filament lamps get hot enough to burn; let them cool before a hand goes near.',
		'Never open the supply or the transformer. Mains wiring is a licensed electrician’s.'
	]
};
