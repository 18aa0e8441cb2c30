/** Where the figures of a loop come from. */
import { rules } from '../../shared/rules';
import type { Working } from '../../shared/working';
import { ohms, supplyVolts, watts, type Row } from './row';

export const ohmsWorking = (): Working => ({
	label: 'Ohms of a lamp when hot',
	value: ohms,
	unit: 'Ω',
	decimals: 1,
	rule: 'Ohms are volts over amps, and at its rated volts its amps are watts over volts. A cold filament has far fewer.',
	expression: 'U × U ÷ P',
	inputs: [
		{ symbol: 'U', name: 'rated volts', value: supplyVolts, unit: 'V' },
		{ symbol: 'P', name: 'watts', value: watts, unit: 'W' }
	],
	source: 'physics'
});
const loopAmpsWorking = ({ lamps, loop }: Row): Working => ({
	label: 'Amps in series',
	value: loop.amps,
	unit: 'A',
	decimals: 2,
	rule: 'In series the ohms add up, and one current goes through all.',
	expression: 'V ÷ (n × R)',
	inputs: [
		{ symbol: 'V', name: 'volts of the supply', value: supplyVolts, unit: 'V' },
		{ symbol: 'n', name: 'lamps in the loop', value: lamps, unit: '' },
		{ symbol: 'R', name: 'ohms of one, hot', value: ohms, unit: 'Ω', from: ohmsWorking() }
	],
	source: 'physics'
});
export const loopVoltsWorking = (row: Row): Working => ({
	label: 'Volts of each lamp in series',
	value: row.loop.volts,
	unit: 'V',
	decimals: 1,
	rule: 'Volts are amps times ohms. Equal lamps take equal parts, whatever their ohms.',
	expression: 'I × R',
	inputs: [
		{ symbol: 'I', name: 'amps in the loop', value: row.loop.amps, unit: 'A', from: loopAmpsWorking(row) },
		{ symbol: 'R', name: 'ohms of one, hot', value: ohms, unit: 'Ω', from: ohmsWorking() }
	],
	source: 'physics'
});
export const besideAmpsWorking = ({ lamps, beside }: Row): Working => ({
	label: 'Amps in parallel',
	value: beside.amps,
	unit: 'A',
	decimals: 2,
	rule: 'Each lamp has the whole volts and takes watts over volts; the currents add up.',
	expression: 'n × P ÷ V',
	inputs: [
		{ symbol: 'n', name: 'lamps', value: lamps, unit: '' },
		{ symbol: 'P', name: 'watts of one', value: watts, unit: 'W' },
		{ symbol: 'V', name: 'volts of the supply', value: supplyVolts, unit: 'V' }
	],
	source: 'physics'
});
const exponent = rules['lamp.halogen'].figures.light;
export const lightWorking = (row: Row): Working => ({
	label: 'Light of each lamp in series, of what it is made for',
	value: 100 * row.loop.light,
	unit: '%',
	decimals: 0,
	rule: `The light of a filament goes with the volts to the power ${exponent}.${row.isGuess ? ' That is published for a tenth up or down; so far below it only says: hardly any.' : ''}`,
	expression: `100 × (V ÷ U) ^ ${exponent}`,
	inputs: [
		{ symbol: 'V', name: 'volts it gets', value: row.loop.volts, unit: 'V', from: loopVoltsWorking(row) },
		{ symbol: 'U', name: 'rated volts', value: supplyVolts, unit: 'V' }
	],
	source: 'finkBeaty'
});
