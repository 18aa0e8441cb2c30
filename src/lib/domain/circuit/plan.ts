/** For one transformer: the cheapest size and tap for each run. */
import { assess, markedTotal, rounding, sizeLimit, type Assessed } from './assess';
import { levels, offer, runPrice, type Candidate, type Expected, type Offer } from './candidates';
import { ohmsPerKm } from './conductors';
import { casesOf, type CaseName, type Cases } from './corners';
import { judge, isHard, type Broken } from './judge';
import { entrantsOf, type Fractions } from './lines';
import { cheapest } from './search';
import { assignSecondaries } from './secondaries';
import { margin, Sketcher } from './sketch';
import type { CableSize, ChooseOptions, RunShape, TransformerOption } from './types';

export interface Planned {
	assessed: Assessed;
	broken: Broken[];
	cableCost: number;
	/** Sum of the runs' levels: 0 when all are strict. */
	levels: number;
}
export interface Priced {
	shape: RunShape;
	sketcher: Sketcher;
	/** Sizes to be had, with the run's price in each. */
	sizes: { size: CableSize; cost: number }[];
}

export const priceRuns = (shapes: RunShape[], options: ChooseOptions): Priced[] =>
	shapes.map((shape) => ({
		shape,
		sketcher: new Sketcher(shape),
		sizes: options.sizes.flatMap((size) => {
			const cost = runPrice(shape, options.pricePerMetre(size));
			return cost === null ? [] : [{ size, cost }];
		})
	}));

/** Terminal volts to expect when between `least` and `most` volt-amperes weigh on the transformer. */
function expect(least: number, most: number, { regulation, voltAmps }: TransformerOption, cases: Cases): Expected {
	const perVoltAmpere = voltAmps > 0 ? regulation / voltAmps : 0;
	const sag = (perVoltAmpere * (least + most)) / 2;
	const u = (name: CaseName) => Math.max(cases[name].mains / 2, cases[name].mains - sag);
	return {
		u: { nominal: u('nominal'), low: u('low'), high: u('high'), longHot: u('longHot'), shortCold: u('shortCold') },
		slack: (perVoltAmpere * (most - least)) / 2
	};
}

/** Work on one transformer: what the passes below share. */
interface Task {
	runs: Priced[];
	transformer: TransformerOption;
	options: ChooseOptions;
	cases: Cases;
}

const offersFor = ({ runs, transformer, options, cases }: Task, expected: Expected): Offer[] =>
	runs.map(({ sketcher, sizes }) => offer({ sketcher, sizes, taps: transformer.taps, cases, expected, options }));

/** Before anything is known: the marked load, which cable losses and the choice of tap move by a quarter each way. */
function firstGuess({ runs, transformer, cases }: Task): Expected {
	const marked = runs.reduce((sum, { shape }) => sum + markedTotal(shape), 0);
	return expect(marked * 0.8, marked * 1.3, transformer, cases);
}

