/** What of a solution is left out on the sheet, and how the rest is written. */
import type { Random } from '../random';
import { putIn } from '../reckon';
import type { Level, Problem } from '../types';
import { toFind, type SheetLine } from './types';

/**
 * Indices of the steps to fill in. `one`: any one of them. `several`: at least half of them and at least two, the last always, never all: that would be `all`.
 */
export function blanksOf({ steps }: Problem, level: Level, random: Random): number[] {
	const all = steps.map((_, n) => n);
	if (level === 'solved') return [];
	if (level === 'all') return all;
	if (level === 'one') return steps.length === 0 ? [] : [random.whole(0, steps.length - 1)];
	const last = steps.length - 1;
	const least = Math.max(2, Math.ceil(steps.length / 2));
	const count = Math.min(steps.length, random.whole(least, Math.max(least, last)));
	return [...random.shuffled(all.slice(0, -1)).slice(0, count - 1), last].toSorted((a, b) => a - b);
}
/** The lines of the solution as on the sheet. A number that is to be found stands open in the lines after it too: nothing gives it away. */
export function linesOf({ givens, steps }: Problem, blanks: readonly number[]): SheetLine[] {
	const shown = new Map(givens.map(({ symbol, text }) => [symbol, text]));
	return steps.map(({ label, symbol, unit, expression, text }, n) => {
		const isBlank = blanks.includes(n);
		const line = isBlank ? null : putIn(expression, shown);
		shown.set(symbol, isBlank ? toFind : text);
		return { label, symbol, unit, line, text: isBlank ? null : text };
	});
}
