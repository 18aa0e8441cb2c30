/** How many lights a walk takes at a spacing, and which spacing comes out even. */
import { agrees, reckon } from '../reckon';
import { given, tapeOf, withUnit } from '../tape';
import type { ProblemKind, StepRule } from '../types';
import { stationsOf } from './row';

/** Lengths in metres or in feet, as the learner reads them. `ends`: a light at both ends, or none at the door. */
export interface DrawnCount {
	length: number;
	spacing: number;
	ends: 'both' | 'first';
}
export interface DrawnEven {
	length: number;
	wanted: number;
}
const practice = { source: 'practice' };
const gaps: StepRule = {
	symbol: 'g',
	label: 'gaps between lights',
	expression: 'L ÷ s',
	unit: '',
	decimals: 0,
	rule: 'The length over the spacing.',
	source: 'physics'
};
const lights: StepRule[] = [
	gaps,
	{
		symbol: 'b',
		label: 'lights with one at either end',
		expression: 'g + 1',
		unit: '',
		decimals: 0,
		rule: 'A row has one light more than it has gaps, as a fence has one post more.',
		source: 'physics'
	}
];
const noneAtDoor: StepRule = {
	symbol: 'n',
	label: 'lights without one at the door',
	expression: 'b − 1',
	unit: '',
	decimals: 0,
	rule: 'The light beside the door serves that end.',
	...practice
};
const decimalsOf = (value: number): number => (Number.isInteger(value) ? 0 : 1);
const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < 1e-9;

export const countKind: ProblemKind<DrawnCount> = {
	id: 'spacing.count',
	lesson: 'spacing',
	title: 'How many lights for a walk',
	levels: ['solved', 'one', 'all'],
	draw(random, units) {
		const spacing = units === 'feet' ? random.one([6, 8, 9, 10, 12]) : random.one([2, 2.5, 3, 3.5, 4]);
		return { spacing, length: spacing * random.whole(2, 12), ends: random.one(['both', 'first'] as const) };
	},
	pose({ length, spacing, ends }, units) {
		if (!(spacing > 0 && length >= spacing) || !isWhole(length / spacing)) return null;
		const { unit, metres } = tapeOf(units).long;
		const givens = [
			given('L', 'length of the walk', length, decimalsOf(length), unit),
			given('s', 'spacing', spacing, decimalsOf(spacing), unit)
		];
		const steps = reckon(givens, ends === 'both' ? lights : [...lights, noneAtDoor]);
		const engine = stationsOf(length * metres, spacing * metres).length - (ends === 'both' ? 0 : 1);
		if (!agrees(engine, steps)) return null;
		const [long, apart] = givens.map(withUnit);
		const where =
			ends === 'both'
				? 'The first stands at one end, the last at the other.'
				: 'The first stands at the street; at the door, where a lamp hangs already, none is wanted.';
		return {
			kind: 'spacing.count',
			story: `A straight walk is ${long} long. Path lights stand on alternate sides, one every ${apart} along it. ${where}`,
			ask: 'How many path lights does the walk take?',
			givens,
			steps,
			answer: { type: 'number', text: steps.at(-1)!.text, unit: '', decimals: 0 },
			because: 'Lights stand at the ends of gaps: there is one more of them than of gaps.',
			engine
		};
	}
};
export const evenKind: ProblemKind<DrawnEven> = {
	id: 'spacing.even',
	lesson: 'spacing',
	title: 'A spacing that comes out even',
	levels: ['solved', 'one', 'all'],
	draw: (random, units) =>
		units === 'feet'
			? { wanted: random.one([8, 10, 12]), length: random.whole(17, 90) }
			: { wanted: random.one([2.5, 3, 3.5]), length: random.stepped(5, 28, 0.5) },
	pose({ length, wanted }, units) {
		const share = length / wanted;
		// Half way between two numbers of gaps either would be as near.
		if (!(wanted > 0 && share >= 1.6) || isWhole(share) || Math.abs((share % 1) - 0.5) < 0.1) return null;
		const { unit, metres } = tapeOf(units).long;
		const decimals = units === 'feet' ? 1 : 2;
		const givens = [
			given('L', 'length of the walk', length, decimalsOf(length), unit),
			given('s', 'spacing that is wanted', wanted, decimalsOf(wanted), unit)
		];
		const steps = reckon(givens, [
			{ ...gaps, label: 'gaps, to the nearest whole number', rule: 'Half a gap cannot be: the nearest whole number.' },
			{
				symbol: 'e',
				label: 'spacing that comes out even',
				expression: 'L ÷ g',
				unit,
				decimals,
				rule: 'The length, shared out over that many gaps.',
				source: 'physics'
			}
		]);
		const engine = length / (stationsOf(length * metres, wanted * metres).length - 1);
		if (!agrees(engine, steps)) return null;
		const [long, apart] = givens.map(withUnit);
		return {
			kind: 'spacing.even',
			story: `A straight walk is ${long} long. Path lights on alternate sides are to stand about ${apart} apart, the first at one end and the last at the other, all gaps alike.`,
			ask: `How far apart do they stand, if that is as near to ${apart} as it goes? In ${unit === 'm' ? 'metres to two decimals' : 'feet to one decimal'}.`,
			givens,
			steps,
			answer: { type: 'number', text: steps.at(-1)!.text, unit, decimals },
			because: 'First a whole number of gaps, then the length shared out over them.',
			engine
		};
	}
};
