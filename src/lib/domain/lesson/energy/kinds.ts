/** Problems about the energy of a year. Watts, hours, kilowatt-hours, dollars. */
import type { ProblemKind } from '../types';
import { hoursKind } from './hours-kind';
import { pairs, type Pair } from './pairs';
import { costAt, energyAt, given, lampsOnly, priceText, problemFrom, step } from './reckoned';

const priceOf = (price: number) => given('p', 'price of a kilowatt-hour', priceText(price), 'dollars');
const byHours = 'Energy is power times time; a thousand watt-hours are one kilowatt-hour.';
const byPrice = 'Cost is energy times the price of a kilowatt-hour.';
const prices = [0.12, 0.35, 0.01] as const;

export interface YearDrawn {
	lights: number;
	watts: number;
	hoursANight: number;
	nights: number;
	price: number;
}
const year: ProblemKind<YearDrawn> = {
	id: 'energy.year',
	lesson: 'energy',
	title: 'Energy and cost of a year',
	levels: ['solved', 'one', 'several', 'all'],
	draw: (random) => ({
		lights: random.whole(4, 16),
		watts: random.one(pairs).led,
		hoursANight: random.whole(3, 8),
		nights: 365,
		price: random.stepped(...prices)
	}),
	pose: ({ lights, watts, hoursANight, nights, price }) =>
		problemFrom({
			kind: 'energy.year',
			story: `A yard has ${lights} LED lamps of ${watts} W each. They are on for ${hoursANight} hours a night, ${nights} nights a year. A kilowatt-hour costs $${priceText(price)}. ${lampsOnly}`,
			ask: 'What does the light of the year cost? Round the energy to one decimal and give the cost in dollars, to two decimals.',
			because: `${byHours} ${byPrice}`,
			givens: [
				given('n', 'lamps', String(lights), ''),
				given('w', 'watts of a lamp', String(watts), 'W'),
				given('h', 'hours a night', String(hoursANight), 'h'),
				given('N', 'nights', String(nights), ''),
				priceOf(price)
			],
			rules: [
				step('P', 'power of all lamps', 'n × w', 'W', 1, 'Powers add up.'),
				step('E', 'energy of a year', 'P × h × N ÷ 1000', 'kWh', 1, byHours),
				step('C', 'cost of a year', 'E × p', 'dollars', 2, byPrice)
			],
			engine: costAt(energyAt(lights * watts, hoursANight * nights), price)
		})
};

export interface LampsDrawn {
	pair: Pair;
	lights: number;
	/** Hours of light in a year. */
	hours: number;
	price: number;
	/** Dollars for a new lamp. */
	lamp: number;
}
const lampsOf = ({ pair, lights, hours }: LampsDrawn) => [
	given('n', 'lamps', String(lights), ''),
	given('a', 'watts of the old lamp', String(pair.halogen), 'W'),
	given('b', 'watts of the new lamp', String(pair.led), 'W'),
	given('H', 'hours of light in a year', String(hours), 'h')
];
const lampSteps = [
	step('S', 'power saved', 'n × (a − b)', 'W', 1, 'Each lamp saves the difference of its watts.'),
	step('E', 'energy saved in a year', 'S × H ÷ 1000', 'kWh', 1, byHours),
	step('C', 'saved in a year', 'E × p', 'dollars', 2, byPrice)
];
const swapped = ({ pair, lights, hours, price }: LampsDrawn): string =>
	`The ${lights} ${pair.name} of a yard have halogen lamps of ${pair.halogen} W. They are changed for LED lamps of ${pair.led} W with about the same light. They are on for ${hours} hours in a year. A kilowatt-hour costs $${priceText(price)}.`;
/** Dollars saved in a year. */
function savedBy({ pair, lights, hours, price }: LampsDrawn): number {
	const energy = energyAt(lights * pair.halogen, hours) - energyAt(lights * pair.led, hours);
	return costAt(Number(energy.toFixed(1)), price);
}
const drawLamps: ProblemKind<LampsDrawn>['draw'] = (random) => ({
	pair: random.one(pairs),
	lights: random.whole(4, 16),
	hours: random.stepped(900, 4200, 100),
	price: random.stepped(...prices),
	lamp: random.whole(6, 15)
});
const saving: ProblemKind<LampsDrawn> = {
	id: 'energy.saving',
	lesson: 'energy',
	title: 'What LED lamps save in a year',
	levels: ['solved', 'one', 'several', 'all'],
	draw: drawLamps,
	pose: (drawn) =>
		problemFrom({
			kind: 'energy.saving',
			story: `${swapped(drawn)} ${lampsOnly}`,
			ask: 'How much money does that save in a year? Round the energy to one decimal and give the money in dollars, to two decimals.',
			because: `Only the difference of the watts is saved, for every hour of light. ${byPrice}`,
			givens: [...lampsOf(drawn), priceOf(drawn.price)],
			rules: lampSteps,
			engine: savedBy(drawn)
		})
};
const payback: ProblemKind<LampsDrawn> = {
	id: 'energy.payback',
	lesson: 'energy',
	title: 'Years until LED lamps have paid for themselves',
	levels: ['solved', 'one', 'several', 'all'],
	draw: drawLamps,
	pose: (drawn) => {
		const years = (drawn.lights * drawn.lamp) / savedBy(drawn);
		// Longer than the lamp lasts makes no sense to a learner, shorter than a month none to the question.
		if (!(years >= 0.1 && years <= 12)) return null;
		return problemFrom({
			kind: 'energy.payback',
			story: `${swapped(drawn)} A new lamp costs $${drawn.lamp}. ${lampsOnly}`,
			ask: 'After how many years has the saving paid for the new lamps? Round the energy to one decimal, the money to two, and give the years to one decimal.',
			because: 'What is spent once, over what is saved each year, is the years until the two are even.',
			givens: [
				...lampsOf(drawn),
				priceOf(drawn.price),
				given('c', 'price of a new lamp', String(drawn.lamp), 'dollars')
			],
			rules: [
				...lampSteps,
				step('K', 'cost of the new lamps', 'n × c', 'dollars', 0, 'Lamps times the price of one.'),
				step('T', 'years until even', 'K ÷ C', 'years', 1, 'Spent once, over saved each year.')
			],
			engine: years
		});
	}
};
export const energyKinds = [year, saving, hoursKind, payback] as ProblemKind[];
