/** How a working is shown: the expression with the inputs' shown numbers put in, so that it can be redone by hand. */
import type { Working, WorkingInput } from './working';
import { formatLength, type UnitSystem } from './units';
import { evaluate, tokens } from './evaluate';

export interface Shown {
	/** `12 − 2 × 6.7 × 0.00835 × 3.2` */
	line: string;
	/** One per input: symbol, shown number, unit, name. */
	inputs: string[];
	/** `11.64 V` */
	result: string;
	/** Does the line, redone, give the result? Not so only when the working itself is at odds with its value. */
	holds: boolean;
}

/** Digits that name a double exactly. */
const mostDigits = 17;

/** A number with so many significant digits, no exponent, no trailing zeros after the point. */
export function plain(value: number, digits: number): string {
	if (!Number.isFinite(value)) return 'not known';
	const rounded = Number(Math.abs(value).toPrecision(Math.min(mostDigits, Math.max(1, digits))));
	const text =
		Math.abs(rounded) >= 1e21 || (rounded !== 0 && Math.abs(rounded) < 1e-6)
			? longhand(rounded, digits)
			: String(rounded);
	return value < 0 && rounded !== 0 ? `−${text}` : text;
}
function longhand(value: number, digits: number): string {
	if (value >= 1e21) return BigInt(Math.round(value)).toString();
	const decimals = digits - 1 - Math.floor(Math.log10(value));
	return value.toFixed(Math.min(100, decimals)).replace(/0+$/, '').replace(/\.$/, '');
}

/** Rounded to the decimals shown, never `−0`. */
export function fixed(value: number, decimals: number): string {
	if (!Number.isFinite(value)) return 'not known';
	const text = Math.abs(value).toFixed(Math.min(20, Math.max(0, decimals)));
	return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

/** Fewest significant digits worth showing: all of a short number, else three. */
function fewest(value: number): number {
	const digits = String(Math.abs(value)).replace(/^0\.0*|\.|e.*$/g, '').length;
	return digits <= 4 ? Math.max(1, digits) : 3;
}

const numberOf = (input: WorkingInput, digits: number): string => input.shown ?? plain(input.value, digits);

/** The expression with each symbol's shown number in its place; negative ones in brackets. */
function putIn(working: Working, digits: readonly number[]): string {
	const list = tokens(working.expression);
	if (!list) return working.expression;
	const shown = new Map(working.inputs.map((input, index) => [input.symbol, numberOf(input, digits[index]!)]));
	const text = list
		.map((token) => {
			if (token.kind === 'operator') return '+−×÷^'.includes(token.text) ? ` ${token.text} ` : token.text;
			if (token.kind !== 'symbol') return token.kind === 'space' ? ' ' : token.text;
			const number = shown.get(token.text) ?? token.text;
			return number.startsWith('−') ? `(${number})` : number;
		})
		.join('');
	return text
		.replace(/\s+/g, ' ')
		.replace(/(^|[(×÷^+−] ?)− /g, '$1−')
		.trim();
}

const isLength = (input: WorkingInput): boolean => input.unit === 'm';

/**
 * The working as shown. Starts with few digits and adds to the inputs until the line as displayed re-evaluates to the
 * result as displayed; then drops what is not needed, input by input. With `units` in feet, lengths are also given in
 * feet and inches beside the metres that the line uses.
 */
export function showWorking(working: Working, units: UnitSystem = 'metres'): Shown {
	const result = fixed(working.value, working.decimals);
	const gives = (digits: readonly number[]) => fixed(evaluate(putIn(working, digits)), working.decimals) === result;
	const low = working.inputs.map((input) => fewest(input.value));
	let digits = low;
	for (let more = 0; more <= mostDigits && !gives(digits); more++)
		digits = low.map((d) => Math.min(mostDigits, d + more));
	const holds = Number.isFinite(working.value) && gives(digits);
	if (holds)
		for (const [index, least] of low.entries())
			while (digits[index]! > least) {
				const fewer = digits.with(index, digits[index]! - 1);
				if (!gives(fewer)) break;
				digits = fewer;
			}
	return {
		line: putIn(working, digits),
		inputs: working.inputs.map((input, index) => {
			const also = isLength(input) && units === 'feet' ? ` (${formatLength(input.value, 'feet')})` : '';
			return `${input.symbol} = ${numberOf(input, digits[index]!)}${input.unit ? ` ${input.unit}` : ''}${also}, ${input.name}`;
		}),
		result: working.unit ? `${result} ${working.unit}` : result,
		holds
	};
}
