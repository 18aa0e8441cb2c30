import type { UnitSystem } from '../../shared/units';
import { agrees, reckon } from '../reckon';
import { given, tapeOf, withUnit } from '../tape';
import type { Problem, ProblemKind } from '../types';
import { crownGivens, crownSteps, stakeHeight, type Crown } from './crown';
import { treeNames } from './names';
import { aimBy } from './tree';

/** `aside`: from the middle of the trunk to the lamp, short unit. */
export interface Leaning extends Crown {
	tree: string;
	aside: number;
}

function pose({ tree, base, height, lamp, aside }: Leaning, units: UnitSystem): Problem | null {
	const tape = tapeOf(units);
	const { long, short } = tape;
	const [B, H, l] = crownGivens({ base, height, lamp }, tape);
	const a = given('a', 'from the middle of the trunk to the lamp', aside, 0, short.unit);
	const givens = [B, H, l, a];
	const steps = reckon(givens, [
		...crownSteps(tape),
		{
			symbol: 'k',
			label: `the same in ${short.unit === 'mm' ? 'millimetres' : 'inches'}`,
			expression: `${short.perLong} × h`,
			unit: short.unit,
			decimals: 0,
			rule: 'Both lengths of the triangle in one unit.',
			source: 'geometry'
		},
		{
			symbol: 't',
			label: 'lean from upright',
			expression: 'arctan(a ÷ k)',
			unit: '°',
			decimals: 1,
			rule: 'The tangent of the lean is the side across over the side up.',
			source: 'geometry'
		}
	]);
	// A slim tree whose rule gives just this distance, whatever its canopy.
	const trunk = 0.1;
	const offset = aside * short.metres - trunk / 2;
	const sizes = { spread: 2, height: height * long.metres, crownBase: base * long.metres, trunk };
	const rule = { nearSpread: 3, nearOffset: offset, farSpread: 7.5, farOffset: offset };
	const aim = aimBy(rule, sizes, lamp * long.metres, units);
	if (base >= height || aim.offsetBy !== 'canopy' || aim.held || !agrees(aim.lean, steps)) return null;
	return {
		kind: 'canopy.lean',
		story: `The lowest branches of ${tree} are ${withUnit(B)} up, its top ${withUnit(H)}. An uplight stands ${withUnit(a)} from the middle of the trunk, its lamp ${withUnit(l)} above the ground. It is aimed at the middle of the crown.`,
		ask: 'How many degrees does it lean from upright? Give one decimal.',
		givens,
		steps,
		answer: { type: 'number', text: steps.at(-1)!.text, unit: '°', decimals: 1 },
		because: 'Lamp, trunk and the middle of the crown make a triangle with a square corner at the trunk.',
		engine: aim.lean
	};
}

/** How far an uplight leans to look at the middle of the crown. */
export const lean: ProblemKind<Leaning> = {
	id: 'canopy.lean',
	lesson: 'canopy',
	title: 'How far the uplight leans',
	levels: ['solved', 'one', 'several', 'all'],
	draw(random, units) {
		const metric = units === 'metres';
		return {
			tree: random.one(treeNames),
			base: random.stepped(metric ? 1 : 3, metric ? 3 : 10, metric ? 0.1 : 0.5),
			height: random.stepped(metric ? 5 : 16, metric ? 11 : 36, metric ? 0.2 : 1),
			lamp: stakeHeight(tapeOf(units)),
			aside: random.stepped(metric ? 250 : 10, metric ? 1200 : 48, metric ? 50 : 2)
		};
	},
	pose
};
