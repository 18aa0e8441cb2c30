import type { Question } from '../types';

export const place: Question[] = [
	{
		id: 'units',
		chapter: 'place',
		title: () => 'How do you measure, and what is this yard called?',
		hint: 'Lengths are read back in these units. You can still type either kind anywhere: 12 ft 6 in or 3.8 m.',
		fields: [
			{
				kind: 'choice',
				path: 'place.units',
				label: 'Units',
				options: [
					{ value: 'feet', label: 'Feet and inches' },
					{ value: 'metres', label: 'Metres' }
				]
			},
			{
				kind: 'text',
				path: 'name',
				label: 'Name of the yard',
				help: 'For the title of the drawing and the file.',
				maxLength: 60,
				optional: true
			}
		]
	},
	{
		id: 'where',
		chapter: 'place',
		title: () => 'Where on earth is the yard?',
		hint: 'The sun sets by latitude and longitude, and the clock by the time zone. Nothing you type leaves this device.',
		fields: [
			{
				kind: 'place',
				path: 'place.location',
				label: 'Place',
				unsure: 'a middle latitude is taken; the hours are then rough'
			}
		]
	},
	{
		id: 'facing',
		chapter: 'place',
		title: () => 'Which way does the front of the house face?',
		hint: 'Stand with your back to the front door and read a compass. It turns the north mark and tells where evening shade falls on the photocell.',
		words: ['photocell'],
		fields: [{ kind: 'bearing', path: 'place.faces', label: 'The front faces', unsure: 'south is taken' }]
	},
	{
		id: 'surroundings',
		chapter: 'place',
		title: () => 'How dark is the neighbourhood at night?',
		hint: 'The darker it is round about, the less light a wall or a walk needs, and the further it is seen.',
		fields: [
			{
				kind: 'choice',
				path: 'place.surroundings',
				label: 'Surroundings',
				unsure: 'a suburb is taken',
				options: [
					{ value: 'rural', label: 'Dark', help: 'Country: no street lamps, many stars' },
					{ value: 'suburb', label: 'In between', help: 'Some street lamps, quiet windows' },
					{ value: 'town', label: 'Bright', help: 'Town: street lamps all along, lit shop fronts' }
				]
			}
		]
	}
];
