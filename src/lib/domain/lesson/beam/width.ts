/** How wide a beam is so far away. */
import { agrees, reckon } from '../reckon';
import { given, tapeOf, withUnit } from '../tape';
import type { Given, ProblemKind, StepRule } from '../types';
import { beamWidth } from './beam-light';

/** `distance` in metres or in feet, as the learner reads it; the angle in degrees. */
export interface DrawnWidth {
	angle: number;
	distance: number;
}
const rulesIn = (unit: string): StepRule[] => [
	{
		symbol: 'h',
		label: 'half the beam angle',
		expression: 'θ ÷ 2',
		unit: '°',
		decimals: 1,
		rule: 'From the axis to one edge it is half the angle.',
		source: 'physics'
	},
	{
		symbol: 'r',
		label: 'from the middle to the edge',
		expression: 'd × tan(h)',
		unit,
		decimals: 2,
		rule: 'Tangent is the side across from the angle over the side along it.',
		source: 'physics'
	},
	{
		symbol: 'w',
		label: 'width of the beam',
		expression: '2 × r',
		unit,
		decimals: 1,
		rule: 'From edge to edge it is twice as much.',
		source: 'physics'
	}
];
export const widthKind: ProblemKind<DrawnWidth> = {
	id: 'beam.width',
	lesson: 'beam',
	title: 'Width of a beam',
	levels: ['solved', 'one', 'several', 'all'],
	draw: (random, units) => ({
		angle: random.one([10, 12, 15, 20, 24, 30, 36, 40, 45, 50, 60]),
		distance: units === 'feet' ? random.stepped(3, 24, 0.5) : random.stepped(1, 8, 0.25)
	}),
	pose({ angle, distance }, units) {
		const { unit, metres } = tapeOf(units).long;
		const givens: Given[] = [
			given('θ', 'beam angle', angle, 0, '°'),
			given('d', 'distance', distance, Number.isInteger(distance * 10) ? 1 : 2, unit)
		];
		if (!(angle > 0 && angle < 120 && distance > 0)) return null;
		const steps = reckon(givens, rulesIn(unit));
		const engine = beamWidth(angle, distance * metres) / metres;
		if (!agrees(engine, steps)) return null;
		return {
			kind: 'beam.width',
			story: `A spot with a beam angle of ${angle}° shines straight at a wall ${withUnit(givens[1]!)} away.`,
			ask: 'How wide is its beam on the wall, to one decimal?',
			givens,
			steps,
			answer: { type: 'number', text: steps.at(-1)!.text, unit, decimals: 1 },
			because: 'Half the beam angle and the distance make a right triangle; the beam is two of them side by side.',
			engine
		};
	}
};
