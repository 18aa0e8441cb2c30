/** For one transformer: the cheapest way, size and tap for each run. */
import { assess, type Assessed } from './assess';
import type { Candidate, Expected } from './candidates';
import { judge, isHard, type Broken } from './judge';
import type { Ends } from './lines';
import { inTurn, type Offer } from './offers';
import {
	beyondCable,
	endsFor,
	isSound,
	offersFor,
	plainOffers,
	searchIn,
	secondGuess,
	sum,
	verify,
	type Found,
	type Task
} from './passes';
import type { ChooseOptions } from './types';

export interface Planned {
	assessed: Assessed;
	broken: Broken[];
	candidates: Candidate[];
	/** What each run was chosen from. */
	offers: Offer[];
	/** Of cable and laying. */
	cost: number;
	/** Sum of the runs' levels: 0 when all are strict. */
	levels: number;
	/** It keeps all that its offers promise: nothing is wrong that another way for some other run could put right. */
	isSettled: boolean;
}

const isSameTry = (a: Candidate, b: Candidate): boolean =>
	a.sketcher === b.sketcher && a.size === b.size && a.tapVolts === b.tapVolts;
/** The same candidates at the same level: what was searched in vain need not be searched again. */
function isSame(a: Offer, b: Offer): boolean {
	if (a === b) return true;
	if (a.level !== b.level || a.broken.size !== b.broken.size) return false;
	const others = inTurn(b);
	for (const one of inTurn(a)) {
		const { value: other } = others.next();
		if (!other || !isSameTry(one, other)) return false;
	}
	return others.next().done === true;
}

/** Right at any sag in range, each run by itself; used where nothing else was found. */
function safest(task: Task, before: Offer[], expected: Expected, ends: Ends): Found {
	const offers = offersFor(task, { ...expected, slack: -expected.slack });
	const candidates = offers.map((o) => o.first);
	const isNew = offers.some((o, run) => !isSame(o, before[run]!));
	return (
		(isNew ? searchIn(task, offers, ends, [true, false]) : null) ?? {
			candidates,
			assessed: assess(candidates, task.transformer, task.options, task.cases),
			offers,
			isSettled: false
		}
	);
}

/** Differences of money below this are none. */
const epsilon = 1e-9;

/**
 * The best of the ways that are let in. First with a wide guess of the sag: if the cheapest of all that may do is right when
 * solved exactly, there is none cheaper. If not, the others are searched; if none is right, a second guess drops what only
 * seemed to do and the search goes on. With a finite `atMost` only what costs less and keeps everything is of use.
 */
function searchAmong(task: Task, all: Offer[], atMost: number): Found | null {
	const least = all.map((o) => o.least);
	const slack = atMost - sum(least);
	if (slack <= epsilon) return null;
	const offers = all.map((o, run) => o.below(least[run]! + slack));
	const firsts = offers.map((o) => o.first);
	const known = beyondCable(offers, task);
	if (known.size > 0 && atMost < Infinity) return null;
	const straight = verify(task, offers, known, true, firsts);
	if (straight) return { ...straight, offers: all };
	const expected = secondGuess(task, offers);
	const ends = endsFor(task, expected);
	const first = searchIn(task, offers, ends, [true], atMost);
	if (first || atMost < Infinity) return first && { ...first, offers: all };
	const again = offersFor(task, expected);
	const evens = again.every((o, run) => isSame(o, offers[run]!)) ? [false] : [true, false];
	return searchIn(task, again, ends, evens) ?? safest(task, again, expected, ends);
}

/**
 * Lets in every other way that could be part of a choice cheaper than the best so far, and says whether there is any: such a
 * choice has for no run more than the run's cheapest and all that the best costs beyond the sum of the cheapest.
 */
function widen({ runs, letIn }: Task, offers: Offer[], best: Planned | null, atMost: number): boolean {
	const least = offers.map((o) => o.least);
	const slack = best && !best.isSettled ? Infinity : Math.max(0, Math.min(best?.cost ?? Infinity, atMost) - sum(least));
	let isWider = false;
	runs.forEach((run, r) => {
		const below = Math.max(letIn[r]!, least[r]! + slack);
		if (run.gains(letIn[r]!, below)) isWider = true;
		letIn[r] = below;
	});
	return isWider;
}

/**
 * The best choice for the transformer of `task`, or null when none of them costs less than `atMost` (which is that of a choice
 * without a problem). First with the plain ways alone, then with all others that could be part of a cheaper one, until no
 * more could. Exact wherever the search is exhaustive (`search.ts`), which at home size it is.
 */
export function planFor(task: Task, atMost = Infinity): Planned | null {
	let best: Planned | null = null;
	let before: Offer[] | null = null;
	for (;;) {
		const offers = offersFor(task, task.guess, atMost);
		if (atMost < Infinity && !offers.every(isSound)) return best;
		if (!before?.every((o, run) => isSame(o, offers[run]!))) {
			const limit: number = best?.isSettled ? Math.min(best.cost, atMost) : atMost;
			const found = searchAmong(task, offers, limit);
			const next = found && planned(found, task.options);
			if (next && (!best || compare(next, best) < 0)) best = next;
		}
		before = offers;
		if (!widen(task, offers, best, atMost)) return best;
	}
}

/**
 * A choice without a problem, cheap to come by: the plain ways' cheapest on the first transformer on which these are right
 * together. What is dearer need then not be searched on the others. Null where a run is not sound in its plain way.
 */
export function straightPlan(tasks: Task[]): Planned | null {
	for (const task of tasks) {
		const offers = plainOffers(task);
		if (!offers.every(isSound)) return null;
		const firsts = offers.map((o) => o.first);
		const known = beyondCable(offers, task);
		const found = known.size === 0 ? verify(task, offers, known, true, firsts) : null;
		const plan = found && planned(found, task.options);
		if (plan?.broken.length === 0) return plan;
	}
	return null;
}

const planned = (found: Found, options: ChooseOptions): Planned => ({
	...found,
	broken: judge(found.assessed, options),
	cost: sum(found.candidates.map(({ cost }) => cost)),
	levels: sum(found.offers.map(({ level }) => level))
});

const hardCount = ({ broken }: Pick<Planned, 'broken'>): number => broken.filter(isHard).length;

/** Below zero where `a` is the better: what is hard first, then the corners, then money, each with what it costs in all. */
export const compare = (a: Planned, b: Planned, costs = { a: a.cost, b: b.cost }): number =>
	hardCount(a) - hardCount(b) || a.levels - b.levels || a.broken.length - b.broken.length || costs.a - costs.b;
