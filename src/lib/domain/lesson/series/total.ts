/** Three resistances: one after another, the current; side by side, the resistance of all. */
import type { ProblemKind, StepRule } from '../types';
import { besideNetwork, loop, resistor, solved } from './network';
import { decimalsFor, given, numberProblem } from './problem';

export interface TotalDrawn {
	arrangement: 'loop' | 'beside';
	volts: number;
	ohms: number[];
}
const source = 'physics';
const names = ['first', 'second', 'third', 'fourth', 'fifth'];

const loopRules = ({ volts, ohms }: TotalDrawn): StepRule[] => {
	const total = ohms.reduce((sum, one) => sum + one, 0);
	return [
		{
			symbol: 'R',
			label: 'resistance of all',
			expression: ohms.map((_, k) => `R${k + 1}`).join(' + '),
			unit: 'Ω',
			decimals: 0,
			rule: 'In series the ohms add up.',
			source
		},
		{
			symbol: 'I',
			label: 'amps in the loop',
			expression: 'V ÷ R',
			unit: 'A',
			decimals: decimalsFor(volts / total),
			rule: 'Amps are volts over ohms.',
			source
		},
		{
			symbol: 'V1',
			label: 'volts across the first',
			expression: 'I × R1',
			unit: 'V',
			decimals: 1,
			rule: 'Volts are amps times ohms.',
			source
		}
	];
};
const besideRules = ({ volts, ohms }: TotalDrawn): StepRule[] => {
	const decimals = decimalsFor(volts / Math.max(...ohms));
	const amps = ohms.reduce((sum, one) => sum + volts / one, 0);
	return [
		...ohms.map((_, k): StepRule => ({
			symbol: `I${k + 1}`,
			label: `amps through the ${names[k] ?? 'next'}`,
			expression: `V ÷ R${k + 1}`,
			unit: 'A',
			decimals,
			rule: 'Each has the whole volts: amps are volts over ohms.',
			source
		})),
		{
			symbol: 'I',
			label: 'amps of all',
			expression: ohms.map((_, k) => `I${k + 1}`).join(' + '),
			unit: 'A',
			decimals,
			rule: 'In parallel the currents add up.',
			source
		},
		{
			symbol: 'R',
			label: 'resistance of all',
			expression: 'V ÷ I',
			unit: 'Ω',
			decimals: Math.min(2, decimalsFor(volts / amps)),
			rule: 'Ohms are volts for each amp.',
			source
		}
	];
};
/** What the engine gives: volts across the first of a loop; ohms of all side by side. */
function engineOf({ arrangement, volts, ohms }: TotalDrawn): number | null {
	if (arrangement === 'loop') return loop(volts, ohms)?.volts[0] ?? null;
	const solution = solved(besideNetwork(volts, ohms.map(resistor)));
	return solution && solution.volts[0]! / solution.sourceAmps;
}
const list = (ohms: readonly number[]): string =>
	`${ohms
		.slice(0, -1)
		.map((one) => `${one} Ω`)
		.join(', ')} and ${ohms.at(-1)} Ω`;

export const totalKind: ProblemKind<TotalDrawn> = {
	id: 'series.total',
	lesson: 'series',
	title: 'Three resistances in series or in parallel',
	levels: ['solved', 'one', 'several', 'all'],
	draw: (random) => ({
		arrangement: random.one(['loop', 'beside'] as const),
		volts: random.one([6, 12, 15, 24]),
		ohms: random.shuffled([4, 5, 6, 8, 10, 12, 15, 20, 24, 30]).slice(0, 3)
	}),
	pose(drawn) {
		const { arrangement, volts, ohms } = drawn;
		if (ohms.length < 2 || ohms.length > names.length) return null;
		const isLoop = arrangement === 'loop';
		return numberProblem({
			kind: totalKind.id,
			story: `Resistors of ${list(ohms)} are connected ${isLoop ? 'in series, one after another,' : 'in parallel, side by side,'} on ${volts} V.`,
			ask: isLoop ? 'How many volts are across the first?' : 'How many ohms do they make together?',
			givens: [
				...ohms.map((one, k) => given(`R${k + 1}`, `the ${names[k]} resistor`, one, 'Ω')),
				given('V', 'volts of the supply', volts, 'V')
			],
			rules: isLoop ? loopRules(drawn) : besideRules(drawn),
			because: isLoop
				? 'One current goes through all, so each takes volts by its ohms, and together they take the supply’s.'
				: 'Each one more is one more way for the current, so together they have fewer ohms than the least of them.',
			engine: engineOf(drawn)
		});
	}
};
