/** The run redone segment by segment with the handbook's ohms and every lamp at its marked amperes. */
import { metresPerFoot, type UnitSystem } from '../../shared/units';
import type { Working } from '../../shared/working';
import { circularMils, handbookOhms, K, lengthIn, lengthUnit, markedVolts, thousandths } from './figures';
import { total, type Leg } from './legs';
import type { HandRow, HandRun } from './types';

/** Amperes through a leg when each lamp beyond takes its marked volt-amperes at 12 V. */
export const markedAmps = ({ voltAmps }: Leg): number => total(voltAmps) / markedVolts;

function ampsWorking(leg: Leg): Working {
	return {
		label: 'Amps through it',
		value: markedAmps(leg),
		unit: 'A',
		decimals: 3,
		rule: 'All lamps beyond, at their marked volt-amperes.',
		expression: 'S ÷ 12',
		inputs: [{ symbol: 'S', name: 'lamps beyond, together', value: total(leg.voltAmps), unit: 'VA' }],
		source: 'physics'
	};
}
function ohmsWorking(leg: Leg, run: HandRun, units: UnitSystem): Working {
	const ohms = handbookOhms(run.size, units);
	const length = lengthIn(leg.metres, units);
	return {
		label: 'Ohms, there and back',
		value: (2 * ohms.value * length) / 1000,
		unit: 'Ω',
		decimals: 4,
		rule: 'Twice the length, because current goes out and comes back.',
		expression: '2 × R × L ÷ 1000',
		inputs: [ohms, { symbol: 'L', name: 'cable laid', value: length, unit: lengthUnit(units) }],
		source: ohms.from?.source ?? 'necTable8'
	};
}

function differenceWorking(name: string, volts: number, planVolts: number): Working {
	const [byHand, planned] = [thousandths(volts), thousandths(planVolts)];
	return {
		label: `By hand against the plan, at ${name}`,
		value: thousandths(byHand - planned),
		unit: 'V',
		decimals: 3,
		rule: 'Above zero: by hand there are more volts than in the plan.',
		expression: 'H − P',
		inputs: [
			{ symbol: 'H', name: 'by hand', value: byHand, unit: 'V' },
			{ symbol: 'P', name: 'in the plan', value: planned, unit: 'V' }
		],
		source: 'physics'
	};
}

/** One row for each leg, in their order. */
export function handbookRows(run: HandRun, legs: readonly Leg[], units: UnitSystem): HandRow[] {
	const left = run.nodes.map(() => run.tapVolts);
	return legs.map((leg) => {
		const amps = ampsWorking(leg);
		const ohms = ohmsWorking(leg, run, units);
		const drop = amps.value * ohms.value;
		const before = left[leg.from]!;
		const volts = (left[leg.to] = before - drop);
		const { name, lamp, volts: planVolts } = run.nodes[leg.to]!;
		const working: Working = {
			label: `Volts at ${name}`,
			value: volts,
			unit: 'V',
			decimals: 3,
			rule: 'The volts before, less amps × ohms.',
			expression: 'V − I × Z',
			inputs: [
				{ symbol: 'V', name: `volts at ${run.nodes[leg.from]!.name}`, value: before, unit: 'V' },
				{ symbol: 'I', name: 'amps through the cable', value: amps.value, unit: 'A', from: amps },
				{ symbol: 'Z', name: 'ohms of the cable, there and back', value: ohms.value, unit: 'Ω', from: ohms }
			],
			source: 'physics'
		};
		return {
			from: leg.from,
			to: leg.to,
			isLamp: lamp !== null,
			metres: leg.metres,
			amps: amps.value,
			ohms: ohms.value,
			drop,
			volts,
			planVolts,
			difference: planVolts === null ? null : volts - planVolts,
			working,
			differenceWorking: planVolts === null ? null : differenceWorking(name, volts, planVolts)
		};
	});
}

/** Amps × length summed over the way: the same current through ten feet or one foot at ten times the current. */
function momentWorking(way: readonly Leg[], units: UnitSystem): Working {
	const unit = lengthUnit(units);
	const parts = way.map((leg, k) => [
		{ symbol: `I${k + 1}`, name: `amps through cable ${k + 1} of the way`, value: markedAmps(leg), unit: 'A' },
		{ symbol: `L${k + 1}`, name: `its length`, value: lengthIn(leg.metres, units), unit }
	]);
	return {
		label: 'Amps × length along the way',
		value: parts.reduce((sum, [amps, length]) => sum + amps!.value * length!.value, 0),
		unit: `A·${unit}`,
		decimals: 1,
		rule: 'Each cable on the way: its amps × its length, added up.',
		expression: parts.map((_, k) => `I${k + 1} × L${k + 1}`).join(' + '),
		inputs: parts.flat(),
		source: 'physics'
	};
}

/** Volts at the end of `way` by 2 × K × I × L ÷ CM, K = 12.9 Ω·cmil/ft (75 °C), in one go. AWG only. */
export function formulaWorking(run: HandRun, way: readonly Leg[], units: UnitSystem): Working | null {
	if (run.size.system !== 'awg') return null;
	const moment = momentWorking(way, units);
	const mils = circularMils(run.size.size);
	const feet = units === 'feet' ? 1 : metresPerFoot;
	return {
		label: 'The same in one go, by K and circular mils',
		value: run.tapVolts - (2 * K * moment.value) / feet / mils,
		unit: 'V',
		decimals: 3,
		rule: `The other way it is written. K is the table's ohms × circular mils, rounded to ${K} for every gauge: so it comes out a little aside of the table.`,
		expression: units === 'feet' ? 'T − 2 × K × M ÷ CM' : 'T − 2 × K × M ÷ 0.3048 ÷ CM',
		inputs: [
			{ symbol: 'T', name: 'tap', value: run.tapVolts, unit: 'V' },
			{ symbol: 'K', name: 'copper at 75 °C', value: K, unit: 'Ω·cmil/ft' },
			{ symbol: 'M', name: 'amps × length along the way', value: moment.value, unit: moment.unit, from: moment },
			{ symbol: 'CM', name: `circular mils of ${run.size.size} AWG`, value: mils, unit: 'cmil' }
		],
		source: 'necTable8'
	};
}
