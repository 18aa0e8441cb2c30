/** Where the figures of a transformer's load come from. */
import type { Working } from '../../shared/working';
import { fraction, mostAmps, powerFactor, tapVolts } from './bank';
import { lamp, limit, rated, type Full } from './full';

const voltAmpsWorking = (): Working => ({
	label: 'Volt-amperes of one lamp',
	value: lamp.voltAmps,
	unit: 'VA',
	decimals: 2,
	rule: 'Volt-amperes are watts over the power factor. Where a lamp does not say its own, 0.8 is taken, from memory.',
	expression: 'W ÷ k',
	inputs: [
		{ symbol: 'W', name: 'watts on the lamp', value: lamp.watts, unit: 'W' },
		{ symbol: 'k', name: 'power factor', value: powerFactor, unit: '' }
	],
	source: 'catalogue'
});
const limitWorking = (): Working => ({
	label: 'What it may carry for hours',
	value: limit,
	unit: 'VA',
	decimals: 0,
	rule: `Hours on end every night is a continuous load: ${100 * fraction} % of the rating.`,
	expression: 'f × R',
	inputs: [
		{ symbol: 'f', name: 'part for a continuous load', value: fraction, unit: '' },
		{ symbol: 'R', name: 'rating', value: rated, unit: 'VA' }
	],
	source: 'nec210_19'
});
export const mostWorking = (): Working => ({
	label: 'Lamps, before rounding down',
	value: limit / lamp.voltAmps,
	unit: '',
	decimals: 1,
	rule: 'What it may carry over what one lamp draws. Only whole lamps count.',
	expression: 'M ÷ S',
	inputs: [
		{ symbol: 'M', name: 'what it may carry', value: limit, unit: 'VA', from: limitWorking() },
		{ symbol: 'S', name: 'what one lamp draws', value: lamp.voltAmps, unit: 'VA', from: voltAmpsWorking() }
	],
	source: 'physics'
});
export const totalWorking = ({ lamps, voltAmps }: Full): Working => ({
	label: 'Load of all lamps',
	value: voltAmps,
	unit: 'VA',
	decimals: 1,
	rule: 'Lamps times what one draws.',
	expression: 'n × S',
	inputs: [
		{ symbol: 'n', name: 'lamps', value: lamps, unit: '' },
		{ symbol: 'S', name: 'what one lamp draws', value: lamp.voltAmps, unit: 'VA', from: voltAmpsWorking() }
	],
	source: 'physics'
});
export const ampsWorking = (at: Full): Working => ({
	label: 'Amps at the tap',
	value: at.amps,
	unit: 'A',
	decimals: 1,
	rule: `Amps are volt-amperes over volts. One secondary may give ${mostAmps} A.`,
	expression: 'S ÷ V',
	inputs: [
		{ symbol: 'S', name: 'load of all lamps', value: at.voltAmps, unit: 'VA', from: totalWorking(at) },
		{ symbol: 'V', name: 'volts of the tap', value: tapVolts, unit: 'V' }
	],
	source: 'physics'
});
