import { finishes, floors, levels, textures, yesNo } from '../options';
import type { Question } from '../types';

export const house: Question[] = [
	{
		id: 'front',
		chapter: 'house',
		title: () => 'How wide is the front, part by part?',
		hint: 'Seen from the street, left to right: one line for each part that steps in or out, has eaves of its own or a gable. The front you start from is the base line that everything else is measured from.',
		words: ['base line', 'eaves', 'gable'],
		fields: [
			{
				kind: 'rows',
				path: 'house.sections',
				label: 'Parts of the front',
				add: 'Add a part',
				none: '',
				prefix: 'part',
				columns: [
					{ kind: 'length', path: 'width', label: 'Width', min: 0.5, max: 100, example: '24 ft' },
					{
						kind: 'length',
						path: 'out',
						label: 'Stands out',
						help: 'Towards the street; with a minus if it stands back.',
						min: -30,
						max: 30,
						example: '4 ft',
						optional: true
					},
					{
						kind: 'length',
						path: 'eaves',
						label: 'Eaves of its own',
						min: 1.8,
						max: 15,
						example: '17 ft',
						optional: true
					},
					{
						kind: 'length',
						path: 'gable',
						label: 'Point of its gable',
						help: 'Up from the ground.',
						min: 2,
						max: 20,
						example: '24 ft',
						optional: true
					},
					{ kind: 'choice', path: 'light', label: 'Light it', options: levels }
				]
			}
		]
	},
	{
		id: 'house-size',
		chapter: 'house',
		title: () => 'How deep and how high is the house?',
		hint: 'Depth runs from the front to the back wall. The eaves are where the roof begins: the height of wall there is to light.',
		words: ['eaves'],
		fields: [
			{
				kind: 'length',
				path: 'house.depth',
				label: 'Depth of the house',
				min: 2,
				max: 60,
				example: '30 ft',
				unsure: 'a usual depth is taken'
			},
			{
				kind: 'length',
				path: 'house.eaves',
				label: 'Height of the eaves',
				help: 'Count brick courses or siding boards on one course you can measure.',
				min: 1.8,
				max: 15,
				example: '9 ft',
				unsure: 'one storey is taken'
			}
		]
	},
	{
		id: 'house-face',
		chapter: 'house',
		title: () => 'What is the front made of?',
		hint: 'A dark wall gives back less light than a pale one. A rough wall can take a graze: light from close by that shows its texture.',
		words: ['graze'],
		fields: [
			{
				kind: 'choice',
				path: 'house.finish',
				label: 'Finish',
				options: finishes,
				unsure: 'a medium finish is taken'
			},
			{
				kind: 'choice',
				path: 'house.texture',
				label: 'Texture',
				options: textures,
				unsure: 'a smooth wall is taken'
			}
		]
	},
	{
		id: 'openings',
		chapter: 'house',
		title: () => 'Where are the doors and windows?',
		hint: 'No light goes in front of a door or under a window that it would shine into. On the front, measure from its left corner; on a side, back from the front corner.',
		fields: [
			{
				kind: 'rows',
				path: 'house.openings',
				label: 'Doors and windows',
				add: 'Add a door or window',
				none: 'There are none on these walls',
				prefix: 'opening',
				columns: [
					{
						kind: 'choice',
						path: 'kind',
						label: 'What',
						options: [
							{ value: 'door', label: 'Door' },
							{ value: 'window', label: 'Window' },
							{ value: 'garage', label: 'Garage door' }
						]
					},
					{
						kind: 'choice',
						path: 'wall',
						label: 'Which wall',
						options: [
							{ value: 'front', label: 'Front' },
							{ value: 'left', label: 'Left side' },
							{ value: 'right', label: 'Right side' }
						]
					},
					{ kind: 'choice', path: 'floor', label: 'Floor', options: floors, optional: true, usual: 'ground' },
					{
						kind: 'length',
						path: 'along',
						label: 'From the corner',
						help: 'To its nearest edge.',
						min: -5,
						max: 200,
						example: '6 ft'
					},
					{ kind: 'length', path: 'width', label: 'Width', min: 0.3, max: 12, example: '3 ft' }
				]
			}
		]
	},
	{
		id: 'porches',
		chapter: 'house',
		title: () => 'Is there a porch or a stoop?',
		hint: 'It stands in front of a wall, so that wall is lit from elsewhere, and the cable goes round it.',
		fields: [
			{
				kind: 'rows',
				path: 'house.porches',
				label: 'Porches and stoops',
				add: 'Add a porch',
				none: 'There is none',
				prefix: 'porch',
				columns: [
					{
						kind: 'length',
						path: 'along',
						label: 'From the left corner',
						help: 'To its left edge.',
						min: -10,
						max: 200,
						example: '14 ft'
					},
					{ kind: 'length', path: 'width', label: 'Width', min: 0.5, max: 40, example: '12 ft' },
					{ kind: 'length', path: 'depth', label: 'Depth', min: 0.3, max: 10, example: '6 ft' },
					{ kind: 'choice', path: 'roof', label: 'Roofed', options: yesNo },
					{
						kind: 'length',
						path: 'under',
						label: 'Underside of its roof',
						help: 'Up from the ground.',
						min: 1.8,
						max: 8,
						example: '8 ft',
						optional: true
					}
				]
			}
		]
	},
	{
		id: 'side-walls',
		chapter: 'house',
		title: () => 'Should the side walls be lit?',
		hint: 'Seen from the street. A side wall close to a neighbour is best left dark: the light would spill over the boundary.',
		words: ['spill'],
		fields: [
			{ kind: 'choice', path: 'house.left.light', label: 'Left side wall', options: levels },
			{ kind: 'choice', path: 'house.right.light', label: 'Right side wall', options: levels }
		]
	},
	{
		id: 'lot',
		chapter: 'house',
		title: () => 'How far is it to the street and to each boundary?',
		hint: 'From the base line to the edge of the street or pavement, and from each front corner to the boundary on its side.',
		words: ['base line'],
		fields: [
			{
				kind: 'length',
				path: 'lot.street',
				label: 'To the street',
				min: 0.5,
				max: 300,
				example: '30 ft',
				unsure: 'a usual front yard is taken'
			},
			{
				kind: 'length',
				path: 'lot.left',
				label: 'Left corner to the boundary',
				min: 0,
				max: 200,
				example: '12 ft',
				unsure: 'taken from what you have drawn'
			},
			{
				kind: 'length',
				path: 'lot.right',
				label: 'Right corner to the boundary',
				min: 0,
				max: 200,
				example: '12 ft',
				unsure: 'taken from what you have drawn'
			}
		]
	}
];
