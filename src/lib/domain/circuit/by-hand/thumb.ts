/**
 * The rule of thumb of the trade: volts dropped = watts × feet ÷ a constant, 7500 for 12 AWG (from memory).
 *
 * Where the constant comes from: a load spread evenly over a line of L feet loses half of what it would lose at its end,
 * so drop = ½ × 2 × r × L ÷ 1000 × W ÷ 12, which is W × L ÷ (12000 ÷ r) with r ohms in 1000 ft. For 12 AWG stranded at
 * 20 °C (Table 8 with its own temperature law: 1.628) that is 7370, and 7500 is 1.8 % above it.
 */
import { metresPerFoot, type UnitSystem } from '../../shared/units';
import type { Working, WorkingInput } from '../../shared/working';
import { awgSquareMillimetres, ohmsPerKm, sizeName } from '../conductors';
import type { CableSize } from '../types';
import { circularMils, lengthIn, lengthUnit, markedVolts, thumbCelsius } from './figures';

/** VA·ft per volt, from memory. */
export const remembered = { gauge: 12, constant: 7500 };
/** Cross-section of that gauge, mm² (ASTM B258). */
const rememberedArea = Number(awgSquareMillimetres(remembered.gauge).toFixed(3));

/** The constant in VA × feet (or metres) for each volt, a whole number; other sizes in proportion to their copper. */
export function thumbConstant(size: CableSize, units: UnitSystem): WorkingInput {
	const isFeet = units === 'feet';
	const [own, theirs, unit] =
		size.system === 'awg'
			? [circularMils(size.size), circularMils(remembered.gauge), 'cmil']
			: [size.size, rememberedArea, 'mm²'];
	const value = Math.round(((remembered.constant * own) / theirs) * (isFeet ? 1 : metresPerFoot));
	const name = sizeName(size);
	const input = { symbol: 'C', name: `constant for ${name}`, value, unit: `VA·${lengthUnit(units)} per V` };
	if (isFeet && own === theirs) return { ...input, name: `${input.name}, from memory` };
	const from: Working = {
		label: `Constant for ${name}`,
		value,
		unit: input.unit,
		decimals: 0,
		rule: `${remembered.constant} for 12 AWG and feet is what is remembered. Twice the copper carries twice as far: ${
			size.system === 'awg' ? 'in proportion to circular mils' : 'in proportion to cross-section'
		}${isFeet ? '' : '; a foot is 0.3048 m'}.`,
		expression: isFeet ? 'C12 × A ÷ A12' : 'C12 × A ÷ A12 × 0.3048',
		inputs: [
			{ symbol: 'C12', name: 'for 12 AWG', value: remembered.constant, unit: 'VA·ft per V' },
			{ symbol: 'A', name: name, value: own, unit },
			{ symbol: 'A12', name: '12 AWG', value: theirs, unit }
		],
		source: 'memory'
	};
	return { ...input, from };
}

/** What the constant would be for a load spread evenly over this cable, copper at 20 °C. Same units. */
export const evenConstant = (size: CableSize, units: UnitSystem): number =>
	(1000 * markedVolts) / (ohmsPerKm(size, thumbCelsius) * (units === 'feet' ? metresPerFoot : 1));

/** Volts at the far lamp by the rule; `constant` as from `thumbConstant`. */
export function thumbWorking(
	tapVolts: number,
	voltAmps: number,
	metres: number,
	constant: WorkingInput,
	units: UnitSystem
): Working {
	const length = lengthIn(metres, units);
	return {
		label: 'Volts by the rule of thumb',
		value: tapVolts - (voltAmps * length) / constant.value,
		unit: 'V',
		decimals: 3,
		rule: 'The label on the tap, less all the volt-amperes of the run × the whole length to the lamp ÷ the constant.',
		expression: 'T − W × L ÷ C',
		inputs: [
			{ symbol: 'T', name: 'tap', value: tapVolts, unit: 'V' },
			{ symbol: 'W', name: 'all lamps of the run, as marked', value: voltAmps, unit: 'VA' },
			{ symbol: 'L', name: 'cable to the lamp', value: length, unit: lengthUnit(units) },
			constant
		],
		source: 'memory'
	};
}
