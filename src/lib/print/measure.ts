/** Bars to lay a ruler on: two that say whether the printer kept the scale, and one in lengths of the yard. */
import { metresPerFoot, type UnitSystem } from '../domain/shared/units';
import { roundLength } from '../drawing/frame';

export interface Bar {
	/** What a ruler or tape should say of it. */
	text: string;
	/** Millimetres of paper. */
	length: number;
	/** Equal parts, solid and bare in turn. */
	parts: number;
}
/** Four inches and a hundred millimetres, whatever the units: whoever prints has one of the two rulers. */
const rulers: readonly Bar[] = [
	{ text: '4 in', length: 101.6, parts: 4 },
	{ text: '100 mm', length: 100, parts: 5 }
];
/** The longest round length of the yard that is no longer than the rulers' bars at 1 to `ratio`. */
export function yardBar(units: UnitSystem, ratio: number): Bar {
	const unit = units === 'feet' ? metresPerFoot : 1;
	const metres = roundLength((100 * ratio) / 1000 + 1e-9, unit);
	const count = Number((metres / unit).toPrecision(6));
	return {
		text: `${count} ${units === 'feet' ? 'ft' : 'm'} of the yard`,
		length: (metres * 1000) / ratio,
		parts: String(count).startsWith('2') ? 4 : 5
	};
}
/** The bars of a plan's sheet. */
export const barsOf = (units: UnitSystem, ratio: number): Bar[] => [...rulers, yardBar(units, ratio)];
