import { driveHasPosts, driveIsLit, driveIsLitAtBothEdges } from '../conditions';
import { courses, crossingKinds, yesNo } from '../options';
import type { Question } from '../types';

export const drive: Question[] = [
	{
		id: 'drives',
		chapter: 'drive',
		title: () => 'Is there a drive?',
		hint: 'Lit or not, it matters: no light stands where wheels go, and a cable crosses it only where something lets it through.',
		fields: [
			{
				kind: 'items',
				path: 'drives',
				label: 'Drives',
				add: 'Add a drive',
				none: 'There is no drive',
				prefix: 'drive',
				suggestions: ['drive', 'parking place', 'second drive']
			}
		]
	},
	{
		id: 'drive-line',
		chapter: 'drive',
		each: 'drives',
		title: (name) => `What line does the ${name} take?`,
		hint: 'The middle of it, from the street to the garage or its end: its start, each bend, its end. Left and right are then as you drive home.',
		fields: [
			{ kind: 'line', path: '@.line', label: 'Middle of the drive', least: 2, closed: false },
			{
				kind: 'choice',
				path: '@.curved',
				label: 'Between those points it runs',
				options: courses
			}
		]
	},
	{
		id: 'drive-width',
		chapter: 'drive',
		each: 'drives',
		title: (name) => `How wide is the ${name}?`,
		hint: 'Edge to edge, where it is narrowest. Lights keep a setback from that edge, out of reach of tyres and snow shovels.',
		words: ['setback'],
		fields: [
			{
				kind: 'length',
				path: '@.width',
				label: 'Width',
				min: 1.5,
				max: 15,
				example: '10 ft',
				unsure: 'one car’s width is taken'
			}
		]
	},
	{
		id: 'drive-lights',
		chapter: 'drive',
		each: 'drives',
		title: (name) => `How should the ${name} be marked?`,
		hint: 'A pair at the mouth is what drivers look for. Along the edges, lights mark the way; they do not have to light the paving.',
		words: ['mouth'],
		fields: [
			{
				kind: 'choice',
				path: '@.lights',
				label: 'Lights',
				options: [
					{ value: 'none', label: 'No lights on this drive' },
					{ value: 'mouth', label: 'A pair at the mouth' },
					{ value: 'left', label: 'The left edge' },
					{ value: 'right', label: 'The right edge' },
					{ value: 'both', label: 'Both edges' }
				]
			},
			{
				kind: 'choice',
				path: '@.pattern',
				label: 'The two edges',
				options: [
					{ value: 'paired', label: 'In pairs', help: 'A formal look' },
					{ value: 'staggered', label: 'Staggered', help: 'More even light' }
				],
				when: driveIsLitAtBothEdges
			},
			{
				kind: 'choice',
				path: '@.posts',
				label: 'Gate posts either side of the drive',
				options: yesNo,
				when: driveIsLit
			},
			{
				kind: 'length',
				path: '@.postsAt',
				label: 'The posts stand, from the street',
				min: 0,
				max: 100,
				example: '10 ft',
				unsure: 'right at the street is taken',
				when: driveHasPosts
			}
		]
	},
	{
		id: 'run-offs',
		chapter: 'drive',
		each: 'drives',
		title: (name) => `Do wheels run off the edge of the ${name}?`,
		hint: 'Worn grass or ruts beside it give a run-off away. One light goes just outside that edge. Measure along the drive from the street.',
		words: ['run-off'],
		decidedBy: 'drive-lights',
		when: driveIsLit,
		fields: [
			{
				kind: 'rows',
				path: '@.runOffs',
				label: 'Places where wheels run off',
				add: 'Add a place',
				none: 'They do not',
				prefix: 'run-off',
				columns: [
					{ kind: 'length', path: 'at', label: 'From the street', min: 0, max: 500, example: '20 ft' },
					{
						kind: 'choice',
						path: 'side',
						label: 'Edge',
						options: [
							{ value: 'left', label: 'Left' },
							{ value: 'right', label: 'Right' }
						]
					}
				]
			}
		]
	},
	{
		id: 'drive-crossings',
		chapter: 'drive',
		each: 'drives',
		title: (name) => `Where can a cable cross the ${name}?`,
		hint: 'An empty pipe under it (a sleeve), an expansion joint between slabs, or a place where you would have a bore made. Measure along the drive from the street.',
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
					{ kind: 'length', path: 'at', label: 'From the street', min: 0, max: 500, example: '15 ft' },
					{ kind: 'choice', path: 'kind', label: 'What is there', options: crossingKinds }
				]
			}
		]
	}
];
