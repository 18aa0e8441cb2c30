import type { UnitSystem } from '../../shared/units';
import { rules } from '../../shared/rules';
import { reckon, valueOf } from '../reckon';
import { given, tapeOf, withUnit } from '../tape';
import type { Problem, ProblemKind } from '../types';
import { litDrive } from './drive';

/** Long units. `first`: of the pair at the mouth from the street; `last`: kept clear at the other end. */
export interface Pairs {
	length: number;
	first: number;
	last: number;
	spacing: number;
}
/** Nearer to a whole number of gaps than this a slip in rounding would count one more or less. */
const doubtful = 0.08;

function pose({ length, first, last, spacing }: Pairs, units: UnitSystem): Problem | null {
	const { unit, metres } = tapeOf(units).long;
	const [L, m, e, s] = [
		given('L', 'length of the drive', length, 1, unit),
		given('m', 'first pair, in from the street', first, 1, unit),
		given('e', 'last pair, from the other end', last, 1, unit),
		given('s', 'least from pair to pair', spacing, 1, unit)
	];
	const givens = [L, m, e, s];
	const steps = reckon(givens, [
		{
			symbol: 'r',
			label: 'from the first pair to the last',
			expression: 'L − m − e',
			unit,
			decimals: 1,
			rule: 'The drive less what stays free at both ends.',
			source: 'geometry'
		},
		{
			symbol: 'g',
			label: 'gaps of the least length that go into it',
			expression: 'r ÷ s',
			unit: '',
			decimals: 1,
			rule: 'Only whole gaps count: rounded down, so that none is too short. One pair more than gaps.',
			source: 'practice'
		}
	]);
	const { long, longFrom } = rules['drive.spacing'].figures;
	// On a long drive the plan spaces wider: another rule.
	if (length * metres > longFrom || spacing * metres >= long) return null;
	const { lights } = litDrive(
		{ width: 3, length: length * metres, flare: first * metres, spacing: spacing * metres },
		units
	);
	const gaps = valueOf(steps[1]!.text);
	const whole = Math.floor(gaps);
	const pairs = whole + 1;
	if (whole < 1 || gaps - whole < doubtful || gaps - whole > 1 - doubtful || lights.length !== 2 * pairs) return null;
	const choices = [pairs - 1, pairs, pairs + 1, pairs + 2].map(String);
	return {
		kind: 'setback.pairs',
		story: `Lamps stand in pairs along a drive ${withUnit(L)} long. The first pair is ${withUnit(m)} in from the street, the last ${withUnit(e)} before the other end, and no two pairs are nearer to each other than ${withUnit(s)}.`,
		ask: 'How many pairs are there at most?',
		givens,
		steps,
		answer: { type: 'choice', choices, right: choices.indexOf(String(pairs)) },
		because: `${whole} whole ${whole === 1 ? 'gap goes' : 'gaps go'} in, so there are ${pairs} pairs: a pair at each end of every gap.`,
		engine: lights.length / 2
	};
}

/** How many pairs stand along a drive. */
export const pairs: ProblemKind<Pairs> = {
	id: 'setback.pairs',
	lesson: 'setback',
	title: 'Pairs along a drive',
	levels: ['solved', 'one', 'all'],
	draw(random, units) {
		const metric = units === 'metres';
		return {
			length: random.stepped(metric ? 7 : 24, metric ? 20 : 65, 0.5),
			first: random.one(metric ? [1, 1.5, 2] : [3, 4, 6]),
			// What the plan keeps free before a garage.
			last: metric ? 1.5 : 5,
			spacing: random.one(metric ? [3, 3.5, 4] : [10, 12, 14])
		};
	},
	pose
};
