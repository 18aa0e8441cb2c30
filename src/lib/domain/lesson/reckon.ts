/** A solution worked out as on paper: each step from the numbers that stand there, rounded as it is written down. */
import { evaluate, tokens } from '../shared/evaluate';
import { fixed } from '../shared/show-working';
import type { Working } from '../shared/working';
import type { Given, Step, StepRule } from './types';

const negative = /^[−-]/;
/** The value of a number as shown; NaN for anything else. */
export const valueOf = (text: string): number => evaluate(text);

/** The expression with numbers for symbols; negative ones in brackets. Unknown symbols stay. */
export function putIn(expression: string, texts: ReadonlyMap<string, string>): string {
	const list = tokens(expression);
	if (!list) return expression;
	return list
		.map((token) => {
			if (token.kind === 'operator') return '+−×÷^'.includes(token.text) ? ` ${token.text} ` : token.text;
			if (token.kind === 'space') return ' ';
			const number = token.kind === 'symbol' ? (texts.get(token.text) ?? token.text) : token.text;
			return negative.test(number) ? `(${number})` : number;
		})
		.join('')
		.replace(/\s+/g, ' ')
		.trim();
}
/**
 * The steps with their numbers put in, each result rounded and used so by those that follow: a learner with a calculator meets the same digits. Throws
 * where a step is no arithmetic or names a symbol that nothing gives: a mistake of ours, not of the numbers.
 */
export function reckon(givens: readonly Given[], rules: readonly StepRule[]): Step[] {
	const texts = new Map(givens.map(({ symbol, text }) => [symbol, text]));
	return rules.map((rule) => {
		const line = putIn(rule.expression, texts);
		const value = evaluate(line);
		if (Number.isNaN(value)) throw new Error(`${rule.symbol} = ${line} is no arithmetic`);
		const text = fixed(value, rule.decimals);
		texts.set(rule.symbol, text);
		return { ...rule, line, text };
	});
}
/** The last of the steps as a working that opens down to what was given, digit for digit. */
export function workingOf(givens: readonly Given[], steps: readonly Step[]): Working {
	const known = new Map<string, Working['inputs'][number]>(
		givens.map(({ symbol, name, text, unit }) => [symbol, { symbol, name, value: valueOf(text), unit, shown: text }])
	);
	let last: Working | null = null;
	for (const step of steps) {
		const symbols = new Set((tokens(step.expression) ?? []).flatMap((t) => (t.kind === 'symbol' ? [t.text] : [])));
		last = {
			label: step.label,
			value: valueOf(step.text),
			unit: step.unit,
			decimals: step.decimals,
			rule: step.rule,
			expression: step.expression,
			inputs: [...symbols].map((symbol) => known.get(symbol)!),
			source: step.source
		};
		known.set(step.symbol, {
			symbol: step.symbol,
			name: step.label,
			value: last.value,
			unit: step.unit,
			shown: step.text,
			from: last
		});
	}
	if (!last) throw new Error('A solution has at least one step');
	return last;
}
/** Whether the engine's figure, rounded like the last step, is the last step's. */
export const agrees = (engine: number, steps: readonly Step[]): boolean => {
	const last = steps.at(-1);
	return last !== undefined && fixed(engine, last.decimals) === last.text;
};
