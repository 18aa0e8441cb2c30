import { rules } from '../shared/rules';
import type { Working } from '../shared/working';
import type { TransformerOption } from '../circuit';

const rounded = (value: number, decimals: number) => Number(value.toFixed(decimals));

/**
 * Inputs shown with as few decimals as still give, put into the expression, the volts shown. Starts at three.
 */
function enough(volts: number, of: (decimals: number) => number): number {
	for (let decimals = 3; decimals < 9; decimals++) if (of(decimals).toFixed(2) === volts.toFixed(2)) return decimals;
	return 9;
}

/** Volts at a lamp from the node before it: V − 2 × L × r × I. */
export function nodeWorking(
	volts: number,
	from: { name: string; volts: number },
	length: number,
	ohmsPerKm: number,
	amps: number
): Working {
	const at = (decimals: number) => {
		const v = rounded(from.volts, decimals);
		const r = rounded(ohmsPerKm, decimals);
		const i = rounded(amps, decimals);
		return { v, r, i, value: v - (2 * length * r * i) / 1000 };
	};
	const { v, r, i, value } = at(enough(volts, (decimals) => at(decimals).value));
	return {
		label: 'Volts here',
		value,
		unit: 'V',
		decimals: 2,
		rule: 'The volts at the place before, less what the cable takes: twice its length, because current goes out and comes back.',
		expression: 'V − 2 × L × r × I ÷ 1000',
		inputs: [
			{ symbol: 'V', name: `volts at ${from.name}`, value: v, unit: 'V' },
			{ symbol: 'L', name: 'cable laid from there', value: length, unit: 'm' },
			{ symbol: 'r', name: 'ohms in a kilometre of one conductor', value: r, unit: 'Ω/km' },
			{ symbol: 'I', name: 'current in it', value: i, unit: 'A' }
		],
		source: 'physics'
	};
}

/**
 * Volts at the terminals: the tap less the transformer's sag, in proportion to what all runs draw together.
 * `tapVoltAmps`: sum over the runs of tap volts × amperes, VA.
 */
export function terminalWorking(
	volts: number,
	tapVolts: number,
	transformer: TransformerOption,
	tapVoltAmps: number
): Working {
	const at = (decimals: number) => {
		const load = rounded(tapVoltAmps, decimals);
		return { load, value: tapVolts * (1 - (transformer.regulation * load) / transformer.voltAmps) };
	};
	const { load, value } = at(enough(volts, (decimals) => at(decimals).value));
	return {
		label: 'Volts at the terminals',
		value,
		unit: 'V',
		decimals: 2,
		rule: 'The tap, less the sag of the transformer: at its full rating it sags by its regulation, at part load by that part.',
		expression: 'T × ( 1 − g × S ÷ R )',
		inputs: [
			{ symbol: 'T', name: 'tap', value: tapVolts, unit: 'V' },
			{ symbol: 'g', name: 'regulation', value: transformer.regulation, unit: '' },
			{ symbol: 'S', name: 'tap volts × current, all runs together', value: load, unit: 'VA' },
			{ symbol: 'R', name: 'rating', value: transformer.voltAmps, unit: 'VA' }
		],
		source: 'memory'
	};
}

/** Load against the limit of rule supply.load, percent of the rating. */
export function supplyWorking(loadVoltAmps: number, transformer: TransformerOption): Working {
	const load = rounded(loadVoltAmps, 1);
	const percent = Math.round(rules['supply.load'].figures.fraction * 100);
	return {
		label: 'Load on the transformer',
		value: (load / transformer.voltAmps) * 100,
		unit: '%',
		decimals: 0,
		rule: `Lamps and cable together, as a share of the rating: at most ${percent} %.`,
		expression: 'S ÷ R × 100',
		inputs: [
			{ symbol: 'S', name: 'taken at the terminals, cable losses included', value: load, unit: 'VA' },
			{ symbol: 'R', name: 'rating', value: transformer.voltAmps, unit: 'VA' }
		],
		source: 'nec210_19'
	};
}
