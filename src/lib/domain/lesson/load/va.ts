/** Volt-amperes of lamps of given watts and power factor. */
import { given, numberProblem } from '../series/problem';
import type { ProblemKind } from '../types';
import { bank, voltAmpsOf } from './bank';
import { totalVoltAmps, totalWatts } from './rules';

export interface VaDrawn {
	lamps: number;
	watts: number;
	powerFactor: number;
}
export const vaKind: ProblemKind<VaDrawn> = {
	id: 'load.va',
	lesson: 'load',
	title: 'Volt-amperes of lamps',
	levels: ['solved', 'one', 'all'],
	draw: (random) => ({
		lamps: random.whole(3, 12),
		watts: random.one([2, 2.5, 3, 4, 5, 7, 9, 12]),
		powerFactor: random.one([0.5, 0.6, 0.7, 0.75, 0.8, 0.9])
	}),
	pose({ lamps, watts, powerFactor }) {
		if (!(powerFactor > 0 && powerFactor <= 1)) return null;
		const solution = bank(lamps, watts / powerFactor);
		return numberProblem({
			kind: vaKind.id,
			story: `A garden has ${lamps} LED ${lamps === 1 ? 'lamp' : 'lamps'} of ${watts} W. Their power factor is ${powerFactor}.`,
			ask: 'How many volt-amperes do they draw together?',
			givens: [
				given('n', 'lamps', lamps, ''),
				given('W', 'watts of one', watts, 'W'),
				given('k', 'power factor', powerFactor, '')
			],
			rules: [totalWatts(watts), totalVoltAmps],
			because: 'A transformer warms up by the amps, and the amps go by volt-amperes, not by watts.',
			engine: solution && voltAmpsOf(solution)
		});
	}
};
