/** Lengths of problems as they stand on a tape: metres and millimetres, or feet and inches, as plain numbers that a calculator takes. */
import { fixed } from '../shared/show-working';
import { metresPerFoot, metresPerInch, type UnitSystem } from '../shared/units';
import type { Given } from './types';

export interface Tape {
	/** For what is paced out. `metres`: in one of it. */
	long: { unit: 'm' | 'ft'; metres: number; decimals: number };
	/** For what is set with a rule. `perLong`: of it in one of the long ones. */
	short: { unit: 'mm' | 'in'; metres: number; perLong: number };
}
const tapes: Readonly<Record<UnitSystem, Tape>> = {
	metres: { long: { unit: 'm', metres: 1, decimals: 2 }, short: { unit: 'mm', metres: 0.001, perLong: 1000 } },
	feet: {
		long: { unit: 'ft', metres: metresPerFoot, decimals: 1 },
		short: { unit: 'in', metres: metresPerInch, perLong: 12 }
	}
};
export const tapeOf = (units: UnitSystem): Tape => tapes[units];

/** A number of a question, its digits fixed. `symbol` as in an expression, `name` as in a sentence. */
export const given = (symbol: string, name: string, value: number, decimals: number, unit: string): Given => ({
	symbol,
	name,
	text: fixed(value, decimals),
	unit
});
/** `4.50 m` */
export const withUnit = ({ text, unit }: Pick<Given, 'text' | 'unit'>): string => (unit ? `${text} ${unit}` : text);
