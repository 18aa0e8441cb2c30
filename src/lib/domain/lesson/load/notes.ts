import type { TeacherNotes } from '../types';

/** Common practice, no source. */
export const loadNotes: TeacherNotes = {
	aim: 'A transformer is filled by volt-amperes, and for hours on end only to four fifths. Learners count lamps by that.',
	misconceptions: [
		{
			belief: 'The watts on the lamp are what the transformer feels.',
			answer:
				'Watts are what is used. An LED lamp draws its amps in gulps; the transformer carries all of the amps, so count VA.'
		},
		{
			belief: 'A label of so many VA means it may give that all night.',
			answer: 'Hours on end it may give four fifths. Ask where the rest goes: heat has time to build up.'
		},
		{
			belief: 'A bigger transformer makes the lamps brighter.',
			answer: 'The tap sets the volts; the rating only says how much it may carry.'
		}
	],
	curriculum: ['power = volts × amps', 'power factor', 'percentages', 'inequalities'],
	course: [
		{ minutes: 1, words: 'Show both labels. Everyone writes a number of lamps and how they got it.' },
		{ minutes: 1, words: 'Collect the numbers; ask each group which label they used.' },
		{ minutes: 2, words: 'Reveal. Go from watts to volt-amperes, from the rating to four fifths, then divide.' },
		{ minutes: 1, words: 'Slide the number of lamps; watch which limit breaks first.' }
	],
	cautions: [
		'Read labels on an unplugged transformer. Never open it: there is mains inside, also a while after it is unplugged.',
		'A transformer that is too hot to touch is overloaded or shut in: unplug it and leave it.',
		'Plugs, receptacles and anything behind them are a licensed electrician’s work.'
	]
};
