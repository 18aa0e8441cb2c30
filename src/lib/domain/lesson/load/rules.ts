/** Steps that several problems of this lesson share. */
import { plain } from '../../shared/show-working';
import type { StepRule } from '../types';

/** With as many decimals as the watts of one lamp have. */
export const totalWatts = (watts: number): StepRule => ({
	symbol: 'P',
	label: 'watts of all lamps',
	expression: 'n × W',
	unit: 'W',
	decimals: (plain(watts, 12).split('.')[1] ?? '').length,
	rule: 'Lamps times the watts of one.',
	source: 'physics'
});
export const totalVoltAmps: StepRule = {
	symbol: 'S',
	label: 'volt-amperes of all lamps',
	expression: 'P ÷ k',
	unit: 'VA',
	decimals: 1,
	rule: 'Volt-amperes are watts over the power factor.',
	source: 'nec210_19'
};
export const lampVoltAmps: StepRule = {
	symbol: 'S',
	label: 'volt-amperes of one lamp',
	expression: 'W ÷ k',
	unit: 'VA',
	decimals: 2,
	rule: 'Volt-amperes are watts over the power factor.',
	source: 'nec210_19'
};
