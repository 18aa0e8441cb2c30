import type { Choice, ChoiceProblem } from '../circuit';

/** A choice with some of it another; what it works out when first read is still worked out only then. */
export function renewed(
	choice: Choice,
	over: Partial<Pick<Choice, 'cost' | 'runs' | 'problems'>>,
	alternatives: () => Choice['alternatives']
): Choice {
	const { transformer, runs, loadVoltAmps, loadWatts, cost, problems } = choice;
	const plain = { transformer, runs, loadVoltAmps, loadWatts, cost, problems, ...over };
	return Object.defineProperty(plain, 'alternatives', { get: alternatives, enumerable: true }) as Choice;
}
export const withCost = (choice: Choice, cost: number): Choice => renewed(choice, { cost }, () => choice.alternatives);

const isSame = (a: ChoiceProblem, b: ChoiceProblem): boolean => a.code === b.code && a.run === b.run;
/**
 * A choice over the same runs in slightly other lengths: for its problems the cures that were found for the ways as first laid,
 * of which there were more to choose from. Each is laid out and tried before it is offered.
 */
export function withCuresOf(choice: Choice, before: Choice): Choice {
	const problems = choice.problems.map((problem): ChoiceProblem => {
		const { code, run, load, value, limit, cornerOnly } = problem;
		const known = before.problems.find((one) => isSame(one, problem));
		const cures = () => (known ?? problem).cures;
		const plain = { code, run, load, value, limit, cornerOnly };
		return Object.defineProperty(plain, 'cures', { get: cures, enumerable: true }) as ChoiceProblem;
	});
	return renewed(choice, { problems }, () => choice.alternatives);
}
