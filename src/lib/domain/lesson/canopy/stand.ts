import type { UnitSystem } from '../../shared/units';
import { agrees, reckon } from '../reckon';
import { given, tapeOf, withUnit, type Tape } from '../tape';
import type { Problem, ProblemKind } from '../types';
import { aimBy, type OffsetRule } from './tree';
import { treeNames } from './names';

/** A canopy in the long unit, a trunk in the short one. */
export interface Stand {
	tree: string;
	spread: number;
	trunk: number;
}
/** Rule tree.offset as the trade says it (common practice, no source): spreads in the long unit, offsets in the short one. */
export const saidRule: Readonly<Record<UnitSystem, OffsetRule>> = {
	metres: { nearSpread: 3, nearOffset: 150, farSpread: 7.5, farOffset: 1050 },
	feet: { nearSpread: 10, nearOffset: 6, farSpread: 25, farOffset: 41 }
};
const inMetres = ({ nearSpread, nearOffset, farSpread, farOffset }: OffsetRule, { long, short }: Tape): OffsetRule => ({
	nearSpread: nearSpread * long.metres,
	nearOffset: nearOffset * short.metres,
	farSpread: farSpread * long.metres,
	farOffset: farOffset * short.metres
});

function pose({ tree, spread, trunk }: Stand, units: UnitSystem): Problem | null {
	const tape = tapeOf(units);
	const { long, short } = tape;
	const rule = saidRule[units];
	const one = units === 'metres' ? 1 : 0;
	const [a, s, b, w, S, D] = [
		given('a', 'offset for a narrow canopy', rule.nearOffset, 0, short.unit),
		given('s', 'narrow canopy', rule.nearSpread, one, long.unit),
		given('b', 'offset for a wide canopy', rule.farOffset, 0, short.unit),
		given('w', 'wide canopy', rule.farSpread, one, long.unit),
		given('S', 'canopy of this tree', spread, one, long.unit),
		given('D', 'trunk of this tree', trunk, 0, short.unit)
	];
	const givens = [a, s, b, w, S, D];
	const steps = reckon(givens, [
		{
			symbol: 'k',
			label: `more for each ${long.unit === 'm' ? 'metre' : 'foot'} of canopy`,
			expression: '(b − a) ÷ (w − s)',
			unit: short.unit,
			decimals: units === 'metres' ? 0 : 2,
			rule: 'How much the offset grows from the narrow canopy to the wide one, shared out evenly.',
			source: 'practice'
		},
		{
			symbol: 'o',
			label: 'from the bark',
			expression: 'a + k × (S − s)',
			unit: short.unit,
			decimals: units === 'metres' ? 0 : 1,
			rule: 'The offset of the narrow canopy, and more for what this one is wider.',
			source: 'practice'
		},
		{
			symbol: 'c',
			label: 'from the middle of the trunk',
			expression: 'o + D ÷ 2',
			unit: short.unit,
			decimals: 0,
			rule: 'The offset counts from the bark; half the trunk comes on top.',
			source: 'geometry'
		}
	]);
	const metres = spread * long.metres;
	const sizes = { spread: metres, height: 2 * metres, crownBase: 0.6 * metres, trunk: trunk * short.metres };
	const aim = aimBy(inMetres(rule, tape), sizes, 0.15, units);
	const engine = (aim.offset + sizes.trunk / 2) / short.metres;
	const between = spread > rule.nearSpread && spread < rule.farSpread;
	if (!between || aim.offsetBy !== 'canopy' || !agrees(engine, steps)) return null;
	return {
		kind: 'canopy.stand',
		story: `An uplight stands ${withUnit(a)} from the bark up to a canopy ${withUnit(s)} across, ${withUnit(b)} from a canopy ${withUnit(w)} across, and in proportion between. The canopy of ${tree} is ${withUnit(S)} across, its trunk ${withUnit(D)}.`,
		ask: `How far from the middle of the trunk does the uplight stand, in whole ${short.unit === 'mm' ? 'millimetres' : 'inches'}?`,
		givens,
		steps,
		answer: { type: 'number', text: steps.at(-1)!.text, unit: short.unit, decimals: 0 },
		because: 'Between two known points of a straight line the same step along gives the same step up.',
		engine
	};
}

/** Where the uplight stands for a canopy between the rule's two. */
export const stand: ProblemKind<Stand> = {
	id: 'canopy.stand',
	lesson: 'canopy',
	title: 'Where the uplight stands',
	levels: ['solved', 'one', 'several', 'all'],
	draw(random, units) {
		const metric = units === 'metres';
		return {
			tree: random.one(treeNames),
			spread: random.stepped(metric ? 3.5 : 11, metric ? 7 : 24, metric ? 0.1 : 1),
			trunk: random.stepped(metric ? 120 : 4, metric ? 360 : 14, metric ? 20 : 2)
		};
	},
	pose
};
