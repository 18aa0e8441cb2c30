/** Figures of the year and of the shopping list. */
import type { Plan } from '../../plan';
import { monthNames } from '../../shared/day-words';
import type { WorkingInput } from '../../shared/working';
import { given } from './figure';
import type { PlanFigure } from './types';

/** Hours of each month: its nights times the mean night. */
function monthFigures({ dusk }: Plan): PlanFigure[] {
	return monthNames.flatMap((month, m) => {
		const nights = dusk.days.filter(({ date }) => Number(date.slice(5, 7)) === m + 1);
		if (nights.length === 0) return [];
		const value = nights.reduce((sum, { hours }) => sum + hours, 0);
		return [
			given(`year/month-${m + 1}`, month, {
				label: `Hours of light in ${month}`,
				value,
				unit: 'h',
				decimals: 1,
				rule: 'The nights of the month, times the hours of a night in it on average.',
				expression: 'N × h',
				inputs: [
					{ symbol: 'N', name: 'nights', value: nights.length, unit: '' },
					{ symbol: 'h', name: 'hours of a night, on average', value: value / nights.length, unit: 'h' }
				],
				source: 'c136_10'
			})
		];
	});
}
export const yearFigures = (plan: Plan): PlanFigure[] => {
	const { hours, energy, cost } = plan.dusk.working;
	return [
		given('year/hours', 'The year', hours),
		given('year/energy', 'The year', energy),
		given('year/cost', 'The year', cost),
		...monthFigures(plan)
	];
};

const groups = [
	['F', 'fixtures', 'lights'],
	['T', 'supply', 'transformer and control'],
	['C', 'cable', 'cable'],
	['J', 'connections', 'connections'],
	['X', 'crossing', 'crossings'],
	['W', 'tools', 'tools'],
	['S', 'spares', 'spares']
] as const;
/** What the list comes to, by its groups; nothing where there is nothing to buy. */
export function shoppingFigures({ shopping: { items, currency, total } }: Plan): PlanFigure[] {
	const inputs = groups.flatMap(([symbol, group, name]): WorkingInput[] => {
		const own = items.filter((item) => item.group === group);
		const value = own.reduce((sum, { cost }) => sum + cost, 0);
		return own.length > 0 ? [{ symbol, name, value: Number(value.toFixed(2)), unit: currency }] : [];
	});
	if (inputs.length === 0) return [];
	const working = {
		label: 'What to buy, in all',
		value: total,
		unit: currency,
		decimals: 2,
		rule: 'Each line of the list, its number times its price, added up group by group.',
		expression: inputs.map(({ symbol }) => symbol).join(' + '),
		inputs,
		source: 'catalogue'
	};
	return [given('shopping/total', 'Shopping', working)];
}
