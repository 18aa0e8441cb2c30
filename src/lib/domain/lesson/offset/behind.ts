import { distance } from '../../shared/geometry';
import type { UnitSystem } from '../../shared/units';
import { agrees, reckon } from '../reckon';
import { given, tapeOf, withUnit } from '../tape';
import type { Problem, ProblemKind } from '../types';
import { surveyOf } from './garden';

/** Long units. The street's edge and a light in front of the house; a tree behind its line, measured from the street. */
export interface Behind {
	tree: string;
	street: number;
	fromStreet: number;
	light: number;
}
const trees = ['a pear tree', 'an oak', 'a birch', 'a cherry', 'a pine'] as const;

function pose({ tree, street, fromStreet, light }: Behind, units: UnitSystem): Problem | null {
	if (fromStreet <= street || light >= street) return null;
	const { unit, metres } = tapeOf(units).long;
	const [s, b, l] = [
		given('S', 'out, of the street', street, 1, unit),
		given('b', `from the street back to ${tree}`, fromStreet, 1, unit),
		given('l', 'out, of the light', light, 1, unit)
	];
	const givens = [s, b, l];
	const step = { unit, decimals: 1, source: 'geometry' };
	const steps = reckon(givens, [
		{
			...step,
			symbol: 'o',
			label: `out, of ${tree}`,
			expression: 'S − b',
			rule: 'From the street back towards the house, out grows less; behind the line of the front it is less than nothing.'
		},
		{
			...step,
			symbol: 'g',
			label: 'from tree to light, front to back',
			expression: 'l − o',
			rule: 'The difference of the two outs; to take away less than nothing is to add.'
		}
	]);
	const site = surveyOf(
		[light, street - fromStreet].map((out) => ({ x: 0, y: out * metres })),
		street * metres,
		units
	);
	const engine = distance(site.trees[0]!.at, site.trees[1]!.at) / metres;
	if (!agrees(engine, steps)) return null;
	return {
		kind: 'offset.behind',
		story: `The street is ${withUnit(s)} out from the line of the house front. Beside the house ${tree} stands ${withUnit(b)} back from the street. A light stands right in front of it, ${withUnit(l)} out.`,
		ask: `How far is the light from the tree? Give ${unit === 'm' ? 'metres' : 'feet'} to one decimal.`,
		givens,
		steps,
		answer: { type: 'number', text: steps.at(-1)!.text, unit, decimals: 1 },
		because: `The tree stands behind the front, so its out is negative: ${withUnit(steps[0]!)}.`,
		engine
	};
}

/** Out of a place behind the line of the front, and how far it is from one before it. */
export const behind: ProblemKind<Behind> = {
	id: 'offset.behind',
	lesson: 'offset',
	title: 'Behind the line of the front',
	levels: ['solved', 'one', 'all'],
	draw(random, units) {
		const metric = units === 'metres';
		const street = random.stepped(metric ? 5 : 16, metric ? 12 : 40, 0.5);
		return {
			tree: random.one(trees),
			street,
			fromStreet: street + random.stepped(0.5, metric ? 5 : 16, 0.5),
			light: random.stepped(1, street - 1, 0.5)
		};
	},
	pose
};
