/** Amperes that lamps take at a tap, against what one secondary may give. */
import { given, numberProblem } from '../series/problem';
import type { ProblemKind, StepRule } from '../types';
import { bank, mostAmps } from './bank';
import { totalVoltAmps, totalWatts } from './rules';

export interface AmpsDrawn {
	lamps: number;
	watts: number;
	powerFactor: number;
	/** Of the tap. */
	volts: number;
}
const amps: StepRule = {
	symbol: 'I',
	label: 'amps at the tap',
	expression: 'S ÷ V',
	unit: 'A',
	decimals: 1,
	rule: 'Amps are volt-amperes over volts.',
	source: 'physics'
};
export const ampsKind: ProblemKind<AmpsDrawn> = {
	id: 'load.amps',
	lesson: 'load',
	title: 'Amps at a tap',
	levels: ['solved', 'one', 'several', 'all'],
	draw: (random) => ({
		lamps: random.whole(6, 24),
		watts: random.one([3, 4, 5, 7, 9, 12]),
		powerFactor: random.one([0.6, 0.7, 0.75, 0.8, 0.9]),
		volts: random.one([12, 13, 14, 15])
	}),
	pose({ lamps, watts, powerFactor, volts }) {
		if (!(powerFactor > 0 && powerFactor <= 1)) return null;
		const engine = bank(lamps, watts / powerFactor, volts)?.sourceAmps ?? null;
		if (engine === null) return null;
		const isOver = engine > mostAmps;
		return numberProblem({
			kind: ampsKind.id,
			story: `${lamps} LED lamps of ${watts} W with power factor ${powerFactor} hang on the ${volts} V tap of a transformer, on short thick cable.`,
			ask: 'How many amps does the tap give?',
			givens: [
				given('n', 'lamps', lamps, ''),
				given('W', 'watts of one', watts, 'W'),
				given('k', 'power factor', powerFactor, ''),
				given('V', 'volts of the tap', volts, 'V')
			],
			rules: [totalWatts(watts), totalVoltAmps, amps],
			because: isOver
				? `That is over the ${mostAmps} A that one secondary may give: some lamps belong on another.`
				: `One secondary may give ${mostAmps} A: that is kept.`,
			engine
		});
	}
};
