/** The smallest transformer of a list that carries a load for hours. */
import { choiceProblem, given } from '../series/problem';
import type { ProblemKind, StepRule } from '../types';
import { chosenFor, fraction, ratings } from './bank';
import { totalVoltAmps, totalWatts } from './rules';

export interface SmallestDrawn {
	lamps: number;
	watts: number;
	powerFactor: number;
	/** VA, ascending; of the catalogue. */
	rated: number[];
}
const stepsFor = (watts: number): StepRule[] => [
	totalWatts(watts),
	totalVoltAmps,
	{
		symbol: 'R',
		label: 'rating it needs at least',
		expression: `S ÷ ${fraction}`,
		unit: 'VA',
		decimals: 1,
		rule: `A load that stays on for hours may take ${100 * fraction} % of the rating.`,
		source: 'nec210_19'
	}
];
const ratingText = (voltAmps: number): string => `${voltAmps} VA`;

export const smallestKind: ProblemKind<SmallestDrawn> = {
	id: 'load.smallest',
	lesson: 'load',
	title: 'The smallest transformer that will do',
	levels: ['solved', 'one', 'several', 'all'],
	draw: (random) => ({
		lamps: random.whole(5, 20),
		watts: random.one([3, 4, 5, 7, 9]),
		powerFactor: random.one([0.6, 0.7, 0.75, 0.8, 0.9]),
		rated: ratings.slice(0, 5)
	}),
	pose({ lamps, watts, powerFactor, rated }) {
		if (!(powerFactor > 0 && powerFactor <= 1)) return null;
		const voltAmps = watts / powerFactor;
		const needed = (lamps * voltAmps) / fraction;
		const { transformer, problems } = chosenFor(lamps * voltAmps, rated);
		// None of the list will do, or a rounded step decides between two.
		if (problems.length > 0 || rated.some((one) => Math.abs(one - needed) < 0.5)) return null;
		return choiceProblem(
			{
				kind: smallestKind.id,
				story: `${lamps} LED lamps of ${watts} W with power factor ${powerFactor} are on for hours every night. Transformers of ${rated.join(', ')} VA are sold.`,
				ask: 'Which is the smallest that may feed them?',
				givens: [
					given('n', 'lamps', lamps, ''),
					given('W', 'watts of one', watts, 'W'),
					given('k', 'power factor', powerFactor, '')
				],
				rules: stepsFor(watts),
				because: `The first rating at or above what is needed is ${transformer.voltAmps} VA.`,
				engine: transformer.voltAmps
			},
			ratingText(transformer.voltAmps),
			rated.map(ratingText)
		);
	}
};
