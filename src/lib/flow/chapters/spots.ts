import { gardenWallIsLit } from '../conditions';
import { finishes, levels, textures, yesNo } from '../options';
import type { Question } from '../types';

export const spots: Question[] = [
	{
		id: 'beds',
		chapter: 'spots',
		title: () => 'Which planting beds are there?',
		hint: 'In a bed a fixture stands on a stake and the cable is quick to bury. Beds along the house and the walks matter most.',
		words: ['fixture'],
		fields: [
			{
				kind: 'items',
				path: 'spots.beds',
				label: 'Beds',
				add: 'Add a bed',
				none: 'There are no beds',
				prefix: 'bed',
				suggestions: ['bed under the windows', 'bed by the walk', 'round bed']
			}
		]
	},
	{
		id: 'bed-outline',
		chapter: 'spots',
		each: 'spots.beds',
		title: (name) => `What is the outline of the ${name}, and should it be lit?`,
		hint: 'Its corners in order, going round once. Three points are enough for a corner bed.',
		fields: [
			{ kind: 'line', path: '@.outline', label: 'Corners of the bed', least: 3, closed: true },
			{ kind: 'choice', path: '@.light', label: 'Light it', options: levels, optional: true, usual: 'none' }
		]
	},
	{
		id: 'paved',
		chapter: 'spots',
		title: () => 'What else is paved?',
		hint: 'An apron before the garage, a patio, a place to park: no light stands there, and cable goes round it. Walks and drives you have told already.',
		fields: [
			{
				kind: 'items',
				path: 'spots.paved',
				label: 'Paved areas',
				add: 'Add a paved area',
				none: 'Nothing else is paved',
				prefix: 'paved',
				suggestions: ['garage apron', 'patio', 'parking place']
			}
		]
	},
	{
		id: 'paved-outline',
		chapter: 'spots',
		each: 'spots.paved',
		title: (name) => `What is the outline of the ${name}?`,
		hint: 'Its corners in order, going round once.',
		fields: [
			{ kind: 'line', path: '@.outline', label: 'Corners of the paving', least: 3, closed: true },
			{
				kind: 'choice',
				path: '@.cars',
				label: 'Cars drive or stand on it',
				help: 'Then lights stand further off.',
				options: yesNo
			}
		]
	},
	{
		id: 'seating',
		chapter: 'spots',
		title: () => 'Where do people sit out in the evening?',
		hint: 'A bench, a circle of chairs, a table: a little light near it, and no glare for those who sit.',
		words: ['glare'],
		fields: [
			{
				kind: 'items',
				path: 'spots.seating',
				label: 'Seating places',
				add: 'Add a seating place',
				none: 'Nowhere in this yard',
				prefix: 'seat',
				suggestions: ['bench', 'seating circle', 'table']
			}
		]
	},
	{
		id: 'seating-place',
		chapter: 'spots',
		each: 'spots.seating',
		title: (name) => `Where is the ${name}, and should it be lit?`,
		hint: 'To its middle: so far along the base line, so far out towards the street.',
		words: ['base line'],
		fields: [
			{ kind: 'point', path: '@.at', label: 'Middle of it' },
			{
				kind: 'length',
				path: '@.across',
				label: 'Across',
				min: 0.5,
				max: 20,
				example: '8 ft',
				unsure: 'room for four chairs is taken'
			},
			{ kind: 'choice', path: '@.light', label: 'Light it', options: levels }
		]
	},
	{
		id: 'water',
		chapter: 'spots',
		title: () => 'Is there water in the yard?',
		hint: 'Fixtures and the transformer stay 10 ft (3.05 m) clear of a pool, a spa or a fountain unless your local code says otherwise.',
		words: ['fixture', 'transformer'],
		fields: [
			{
				kind: 'rows',
				path: 'spots.water',
				label: 'Water',
				add: 'Add water',
				none: 'There is none',
				prefix: 'water',
				columns: [
					{ kind: 'text', path: 'name', label: 'Name', maxLength: 60 },
					{
						kind: 'choice',
						path: 'kind',
						label: 'Kind',
						options: [
							{ value: 'pond', label: 'Pond' },
							{ value: 'pool', label: 'Swimming pool' },
							{ value: 'spa', label: 'Spa or hot tub' },
							{ value: 'fountain', label: 'Fountain' }
						]
					}
				]
			}
		]
	},
	{
		id: 'water-place',
		chapter: 'spots',
		each: 'spots.water',
		title: (name) => `Where is the ${name}, and how big?`,
		hint: 'To its middle, then its size at the water’s edge. That edge decides where nothing electric may stand.',
		fields: [
			{ kind: 'point', path: '@.at', label: 'Middle of it' },
			{
				kind: 'length',
				path: '@.length',
				label: 'Along the front',
				min: 0.3,
				max: 60,
				example: '10 ft',
				unsure: 'a usual size is taken, and wants checking'
			},
			{
				kind: 'length',
				path: '@.width',
				label: 'Out towards the street',
				min: 0.3,
				max: 60,
				example: '6 ft',
				unsure: 'a usual size is taken, and wants checking'
			}
		]
	},
	{
		id: 'lights',
		chapter: 'spots',
		title: () => 'Which lights are there already?',
		hint: 'A street lamp or a porch light that already does a job is counted, not doubled. It also tells where the photocell may not hang.',
		words: ['photocell'],
		fields: [
			{
				kind: 'rows',
				path: 'spots.lights',
				label: 'Lights that are there',
				add: 'Add a light',
				none: 'There are none',
				prefix: 'light',
				columns: [
					{ kind: 'text', path: 'name', label: 'Name', maxLength: 60 },
					{
						kind: 'choice',
						path: 'kind',
						label: 'Kind',
						options: [
							{ value: 'street-lamp', label: 'Street lamp' },
							{ value: 'porch-light', label: 'Porch light' },
							{ value: 'other', label: 'Another light' }
						]
					}
				]
			}
		]
	},
	{
		id: 'light-place',
		chapter: 'spots',
		each: 'spots.lights',
		title: (name) => `Where is the ${name}, and how far does it reach?`,
		hint: 'Go out after dark and walk away from it until you no longer see your own step.',
		fields: [
			{ kind: 'point', path: '@.at', label: 'Where it is' },
			{
				kind: 'length',
				path: '@.height',
				label: 'Height of the lamp',
				min: 0.2,
				max: 20,
				example: '8 ft',
				unsure: 'a usual height for its kind is taken'
			},
			{
				kind: 'length',
				path: '@.reach',
				label: 'Lights as far as',
				min: 0.5,
				max: 40,
				example: '10 ft',
				unsure: 'a usual reach for its kind is taken'
			}
		]
	},
	{
		id: 'garden-walls',
		chapter: 'spots',
		title: () => 'Are there garden walls worth lighting?',
		hint: 'A free-standing wall of stone or brick, or a pier: rough faces look their best in a graze. The house’s own walls were asked before.',
		words: ['graze'],
		fields: [
			{
				kind: 'items',
				path: 'spots.walls',
				label: 'Garden walls',
				add: 'Add a wall',
				none: 'There are none',
				prefix: 'wall',
				suggestions: ['stone wall', 'brick wall', 'retaining wall']
			}
		]
	},
	{
		id: 'garden-wall-ends',
		chapter: 'spots',
		each: 'spots.walls',
		title: (name) => `Where does the ${name} begin and end?`,
		hint: 'Stand facing the side to be lit: its left end, then its right end.',
		fields: [
			{ kind: 'point', path: '@.from', label: 'Left end' },
			{ kind: 'point', path: '@.to', label: 'Right end' }
		]
	},
	{
		id: 'garden-wall-wish',
		chapter: 'spots',
		each: 'spots.walls',
		title: (name) => `How strongly should the ${name} be lit?`,
		hint: 'Soft is enough for most: a lit wall is a large surface, and the eye finds it.',
		fields: [{ kind: 'choice', path: '@.light', label: 'Light it', options: levels }]
	},
	{
		id: 'garden-wall-face',
		chapter: 'spots',
		each: 'spots.walls',
		title: (name) => `How high is the ${name}, and what is it made of?`,
		hint: 'Height from the ground to the coping. Rough stone or brick takes a graze, light from close by that shows its texture.',
		words: ['coping', 'graze'],
		decidedBy: 'garden-wall-wish',
		when: gardenWallIsLit,
		fields: [
			{
				kind: 'length',
				path: '@.height',
				label: 'Height',
				min: 0.3,
				max: 8,
				example: '4 ft',
				unsure: 'a chest-high wall is taken'
			},
			{ kind: 'choice', path: '@.finish', label: 'Finish', options: finishes, unsure: 'a medium finish is taken' },
			{ kind: 'choice', path: '@.texture', label: 'Texture', options: textures, unsure: 'a rough wall is taken' }
		]
	},
	{
		id: 'numbers',
		chapter: 'spots',
		title: () => 'Should a house number or a sign be found after dark?',
		hint: 'Visitors and ambulance crews look for it.',
		fields: [
			{
				kind: 'items',
				path: 'spots.numbers',
				label: 'House numbers and signs',
				add: 'Add one',
				none: 'There is none to light',
				prefix: 'number',
				suggestions: ['number by the door', 'number on the gate post', 'sign at the drive']
			}
		]
	},
	{
		id: 'number-place',
		chapter: 'spots',
		each: 'spots.numbers',
		title: (name) => `Where is the ${name}, and does it want a light?`,
		hint: 'So far along the base line from the left corner of the house, so far out towards the street.',
		words: ['base line'],
		fields: [
			{ kind: 'point', path: '@.at', label: 'Where it hangs' },
			{
				kind: 'choice',
				path: '@.kind',
				label: 'It is',
				options: [
					{ value: 'number', label: 'A number' },
					{ value: 'sign', label: 'A sign' }
				],
				optional: true,
				usual: 'number'
			},
			{
				kind: 'length',
				path: '@.width',
				label: 'Width of the sign',
				min: 0.2,
				max: 4,
				example: '2 ft',
				unsure: 'a plaque is taken',
				when: (yard, item) => yard.spots.numbers?.find(({ id }) => id === item)?.kind === 'sign'
			},
			{ kind: 'choice', path: '@.light', label: 'Light it', options: yesNo }
		]
	}
];
