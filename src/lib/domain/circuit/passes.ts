/** The passes of a plan for one transformer: what to expect, what each run is offered, the search, and the exact check. */
import { assess, markedTotal, rounding, sizeLimit, type Assessed } from './assess';
import { levels, type Before, type Candidate, type Expected, type Trial } from './candidates';
import { ohmsPerKm } from './conductors';
import { casesOf, type CaseName, type Cases } from './corners';
import { judge, type Broken } from './judge';
import { entrantsOf, type Ends, type Fractions } from './lines';
import { offer, type Offer } from './offers';
import { cheapest } from './search';
import { assignSecondaries } from './secondaries';
import { margin } from './sketch';
import type { ChooseOptions, TransformerOption } from './types';
import type { WaysOfRun } from './ways';

export const sum = (values: number[]): number => values.reduce((total, value) => total + value, 0);

/** Terminal volts to expect when between `least` and `most` volt-amperes weigh on the transformer. */
function expect(least: number, most: number, { regulation, voltAmps }: TransformerOption, cases: Cases): Expected {
	const perVoltAmpere = voltAmps > 0 ? regulation / voltAmps : 0;
	const sag = (perVoltAmpere * (least + most)) / 2;
	const u = (name: CaseName) => Math.max(cases[name].mains / 2, cases[name].mains - sag);
	return {
		u: {
			nominal: u('nominal'),
			low: u('low'),
			high: u('high'),
			longHot: u('longHot'),
			shortCold: u('shortCold')
		},
		slack: (perVoltAmpere * (most - least)) / 2
	};
}

/** Work on one transformer: what the passes below share. */
export interface Task {
	runs: WaysOfRun[];
	transformer: TransformerOption;
	options: ChooseOptions;
	cases: Cases;
	/** Before anything is known. */
	guess: Expected;
	/** By run: other ways than the plain one are let in where they cost less than this. */
	letIn: number[];
	/** By run, what it was last offered at `guess`, and from which ways. */
	offered: { letIn: number; offer: Offer }[];
	/** What was found strict at `guess`. */
	before: Before;
	strict: NonNullable<Trial['strict']>;
	/** For lines that serve wherever `guess` lets the volts be. */
	ends: Ends;
}
export function taskFor(runs: WaysOfRun[], transformer: TransformerOption, options: ChooseOptions): Task {
	const cases = casesOf(options);
	const guess = firstGuess(runs, transformer, cases);
	const letIn = runs.map(() => -Infinity);
	const known = {
		offered: [],
		before: new Map(),
		strict: new Map(),
		ends: between(guess)
	};
	return { runs, transformer, options, cases, guess, letIn, ...known };
}

function offerTo(task: Task, r: number, expected: Expected) {
	const { runs, transformer, options, cases, guess, letIn, offered, before, strict } = task;
	const [run, below] = [runs[r]!, letIn[r]!];
	const isGuess = expected === guess;
	if (isGuess && offered[r]?.letIn === below) return offered[r].offer;
	const taps = run.taps ?? transformer.taps;
	const found = offer({
		ways: run.within(below),
		taps,
		cases,
		expected,
		options,
		...(isGuess && { before, strict })
	});
	if (isGuess) offered[r] = { letIn: below, offer: found };
	return found;
}
/** It keeps all limits by itself, at some sag. */
export const isSound = ({ level, broken }: Offer): boolean => level === levels.strict && broken.size === 0;

/**
 * By run all that it may be. One that is not sound in its plain way is offered all of its ways, or those that could be part of
 * a choice for less than `atMost`.
 */
export function offersFor(task: Task, expected: Expected, atMost = Infinity): Offer[] {
	const { runs, letIn } = task;
	const least = atMost < Infinity ? sum(runs.map((run) => run.least)) : 0;
	return runs.map((run, r) => {
		const first = offerTo(task, r, expected);
		const below = atMost - least + run.least;
		if (isSound(first) || !run.gains(letIn[r]!, below)) return first;
		letIn[r] = below;
		return offerTo(task, r, expected);
	});
}
/** By run what its plain way offers. */
export const plainOffers = (task: Task): Offer[] => task.runs.map((_, r) => offerTo(task, r, task.guess));

/** Before anything is known: the marked load, which cable losses and the choice of tap move by a quarter each way. */
function firstGuess(runs: WaysOfRun[], transformer: TransformerOption, cases: Cases): Expected {
	const marked = runs.reduce((sum, { plain }) => sum + markedTotal(plain.shape), 0);
	return expect(marked * 0.8, marked * 1.3, transformer, cases);
}

/** What the first offers can weigh on the transformer at least and at most. */
export function secondGuess({ transformer, cases }: Task, offers: Offer[]): Expected {
	const burden = (pick: (c: Candidate) => number, best: (...values: number[]) => number) =>
		offers.reduce((sum, { candidates }) => sum + finite(best(...candidates.map(pick))), 0);
	return expect(
		burden((c) => c.burden.least, Math.min),
		burden((c) => c.burden.most, Math.max),
		transformer,
		cases
	);
}
const finite = (value: number): number => (Number.isFinite(value) ? value : 0);

