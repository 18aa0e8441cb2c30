import type { Plan } from '../plan';
import { modelName } from '../shared/model-name';
import type { Working } from '../shared/working';
import { years } from './figures';
import { lampAtWork } from './lamp';
import { lightOfAll, markedWorking } from './light';
import { purchaseOf } from './purchase';
import { replacedCost, replacedOf } from './replaced';
import { rounded } from './sums';
import type { Kind, Range, Side } from './types';
import { nodesOf, voltsOf } from './volts';

function totalWorking(plan: Plan, bought: Working, lamps: Working, label: string): Working {
	const { cost } = plan.dusk.working;
	return {
		label,
		value: rounded(bought.value + years * cost.value + lamps.value, 2),
		unit: plan.shopping.currency,
		decimals: 2,
		rule: 'What is bought at first, the power of each year, and the lamps replaced; present prices, no interest.',
		expression: 'B + n × C + R',
		inputs: [
			{ symbol: 'B', name: bought.label, value: bought.value, unit: bought.unit, from: bought },
			{ symbol: 'n', name: 'years', value: years, unit: '' },
			{ symbol: 'C', name: cost.label, value: cost.value, unit: cost.unit, from: cost },
			{ symbol: 'R', name: lamps.label, value: lamps.value, unit: lamps.unit, from: lamps }
		],
		source: 'catalogue'
	};
}

/** What a plan made with one kind of lamp comes to. */
export function sideOf(kind: Kind, plan: Plan): Side {
	const nodes = nodesOf(plan);
	const { hours, cost } = plan.dusk.working;
	const lamps = plan.fixtures.map((fixture) => lampAtWork(fixture, nodes.get(fixture.id)?.volts ?? null, hours));
	const nameOf = (model: string): string => modelName(model, plan.fixtures.find((one) => one.model === model)?.lamp);
	const { purchase, cable } = purchaseOf(plan);
	const replaced = replacedOf(plan, lamps, nameOf);
	const labels = {
		low: `Over ${years} years, lamps lasting longest`,
		high: `Over ${years} years, lamps dying soonest`
	};
	const total = (end: keyof Range) =>
		totalWorking(plan, purchase.total, replaced.cost[end], kind === 'led' ? `Over ${years} years` : labels[end]);
	const spent = (year: number, end: keyof Range) =>
		rounded(purchase.total.value + year * cost.value + replacedCost(plan, lamps, end, year), 2);
	return {
		kind,
		plan,
		lamps,
		watts: markedWorking(plan.fixtures, 'watts', nameOf),
		cable,
		volts: voltsOf(plan),
		light: lightOfAll(plan.fixtures, lamps, nameOf),
		purchase,
		replaced,
		total: { low: total('low'), high: total('high') },
		byYear: Array.from({ length: years + 1 }, (_, year) => ({ low: spent(year, 'low'), high: spent(year, 'high') }))
	};
}
