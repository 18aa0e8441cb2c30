import { walkIsLit } from '../conditions';
import { courses, crossingKinds } from '../options';
import type { Question } from '../types';

export const walks: Question[] = [
	{
		id: 'walks',
		chapter: 'walks',
		title: () => 'Which walks are there?',
		hint: 'Every path that people take to a door, and any paving that the cable may have to cross.',
		fields: [
			{
				kind: 'items',
				path: 'walks',
				label: 'Walks',
				add: 'Add a walk',
				none: 'There are no walks',
				prefix: 'walk',
				suggestions: ['front walk', 'side walk', 'garden path']
			}
		]
	},
	{
		id: 'walk-line',
		chapter: 'walks',
		each: 'walks',
		title: (name) => `What line does the ${name} take?`,
		hint: 'The middle of the walk, from the street or the gate to the house: its start, each bend, its end. Left and right are then as you walk home.',
		fields: [
			{ kind: 'line', path: '@.line', label: 'Middle of the walk', least: 2, closed: false },
			{
				kind: 'choice',
				path: '@.curved',
				label: 'Between those points it runs',
				options: courses
			}
		]
	},
	{
		id: 'walk-width',
		chapter: 'walks',
		each: 'walks',
		title: (name) => `How wide is the ${name}?`,
		hint: 'Edge to edge. A wide walk needs pools of light from both edges, a narrow one from one.',
		fields: [
			{
				kind: 'length',
				path: '@.width',
				label: 'Width',
				min: 0.3,
				max: 6,
				example: '4 ft',
				unsure: 'a usual front walk is taken'
			}
		]
	},
	{
		id: 'walk-lights',
		chapter: 'walks',
		each: 'walks',
		title: (name) => `Where may lights stand along the ${name}?`,
		hint: 'Path lights go first where a foot goes wrong: the entry, each bend, the head and foot of steps. Left and right as you walk home.',
		words: ['path light'],
		fields: [
			{
				kind: 'choice',
				path: '@.lights',
				label: 'Lights on',
				options: [
					{ value: 'either', label: 'Either side', help: 'Whichever serves best at each place' },
					{ value: 'left', label: 'The left side' },
					{ value: 'right', label: 'The right side' },
					{ value: 'both', label: 'Both sides' },
					{ value: 'none', label: 'No lights on this walk' }
				]
			},
			{
				kind: 'choice',
				path: '@.rail',
				label: 'Railing or hedge hard against its edge',
				help: 'No room for a path light there.',
				options: [
					{ value: 'none', label: 'Neither side' },
					{ value: 'left', label: 'Left' },
					{ value: 'right', label: 'Right' },
					{ value: 'both', label: 'Both sides' }
				],
				when: walkIsLit
			}
		]
	},
	{
		id: 'walk-steps',
		chapter: 'walks',
		each: 'walks',
		title: (name) => `Are there steps on the ${name}?`,
		hint: 'One line for each flight, measured along the walk from its street end to the foot of the flight. Each tread gets its share of a step light.',
		words: ['tread', 'step light'],
		fields: [
			{
				kind: 'rows',
				path: '@.steps',
				label: 'Flights of steps',
				add: 'Add a flight',
				none: 'There are no steps',
				prefix: 'flight',
				columns: [
					{ kind: 'length', path: 'at', label: 'Foot of the flight', min: 0, max: 500, example: '12 ft' },
					{ kind: 'count', path: 'treads', label: 'Treads', min: 1, max: 40 },
					{
						kind: 'length',
						path: 'going',
						label: 'Depth of a tread',
						min: 0.15,
						max: 2,
						example: '12 in',
						unsure: 'a usual tread is taken'
					}
				]
			}
		]
	},
	{
		id: 'walk-gates',
		chapter: 'walks',
		each: 'walks',
		title: (name) => `Is there a gate across the ${name}?`,
		hint: 'A light goes just before it, out of the way of its leaf. Measure along the walk from its street end.',
		fields: [
			{
				kind: 'rows',
				path: '@.gates',
				label: 'Gates',
				add: 'Add a gate',
				none: 'There is no gate',
				prefix: 'gate',
				columns: [{ kind: 'length', path: 'at', label: 'Along the walk', min: 0, max: 500, example: '3 ft' }]
			}
		]
	},
	{
		id: 'walk-crossings',
		chapter: 'walks',
		each: 'walks',
		title: (name) => `Where can a cable cross the ${name}?`,
		hint: 'Look for an empty pipe (a sleeve), or an expansion joint between slabs. Where there is neither, a bore under it is an answer too. Measure along the walk from its street end.',
		words: ['sleeve', 'expansion joint', 'bore'],
		fields: [
			{
				kind: 'rows',
				path: '@.crossings',
				label: 'Places to cross',
				add: 'Add a crossing',
				none: 'None that I know of',
				prefix: 'crossing',
				columns: [
					{ kind: 'length', path: 'at', label: 'Along the walk', min: 0, max: 500, example: '10 ft' },
					{ kind: 'choice', path: 'kind', label: 'What is there', options: crossingKinds }
				]
			}
		]
	}
];