/** The corners with nominal mains, at the sag of the nominal case: cable losses move that by less than the tape is out. */
const keepsStill = ({ nominal }: Assessed['runs'][number], { sketcher, size }: Candidate, cases: Cases): boolean =>
	nominal.ok &&
	[cases.longHot, cases.shortCold].every((one) => {
		return margin(sketcher.at(size, ohmsPerKm(size, one.celsius), one, nominal.volts[0]!)) >= -rounding;
	});

/** True when every run keeps, solved exactly, what its offer promised, and lamps are alike where that is asked. */
function keeps(
	plan: Assessed,
	candidates: Candidate[],
	offers: Offer[],
	even: boolean,
	known: Set<string>,
	{ options, cases }: Task
): boolean {
	const groupsBroken = new Set(offers.flatMap(({ broken }) => [...broken]));
	const keepsOne = (problem: Broken): boolean => {
		if (problem.code === 'transformer-load' || problem.code === 'secondary-amps') return known.has(problem.code);
		if (problem.code === 'no-tap') return true;
		const index = plan.runs.findIndex(({ shape }) => shape.id === problem.run);
		if (problem.code === 'uneven') {
			const lamp = plan.runs[index]?.shape.loads.find(({ id }) => id === problem.load);
			return !even || groupsBroken.has(lamp?.alike ?? '');
		}
		const level = offers[index]?.level ?? levels.none;
		if (level === levels.none) return true;
		return problem.cornerOnly && level !== levels.strict && problem.code !== 'cable-amps';
	};
	return (
		judge(plan, options).every(keepsOne) &&
		plan.runs.every((run, k) => offers[k]!.level !== levels.still || keepsStill(run, candidates[k]!, cases))
	);
}

/** What no choice of cable can put right with this transformer: the search does not look for it in vain. */
export function beyondCable(offers: Offer[], task: Task): Set<string> {
	// More candidates never put more beyond: where those known keep to it, the others need not be.
	let known: Set<string>;
	do
		known = beyondAll(
			offers.map((one) => one.known),
			task
		);
	while (known.size > 0 && offers.filter((one) => one.more()).length > 0);
	return known;
}
function beyondAll(candidates: (readonly Candidate[])[], { transformer, options }: Task): Set<string> {
	const least = (of: (c: Candidate) => number) => candidates.map((own) => finite(Math.min(...own.map(of))));
	const known = new Set<string>();
	const load = Math.max(...[0, 1, 2].map((c) => sum(least(({ voltAmps }) => voltAmps[c]!))));
	if (load * (1 + options.growth) > options.loadLimit * transformer.voltAmps + rounding) known.add('transformer-load');
	if (
		!assignSecondaries(
			least((c) => c.amps),
			transformer.secondaries,
			options.secondaryAmps
		).fits
	)
		known.add('secondary-amps');
	return known;
}

export interface Found {
	candidates: Candidate[];
	assessed: Assessed;
	offers: Offer[];
	isSettled: boolean;
}

/** Solved exactly: kept or null. */
export function verify(
	task: Task,
	offers: Offer[],
	known: Set<string>,
	even: boolean,
	candidates: Candidate[]
): Found | null {
	const assessed = assess(candidates, task.transformer, task.options, task.cases);
	if (!keeps(assessed, candidates, offers, even, known, task)) return null;
	return { candidates, assessed, offers, isSettled: even && known.size === 0 };
}

/** The cheapest that keeps what the offers promise; `ends` are the terminal fractions to draw lines through. */
export function searchIn(task: Task, offers: Offer[], ends: Ends, evens: boolean[], atMost = Infinity): Found | null {
	const { transformer, options, cases } = task;
	const known = beyondCable(offers, task);
	const broken = new Set(offers.flatMap((o) => [...o.broken]));
	const entrants = entrantsOf(offers, cases, ends, broken);
	const sag = {
		perVoltAmpere: transformer.voltAmps > 0 ? transformer.regulation / transformer.voltAmps : 0,
		mains: fractions((name) => cases[name].mains),
		mostVoltAmps: known.has('transformer-load')
			? Infinity
			: (options.loadLimit * transformer.voltAmps) / (1 + options.growth)
	};
	const ampsLimit = ({ size }: Candidate) => sizeLimit(size, options);
	for (const even of evens) {
		const found = cheapest(entrants, { sag, even, ampsLimit, atMost }, (c) => verify(task, offers, known, even, c));
		if (found) return found;
	}
	return null;
}
const fractions = (of: (name: 'nominal' | 'low' | 'high') => number): Fractions => [
	of('nominal'),
	of('low'),
	of('high')
];

/** Half the least distance of the two fractions that lines are drawn through: far above rounding, far below what bends. */
const apart = 0.002;
const between = ({ u, slack }: Expected): Ends => {
	const half = Math.max(apart, slack);
	return {
		from: fractions((name) => u[name] - half),
		to: fractions((name) => u[name] + half),
		drawn: new Map()
	};
};
/** Those of the first guess, whose lines may be drawn already, where all that is now expected lies between them. */
export function endsFor({ ends }: Task, expected: Expected): Ends {
	const { from, to } = between(expected);
	return from.every((u, c) => ends.from[c]! <= u && to[c]! <= ends.to[c]!) ? ends : { from, to, drawn: new Map() };
}
