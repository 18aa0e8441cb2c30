/** The shopping list in five parts, so that two lists can be laid side by side. */
import type { Plan } from '../plan';
import type { ShoppingItem } from '../shopping';
import { fixtureModels } from '../shared/catalogue';
import type { Working } from '../shared/working';
import { sumWorking } from './sums';
import type { Cable, Purchase } from './types';

const models = new Set(fixtureModels.map(({ id }) => id));
/** The line of spares for a model: a lamp for a filament fixture, else a whole fixture. */
export const sparesFor = (plan: Plan, model: string): ShoppingItem | undefined =>
	plan.shopping.items.find(({ id }) => id === `spare-lamp-${model}` || id === `spare-${model}`);

type Part = 'fixtures' | 'spares' | 'transformer' | 'cable' | 'rest';
function partOf({ id, group }: ShoppingItem, plan: Plan): Part {
	if (group === 'cable') return 'cable';
	if (group === 'fixtures' && models.has(id)) return 'fixtures';
	if (id === plan.supply?.model || id === 'transformer-in-hand') return 'transformer';
	return plan.fixtures.some(({ model }) => id === `spare-lamp-${model}` || id === `spare-${model}`) ? 'spares' : 'rest';
}
const labels: Record<Part, string> = {
	fixtures: 'Fixtures with their lamps',
	spares: 'Spare lamps or fixtures',
	transformer: 'Transformer',
	cable: 'Cable',
	rest: 'Connectors, control, crossings and the rest'
};
function partWorking(plan: Plan, part: Part): Working {
	const { items, currency } = plan.shopping;
	return sumWorking(
		items
			.filter((item) => partOf(item, plan) === part && item.cost > 0)
			.map(({ name, quantity, unitPrice, cost }) => ({
				name: `${name}, ${quantity} at ${unitPrice.toFixed(2)}`,
				value: cost,
				unit: currency
			})),
		{
			label: labels[part],
			unit: currency,
			decimals: 2,
			rule: 'These lines of the shopping list, added up; what you have in hand costs nothing.',
			source: 'catalogue'
		}
	);
}
const asInput = (from: Working) => ({ name: from.label, value: from.value, unit: from.unit, from });

export function purchaseOf(plan: Plan): { purchase: Purchase; cable: Cable } {
	const part = (name: Part) => partWorking(plan, name);
	const [fixtures, spares, transformer, cable, rest] = [
		part('fixtures'),
		part('spares'),
		part('transformer'),
		part('cable'),
		part('rest')
	];
	const total = sumWorking([fixtures, spares, transformer, cable, rest].map(asInput), {
		label: 'To buy',
		unit: plan.shopping.currency,
		decimals: 2,
		rule: 'The whole shopping list, by parts.',
		source: 'catalogue'
	});
	return {
		purchase: { fixtures, spares, transformer, rest, total },
		cable: { sizes: cableSizes(plan), price: cable }
	};
}

/** Metres laid by size, slack included, thickest use first come. */
function cableSizes(plan: Plan): Cable['sizes'] {
	const sizes = new Map<string, Plan['runs']>();
	for (const run of plan.runs) {
		const key = `${run.cable.system} ${run.cable.size}`;
		sizes.set(key, [...(sizes.get(key) ?? []), run]);
	}
	return [...sizes.values()].map((runs) => ({
		size: runs[0]!.cable,
		metres: sumWorking(
			runs.map((run) => ({
				name: run.name,
				value: run.segments.reduce((sum, { length }) => sum + length, 0),
				unit: 'm'
			})),
			{
				label: 'Cable laid',
				unit: 'm',
				decimals: 2,
				rule: 'The cable of the runs of this size, slack included.',
				source: 'physics'
			}
		)
	}));
}
