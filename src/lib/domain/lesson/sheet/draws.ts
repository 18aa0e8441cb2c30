/** The different problems of a kind under a class code, in the order they are drawn. Each variant takes every sixth, so no two variants share one. */
import type { UnitSystem } from '../../shared/units';
import { generatorVersion, randomOf } from '../random';
import type { Problem, ProblemKind } from '../types';
import { variants, type Variant } from './types';

/** Draws in a row without a new problem, after which a kind counts as exhausted. */
const patience = 120;

/** Two problems with the same numbers and the same answer are one, whoever the story is about; of a choice the words count, in whatever order it is offered. */
export function identity({ story, ask, givens, answer }: Problem): string {
	if (answer.type === 'number')
		return [...givens.map(({ symbol, text }) => `${symbol}=${text}`), answer.text].join(' ');
	return [story, ask, ...answer.choices.toSorted()].join('\n');
}
export interface Draws {
	/** The `n`th problem of a variant, from 0; null where the kind has too few for all six variants to have so many. */
	of(variant: Variant, n: number): Problem | null;
}
/** The numbers depend on code, kind and units alone, so that a kind added later leaves those of all others as they are. */
export function drawsOf(kind: ProblemKind, code: string, units: UnitSystem): Draws {
	const random = randomOf(`${generatorVersion}|${code}|${kind.id}|${units}`);
	const found: Problem[] = [];
	const [drawnBefore, posedBefore] = [new Set<string>(), new Set<string>()];
	let misses = 0;
	function next(): Problem | null {
		const drawn = kind.draw(random, units);
		const text = JSON.stringify(drawn);
		if (drawnBefore.has(text)) return null;
		drawnBefore.add(text);
		const problem = kind.pose(drawn, units);
		if (!problem || posedBefore.has(identity(problem))) return null;
		posedBefore.add(identity(problem));
		return problem;
	}
	function reaches(count: number): boolean {
		while (found.length < count && misses < patience) {
			const problem = next();
			if (problem) found.push(problem);
			misses = problem ? 0 : misses + 1;
		}
		return found.length >= count;
	}
	return {
		of: (variant, n) =>
			reaches(variants.length * (n + 1)) ? found[variants.length * n + variants.indexOf(variant)]! : null
	};
}