/** What the first offers can weigh on the transformer at least and at most. */
function secondGuess({ transformer, cases }: Task, offers: Offer[]): Expected {
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
const keepsStill = ({ size, nominal }: Assessed['runs'][number], sketcher: Sketcher, cases: Cases): boolean =>
	nominal.ok &&
	[cases.longHot, cases.shortCold].every((one) => {
		return margin(sketcher.at(size, ohmsPerKm(size, one.celsius), one, nominal.volts[0]!)) >= -rounding;
	});

/** True when every run keeps, solved exactly, what its offer promised, and lamps are alike where that is asked. */
function keeps(
	plan: Assessed,
	offers: Offer[],
	even: boolean,
	known: Set<string>,
	{ runs, options, cases }: Task
): boolean {
	const groupsBroken = new Set(offers.flatMap(({ broken }) => [...broken]));
	const keepsOne = (problem: Broken): boolean => {
		if (problem.code === 'transformer-load' || problem.code === 'secondary-amps') return known.has(problem.code);
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
		plan.runs.every((run, k) => offers[k]!.level !== levels.still || keepsStill(run, runs[k]!.sketcher, cases))
	);
}

/** What no choice of cable can put right with this transformer: the search does not look for it in vain. */
function beyondCable(offers: Offer[], { transformer, options }: Task): Set<string> {
	const least = (of: (c: Candidate) => number) =>
		offers.map(({ candidates }) => finite(Math.min(...candidates.map(of))));
	const known = new Set<string>();
	// Terminal volts are a few hundredths under the tap's; half of them leaves no doubt.
	const load =
		least((c) => (c.badness[0] > 0 ? Math.max(c.burden.most, markedTotal(c.shape)) : c.burden.most)).reduce(
			(a, b) => a + b,
			0
		) *
		(1 - transformer.regulation);
	if (load * (1 + options.growth) > options.loadLimit * transformer.voltAmps) known.add('transformer-load');
	if (
		!assignSecondaries(
			least((c) => c.amps * 0.99),
			transformer.secondaries,
			options.secondaryAmps
		).fits
	)
		known.add('secondary-amps');
	return known;
}

interface Found {
	candidates: Candidate[];
	assessed: Assessed;
	offers: Offer[];
}

/** Solved exactly: kept or null. */
function verify(task: Task, offers: Offer[], known: Set<string>, even: boolean, candidates: Candidate[]): Found | null {
	const assessed = assess(candidates, task.transformer, task.options, task.cases);
	return keeps(assessed, offers, even, known, task) ? { candidates, assessed, offers } : null;
}

/** The cheapest that keeps what the offers promise; `between` are the terminal fractions to draw lines through. */
function searchIn(task: Task, offers: Offer[], between: [Fractions, Fractions], evens: boolean[]): Found | null {
	const { runs, transformer, options, cases } = task;
	const known = beyondCable(offers, task);
	const broken = new Set(offers.flatMap((o) => [...o.broken]));
	const sketchers = runs.map(({ sketcher }) => sketcher);
	const entrants = entrantsOf(offers, sketchers, cases, between, broken);
	const sag = {
		perVoltAmpere: transformer.voltAmps > 0 ? transformer.regulation / transformer.voltAmps : 0,
		mains: fractions((name) => cases[name].mains),
		mostVoltAmps: known.has('transformer-load')
			? Infinity
			: (options.loadLimit * transformer.voltAmps) / (1 + options.growth)
	};
	const ampsLimit = ({ size }: Candidate) => sizeLimit(size, options);
	for (const even of evens) {
		const found = cheapest(entrants, { sag, even, ampsLimit }, (c) => verify(task, offers, known, even, c));
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
const between = ({ u, slack }: Expected): [Fractions, Fractions] => {
	const half = Math.max(apart, slack);
	return [fractions((name) => u[name] - half), fractions((name) => u[name] + half)];
};

/** The same candidates at the same level: what was searched in vain need not be searched again. */
const isSame = (a: Offer, b: Offer): boolean =>
	a.level === b.level &&
	a.candidates.length === b.candidates.length &&
	a.candidates.every((c, k) => c.size === b.candidates[k]!.size && c.tapVolts === b.candidates[k]!.tapVolts) &&
	a.broken.size === b.broken.size;

/** Right at any sag in range, each run by itself; used where nothing else was found. */
function safest(task: Task, before: Offer[], expected: Expected, ends: [Fractions, Fractions]): Found {
	const offers = offersFor(task, { ...expected, slack: -expected.slack });
	const candidates = offers.map((o) => o.candidates[0]!);
	const isNew = offers.some((o, run) => !isSame(o, before[run]!));
	return (
		(isNew ? searchIn(task, offers, ends, [true, false]) : null) ?? {
			candidates,
			assessed: assess(candidates, task.transformer, task.options, task.cases),
			offers
		}
	);
}

/**
 * The cheapest choice for `transformer`, or null when even the cheapest candidates cost `atMost` or more. First with a wide
 * guess of the sag: if the cheapest of all that may do is right when solved exactly, there is none cheaper. If not, the
 * others are searched; if none is right, a second guess drops what only seemed to do and the search goes on. Exact
 * wherever the search is exhaustive (`search.ts`), which at home size it is.
 */
export function planFor(
	runs: Priced[],
	transformer: TransformerOption,
	options: ChooseOptions,
	atMost = Infinity
): Planned | null {
	const task: Task = { runs, transformer, options, cases: casesOf(options) };
	const guess = firstGuess(task);
	const offers = offersFor(task, guess);
	const least = offers.reduce((sum, { candidates }) => sum + Math.min(...candidates.map(({ cost }) => cost)), 0);
	if (least >= atMost) return null;
	const search = (): Found => {
		const expected = secondGuess(task, offers);
		const ends = between(expected);
		const first = searchIn(task, offers, ends, [true]);
		if (first) return first;
		const again = offersFor(task, expected);
		const evens = again.every((o, run) => isSame(o, offers[run]!)) ? [false] : [true, false];
		return searchIn(task, again, ends, evens) ?? safest(task, again, expected, ends);
	};
	const firsts = offers.map((o) => o.candidates[0]!);
	const {
		candidates,
		assessed,
		offers: used
	} = verify(task, offers, beyondCable(offers, task), true, firsts) ?? search();
	return {
		assessed,
		broken: judge(assessed, options),
		cableCost: candidates.reduce((sum, { cost }) => sum + cost, 0),
		levels: used.reduce((sum, { level }) => sum + level, 0)
	};
}

export const hardCount = ({ broken }: Pick<Planned, 'broken'>): number => broken.filter(isHard).length;
