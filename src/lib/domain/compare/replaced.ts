/**
 * Lamps that burn out in the years compared. Each is taken to last its life to the hour: of every lamp the whole lives used
 * up are counted. The spares of the shopping list go in first.
 */
import type { Plan } from '../plan';
import type { Working } from '../shared/working';
import { years } from './figures';
import { wholeLamps } from './lamp';
import { byModel } from './light';
import { sparesFor } from './purchase';
import { sumWorking } from './sums';
import type { LampAtWork, Range, Replaced, WorkingRange } from './types';

type End = keyof Range;
const what = (plan: Plan, model: string): string =>
	plan.fixtures.find((fixture) => fixture.model === model)?.lamp.kind === 'halogen' ? 'lamp' : 'fixture';
/** An LED has one life here, a filament a range of them. */
const endWords = (lamps: readonly LampAtWork[], end: End): string =>
	lamps.some(({ life }) => life && life.low.value < life.high.value) ? (end === 'low' ? ', fewest' : ', most') : '';
const times = (count: number): string =>
	count === 0 ? 'not replaced' : count === 1 ? 'replaced once' : `replaced ${count} times`;

/** Price of what replaces a burnt-out one: a lamp, as the spares are priced, else the fixture. */
const priceOf = (plan: Plan, model: string): number =>
	(sparesFor(plan, model) ?? plan.shopping.items.find(({ id }) => id === model))?.unitPrice ?? 0;

function modelWorking(same: readonly LampAtWork[], end: End, name: string): Working {
	return sumWorking(
		same.flatMap(({ label, lives }) =>
			lives
				? [
						{
							name: `${label}: ${lives[end].value.toFixed(2)} lives, so ${times(wholeLamps(lives[end]))}`,
							value: wholeLamps(lives[end]),
							unit: '',
							from: lives[end]
						}
					]
				: []
		),
		{
			label: name,
			unit: '',
			decimals: 0,
			rule: 'The whole lives used up of each lamp of this kind, added up.',
			source: 'memory'
		}
	);
}
function countWorking(lamps: readonly LampAtWork[], end: End, names: (model: string) => string): Working {
	return sumWorking(
		byModel(lamps).map((same) => {
			const from = modelWorking(same, end, names(same[0]!.model));
			return { name: from.label, value: from.value, unit: '', from };
		}),
		{
			label: `Replaced in ${years} years${endWords(lamps, end)}`,
			unit: '',
			decimals: 0,
			rule: 'Each is taken to last its life to the hour. Lives are from memory: check the box.',
			source: 'memory'
		}
	);
}
/** Bought by the end of a year: used up, less the spares of that model. */
const bought = (plan: Plan, same: readonly LampAtWork[], end: End, year: number): number =>
	Math.max(
		0,
		same.reduce((sum, { lives }) => sum + (lives ? wholeLamps(lives[end], year) : 0), 0) -
			(sparesFor(plan, same[0]!.model)?.quantity ?? 0)
	);

/** What is bought by the end of a year to replace burnt-out ones, currency. */
export const replacedCost = (plan: Plan, lamps: readonly LampAtWork[], end: End, year: number): number =>
	byModel(lamps).reduce((sum, same) => sum + bought(plan, same, end, year) * priceOf(plan, same[0]!.model), 0);

function costWorking(plan: Plan, lamps: readonly LampAtWork[], end: End, names: (model: string) => string): Working {
	const lines = byModel(lamps).flatMap((same) => {
		const model = same[0]!.model;
		const count = bought(plan, same, end, years);
		const used = same.reduce((sum, { lives }) => sum + (lives ? wholeLamps(lives[end]) : 0), 0);
		const spares = sparesFor(plan, model)?.quantity ?? 0;
		const price = priceOf(plan, model);
		return used === 0
			? []
			: [
					{
						name: `${names(model)}: ${used} replaced, ${spares} in stock, ${count} more ${what(plan, model)}${count === 1 ? '' : 's'} at ${price.toFixed(2)}`,
						value: count * price,
						unit: plan.shopping.currency
					}
				];
	});
	return sumWorking(lines, {
		label: `Bought to replace them in ${years} years${endWords(lamps, end)}`,
		unit: plan.shopping.currency,
		decimals: 2,
		rule: 'The spares of the shopping list go in first; the rest is bought at the present price.',
		source: 'memory'
	});
}

export function replacedOf(plan: Plan, lamps: readonly LampAtWork[], names: (model: string) => string): Replaced {
	const both = (of: (end: End) => Working): WorkingRange => ({ low: of('low'), high: of('high') });
	return {
		count: both((end) => countWorking(lamps, end, names)),
		cost: both((end) => costWorking(plan, lamps, end, names)),
		unknown: lamps.filter(({ life }) => life === null).map(({ label }) => label)
	};
}
