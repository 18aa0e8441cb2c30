/** What was weighed for each run and not taken: solved with the other runs as they were chosen. */
import { assess, rounding } from './assess';
import { byBadness, type Candidate, type Expected, type Trial } from './candidates';
import { casesOf, type CaseName } from './corners';
import { excessOf, judge, nameOf, type Broken } from './judge';
import { inTurn } from './offers';
import type { Planned } from './plan';
import { relaxed } from './relaxed';
import type { Alternative, CableSize, ChooseOptions, Feed, RunShape, Solution } from './types';
import type { WaysOfRun } from './ways';

/** Dearer ones that are solved for one run before it is said to have none. */
const mostTried = 6;

const feedOf = ({ shape }: { shape: RunShape }): Feed => shape.feed ?? 'end';
/** Where along the run it is fed does not make it another, nor does the tap. */
const isOther = (a: { shape: RunShape; size: CableSize }, b: { shape: RunShape; size: CableSize }): boolean =>
	feedOf(a) !== feedOf(b) || a.size !== b.size;

/** The first of what is broken now and was not, or not as badly; null where nothing is worse. */
function worstNew(plan: Planned, run: number, other: Candidate, options: ChooseOptions): Broken | null {
	const picks = plan.candidates.with(run, other);
	const changed = assess(picks, plan.assessed.transformer, options);
	const before = new Map(plan.broken.map((b) => [nameOf(plan.assessed, b), b]));
	const isWorse = (now: Broken): boolean => {
		const was = before.get(nameOf(changed, now));
		return !was || (was.cornerOnly && !now.cornerOnly) || excessOf(now) > excessOf(was) + rounding;
	};
	return judge(changed, options).find(isWorse) ?? null;
}

/** The next dearer way or size that keeps all that the choice keeps. */
function dearer(plan: Planned, run: number, options: ChooseOptions): Alternative | null {
	const own = plan.candidates[run]!;
	let tried = 0;
	for (const other of inTurn(plan.offers[run]!)) {
		if (!isOther(other, own) || other.cost < own.cost - rounding) continue;
		if (!worstNew(plan, run, other, options)) return described(own, other, null);
		if (++tried === mostTried) break;
	}
	return null;
}

/** Terminal volts per unit of tap, as they were found. */
function found(plan: Planned, run: number, options: ChooseOptions): Expected {
	const solved = plan.assessed.runs[run]!;
	const cases = casesOf(options);
	const of = (solution: Solution, name: CaseName) =>
		solution.ok ? solution.volts[0]! / solved.tapVolts : cases[name].mains;
	const nominal = of(solved.nominal, 'nominal');
	const ends = { low: of(solved.low, 'low'), high: of(solved.high, 'high') };
	return { u: { nominal, ...ends, longHot: nominal, shortCold: nominal }, slack: 0 };
}

/** The next cheaper way or size, on the tap that suits it best, and the worst that it would break. */
function cheaper(plan: Planned, run: number, ways: WaysOfRun, options: ChooseOptions): Alternative | null {
	const own = plan.candidates[run]!;
	const all = ways.known.flatMap(({ shape, sketcher, sizes }) => sizes.map((sized) => ({ shape, sketcher, ...sized })));
	const below = all.filter((one) => one.cost < own.cost - rounding && isOther(one, own));
	if (below.length === 0) return null;
	const next = below.reduce((a, b) => (b.cost > a.cost ? b : a));
	const taps = ways.taps ?? plan.assessed.transformer.taps;
	const trial: Trial = {
		ways: ways.known,
		taps,
		cases: casesOf(options),
		expected: found(plan, run, options),
		options
	};
	const [best] = taps
		.map((tapVolts) => relaxed(trial, { ...next, tapVolts }))
		.toSorted((a, b) => a.level - b.level || byBadness(a, b));
	const problem = best ? worstNew(plan, run, best, options) : null;
	// Without a problem it would have been chosen, unless the search was cut short: then nothing can be said against it.
	return problem && described(own, best!, problem);
}

const described = (own: Candidate, other: Candidate, problem: Broken | null): Alternative => ({
	run: own.shape.id,
	size: other.size,
	tapVolts: other.tapVolts,
	shape: other.shape,
	feed: feedOf(other),
	costDifference: other.cost - own.cost,
	problem
});

/** For one run the next dearer that keeps every limit that the choice keeps, and the next cheaper that does not. */
export const alternativesOf = (plan: Planned, runs: WaysOfRun[], run: number, options: ChooseOptions): Alternative[] =>
	[dearer(plan, run, options), cheaper(plan, run, runs[run]!, options)].filter((one) => one !== null);
