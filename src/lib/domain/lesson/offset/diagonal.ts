import { distance } from '../../shared/geometry';
import type { UnitSystem } from '../../shared/units';
import { agrees, reckon } from '../reckon';
import { given, tapeOf, withUnit } from '../tape';
import type { Given, Problem, ProblemKind } from '../types';
import { surveyOf } from './garden';

/** Along and out of two places, in the learner's long unit; out is negative behind the front. */
export interface TwoPlaces {
	things: readonly [string, string];
	from: readonly [along: number, out: number];
	to: readonly [along: number, out: number];
}
const things = [
	'the maple',
	'the gatepost',
	'the bird bath',
	'the bench',
	'the birch',
	'the tap',
	'the path light'
] as const;
const street = 30;

const outWords = (out: Given): string =>
	out.text.startsWith('−') ? `out ${withUnit(out)}, behind the line of the front` : `${withUnit(out)} out`;

function pose({ things: [one, other], from, to }: TwoPlaces, units: UnitSystem): Problem | null {
	const { unit, metres } = tapeOf(units).long;
	const decimals = 1;
	const [x1, y1] = [
		given('x₁', `along, of ${one}`, from[0], decimals, unit),
		given('y₁', `out, of ${one}`, from[1], decimals, unit)
	];
	const [x2, y2] = [
		given('x₂', `along, of ${other}`, to[0], decimals, unit),
		given('y₂', `out, of ${other}`, to[1], decimals, unit)
	];
	const givens = [x1, y1, x2, y2];
	const step = (symbol: string, label: string, expression: string, rule: string) => ({
		symbol,
		label,
		expression,
		rule,
		unit,
		decimals: 2,
		source: 'geometry'
	});
	const steps = reckon(givens, [
		step('p', 'how much further along', 'x₂ − x₁', 'The first short side: the difference along the front.'),
		step(
			'q',
			'how much further out',
			'y₂ − y₁',
			'The second short side: the difference outwards. Less than nothing is nearer.'
		),
		step('d', 'straight across', '√(p ^ 2 + q ^ 2)', 'Pythagoras: the long side from the two short ones.')
	]);
	const { trees } = surveyOf(
		[from, to].map(([along, out]) => ({ x: along * metres, y: out * metres })),
		street * metres,
		units
	);
	const engine = distance(trees[0]!.at, trees[1]!.at) / metres;
	if (!agrees(engine, steps)) return null;
	return {
		kind: 'offset.diagonal',
		story: `From the left corner of the house, ${one} stands ${withUnit(x1)} along the front and ${outWords(y1)}. For ${other} the tapes read ${withUnit(x2)} along and ${outWords(y2)}.`,
		ask: `How far is it straight from ${one} to ${other}? Give ${unit === 'm' ? 'metres' : 'feet'} to two decimals.`,
		givens,
		steps,
		answer: { type: 'number', text: steps.at(-1)!.text, unit, decimals: 2 },
		because:
			'Along and out are at a right angle, so the differences are the short sides of a triangle with a square corner.',
		engine
	};
}

/** The distance between two places told by along and out. */
export const diagonal: ProblemKind<TwoPlaces> = {
	id: 'offset.diagonal',
	lesson: 'offset',
	title: 'Distance between two places told by along and out',
	levels: ['solved', 'one', 'several', 'all'],
	draw(random, units) {
		const [one, other] = random.shuffled(things);
		const far = units === 'metres' ? 12 : 40;
		const along = () => random.stepped(0.5, far, 0.5);
		const from = along();
		let to = along();
		while (to === from) to = along();
		const near = random.stepped(0.5, far / 2, 0.5);
		// Now and then behind the front: then out is negative.
		const second = random.whole(1, 3) === 1 ? -random.stepped(0.5, far / 3, 0.5) : random.stepped(0.5, far / 2, 0.5);
		return { things: [one!, other!], from: [from, near], to: [to, second === near ? near + 1 : second] };
	},
	pose
};
