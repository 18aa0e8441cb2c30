import type { TeacherNotes } from '../types';

export const energyNotes: TeacherNotes = {
	aim: 'Learners work out kilowatt-hours and cost from watts and hours, and compare two ways to save.',
	misconceptions: [
		{
			belief: 'A kilowatt-hour is a power, “kilowatts per hour”.',
			answer: 'It is kilowatts times hours, an amount, like litres. Ask what a 1 kW heater uses in two hours.'
		},
		{
			belief: 'LED lamps use next to nothing, so the hours do not matter.',
			answer: 'Put the slider from 10 hours to 5: what the LED lamps take halves too.'
		},
		{
			belief: 'With the lights off, nothing is used.',
			answer: 'The transformer takes a few watts all year. Find it in the working: 8760 hours times its watts.'
		}
	],
	curriculum: ['energy and power', 'units and conversion', 'percentages', 'reading bar charts'],
	course: [
		{ minutes: 1, words: 'Read the screen together. Ask who knows what a kilowatt-hour costs at home.' },
		{ minutes: 1, words: 'Everyone predicts and writes one reason; show of hands.' },
		{ minutes: 2, words: 'Reveal, then the steps of the working: watts × hours ÷ 1000, and the price.' },
		{ minutes: 1, words: 'Move the hours. Where do LED lamps all night and halogen lamps for a short evening meet?' }
	],
	cautions: ['Lamps that have burned are hot for minutes. This lesson needs none: it is all on paper.']
};
