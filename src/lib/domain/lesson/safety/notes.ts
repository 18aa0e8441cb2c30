import { defer } from '../../checklist';
import { rules } from '../../shared/rules';
import type { TeacherNotes } from '../types';

export const safetyNotes: TeacherNotes = {
	aim: 'Learners can say of a job whether it is theirs, a licensed electrician’s, the utility’s, or nobody’s, and why.',
	misconceptions: [
		{
			belief: 'Twelve volts can do no harm.',
			answer: `They hardly shock, but ${rules['supply.secondary'].figures.amps} A through a bad joint make enough heat for a fire. Hence unplugged, always.`
		},
		{
			belief: 'With the breaker off, anybody may change a receptacle.',
			answer:
				'Whether it is dead, and whether it is safe afterwards, takes training and tests. Mains is a licensed electrician’s.'
		},
		{
			belief: 'The dig-notice service marks everything in the ground.',
			answer:
				'It marks the utilities’ lines. Irrigation, gas to a grill or an old lighting cable are private: you find those.'
		},
		{
			belief: 'If cable is buried at all, it is safe.',
			answer: `A spade goes deeper than one thinks: ${rules['cable.depth'].says}`
		}
	],
	curriculum: ['electrical safety', 'reading rules and standards', 'current and heat'],
	course: [
		{ minutes: 1, words: 'Read the screen. Ask who has seen painted marks or little flags on a lawn, and why.' },
		{ minutes: 1, words: 'Everyone predicts who fits the receptacle, with a reason.' },
		{ minutes: 1, words: 'Reveal, and the one sum: 25 A at 12 V.' },
		{ minutes: 2, words: 'Go through the jobs with the slider; the class calls who may do each before it shows.' }
	],
	cautions: [
		'“You” is the householder. Learners watch or help with an adult; nothing of this lesson is tried out in class.',
		'Nothing in class is connected to mains, opened or dug.',
		defer.code,
		defer.electrician
	]
};
