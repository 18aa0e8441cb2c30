/** Cable as a problem has it: its size and length in the learner's units, and the handbook's ohms. */
import { handbookOhms, sizeName, usualSizes, type CableSize } from '../../circuit';
import { plain } from '../../shared/show-working';
import type { UnitSystem } from '../../shared/units';
import type { Random } from '../random';
import { given } from '../series/problem';
import type { Given } from '../types';

export interface PerThousand {
	/** Ohms of one conductor in a thousand of the unit. */
	ohms: number;
	unit: 'ft' | 'm';
	/** What it is: `12 AWG`; absent where a book gives ohms alone. */
	name?: string;
	source: string;
}
/** NEC Chapter 9 Table 8 for gauges, IEC 60364-5-52 Annex G for mm², to the digits that a learner is given. */
export function perThousandOf(size: CableSize, units: UnitSystem): PerThousand {
	const { value } = handbookOhms(size, units);
	return {
		ohms: Number(value.toFixed(size.system === 'awg' && units === 'metres' ? 2 : 3)),
		unit: units === 'feet' ? 'ft' : 'm',
		name: sizeName(size),
		source: size.system === 'awg' ? 'necTable8' : 'iec60364G'
	};
}
export const anySize = (random: Random, units: UnitSystem): CableSize =>
	random.one(usualSizes(units === 'feet' ? 'awg' : 'mm2').slice(0, 4));
/** Lengths on a tape's marks, in the learner's unit. */
export const anyLength = (random: Random, units: UnitSystem, least: number, most: number): number =>
	units === 'feet'
		? random.stepped(Math.ceil((least * 3.3) / 5) * 5, Math.floor((most * 3.3) / 5) * 5, 5)
		: random.whole(least, most);

/** `1.98 Ω in 1000 ft`. */
export const ohmsWords = ({ ohms, unit }: PerThousand): string => `${plain(ohms, 12)} Ω in 1000 ${unit}`;
export const ohmsGiven = ({ ohms, unit }: PerThousand): Given =>
	given('r', `ohms of one conductor in 1000 ${unit}`, ohms, `Ω in 1000 ${unit}`);
/** Ohms there and back: twice the length. */
export const thereAndBack = (symbol: string, length: string, label: string, source: string) => ({
	symbol,
	label,
	expression: `2 × ${length} × r ÷ 1000`,
	unit: 'Ω',
	decimals: 4,
	rule: 'Twice the length, because the current goes out and comes back.',
	source
});
/** The engine's ohms of so much cable, with the figure as the learner has it. */
export const loopOf = ({ ohms }: PerThousand, length: number): number => (2 * length * ohms) / 1000;
