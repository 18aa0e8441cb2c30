/** What was weighed and not taken, and why it lost. */
import { sizeName, type Alternative, type ChosenRun } from '../circuit';
import type { Fixture } from '../placement';
import type { Layout, Lost } from './layout';
import type { RunnerUp } from './types';
import { called, fedWords, runsWords } from './wording';
import { problemWords, runNameOf } from './words';

const most = 4;

/** What an alternative would change on its run: `14 AWG on run 2`, `run 2 fed from a hub`. */
function labelOf({ size, tapVolts, feed }: Alternative, chosen: ChosenRun, name: string): string {
	const on = [
		...(size.size === chosen.size.size ? [] : [sizeName(size)]),
		...(tapVolts === chosen.tapVolts ? [] : [`the ${tapVolts} V tap`])
	].join(' and ');
	const own = chosen.shape.feed ?? 'end';
	if (on === '') return feed === own ? `${name} fed at another light` : `${name} ${fedWords[feed]}`;
	return feed === own ? `${on} on ${name}` : `${on} on ${name}, ${fedWords[feed]}`;
}

function onRun(alternative: Alternative, layout: Layout, fixtures: readonly Fixture[]): RunnerUp[] {
	const { choice, runs } = layout;
	const chosen = choice.runs.find(({ id }) => id === alternative.run);
	if (!chosen) return [];
	const { problem, costDifference } = alternative;
	const name = runNameOf(runs, alternative.run);
	const named = problem?.run ? runNameOf(runs, problem.run) : 'the plan';
	return [
		{
			run: alternative.run,
			label: labelOf(alternative, chosen, name),
			costDifference,
			why: problem
				? `${called(problemWords(problem, choice, fixtures, named))}.`
				: 'It keeps every limit too, and costs more.',
			sound: problem === null
		}
	];
}

function onCount({ runs, cost, choice, shared }: Lost, layout: Layout, fixtures: readonly Fixture[]): RunnerUp {
	const problem = choice?.problems[0];
	const named = problem?.run ? runNameOf(shared, problem.run) : 'the plan';
	return {
		run: null,
		label: runsWords(runs),
		costDifference: cost - layout.choice.cost,
		why: !choice
			? 'Even in the thinnest cable it would cost that much more, or above.'
			: problem
				? `${called(problemWords(problem, choice, fixtures, named))}.`
				: 'It keeps every limit too, and costs more.',
		sound: choice !== null && problem === undefined
	};
}

/** Sound ones first, the cheapest of them first; then those that break a limit, the one nearest in cost first. */
const byWorth = (a: RunnerUp, b: RunnerUp): number =>
	Number(b.sound) - Number(a.sound) || Math.abs(a.costDifference) - Math.abs(b.costDifference);

/** At most four. `numbers of runs`: for each other than the plan's own, the best that was found. */
export function runnersUp(layout: Layout, fixtures: readonly Fixture[]): RunnerUp[] {
	const counts = new Map<number, RunnerUp>();
	for (const lost of layout.lost) {
		if (lost.runs === layout.runs.length) continue;
		const one = onCount(lost, layout, fixtures);
		const known = counts.get(lost.runs);
		if (!known || byWorth(one, known) < 0) counts.set(lost.runs, one);
	}
	const others = layout.choice.alternatives.flatMap((one) => onRun(one, layout, fixtures));
	return [...counts.values(), ...others].toSorted(byWorth).slice(0, most);
}
