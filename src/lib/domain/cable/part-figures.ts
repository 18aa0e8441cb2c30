/** Workings of a cable's ohms and of a lamp's current and light. */
import { loadAmps, ohmsPerKm, resistanceLaw, sizeName } from '../circuit';
import type { Fixture } from '../placement';
import { rules } from '../shared/rules';
import { metresPerFoot } from '../shared/units';
import type { Working } from '../shared/working';
import { figure } from './figure';
import { loadOf } from './loads';
import type { Run } from './types';

const degrees = (celsius: number) => `${celsius < 0 ? '−' : ''}${Math.abs(celsius)}\u00a0°C`;

/**
 * Ohms in a kilometre of one conductor at a temperature in °C. AWG: NEC Chapter 9 Table 8 (ohms per 1000 ft, 75 °C) with
 * its α of 0.00323; mm²: IEC 60228 (Ω/km, 20 °C) with 0.00393.
 */
export function ohmsWorking(cable: Run['cable'], celsius: number): Working {
	const awg = cable.system === 'awg';
	const { celsius: base, alpha } = resistanceLaw(cable.system);
	const feet = awg ? metresPerFoot : 1;
	const table = Number((ohmsPerKm(cable, base) * feet).toPrecision(6));
	return figure(
		ohmsPerKm(cable, celsius),
		{
			label: `Ohms in a kilometre at ${degrees(celsius)}`,
			unit: 'Ω/km',
			decimals: 3,
			rule: `The table’s figure at ${base} °C, brought to ${degrees(celsius)}: copper resists more as it warms.`,
			expression: `R ${awg ? `÷ ${metresPerFoot} ` : ''}× ( 1 + a × ( t − ${base} ) )`,
			source: awg ? 'necTable8' : 'iec60228'
		},
		{
			R: {
				name: `one conductor of ${sizeName(cable)}`,
				value: table,
				unit: awg ? 'Ω per 1000 ft' : 'Ω/km',
				exact: true
			},
			a: { name: 'change with each degree', value: alpha, unit: '', exact: true },
			t: { name: 'temperature of the copper', value: celsius, unit: '°C', exact: true }
		},
		({ R, a, t }) => (R / feet) * (1 + a * (t - base))
	);
}

/** Amperes that a lamp draws at the volts it gets: an LED S ÷ V, a filament lamp by rule lamp.halogen. */
export function lampWorking({ label, lamp }: Fixture, volts: number): Working {
	const amps = loadAmps(loadOf(lamp), volts);
	const head = { label: `Current of ${label}`, unit: 'A', decimals: 3 };
	const got = { name: `volts at ${label}`, value: volts, unit: 'V' };
	if (lamp.kind === 'led')
		return figure(
			amps,
			{
				...head,
				rule: 'An LED lamp draws the same volt-amperes at any volts, so fewer volts make more current.',
				expression: 'S ÷ V',
				source: 'physics'
			},
			{ S: { name: 'volt-amperes of the lamp', value: lamp.voltAmps, unit: 'VA', exact: true }, V: got },
			({ S, V }) => S / V
		);
	const power = rules['lamp.halogen'].figures.current;
	return figure(
		amps,
		{
			...head,
			rule: 'A cooler filament resists less, so its current falls by less than its volts do.',
			expression: `W ÷ R × ( V ÷ R ) ^ ${power}`,
			source: 'finkBeaty'
		},
		{
			W: { name: 'watts marked', value: lamp.watts, unit: 'W', exact: true },
			R: { name: 'volts marked', value: lamp.ratedVolts, unit: 'V', exact: true },
			V: got
		},
		({ W, R, V }) => (W / R) * (V / R) ** power
	);
}

/** Light of a filament lamp at the volts it gets, percent of what is marked (rule lamp.halogen); null for an LED. */
export function lightWorking({ label, lamp }: Fixture, volts: number): Working | null {
	if (lamp.kind !== 'halogen') return null;
	const power = rules['lamp.halogen'].figures.light;
	return figure(
		100 * (volts / lamp.ratedVolts) ** power,
		{
			label: `Light of ${label}`,
			unit: '%',
			decimals: 0,
			rule: 'Of the light marked. It holds within about a tenth of the marked volts; further off it is a guess.',
			expression: `( V ÷ R ) ^ ${power} × 100`,
			source: 'finkBeaty'
		},
		{
			V: { name: `volts at ${label}`, value: volts, unit: 'V' },
			R: { name: 'volts marked', value: lamp.ratedVolts, unit: 'V', exact: true }
		},
		({ V, R }) => (V / R) ** power * 100
	);
}
