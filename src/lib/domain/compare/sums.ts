import type { Working, WorkingInput } from '../shared/working';

/** a, b, … z, x26, x27, … */
const symbolOf = (index: number): string => (index < 26 ? String.fromCharCode(97 + index) : `x${index}`);

/** Rounded as the value is shown: on the very number held, so that a tie falls the same way in both. */
export const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals)) || 0;

/** A working that adds its terms up, each rounded as it is shown; 0 with nothing to add. */
export function sumWorking(
	terms: readonly Omit<WorkingInput, 'symbol'>[],
	rest: Pick<Working, 'label' | 'unit' | 'decimals' | 'rule' | 'source'>
): Working {
	const inputs = terms.map((term, index) => ({
		...term,
		symbol: symbolOf(index),
		value: rounded(term.value, rest.decimals)
	}));
	return {
		...rest,
		value: rounded(
			inputs.reduce((sum, { value }) => sum + value, 0),
			rest.decimals
		),
		expression: inputs.map(({ symbol }) => symbol).join(' + ') || '0',
		inputs
	};
}
