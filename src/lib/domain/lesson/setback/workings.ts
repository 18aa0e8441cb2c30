import { rules } from '../../shared/rules';
import type { UnitSystem } from '../../shared/units';
import type { Working, WorkingInput } from '../../shared/working';
import { tapeOf } from '../tape';
import { gapOf, type Beside } from './drive';

/** The working of how far a lamp's nearest corner is from the car's arc, in the learner's short unit. Within the corner's square only. */
export function gapWorking(label: string, lamp: Beside, flare: number, units: UnitSystem): Working {
	const { unit, metres } = tapeOf(units).short;
	const { out, back, head } = lamp;
	const decimals = units === 'metres' ? 0 : 1;
	const input = (symbol: string, name: string, value: number, from?: Working): WorkingInput => ({
		symbol,
		name,
		value: value / metres,
		unit,
		...(from ? { from } : {})
	});
	const radius = input('f', 'radius of the car’s arc', flare);
	const side = (to: string, symbol: string, name: string, value: number): Working => ({
		label: `From the arc’s centre to the lamp’s corner, ${to}`,
		value: (flare - value + head / 2) / metres,
		unit,
		decimals,
		rule: 'The arc’s centre lies one radius from edge and street; the lamp’s corner lies half a head nearer than its stake.',
		expression: `f − (${symbol} − d ÷ 2)`,
		inputs: [radius, input(symbol, name, value), input('d', 'diameter of the head', head)],
		source: 'geometry'
	});
	const across = side('across the drive', 'o', 'stake, out from the edge', out);
	const along = side('along the drive', 'b', 'stake, in from the street', back);
	return {
		label,
		value: gapOf(lamp, flare)! / metres,
		unit,
		decimals,
		rule: 'The radius less the distance from the arc’s centre to the lamp’s corner (Pythagoras). Less than nothing: the car strikes it.',
		expression: 'f − √(x ^ 2 + y ^ 2)',
		inputs: [
			radius,
			input('x', 'from the centre, across the drive', flare - out + head / 2, across),
			input('y', 'from the centre, along the drive', flare - back + head / 2, along)
		],
		source: rules['drive.mouth'].source
	};
}
