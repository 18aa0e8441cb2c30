/** What the counter's page offers for each question, as data: round lengths in the person's units, kept in metres. */
import { metresPerFoot } from '../shared/units';
import type { KeepClear, QuickAnswers, Shape } from './types';

export interface Offer<T> {
	value: T;
	/** As it stands on the button. */
	label: string;
}
/** By question, in the order of `QuickAnswers`; lengths in metres. */
export interface Picks {
	units: Offer<'feet' | 'metres'>[];
	walk: Offer<number>[];
	drive: Offer<number>[];
	/** The same counts for small, medium and large; `treeClasses` names the three. */
	trees: Offer<number>[];
	treeClasses: Offer<'small' | 'medium' | 'large'>[];
	wall: Offer<number>[];
	receptacle: Offer<number>[];
	shape: Offer<Shape>[];
	clear: Offer<KeepClear>[];
	halogenCount: Offer<number>[];
	halogenWatts: Offer<number>[];
	/** Volt-amperes. */
	transformer: Offer<number>[];
	/** AWG gauge in feet, mm² in metres. */
	cableSize: Offer<number>[];
	cableMetres: Offer<number>[];
	lamp: Offer<'led' | 'halogen'>[];
}
type Units = QuickAnswers['units'];

/** Round feet and round metres of much the same length, pair by pair, so that the units can be changed midway. */
const lengths = {
	walk: { feet: [0, 15, 20, 30, 40, 60, 80, 100], metres: [0, 5, 6, 9, 12, 18, 25, 30] },
	drive: { feet: [0, 20, 30, 40, 60, 80, 100], metres: [0, 6, 9, 12, 18, 25, 30] },
	wall: { feet: [0, 10, 20, 30, 40, 60], metres: [0, 3, 6, 9, 12, 18] },
	receptacle: { feet: [5, 10, 20, 30, 50, 80], metres: [1.5, 3, 6, 9, 15, 25] },
	cableMetres: { feet: [50, 100, 150, 250], metres: [15, 30, 45, 75] }
} as const;
type Length = keyof typeof lengths;

const inMetres = (value: number, units: Units): number => (units === 'feet' ? value * metresPerFoot : value);
const lengthOffers = (which: Length, units: Units): Offer<number>[] =>
	lengths[which][units].map((value) => ({
		value: inMetres(value, units),
		label: value === 0 ? 'None' : `${value} ${units === 'feet' ? 'ft' : 'm'}`
	}));
const counts = (...values: number[]): Offer<number>[] => values.map((value) => ({ value, label: `${value}` }));
const withUnit = (unit: string, ...values: number[]): Offer<number>[] =>
	values.map((value) => ({ value, label: `${value} ${unit}` }));
/** Widths of crowns, metres, as `quick/trees.ts` draws them. */
const treeWords = (units: Units): Picks['treeClasses'] => [
	{ value: 'small', label: `Small, crown about ${units === 'feet' ? '10 ft' : '3 m'} wide` },
	{ value: 'medium', label: `Medium, about ${units === 'feet' ? '20 ft' : '6 m'}` },
	{ value: 'large', label: `Large, about ${units === 'feet' ? '33 ft' : '10 m'}` }
];

/** All that the page offers, worded in these units. */
export const picks = (units: Units): Picks => ({
	units: [
		{ value: 'feet', label: 'Feet' },
		{ value: 'metres', label: 'Metres' }
	],
	walk: lengthOffers('walk', units),
	drive: lengthOffers('drive', units),
	trees: counts(0, 1, 2, 3, 4, 5, 6),
	treeClasses: treeWords(units),
	wall: lengthOffers('wall', units),
	receptacle: lengthOffers('receptacle', units),
	shape: [
		{ value: 'straight', label: 'Straight from the street' },
		{ value: 'bent', label: 'With a bend' },
		{ value: 'corner', label: 'From the drive, round the corner' },
		{ value: 'deep', label: 'House set far back' }
	],
	clear: [
		{ value: 'pool', label: 'A pool' },
		{ value: 'neighbour', label: 'A neighbour’s window close by' },
		{ value: 'street-lamp', label: 'A street lamp' },
		{ value: 'drive-crossing', label: 'Cable has to cross the drive' }
	],
	halogenCount: counts(2, 4, 6, 8, 10, 12),
	halogenWatts: withUnit('W', 10, 20, 35, 50),
	transformer: withUnit('VA', 45, 60, 100, 150, 200, 300, 600),
	cableSize: units === 'feet' ? [16, 14, 12, 10].map(gauge) : withUnit('mm²', 1.5, 2.5, 4, 6),
	cableMetres: lengthOffers('cableMetres', units),
	lamp: [
		{ value: 'led', label: 'LED' },
		{ value: 'halogen', label: 'Halogen' }
	]
});
const gauge = (value: number): Offer<number> => ({ value, label: `${value} AWG` });

/** What the page starts with: a walk of 30 ft or 9 m, straight from the street, a receptacle near by, nothing else. */
export const usualAnswers = (units: Units): QuickAnswers => ({
	units,
	walk: inMetres(units === 'feet' ? 30 : 9, units),
	drive: 0,
	trees: { small: 0, medium: 0, large: 0 },
	wall: 0,
	receptacle: inMetres(units === 'feet' ? 10 : 3, units),
	shape: 'straight',
	clear: [],
	halogens: null,
	transformer: null,
	cable: null,
	lamp: 'led'
});

/** A length as the other units offer it: the pick in the same place; of one that is no pick, itself. Metres. */
const swapped = (which: Length, metres: number, from: Units, to: Units): number => {
	const place = lengths[which][from].findIndex((value) => Math.abs(inMetres(value, from) - metres) < 1e-9);
	return place < 0 ? metres : inMetres(lengths[which][to][place]!, to);
};
/** The same answers with lengths that these units offer. Cable that is owned is asked for anew: gauge and mm² are not the same sizes. */
export function answersIn(answers: QuickAnswers, units: Units): QuickAnswers {
	if (answers.units === units) return answers;
	const as = (which: Length, metres: number) => swapped(which, metres, answers.units, units);
	return {
		...answers,
		units,
		walk: as('walk', answers.walk),
		drive: as('drive', answers.drive),
		wall: as('wall', answers.wall),
		receptacle: as('receptacle', answers.receptacle),
		cable: null
	};
}
