import { treeIsLit } from '../conditions';
import { levels } from '../options';
import type { Question } from '../types';

export const trees: Question[] = [
	{
		id: 'trees',
		chapter: 'trees',
		title: () => 'Which trees are there?',
		hint: 'Name every tree in the yard, lit or not: inside the root zone of each the cable is dug in by hand. A name you would use when pointing at it is best.',
		words: ['root zone'],
		fields: [
			{
				kind: 'items',
				path: 'trees',
				label: 'Trees',
				add: 'Add a tree',
				none: 'There are no trees',
				prefix: 'tree',
				suggestions: ['oak', 'maple', 'birch', 'pine', 'tree by the door', 'street tree']
			}
		]
	},
	{
		id: 'tree-place',
		chapter: 'trees',
		each: 'trees',
		title: (name) => `Where does the ${name} stand?`,
		hint: 'To the middle of its trunk: so far along the base line from the left corner, and so far out towards the street.',
		words: ['base line', 'trunk'],
		fields: [{ kind: 'point', path: '@.at', label: 'Middle of the trunk' }]
	},
	{
		id: 'tree-wish',
		chapter: 'trees',
		each: 'trees',
		title: (name) => `Should the ${name} be lit?`,
		hint: 'An uplight at its foot shows trunk and crown. Two or three lit trees are often enough: dark between them gives the yard its depth.',
		words: ['uplight', 'trunk', 'crown'],
		fields: [{ kind: 'choice', path: '@.light', label: 'Light it', options: levels }]
	},
	{
		id: 'canopy',
		chapter: 'trees',
		each: 'trees',
		title: (name) => `How wide does the ${name} spread?`,
		hint: 'Measure across the canopy, from leaf tip to leaf tip. The wider it is, the further from the trunk its lights stand.',
		words: ['canopy', 'trunk'],
		decidedBy: 'tree-wish',
		fields: [
			{
				kind: 'length',
				path: '@.spread',
				label: 'Across the canopy',
				min: 0.3,
				max: 40,
				example: '18 ft',
				unsure: 'a usual spread for its shape is taken'
			},
			{
				kind: 'length',
				path: '@.crownBase',
				label: 'Height to the lowest branches',
				min: 0,
				max: 30,
				example: '6 ft',
				unsure: 'taken from its height and shape',
				when: treeIsLit
			},
			{
				kind: 'choice',
				path: '@.leaf',
				label: 'In winter',
				optional: true,
				usual: 'sheds',
				options: [
					{ value: 'sheds', label: 'Bare' },
					{ value: 'keeps', label: 'Keeps its leaves' }
				]
			}
		]
	},
	{
		id: 'trunk',
		chapter: 'trees',
		each: 'trees',
		title: (name) => `How thick is the trunk of the ${name}?`,
		hint: 'Straight across at chest height. Its root zone reaches twelve times as far: dig by hand inside it.',
		words: ['root zone'],
		fields: [
			{
				kind: 'length',
				path: '@.trunk',
				label: 'Across the trunk',
				help: 'A tape round it, divided by three, is near enough.',
				min: 0.02,
				max: 4,
				example: '10 in',
				unsure: 'taken from its height'
			}
		]
	},
	{
		id: 'crown',
		chapter: 'trees',
		each: 'trees',
		title: (name) => `How tall is the ${name}, and what is its shape?`,
		hint: 'Height and form choose the beam angle: wide enough for the crown, no wider, since light beside the crown goes to the sky.',
		words: ['beam angle', 'crown'],
		decidedBy: 'tree-wish',
		when: treeIsLit,
		fields: [
			{
				kind: 'length',
				path: '@.height',
				label: 'Height',
				help: 'Hold a stick upright at arm’s length, step back until it covers the tree, turn it level: where its tip meets the ground is as far from the trunk as the tree is tall.',
				min: 0.5,
				max: 60,
				example: '25 ft',
				unsure: 'taken from its spread'
			},
			{
				kind: 'choice',
				path: '@.form',
				label: 'Shape',
				unsure: 'a round crown is taken',
				options: [
					{ value: 'round', label: 'Round', help: 'A ball on a stem' },
					{ value: 'spreading', label: 'Spreading', help: 'Wider than tall' },
					{ value: 'columnar', label: 'Columnar', help: 'A narrow pillar' },
					{ value: 'conical', label: 'Conical', help: 'A cone, wide at the foot' },
					{ value: 'vase', label: 'Vase', help: 'Branches fan upwards' },
					{ value: 'weeping', label: 'Weeping', help: 'Branches hang down' },
					{ value: 'multi-stem', label: 'Several stems', help: 'No single trunk' },
					{ value: 'palm', label: 'Palm', help: 'A bare stem with a tuft' }
				]
			}
		]
	},
	{
		id: 'tree-view',
		chapter: 'trees',
		each: 'trees',
		title: (name) => `From where is the ${name} looked at, and what grows under it?`,
		hint: 'The first light goes on the side it is seen from. In mown lawn a well light sits flush with the ground and spares the mower; in a bed a staked spot is easier to aim.',
		words: ['well light', 'spot'],
		decidedBy: 'tree-wish',
		when: treeIsLit,
		fields: [
			{
				kind: 'choice',
				path: '@.seenFrom',
				label: 'Looked at from',
				options: [
					{ value: 'street', label: 'The street' },
					{ value: 'walk', label: 'The walk' },
					{ value: 'house', label: 'The house' }
				]
			},
			{
				kind: 'choice',
				path: '@.ground',
				label: 'Ground under it',
				unsure: 'lawn is taken',
				options: [
					{ value: 'lawn', label: 'Mown lawn' },
					{ value: 'bed', label: 'Bed or mulch' },
					{ value: 'gravel', label: 'Gravel' }
				]
			}
		]
	}
];
