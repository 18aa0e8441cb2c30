/** Light straight ahead at another distance: the inverse square. */
import { agrees, reckon } from '../reckon';
import { given, tapeOf, withUnit } from '../tape';
import type { Given, ProblemKind, StepRule } from '../types';
import { aheadOf } from './beam-light';

/** A meter reads `lux` at `from`; what at `to`? Both in metres or in feet, as the learner reads them. */
export interface DrawnFurther {
	lux: number;
	from: number;
	to: number;
}
const rules: StepRule[] = [
	{
		symbol: 'k',
		label: 'times as far',
		expression: 'd2 ÷ d1',
		unit: '',
		decimals: 2,
		rule: 'The new distance over the old one.',
		source: 'physics'
	},
	{
		symbol: 'q',
		label: 'times the area for the same light',
		expression: 'k ^ 2',
		unit: '',
		decimals: 2,
		rule: 'Width and height of the patch both grow so many times.',
		source: 'physics'
	},
	{
		symbol: 'E',
		label: 'light at the new distance',
		expression: 'E1 ÷ q',
		unit: 'lx',
		decimals: 1,
		rule: 'The same light over so many times the area.',
		source: 'physics'
	}
];
const decimalsOf = (value: number): number => (Number.isInteger(value) ? 0 : Number.isInteger(10 * value) ? 1 : 2);

export const furtherKind: ProblemKind<DrawnFurther> = {
	id: 'beam.further',
	lesson: 'beam',
	title: 'Light at another distance',
	levels: ['solved', 'one', 'several', 'all'],
	draw(random, units) {
		const from = units === 'feet' ? random.one([2, 3, 4, 5, 6, 8]) : random.one([0.5, 1, 1.5, 2, 2.5]);
		const times = random.one([0.5, 1.5, 2, 2.5, 3, 4, 5]);
		return { lux: random.stepped(20, 400, 5), from, to: from * times };
	},
	pose({ lux, from, to }, units) {
		if (!(lux > 0 && from > 0 && to > 0) || from === to) return null;
		const { unit, metres } = tapeOf(units).long;
		const givens: Given[] = [
			given('E1', 'light that the meter reads', lux, decimalsOf(lux), 'lx'),
			given('d1', 'distance of the reading', from, decimalsOf(from), unit),
			given('d2', 'new distance', to, decimalsOf(to), unit)
		];
		const steps = reckon(givens, rules);
		// Straight ahead only the candela count: any beam whose middle gives that reading.
		const engine = aheadOf({ centre: lux * (from * metres) ** 2, n: 1, cosCut: 0 }, to * metres);
		// Learners learn to round, not to read a blinding beam.
		if (!agrees(engine, steps) || engine < 0.5 || engine > 2000) return null;
		const [reading, near, far] = givens.map(withUnit);
		return {
			kind: 'beam.further',
			story: `A light meter straight ahead of a small lamp, ${near} away, reads ${reading}. The meter is then held ${far} from the lamp, still straight ahead.`,
			ask: 'What does it read now, in lux to one decimal?',
			givens,
			steps,
			answer: { type: 'number', text: steps.at(-1)!.text, unit: 'lx', decimals: 1 },
			because: 'The light of a small lamp thins out with the square of the distance.',
			engine
		};
	}
};
