/**
 * The working of a figure: the arithmetic as the person can redo it. `expression` holds input symbols; what is shown
 * is the expression with each input's shown number put in, and it must re-evaluate to the shown value.
 */
export interface WorkingInput {
	symbol: string;
	name: string;
	value: number;
	unit: string;
	/** The number as it must be shown, digit for digit; else as many digits as the line needs. */
	shown?: string;
	/** An input that was itself worked out opens further. */
	from?: Working;
}
export interface Working {
	label: string;
	value: number;
	unit: string;
	/** Decimals with which the value is shown. */
	decimals: number;
	/** The rule in words. */
	rule: string;
	/** Arithmetic over the input symbols: + − × ÷ ^ ( ) and numbers, tan(), sin(), cos(), arctan() in degrees and √(); symbols are single words, e.g. `V0 − 2 × L × r × I`. */
	expression: string;
	inputs: WorkingInput[];
	/** Id of a source in `shared/sources.ts`. */
	source: string;
}
