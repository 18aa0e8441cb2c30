import type { TeacherNotes } from '../types';

export const notes: TeacherNotes = {
	aim: 'Learners find a distance in proportion between two known ones, and a lean and a beam angle by the arctangent.',
	misconceptions: [
		{
			belief: 'A light under the tips of the branches lights the whole crown.',
			answer:
				'From there the beam has to lie over to reach the middle. Draw the line: what is beyond the crown is sky, and then somebody’s eyes.'
		},
		{
			belief: 'Twice the canopy is twice the distance.',
			answer:
				'The line between the two figures does not start at nothing. Put both points on squared paper and read in between.'
		},
		{
			belief: 'A wider beam is always better.',
			answer:
				'The same light is spread thinner, and what passes the crown is lost. The narrowest beam that covers the crown is taken.'
		}
	],
	curriculum: ['linear interpolation', 'trigonometry: arctangent', 'ratio and proportion'],
	course: [
		{ minutes: 1, words: 'Show the scene. Point out bark, canopy and crown.' },
		{ minutes: 1, words: 'Each writes down a choice and one reason.' },
		{
			minutes: 1,
			words: 'Reveal. Read the proportion aloud: how far between the two canopies, so far between the two distances.'
		},
		{
			minutes: 2,
			words: 'Widen the canopy with the slider: distance, beam and number change at different places. Ask why.'
		}
	],
	cautions: [
		'Do not look into a bright lamp from near by, and let a hot one cool before a hand comes close.',
		'Inside the root zone, twelve times the trunk’s width, holes are dug by hand; call before digging where the law asks for it.'
	]
};
