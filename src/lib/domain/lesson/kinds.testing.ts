/** What every kind of problem keeps, whatever is drawn. */
import { expect } from 'vitest';
import { evaluate } from '../shared/evaluate';
import { fixed } from '../shared/show-working';
import { sources } from '../shared/sources';
import type { UnitSystem } from '../shared/units';
import { randomOf } from './random';
import { valueOf } from './reckon';
import type { Problem, ProblemKind } from './types';

/** `LONG=1` takes the full size. */
export const seeds = process.env['LONG'] ? 10_000 : 300;
const known = new Set<string>(Object.values(sources).map(({ id }) => id));
/** Tries until it is a problem: what a sheet does too. */
export function problemOf(kind: ProblemKind, seed: string, units: UnitSystem): Problem {
	const random = randomOf(seed);
	for (let n = 0; n < 200; n += 1) {
		const problem = kind.pose(kind.draw(random, units), units);
		if (problem) return problem;
	}
	throw new Error(`${kind.id} (${units}, ${seed}): no problem in 200 tries`);
}
/** What is wrong with a problem, in words; none. */
export function faultsOf(problem: Problem, kind: ProblemKind): string[] {
	const { answer, steps, givens, engine } = problem;
	const last = steps.at(-1);
	const wants = kind.levels.includes('several') ? 3 : kind.levels.includes('one') ? 2 : 0;
	const stands = (text: string) =>
		new RegExp(`(?<![\\d.])${text.replaceAll('.', '\\.')}(?![\\d]|\\.\\d)`).test(problem.story + problem.ask);
	return [
		problem.kind === kind.id ? '' : `says kind ${problem.kind}`,
		...steps.map((step) =>
			fixed(evaluate(step.line), step.decimals) === step.text ? '' : `${step.line} is not ${step.text}`
		),
		...steps.map(({ source }) => (known.has(source) ? '' : `no source ${source}`)),
		steps.length >= wants ? '' : `${steps.length} steps, its levels want ${wants}`,
		answer.type === 'number' && (!last || last.text !== answer.text || last.unit !== answer.unit)
			? 'the answer is not the last step'
			: '',
		answer.type === 'number' && (engine === null || fixed(engine, answer.decimals) !== answer.text)
			? `the engine gives ${engine}, the steps ${answer.text}`
			: '',
		answer.type === 'choice' && (answer.right < 0 || answer.right >= answer.choices.length) ? 'no right choice' : '',
		answer.type === 'choice' && new Set(answer.choices).size < answer.choices.length ? 'two choices are one' : '',
		...givens.map(({ text, name }) => (Number.isFinite(valueOf(text)) ? '' : `${name}: ${text} is no number`)),
		...givens.map(({ text, name }) => (stands(text) ? '' : `${name}, ${text}, does not stand in the question`)),
		/NaN|undefined|not known|Infinity/.test(JSON.stringify({ ...problem, picture: null }))
			? 'holds what is no figure'
			: ''
	].filter(Boolean);
}
/** Over many seeds in both systems of units: answerable, its arithmetic as displayed, the engine's answer, varied. */
export function expectSound(kind: ProblemKind): void {
	for (const units of ['metres', 'feet'] as const) {
		const stories = new Set<string>();
		const wrong = Array.from({ length: seeds }, (_, n) => {
			const problem = problemOf(kind, `${kind.id}|${n}`, units);
			stories.add(problem.story + problem.ask);
			return faultsOf(problem, kind).map((fault) => `${units}, seed ${n}: ${fault}`);
		}).flat();
		expect(wrong.slice(0, 5), kind.id).toEqual([]);
		// A class of thirty has a problem each, and a few sheets of one code do not meet again.
		expect(stories.size, `${kind.id}: different problems`).toBeGreaterThanOrEqual(
			kind.levels.includes('one') ? 60 : 12
		);
	}
}
