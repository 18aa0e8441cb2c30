/** What people look up for the sums by hand. */
import { metresPerFoot, type UnitSystem } from '../../shared/units';
import type { Working, WorkingInput } from '../../shared/working';
import { rules } from '../../shared/rules';
import { awgSquareMillimetres, ohmsPerKm } from '../conductors';
import nec from '../tables/nec-table8.json';
import type { CableSize } from '../types';

/** Every lamp is taken at its volt-amperes over these volts. */
export const markedVolts = 12;
/** Ω·cmil/ft: ohms in 1000 ft × circular mils ÷ 1000, over the stranded column of NEC Chapter 9 Table 8, rounded. */
export const K = 12.9;
/** Ω·mm²/m of copper in normal service, IEC 60364-5-52:2009 Annex G: 1.25 times 0.018, which is copper at 20 °C. */
export const annexG = { service: 0.0225, at20: 0.018, warm: 1.25 };
export const tableCelsius = rules['cable.temperature'].figures.table;
/** °C of the copper that the thumb rule's constant fits: see `thumb.ts`. */
export const thumbCelsius = 20;

/** Away with the last bits of a change of unit: 1.9799999999999998 is 1.98. */
export const tidy = (value: number): number => Number(value.toPrecision(12));
export const thousandths = (value: number): number => Number(value.toFixed(3));

/** Circular mils of a gauge: Table 8, or its diameter squared where the table has no row. */
export function circularMils(gauge: number): number {
	const row = (nec.circularMils as Record<string, number>)[gauge];
	return row ?? Math.round((awgSquareMillimetres(gauge) * 4) / Math.PI / 0.0254 ** 2);
}

export const lengthUnit = (units: UnitSystem): 'ft' | 'm' => (units === 'feet' ? 'ft' : 'm');
/** Metres in the unit of the sums. */
export const lengthIn = (metres: number, units: UnitSystem): number =>
	units === 'feet' ? tidy(metres / metresPerFoot) : metres;
const perThousand = (units: UnitSystem): string => (units === 'feet' ? 'Ω in 1000 ft' : 'Ω/km');

/** One conductor's ohms in a thousand feet or metres, as the handbook has them. */
export function handbookOhms(size: CableSize, units: UnitSystem): WorkingInput {
	return size.system === 'awg' ? tableOhms(size, units) : annexOhms(size.size, units);
}
function tableOhms(size: CableSize, units: UnitSystem): WorkingInput {
	const name = `one conductor, ${size.size} AWG stranded, copper at ${tableCelsius} °C`;
	const inKft = tidy(ohmsPerKm(size, tableCelsius) * metresPerFoot);
	const input = { symbol: 'R', name, value: inKft, unit: perThousand('feet') };
	if (units === 'feet') return input;
	const working: Working = {
		label: 'Ohms in a kilometre',
		value: inKft / metresPerFoot,
		unit: perThousand(units),
		decimals: 3,
		rule: 'The table counts by 1000 ft; a foot is 0.3048 m.',
		expression: 'R ÷ 0.3048',
		inputs: [input],
		source: 'necTable8'
	};
	return { ...input, value: working.value, unit: working.unit, from: working };
}
function annexOhms(squareMillimetres: number, units: UnitSystem): WorkingInput {
	const isFeet = units === 'feet';
	const working: Working = {
		label: isFeet ? 'Ohms in 1000 ft' : 'Ohms in a kilometre',
		value: ((1000 * annexG.service) / squareMillimetres) * (isFeet ? metresPerFoot : 1),
		unit: perThousand(units),
		decimals: 3,
		rule: `${annexG.service} Ω for a metre of one square millimetre, copper warm from use (IEC 60364-5-52:2009 Annex G, seen second-hand).`,
		expression: isFeet ? '1000 × ρ ÷ S × 0.3048' : '1000 × ρ ÷ S',
		inputs: [
			{ symbol: 'ρ', name: 'copper in normal service', value: annexG.service, unit: 'Ω·mm²/m' },
			{ symbol: 'S', name: 'cross-section', value: squareMillimetres, unit: 'mm²' }
		],
		source: 'iec60364G'
	};
	return {
		symbol: 'R',
		name: `one conductor, ${squareMillimetres} mm²`,
		value: working.value,
		unit: working.unit,
		from: working
	};
}
