/** How many lamps a transformer may feed for hours. */
import { choiceProblem, given } from '../series/problem';
import type { ProblemKind, StepRule } from '../types';
import { bank, fraction, limitOf, mostLamps, voltAmpsOf } from './bank';
import { lampVoltAmps } from './rules';

export interface RoomDrawn {
	rated: number;
	watts: number;
	powerFactor: number;
}
const steps: StepRule[] = [
	{
		symbol: 'M',
		label: 'volt-amperes it may carry for hours',
		expression: `${fraction} × R`,
		unit: 'VA',
		decimals: 1,
		rule: `A load that stays on for hours may take ${100 * fraction} % of the rating.`,
		source: 'nec210_19'
	},
	lampVoltAmps,
	{
		symbol: 'N',
		label: 'lamps, before rounding down',
		expression: 'M ÷ S',
		unit: '',
		decimals: 2,
		rule: 'What it may carry, over what one lamp draws; only whole lamps count.',
		source: 'physics'
	}
];
const lampsText = (lamps: number): string => `${lamps} lamps`;

export const roomKind: ProblemKind<RoomDrawn> = {
	id: 'load.room',
	lesson: 'load',
	title: 'How many lamps a transformer may feed',
	levels: ['solved', 'one', 'several', 'all'],
	draw: (random) => ({
		rated: random.one([60, 100, 150, 200, 300]),
		watts: random.one([3, 4, 5, 6, 7, 9, 10, 12]),
		powerFactor: random.one([0.5, 0.6, 0.7, 0.75, 0.9])
	}),
	pose({ rated, watts, powerFactor }) {
		if (!(powerFactor > 0 && powerFactor <= 1)) return null;
		const voltAmps = watts / powerFactor;
		const most = mostLamps(rated, voltAmps);
		const solution = bank(most, voltAmps);
		const whole = limitOf(rated) / voltAmps;
		// Where the amperes of the secondary come first, or a rounded step decides, it is another problem.
		if (!solution || most < 2 || most !== Math.floor(whole) || whole - most < 0.02) return null;
		// What comes of leaving out the 80 %, or of taking watts for volt-amperes, or of rounding up.
		const others = [Math.floor(rated / voltAmps), Math.floor(limitOf(rated) / watts), most + 1];
		const choices = [...new Set([most, ...others])].toSorted((a, b) => a - b);
		if (choices.length < 3) return null;
		return choiceProblem(
			{
				kind: roomKind.id,
				story: `A transformer is rated ${rated} VA. Its lamps are LED lamps of ${watts} W with power factor ${powerFactor}, on for hours every night.`,
				ask: 'How many of them may it feed at most?',
				givens: [
					given('R', 'rating of the transformer', rated, 'VA'),
					given('W', 'watts of one lamp', watts, 'W'),
					given('k', 'power factor', powerFactor, '')
				],
				rules: steps,
				because: `${most} lamps draw ${voltAmpsOf(solution).toFixed(1)} VA; one more would pass the ${Number(limitOf(rated).toFixed(1))} VA it may carry for hours.`,
				engine: most
			},
			lampsText(most),
			choices.map(lampsText)
		);
	}
};
