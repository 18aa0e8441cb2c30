import type { TeacherNotes } from '../types';

/** Common practice, no source. */
export const dropNotes: TeacherNotes = {
	aim: 'Volts lost are ohms times amps. Thicker cable, a shorter way and fewer amps each save some; learners compare them in numbers.',
	misconceptions: [
		{
			belief: 'The volts are lost in the lamps, so the first lamps use them up.',
			answer:
				'Point at the cable: each stretch loses its own ohms times what flows through it. The first stretch carries all.'
		},
		{
			belief: 'Length counts once.',
			answer: 'Trace the current out and back with two fingers. Both conductors have ohms, so twice the length.'
		},
		{
			belief: 'A tenth fewer volts is a tenth less light.',
			answer:
				'Not with a filament: show the light beside the volts. An LED lamp keeps its light and takes more amps instead.'
		}
	],
	curriculum: ['Ohm’s law', 'resistance of a wire', 'series and parallel circuits', 'percentages', 'powers'],
	course: [
		{ minutes: 1, words: 'Show the run. Ask where volts go missing and which stretch carries the most amps.' },
		{ minutes: 1, words: 'Everyone picks one cure on paper and writes why.' },
		{ minutes: 2, words: 'Reveal; work out one stretch together, then compare the three cures in volts.' },
		{ minutes: 1, words: 'Slide the cable’s size; compare the filament lamp with the LED lamp.' }
	],
	cautions: [
		'If you measure on real lamps: 12 V only, unplugged while a lead is moved, and no bare ends that can touch.',
		'Do not bridge the two conductors to show a short: thin cable on a strong supply gets hot at once.',
		'Never open the transformer. Anything on the mains side is a licensed electrician’s.'
	]
};
