/** For tests of a budget: plans under one, and a yard with one of everything. */
import { fixtureModels } from '../shared/catalogue';
import { makeSite } from '../site';
import { blankYard, type Yard } from '../yard';
import { placeFixtures, type Fixture, type Placement } from './index';

export type Budget = Yard['power']['budget'];
export const planned = (yard: Yard): Placement => placeFixtures(makeSite(yard), yard);
export const withBudget = (yard: Yard, budget: Budget): Yard => ({ ...yard, power: { ...yard.power, budget } });
export const lights = (fixtures: number): Budget => ({ kind: 'fixtures', fixtures });
export const money = (sum: number): Budget => ({ kind: 'money', money: sum });
export const idsOf = ({ fixtures }: Placement): string[] => fixtures.map(({ id }) => id).sort();
export const said = ({ findings }: Placement, code: string): string[] =>
	findings.filter((finding) => finding.code === code).map(({ message }) => message);
/** Summed here from the catalogue and the rule's own words: "and 30 more". */
export const cost = (fixtures: readonly Fixture[]): number =>
	fixtures.reduce((sum, { model }) => sum + fixtureModels.find(({ id }) => id === model)!.price + 30, 0);

/** One of everything, nothing in the way of anything. The front is 14 m wide, the street 24 m out. */
export const wholeYard: Yard = {
	...blankYard(),
	place: { units: 'metres', faces: 180, surroundings: 'suburb' },
	house: {
		sections: [{ id: 'front', width: 14, out: 0, light: 'soft' }],
		depth: 8,
		eaves: 3,
		finish: 'medium',
		texture: 'smooth',
		openings: [{ id: 'door', kind: 'door', wall: 'front', along: 6.5, width: 1 }],
		porches: [],
		left: { light: 'none' },
		right: { light: 'none' }
	},
	lot: { street: 24, left: 20, right: 20 },
	trees: [
		{
			id: 'plum',
			name: 'plum',
			at: { along: 1, out: 10 },
			spread: 3,
			height: 4,
			crownBase: 1.5,
			trunk: 0.2,
			form: 'round',
			ground: 'lawn',
			light: 'soft',
			seenFrom: 'street'
		},
		{
			id: 'oak',
			name: 'oak',
			at: { along: 12, out: 12 },
			spread: 7,
			height: 9,
			crownBase: 2.5,
			trunk: 0.4,
			form: 'round',
			ground: 'lawn',
			light: 'soft',
			seenFrom: 'street'
		},
		{
			id: 'lime',
			name: 'lime',
			at: { along: -9, out: 10 },
			spread: 7,
			height: 9,
			crownBase: 2.5,
			trunk: 0.4,
			form: 'round',
			ground: 'lawn',
			light: 'bright',
			seenFrom: 'street'
		}
	],
	walks: [
		{
			id: 'walk',
			name: 'walk',
			line: [
				{ along: 7, out: 24 },
				{ along: 7, out: 1 }
			],
			width: 1.2,
			lights: 'left',
			rail: 'none',
			steps: [{ id: 'steps', at: 19, treads: 3, going: 0.35 }]
		}
	],
	drives: [
		{
			id: 'drive',
			name: 'drive',
			line: [
				{ along: 22, out: 24 },
				{ along: 22, out: 2 }
			],
			width: 3,
			lights: 'both',
			pattern: 'paired',
			posts: false,
			runOffs: []
		}
	],
	spots: {
		seating: [{ id: 'bench', name: 'bench', at: { along: -14, out: 15 }, across: 2, light: 'soft' }],
		beds: [
			{
				id: 'roses',
				name: 'roses',
				outline: [
					{ along: -6, out: 15 },
					{ along: -1, out: 15 },
					{ along: -1, out: 16.2 },
					{ along: -6, out: 16.2 }
				],
				light: 'soft'
			}
		],
		numbers: [{ id: 'number', at: { along: 16, out: 23 }, light: true }]
	}
};
