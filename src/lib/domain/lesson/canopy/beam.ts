import { stockBeams } from '../../shared/catalogue';
import type { UnitSystem } from '../../shared/units';
import { stockBeamFor } from '../../placement';
import { agrees, reckon, valueOf } from '../reckon';
import { given, tapeOf, withUnit } from '../tape';
import type { Problem, ProblemKind } from '../types';
import { crownGivens, crownSteps, stakeHeight, type Crown } from './crown';
import { treeNames } from './names';
import { saidRule } from './stand';
import { aimBy } from './tree';

/** Long units. */
export interface Covered extends Crown {
	tree: string;
	spread: number;
}
const choices = stockBeams.map((beam) => `${beam}°`);
/** Nearer to a stock beam than this many degrees a slip in rounding would choose another. */
const doubtful = 0.5;

function pose({ tree, base, height, lamp, spread }: Covered, units: UnitSystem): Problem | null {
	const tape = tapeOf(units);
	const { long, short } = tape;
	const [B, H, l] = crownGivens({ base, height, lamp }, tape);
	const S = given('S', 'canopy, across', spread, 1, long.unit);
	const givens = [B, H, l, S];
	const steps = reckon(givens, [
		...crownSteps(tape),
		{
			symbol: 't',
			label: 'half the angle that the crown fills',
			expression: 'arctan(S ÷ 2 ÷ h)',
			unit: '°',
			decimals: 1,
			rule: 'From under the middle: half the canopy across, the height of its middle up.',
			source: 'geometry'
		},
		{
			symbol: 'n',
			label: 'angle that the crown fills',
			expression: '2 × t',
			unit: '°',
			decimals: 0,
			rule: 'As much to the other side. The stock beam is the narrowest that is not less.',
			source: 'physics'
		}
	]);
	const { nearSpread, nearOffset, farSpread, farOffset } = saidRule[units];
	const rule = {
		nearSpread: nearSpread * long.metres,
		nearOffset: nearOffset * short.metres,
		farSpread: farSpread * long.metres,
		farOffset: farOffset * short.metres
	};
	const sizes = {
		spread: spread * long.metres,
		height: height * long.metres,
		crownBase: base * long.metres,
		trunk: 0.1
	};
	const { needed, beam } = aimBy(rule, sizes, lamp * long.metres, units);
	const isClear = stockBeams.every((one) => Math.abs(one - needed) > doubtful);
	if (base >= height || needed > stockBeams.at(-1)! || !isClear || !agrees(needed, steps)) return null;
	if (stockBeamFor(valueOf(steps.at(-1)!.text)) !== beam) return null;
	return {
		kind: 'canopy.beam',
		story: `The canopy of ${tree} is ${withUnit(S)} across. Its lowest branches are ${withUnit(B)} up, its top ${withUnit(H)}; the lamp of its uplight is ${withUnit(l)} above the ground.`,
		ask: 'Which is the narrowest of these beams that covers the crown at its middle?',
		givens,
		steps,
		answer: { type: 'choice', choices, right: stockBeams.findIndex((one) => one === beam) },
		because: `The crown fills ${steps.at(-1)!.text}°; a narrower beam leaves its edges dark, a wider one lights the sky.`,
		engine: needed
	};
}

/** Which stock beam covers the crown. */
export const beam: ProblemKind<Covered> = {
	id: 'canopy.beam',
	lesson: 'canopy',
	title: 'Which beam covers the crown',
	levels: ['solved', 'one', 'several', 'all'],
	draw(random, units) {
		const metric = units === 'metres';
		return {
			tree: random.one(treeNames),
			base: random.stepped(metric ? 1 : 3, metric ? 3 : 10, metric ? 0.1 : 0.5),
			height: random.stepped(metric ? 6 : 20, metric ? 14 : 46, metric ? 0.2 : 1),
			lamp: stakeHeight(tapeOf(units)),
			spread: random.stepped(metric ? 1.2 : 4, metric ? 6 : 20, metric ? 0.2 : 0.5)
		};
	},
	pose
};
