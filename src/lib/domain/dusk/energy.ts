import { transformers } from '../shared/catalogue';
import { monthNames } from '../shared/day-words';
import type { Assumption } from '../shared/findings';
import type { Working } from '../shared/working';
import type { Fixture } from '../placement';
import type { Yard } from '../yard/schema';
import { daysInYear } from './ephemeris';
import type { PowerPoint } from './types';

/** Nearer than this to a tie, or larger than that, a product is no longer sure which way it rounds. */
const nearTie = 1e-6;
const mostScaled = 1e9;
/** As it is printed: `toFixed` and rounding by hand part on ties, so there the printed figure is read back. */
export function rounded(value: number, decimals: number): number {
	const scale = 10 ** decimals;
	const scaled = value * scale;
	const fromTie = Math.abs(scaled - Math.floor(scaled) - 0.5);
	if (Math.abs(scaled) < mostScaled && fromTie > nearTie) return Math.round(scaled) / scale;
	return Number(value.toFixed(decimals));
}
const hoursInYear = daysInYear * 24;
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** Hours of light in a year out of the hours of each night, by month. */
export function hoursWorking(days: readonly { date: string; hours: number }[]): Working {
	const sums = months.map(() => 0);
	for (const day of days) sums[Number(day.date.slice(5, 7)) - 1]! += day.hours;
	const inputs = months.map((symbol, i) => ({
		symbol,
		name: `Hours of light in ${monthNames[i]!}`,
		value: rounded(sums[i]!, 1),
		unit: 'h'
	}));
	return {
		label: 'Hours of light in a year',
		value: rounded(
			inputs.reduce((sum, input) => sum + input.value, 0),
			1
		),
		unit: 'h',
		decimals: 1,
		rule: 'The nights of each month, from lights on to lights off, added up.',
		expression: months.join(' + '),
		inputs,
		source: 'c136_10'
	};
}
export interface Draw {
	/** Taken from the transformer's terminals while the lights are on, watts. */
	watts: number;
	efficiency: number;
	/** Taken from the wall day and night, watts. */
	idleWatts: number;
	assumptions: Assumption[];
}
const typicalEfficiency = 0.9;
/** Idle watts by rated volt-amperes, from memory: the law behind the catalogue's own figures. */
const typicalIdle = (voltAmps: number): number => rounded(2 + voltAmps * 0.012, 1);

/** What the plan draws: from the supply where there is one, from the lamps alone before that. */
export function drawOf(fixtures: readonly Fixture[], supply: PowerPoint | null): Draw {
	if (!supply) {
		const watts = rounded(
			fixtures.reduce((sum, fixture) => sum + fixture.lamp.watts, 0),
			1
		);
		const assumptions: Assumption[] =
			watts > 0
				? [
						{
							path: 'power.transformer',
							message: `No transformer has a place yet: the energy counts the lamps alone (${watts} W) at an efficiency of ${typicalEfficiency}.`,
							about: null
						}
					]
				: [];
		return { watts, efficiency: typicalEfficiency, idleWatts: 0, assumptions };
	}
	const model = transformers.find((one) => one.id === supply.model);
	const watts = rounded(Math.max(0, supply.loadWatts), 1);
	if (model) return { watts, efficiency: model.efficiency, idleWatts: model.idleWatts, assumptions: [] };
	const idleWatts = typicalIdle(supply.loadVoltAmps / 0.8);
	return {
		watts,
		efficiency: typicalEfficiency,
		idleWatts,
		assumptions: [
			{
				path: 'power.owned.transformerVoltAmps',
				message: `Your own transformer is taken to be ${typicalEfficiency * 100} % efficient and to draw ${idleWatts} W with the lights off, from memory; its label comes first.`,
				about: null
			}
		]
	};
}
/** Kilowatt-hours of a year at the plug, out of so many hours of light, to a tenth. */
export const energyOf = (hours: number, draw: Draw): number =>
	rounded((hours * draw.watts) / draw.efficiency / 1000 + (hoursInYear * draw.idleWatts) / 1000, 1);
/** Cost of so many kilowatt-hours, to a hundredth of the currency. */
export const costOf = (energy: number, price: Price): number => rounded(energy * price.perKwh, 2);

/** `energyOf` with its working. */
export function energyWorking(hours: Working, draw: Draw): Working {
	return {
		label: 'Energy of a year',
		value: energyOf(hours.value, draw),
		unit: 'kWh',
		decimals: 1,
		rule: 'Hours of light times the watts of the lamps and cables, over the efficiency of the transformer, and what the transformer itself takes all year.',
		expression: 'H × P ÷ e ÷ 1000 + Y × I ÷ 1000',
		inputs: [
			{ symbol: 'H', name: 'Hours of light in a year', value: hours.value, unit: 'h', from: hours },
			{ symbol: 'P', name: 'Lamps and cable losses', value: draw.watts, unit: 'W' },
			{ symbol: 'e', name: 'Efficiency of the transformer', value: draw.efficiency, unit: '' },
			{ symbol: 'Y', name: 'Hours in a year', value: hoursInYear, unit: 'h' },
			{ symbol: 'I', name: 'Transformer with the lights off', value: draw.idleWatts, unit: 'W' }
		],
		source: 'catalogue'
	};
}
/** Taken when the price is not known: a typical home in the United States, from memory. */
const assumedPrice = { perKwh: 0.17, currency: '$' } as const;
export interface Price {
	perKwh: number;
	currency: string;
	assumptions: Assumption[];
}
export function priceOf(yard: Yard): Price {
	const told = yard.power.price;
	if (told && told !== 'unsure') return { ...told, assumptions: [] };
	return {
		...assumedPrice,
		assumptions: [
			{
				path: 'power.price',
				message: `Power is taken to cost ${assumedPrice.currency}${assumedPrice.perKwh} for a kilowatt-hour, from memory; your bill says what it is.`,
				about: null
			}
		]
	};
}
export const costWorking = (energy: Working, price: Price): Working => ({
	label: 'Cost of a year',
	value: costOf(energy.value, price),
	unit: price.currency,
	decimals: 2,
	rule: 'Energy of a year times the price of a kilowatt-hour.',
	expression: 'E × p',
	inputs: [
		{ symbol: 'E', name: 'Energy of a year', value: energy.value, unit: 'kWh', from: energy },
		{ symbol: 'p', name: 'Price of a kilowatt-hour', value: price.perKwh, unit: price.currency }
	],
	source: 'asked'
});
