/** Words and measures of worksheets that follow from a problem. */
import type { Problem, SheetProblem } from '../../domain/lesson';

/** Ruled lines to work on, 9 mm apart: one for each step that is not on the sheet, and one to spare; two for a reason where there is nothing to reckon. */
export function roomLines({ level, problem }: SheetProblem): number {
	if (level !== 'all') return 0;
	return problem.steps.length > 0 ? Math.min(8, problem.steps.length + 1) : 1;
}
const letters = 'abcdefgh';
/** `10.7 V`, or `b) the electrician`. */
export function answerWords({ answer }: Problem): string {
	if (answer.type === 'choice') return `${letters[answer.right]}) ${answer.choices[answer.right]}`;
	return answer.unit ? `${answer.text} ${answer.unit}` : answer.text;
}
export type Printed = 'sheets' | 'keys' | 'both';

/** The variants of a set of so many sheets in the order they are handed out: neighbours differ. */
export const handedOut = <T>(variants: readonly T[], sheets: number): T[] =>
	Array.from({ length: sheets }, (_, n) => variants[n % variants.length]!);
