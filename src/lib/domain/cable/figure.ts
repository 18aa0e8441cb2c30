import type { Working, WorkingInput } from '../shared/working';

export interface Given extends Omit<WorkingInput, 'symbol'> {
	/** Taken as it stands: a length to the centimetre, a marking, a figure of a table. */
	exact?: boolean;
}
type Head = Omit<Working, 'value' | 'inputs'>;

/** The working, its inputs rounded to as few decimals (three or more) as still give `exact` in the decimals shown. */
export function figure<K extends string>(
	exact: number,
	head: Head,
	given: Record<K, Given>,
	of: (values: Record<K, number>) => number
): Working {
	const symbols = Object.keys(given) as K[];
	const at = (decimals: number) =>
		Object.fromEntries(
			symbols.map((key) => [key, given[key].exact ? given[key].value : Number(given[key].value.toFixed(decimals))])
		) as Record<K, number>;
	let decimals = 3;
	while (decimals < 10 && of(at(decimals)).toFixed(head.decimals) !== exact.toFixed(head.decimals)) decimals++;
	const values = at(decimals);
	return {
		...head,
		value: of(values),
		inputs: symbols.map((symbol) => {
			const { exact: _, ...input } = given[symbol];
			return { symbol, ...input, value: values[symbol] };
		})
	};
}
