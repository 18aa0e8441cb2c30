import { distance } from '../../shared/geometry';
import type { UnitSystem } from '../../shared/units';
import { agrees, reckon } from '../reckon';
import { given, tapeOf, withUnit } from '../tape';
import type { Problem, ProblemKind } from '../types';
import { surveyOf } from './garden';

/** A corner laid out with two sides; the tape across reads `reading`. Learner's long unit. */
export interface Corner {
	what: string;
	along: number;
	out: number;
	reading: number;
}
/** Short sides of right triangles whose sides are all whole (Euclid, Elements, lemma 1 before X.29). */
const pairs = [
	[3, 4],
	[4, 3],
	[6, 8],
	[8, 6],
	[5, 12],
	[12, 5],
	[8, 15]
] as const;
const corners = ['a flower bed', 'a terrace', 'a herb bed', 'a parking bay', 'a sand pit'] as const;

function pose({ what, along, out, reading }: Corner, units: UnitSystem): Problem | null {
	const { unit, metres } = tapeOf(units).long;
	const givens = [
		given('a', 'side along the front', along, 1, unit),
		given('b', 'side straight out', out, 1, unit),
		given('m', 'what the tape across reads', reading, 2, unit)
	];
	const [a, b, m] = givens;
	const steps = reckon(givens, [
		{
			symbol: 'd',
			label: 'across, if the corner is square',
			expression: '√(a ^ 2 + b ^ 2)',
			unit,
			decimals: 2,
			rule: 'Pythagoras: the long side from the two short ones.',
			source: 'geometry'
		},
		{
			symbol: 'e',
			label: 'how much too long it reads',
			expression: 'm − d',
			unit,
			decimals: 2,
			rule: 'What it reads less what it should; less than nothing is too short.',
			source: 'geometry'
		}
	]);
	const { trees } = surveyOf(
		[
			{ x: along * metres, y: 0 },
			{ x: 0, y: out * metres }
		],
		30 * metres,
		units
	);
	const engine = reading - distance(trees[0]!.at, trees[1]!.at) / metres;
	if (!agrees(engine, steps) || Math.abs(engine) < 0.005) return null;
	return {
		kind: 'offset.square',
		story: `One corner of ${what} is pegged out: ${withUnit(a!)} along the front and ${withUnit(b!)} straight out. The tape across, from peg to peg, reads ${withUnit(m!)}.`,
		ask: `How much too long does it read for a square corner? Give ${unit === 'm' ? 'metres' : 'feet'} to two decimals, with a minus sign if it is too short.`,
		givens,
		steps,
		answer: { type: 'number', text: steps.at(-1)!.text, unit, decimals: 2 },
		because:
			engine > 0
				? 'Too long across: the corner is open wider than a square one. Bring the far peg in.'
				: 'Too short across: the corner is closed tighter than a square one. Move the far peg out.',
		engine
	};
}

/** Squareness by the check diagonal. */
export const square: ProblemKind<Corner> = {
	id: 'offset.square',
	lesson: 'offset',
	title: 'Is the corner square? The check across',
	levels: ['solved', 'one', 'all'],
	draw(random, units) {
		const [p, q] = random.one(pairs);
		const times = random.one(units === 'metres' ? [0.2, 0.5, 1] : [0.5, 1, 2]);
		const [along, out] = [p * times, q * times];
		const wrong = random.stepped(0.05, 0.4, 0.05) * random.one([-1, 1]);
		const reading = Math.round(100 * (Math.sqrt(along ** 2 + out ** 2) + wrong)) / 100;
		return { what: random.one(corners), along, out, reading };
	},
	pose
};
