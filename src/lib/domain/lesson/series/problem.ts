/** What the problems of circuits have in common: numbers in words, and a solution that the engine bears out. */
import { plain } from '../../shared/show-working';
import { agrees, reckon } from '../reckon';
import type { Given, Problem, StepRule } from '../types';

/** A number as given: just the digits it has. */
export const given = (symbol: string, name: string, value: number, unit: string): Given => ({
	symbol,
	name,
	text: plain(value, 12),
	unit
});
/** Decimals that leave three significant digits, at least none: 1.67, 0.0144, 240. */
export const decimalsFor = (value: number): number =>
	value === 0 ? 2 : Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))));

const counted = ['a whole number', 'one decimal', 'two decimals', 'three decimals'];
/** `to one decimal`. */
export const to = (decimals: number): string => `to ${counted[decimals] ?? `${decimals} decimals`}`;

export interface Posed {
	kind: string;
	story: string;
	/** Without the rounding: it is added. */
	ask: string;
	givens: Given[];
	rules: StepRule[];
	because: string;
	/** What the engine gives; null where it has no solution. */
	engine: number | null;
	picture?: Problem['picture'];
}
/** A problem whose answer is its last step; null where the rounded steps end elsewhere than the engine. */
export function numberProblem({ rules, engine, ask, ...rest }: Posed): Problem | null {
	const steps = reckon(rest.givens, rules);
	const { text, unit, decimals } = steps.at(-1)!;
	if (engine === null || !agrees(engine, steps)) return null;
	return {
		...rest,
		ask: `${ask} Answer in ${unit}, ${to(decimals)}.`,
		steps,
		answer: { type: 'number', text, unit, decimals },
		engine
	};
}
/** A problem with one right choice among others, put in order by size; null where two of them are one. */
export function choiceProblem(
	{ rules, ...rest }: Omit<Posed, 'ask'> & { ask: string },
	right: string,
	choices: readonly string[]
): Problem | null {
	if (new Set(choices).size < choices.length || !choices.includes(right)) return null;
	return {
		...rest,
		steps: reckon(rest.givens, rules),
		answer: { type: 'choice', choices: [...choices], right: choices.indexOf(right) }
	};
}
