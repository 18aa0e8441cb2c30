import { cableByArea, cableByGauge, limitedInLights, limitedInMoney, receptacleMayExist } from '../conditions';
import { yesNo } from '../options';
import type { Question } from '../types';

export const power: Question[] = [
	{
		id: 'receptacle',
		chapter: 'power',
		title: () => 'Where is the outdoor receptacle?',
		hint: 'The transformer plugs into a receptacle with its own cord, no extension. Where there is none, fitting one is work for a licensed electrician.',
		words: ['receptacle', 'transformer'],
		fields: [
			{
				kind: 'point',
				path: 'power.receptacle',
				label: 'Receptacle',
				none: 'There is none outdoors',
				unsure: 'one beside the front door is taken; look for it before you buy'
			}
		]
	},
	{
		id: 'receptacle-safety',
		chapter: 'power',
		title: () => 'Is the receptacle protected?',
		hint: 'A GFCI trips within a blink when current leaks: press its test button. An in-use cover closes over the plug while it is in.',
		words: ['GFCI', 'in-use cover'],
		decidedBy: 'receptacle',
		when: receptacleMayExist,
		fields: [
			{
				kind: 'choice',
				path: 'power.gfci',
				label: 'GFCI-protected',
				options: yesNo,
				unsure: 'it counts as unprotected until an electrician has looked'
			},
			{
				kind: 'choice',
				path: 'power.inUseCover',
				label: 'Cover that closes over the plug',
				options: yesNo,
				unsure: 'a new cover goes on the list'
			}
		]
	},
	{
		id: 'transformer',
		chapter: 'power',
		title: () => 'Where should the transformer hang?',
		hint: 'Upright on a solid wall or post, its bottom at least 12 in (305 mm) above the ground, in free air and within its cord of the receptacle.',
		words: ['receptacle'],
		fields: [{ kind: 'spot', path: 'power.transformer', label: 'Transformer' }]
	},
	{
		id: 'sensor',
		chapter: 'power',
		title: () => 'Where should the dusk sensor look from?',
		hint: 'A photocell wants open sky: not under eaves or a canopy, and not where lamplight reaches it at night.',
		words: ['photocell', 'eaves', 'canopy'],
		fields: [{ kind: 'spot', path: 'power.sensor', label: 'Sensor', faces: true }]
	},
	{
		id: 'hours',
		chapter: 'power',
		title: () => 'How long should the lights stay on?',
		hint: 'Most of the night nobody is looking. Shorter hours are kinder to neighbours, to night life and to the bill.',
		fields: [
			{
				kind: 'hours',
				path: 'power.hours',
				label: 'Hours',
				unsure: 'some hours from dusk are taken'
			},
			{ kind: 'season', path: 'power.season', label: 'Other hours for a part of the year', optional: true }
		]
	},
	{
		id: 'price',
		chapter: 'power',
		title: () => 'What do you pay for power?',
		hint: 'For one kilowatt-hour, from the bill. It gives the cost of a year.',
		words: ['kilowatt-hour'],
		fields: [{ kind: 'price', path: 'power.price', label: 'Price of power', unsure: 'a usual price is taken' }]
	},
	{
		id: 'lamps',
		chapter: 'power',
		title: () => 'Which lamps, and how warm?',
		hint: 'An LED lamp gives the same light for a sixth of the power. Halogen is for matching what is there. Warm light, 2700 kelvin, is kind to brick, bark and night life.',
		words: ['lamp', 'LED', 'halogen', 'kelvin'],
		fields: [
			{
				kind: 'choice',
				path: 'power.lamp',
				label: 'Lamps',
				unsure: 'LED lamps are taken',
				options: [
					{ value: 'led', label: 'LED' },
					{ value: 'halogen', label: 'Halogen', help: 'Hot, hungry, and short-lived; for matching what is there' }
				]
			},
			{
				kind: 'choice',
				path: 'power.warmth',
				label: 'Warmth',
				unsure: '2700 K is taken',
				options: [
					{ value: 2700, label: '2700 K', help: 'As warm as a lamp at home' },
					{ value: 3000, label: '3000 K', help: 'A little whiter' }
				]
			}
		]
	},
	{
		id: 'cable',
		chapter: 'power',
		title: () => 'How is cable sold near you, and what do you own already?',
		hint: 'Cable goes by gauge number (AWG: the smaller the number, the thicker) or by square millimetres. A transformer’s size is in VA. Leave the rest empty if you own nothing yet.',
		words: ['gauge', 'transformer', 'VA'],
		fields: [
			{
				kind: 'choice',
				path: 'power.cable',
				label: 'Cable is sold by',
				options: [
					{ value: 'awg', label: 'Gauge (AWG)' },
					{ value: 'mm2', label: 'Square millimetres' }
				]
			},
			{
				kind: 'number',
				path: 'power.owned.transformerVoltAmps',
				label: 'Transformer you own',
				help: 'The VA on its plate.',
				min: 20,
				max: 2000,
				unit: 'VA',
				optional: true
			},
			{
				kind: 'choice',
				path: 'power.owned.cableSize',
				label: 'Cable you own',
				optional: true,
				when: cableByGauge,
				options: [16, 14, 12, 10].map((size) => ({ value: size, label: `${size} AWG` }))
			},
			{
				kind: 'choice',
				path: 'power.owned.cableSize',
				label: 'Cable you own',
				optional: true,
				when: cableByArea,
				options: [1.5, 2.5, 4, 6].map((size) => ({ value: size, label: `${size} mm²` }))
			},
			{
				kind: 'length',
				path: 'power.owned.cableLength',
				label: 'Length of that cable',
				min: 0,
				max: 1000,
				example: '100 ft',
				optional: true
			}
		]
	},
	{
		id: 'budget',
		chapter: 'power',
		title: () => 'Is there a limit to keep to?',
		hint: 'What goes first is fixed: lights that are there for beauty, then those that show the way. Lights against a fall stay, and so do those you set by hand.',
		fields: [
			{
				kind: 'choice',
				path: 'power.budget.kind',
				label: 'Limit',
				unsure: 'no limit is taken',
				options: [
					{ value: 'none', label: 'No limit' },
					{ value: 'fixtures', label: 'A number of lights' },
					{ value: 'money', label: 'A sum of money' },
					{ value: 'both', label: 'Both' }
				]
			},
			{
				kind: 'count',
				path: 'power.budget.fixtures',
				label: 'Lights at most',
				min: 1,
				max: 400,
				when: limitedInLights
			},
			{
				kind: 'number',
				path: 'power.budget.money',
				label: 'Money for the lights',
				help: 'Each light counts with its price and 30 more for its share of transformer, cable and joints. The shopping list has the whole sum.',
				min: 1,
				max: 100000,
				unit: 'in your currency',
				when: limitedInMoney
			}
		]
	}
];
