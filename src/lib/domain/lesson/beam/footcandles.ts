/** Footcandles to lux and back. */
import { metresPerFoot } from '../../shared/units';
import { agrees, reckon } from '../reckon';
import { given, withUnit } from '../tape';
import type { ProblemKind, StepRule } from '../types';
import { aheadOf } from './beam-light';

export interface DrawnFootcandles {
	/** What is read, in the unit `from`. */
	reading: number;
	from: 'fc' | 'lx';
}
const factor: StepRule = {
	symbol: 'k',
	label: 'square feet in a square metre',
	expression: '1 ÷ f ^ 2',
	unit: '',
	decimals: 3,
	rule: 'A footcandle is a lumen on each square foot, a lux a lumen on each square metre.',
	source: 'physics'
};
const converted = (to: 'fc' | 'lx'): StepRule => ({
	symbol: 'E',
	label: 'the reading in the other unit',
	expression: to === 'lx' ? 'R × k' : 'R ÷ k',
	unit: to,
	decimals: to === 'lx' ? 1 : 2,
	rule:
		to === 'lx'
			? 'A square metre holds so many square feet, each with its lumens.'
			: 'The lumens of a square metre, shared out over its square feet.',
	source: 'physics'
});
/** A lamp of 1 cd gives 1 fc a foot ahead, by the definition of the unit; what the engine makes of that in lux. */
const luxOfOne = (): number => aheadOf({ centre: 1, n: 1, cosCut: 0 }, metresPerFoot);

export const footcandlesKind: ProblemKind<DrawnFootcandles> = {
	id: 'beam.footcandles',
	lesson: 'beam',
	title: 'Footcandles and lux',
	levels: ['solved', 'one', 'all'],
	draw(random) {
		const from = random.one(['fc', 'lx'] as const);
		return { from, reading: from === 'fc' ? random.stepped(0.2, 12, 0.2) : random.stepped(1, 120, 1) };
	},
	pose({ reading, from }) {
		if (!(reading > 0)) return null;
		const to = from === 'fc' ? 'lx' : 'fc';
		const givens = [
			given('R', 'reading', reading, Number.isInteger(reading) ? 0 : 1, from),
			given('f', 'a foot in metres', metresPerFoot, 4, 'm')
		];
		const steps = reckon(givens, [factor, converted(to)]);
		const engine = to === 'lx' ? reading * luxOfOne() : reading / luxOfOne();
		if (!agrees(engine, steps)) return null;
		const { text, unit, decimals } = steps.at(-1)!;
		const [name, other] = from === 'fc' ? ['footcandles', 'lux'] : ['lux', 'footcandles'];
		return {
			kind: 'beam.footcandles',
			story: `One light meter shows ${name}, another ${other}. The first reads ${withUnit(givens[0]!)}. A foot is ${withUnit(givens[1]!)}; a footcandle is 1 lm on a square foot, a lux 1 lm on a square metre.`,
			ask: `What does the other read at the same place, in ${other} to ${decimals === 1 ? 'one decimal' : 'two decimals'}?`,
			givens,
			steps,
			answer: { type: 'number', text, unit, decimals },
			because: 'The light is the same; only the area that it is counted on differs.',
			engine
		};
	}
};
