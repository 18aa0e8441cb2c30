/** Figures of the rules that a person may set, and what the lights may come to. */
import type { Plan } from '../../plan';
import { formatFigure, labelOf } from '../../shared/rule-words';
import { rules } from '../../shared/rules';
import { mayBe, partsOfKey, settings, usual, type SettableKey } from '../../shared/settings';
import { budgetSchema, capital, type Yard } from '../../yard';
import { inputOf, numberInput, type Spot } from './input';
import { rangeOf } from './schema-range';
import { lengthStops, numberStops, stopsBy } from './stops';
import type { YardInput } from './types';

type Told = Yard['rules'];
/** The figures told with one set; the trade's own is not told, and none at all is no answer. */
function withFigure(told: Told, key: SettableKey, value: number): Told {
	const { [key]: _, ...others } = told ?? {};
	const next = value === usual(key) ? others : { ...others, [key]: value };
	return Object.keys(next).length > 0 ? next : undefined;
}
/** What is written after a number of each unit. */
const after = { m: '', deg: '°', ratio: 'to 1', share: '%', ground: 'times open ground' } as const;
function ruleInput(spot: Spot, key: SettableKey): YardInput {
	const { unit, least, most } = settings[key];
	const told = spot.yard.rules?.[key];
	const start = told !== undefined && mayBe(key, told) ? told : usual(key);
	const range = { least, most };
	return inputOf(spot, {
		id: `rules.${key}`,
		path: ['rules'],
		label: capital(labelOf(key)),
		kind: unit === 'm' ? 'length' : 'number',
		unit: after[unit],
		times: unit === 'share' ? 100 : 1,
		start,
		...range,
		stops:
			unit === 'm'
				? lengthStops(start, range, spot.units)
				: unit === 'share'
					? stopsBy(0.01, start, range)
					: numberStops(start, range),
		text: (value) => formatFigure(value, unit, spot.units),
		tell: (value, yard) => withFigure(yard.rules, key, value)
	});
}
export const ruleInputs = (yard: Yard, { site, fixtures }: Plan): YardInput[] =>
	fixtures.length === 0
		? []
		: (Object.keys(settings) as SettableKey[]).map((key) => {
				const [rule] = partsOfKey(key);
				return ruleInput(
					{ yard, units: site.units, of: `the rule “${rules[rule].title}”`, about: `rule/${rule}` },
					key
				);
			});

/** The limits that are in force. */
export function budgetInputs(yard: Yard, { site, shopping }: Plan): YardInput[] {
	const { kind, fixtures, money } = yard.power.budget ?? {};
	const spot: Spot = { yard, units: site.units, of: 'the budget', about: 'budget' };
	const { shape } = budgetSchema;
	const limits = (most: number | undefined, held: 'fixtures' | 'money') =>
		most !== undefined && (kind === held || kind === 'both' || kind === undefined);
	return [
		...(limits(fixtures, 'fixtures')
			? [
					numberInput(spot, ['power', 'budget', 'fixtures'], 'Lights at most', {
						range: rangeOf(shape.fixtures),
						unit: 'lights',
						taken: fixtures!,
						window: { least: 1, most: Math.max(12, 2 * fixtures!) },
						whole: true
					})
				]
			: []),
		...(limits(money, 'money')
			? [
					numberInput(spot, ['power', 'budget', 'money'], 'Money at most', {
						range: rangeOf(shape.money),
						unit: shopping.currency,
						taken: money!,
						window: { least: 1, most: 2 * money! },
						whole: true
					})
				]
			: [])
	];
}
