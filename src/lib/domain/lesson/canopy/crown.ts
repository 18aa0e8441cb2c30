/** Height of a crown's middle above a lamp: the first steps of lean and beam. */
import type { StepRule } from '../types';
import { given, type Tape } from '../tape';

/** Long units. */
export interface Crown {
	base: number;
	height: number;
	lamp: number;
}
/** Lamp on a stake, in the long unit: 150 mm or 6 in. */
export const stakeHeight = ({ long }: Tape): number => (long.unit === 'm' ? 0.15 : 0.5);
export const crownGivens = ({ base, height, lamp }: Crown, { long }: Tape) =>
	[
		given('B', 'lowest branches', base, 1, long.unit),
		given('H', 'height of the tree', height, 1, long.unit),
		given('l', 'height of the lamp', lamp, long.decimals, long.unit)
	] as const;
export const crownSteps = ({ long }: Tape): StepRule[] => [
	{
		symbol: 'm',
		label: 'middle of the crown, above the ground',
		expression: '(B + H) ÷ 2',
		unit: long.unit,
		decimals: 2,
		rule: 'Halfway between the lowest branches and the top.',
		source: 'geometry'
	},
	{
		symbol: 'h',
		label: 'middle of the crown, above the lamp',
		expression: 'm − l',
		unit: long.unit,
		decimals: 2,
		rule: 'The lamp’s own height comes off.',
		source: 'geometry'
	}
];
