/** A light set out with the second tape held out of square, and the workings of where it lands. */
import { add, distance, magnitude, rotated } from '../../shared/geometry';
import type { UnitSystem } from '../../shared/units';
import type { Working, WorkingInput } from '../../shared/working';
import type { XY } from '../pictures';
import { tapeOf } from '../tape';

export interface Landing {
	at: XY;
	/** From the left corner straight to it, metres. */
	across: number;
	/** From the place it was meant for, metres. */
	aside: number;
}
/** `turn`: degrees by which the tape out leans away from the corner, of whose front `meant` is the place in metres. */
export function landing(meant: XY, turn: number): Landing {
	const at = add({ x: meant.x, y: 0 }, rotated({ x: 0, y: meant.y }, -turn));
	return { at, across: magnitude(at), aside: distance(at, meant) };
}

interface Part {
	symbol: string;
	name: string;
	value: number;
	unit?: string;
	from?: Working;
}
/** The working of `across`, in the learner's long unit, down to what the tapes read. */
export function acrossWorking(meant: XY, turn: number, units: UnitSystem): Working {
	const { unit, metres, decimals } = tapeOf(units).long;
	const { at, across } = landing(meant, turn);
	const input = ({ symbol, name, value, unit: own, from }: Part): WorkingInput => ({
		symbol,
		name,
		value: own === undefined ? value / metres : value,
		unit: own ?? unit,
		...(from ? { from } : {})
	});
	const angle: Part = { symbol: 't', name: 'out of square', value: turn, unit: '°' };
	const out: Part = { symbol: 'b', name: 'tape out', value: meant.y };
	const length = (label: string, value: number, rule: string, expression: string, parts: Part[]): Working => ({
		label,
		value: value / metres,
		unit,
		decimals,
		rule,
		expression,
		inputs: parts.map(input),
		source: 'geometry'
	});
	const along = length(
		'Along, where it lands',
		at.x,
		'A tape that leans carries the light along the front.',
		'a + b × sin(t)',
		[{ symbol: 'a', name: 'along, where the tape out starts', value: meant.x }, out, angle]
	);
	const straight = length('Out, where it lands', at.y, 'A tape that leans reaches less far out.', 'b × cos(t)', [
		out,
		angle
	]);
	const isSquare = turn === 0;
	return length(
		'Across, from corner to light',
		across,
		'Pythagoras: the square on the long side is the squares on the two short sides together.',
		'√(x ^ 2 + y ^ 2)',
		[
			{ symbol: 'x', name: 'along', value: at.x, ...(isSquare ? {} : { from: along }) },
			{ symbol: 'y', name: 'out', value: at.y, ...(isSquare ? {} : { from: straight }) }
		]
	);
}
/** The working of `aside`: the chord of the turn. */
export function asideWorking(meant: XY, turn: number, units: UnitSystem): Working {
	const { unit, metres, decimals } = tapeOf(units).long;
	return {
		label: 'Beside its place',
		value: landing(meant, turn).aside / metres,
		unit,
		decimals,
		rule: 'The end of a tape swings on a circle; twice the length times the sine of half the turn is the way it went.',
		expression: '2 × b × sin(t ÷ 2)',
		inputs: [
			{ symbol: 'b', name: 'tape out', value: meant.y / metres, unit },
			{ symbol: 't', name: 'out of square', value: turn, unit: '°' }
		],
		source: 'geometry'
	};
}
