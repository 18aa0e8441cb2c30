/**
 * Way, cable size and tap for each run, transformer and secondaries: the cheapest that keeps every limit.
 *
 * Limits: each lamp inside its window, nominal and in both corners (rule cable.corners); each cable and secondary within its
 * amperes and the load, with room for growth, within the transformer's limit, in all three; then lamps of one `alike` group
 * within half a volt of each other in the nominal case. A run that cannot keep its windows in the corners keeps them with
 * the mains at nominal volts and the rest of the corners as they are, or failing that in the nominal case; its problems
 * are then marked `cornerOnly`. What meets no limit is chosen as the least bad. See `transformer.ts` for the sag.
 *
 * Of several that cost the same, runs are on taps whose own volts no lamp's window is below, even with the mains high and
 * every other lamp out; then those with most room to the windows' edges; then on the lower taps.
 */
import { alternativesOf } from './alternatives';
import { byThickness, ohmsPerKm, usualSizes } from './conductors';
import { leastVoltAmps } from './lamps';
import { rules } from '../shared/rules';
import { sizeLimit, type SolvedRun } from './assess';
import { curedAtMost, curesOf } from './cures';
import { isHard, judge, type Broken } from './judge';
import { taskFor } from './passes';
import { compare, planFor, straightPlan, type Planned } from './plan';
import { faultOfShape, soldAt, WaysOfRun } from './ways';
import type {
	CableSize,
	Choice,
	ChoiceProblem,
	ChooseOptions,
	ChosenRun,
	RunShape,
	RunWays,
	Solution,
	TransformerOption
} from './types';

/** Stands in where no transformer is offered, so that the runs can still be shown; it never fits. */
const none: TransformerOption = { id: 'none', voltAmps: 0, taps: [12], secondaries: 1, regulation: 0, price: 0 };

const isTransformer = ({ voltAmps, taps, price, regulation }: TransformerOption): boolean =>
	taps.length > 0 &&
	taps.every((tap) => tap > 0 && tap < Infinity) &&
	voltAmps > 0 &&
	voltAmps < Infinity &&
	price >= 0 &&
	price < Infinity &&
	regulation >= 0 &&
	regulation < 1;

/** Those that have the taps that runs are held on, if there are any, and of these the ones that can carry the lamps. */
function offeredTo(runs: WaysOfRun[], options: ChooseOptions): TransformerOption[] {
	const held = runs.flatMap(({ taps }) => taps ?? []);
	const sound = options.transformers;
	const fit = sound.filter(({ taps }) => held.every((tap) => taps.includes(tap)));
	const ascending = fit.length ? fit : sound;
	const marked = runs.reduce(
		(sum, { plain }) => plain.shape.loads.reduce((va, { load }) => va + leastVoltAmps(load), sum),
		0
	);
	const needed = (marked * (1 + options.growth)) / options.loadLimit;
	const enough = ascending.filter(({ voltAmps }) => voltAmps >= needed);
	if (enough.length) return enough;
	return ascending.length ? ascending.slice(-1) : [none];
}

/** A larger transformer could put it right. A lamp out of its window in a corner alone is not worth one. */
const wantsLarger = (problem: Broken): boolean =>
	isHard(problem) || problem.code === 'transformer-load' || problem.code === 'secondary-amps';

/**
 * Transformers from small to large, while one could still put something right or be cheaper with thinner cable. With a finite
 * `atMost` only what keeps every limit for less is sought; null where there is nothing.
 */
function bestOf(runs: WaysOfRun[], options: ChooseOptions, atMost: number): Planned | null {
	const least = runs.reduce((sum, run) => sum + run.least, 0);
	const total = (plan: Planned) => plan.cost + plan.assessed.transformer.price;
	const tasks = offeredTo(runs, options).map((transformer) => taskFor(runs, transformer, options));
	let best = straightPlan(tasks);
	for (const task of tasks) {
		if (best?.broken.length && !best.broken.some(wantsLarger)) break;
		const most = best?.broken.length === 0 ? Math.min(total(best), atMost) : atMost;
		const left = most - task.transformer.price;
		if (least >= left) continue;
		const plan = planFor(task, left);
		if (plan && (!best || compare(plan, best, { a: total(plan), b: total(best) }) < 0)) best = plan;
	}
	return best && (atMost === Infinity || total(best) < atMost) ? best : null;
}
function chosen(
	{ shape, size, tapVolts, secondary, ampsLimit, nominal, low, high }: SolvedRun,
	options: ChooseOptions
): ChosenRun {
	const all = [nominal, low, high];
	const lamps = shape.loads.map(({ id, node }) => {
		const volts = all.map((solution) => (solution.ok ? solution.volts[node]! : null));
		const known = volts.filter((v) => v !== null);
		const band =
			known.length === all.length ? { low: Math.min(...known), high: Math.max(...known) } : { low: null, high: null };
		return { id, volts: volts[0]!, ...band };
	});
	const perKm = ohmsPerKm(size, options.temperatures.nominal);
	return { id: shape.id, shape, size, tapVolts, secondary, ohmsPerKm: perKm, ampsLimit, nominal, low, high, lamps };
}

/** Watts behind the volt-amperes: LED at the power factor of rule supply.load, all else and the cable at 1. */
function watts(runs: SolvedRun[], voltAmps: number): number {
	const led = runs.reduce(
		(sum, { shape }) => sum + shape.loads.reduce((va, { load }) => va + (load.kind === 'led' ? load.voltAmps : 0), 0),
		0
	);
	return voltAmps - led * (1 - rules['supply.load'].figures.powerFactor);
}

/** A run that cannot be worked out at all: shown as it is, left out of everything else. */
function unsound({ shape, why }: Fault, size: CableSize, tapVolts: number, options: ChooseOptions): ChosenRun {
	return {
		id: shape.id,
		shape,
		size,
		tapVolts,
		secondary: 0,
		ohmsPerKm: ohmsPerKm(size, options.temperatures.nominal),
		ampsLimit: sizeLimit(size, options),
		nominal: why,
		low: why,
		high: why,
		lamps: shape.loads.map(({ id }) => ({ id, volts: null, low: null, high: null }))
	};
}
const noNetwork = (run: string | null): ChoiceProblem => ({
	code: 'bad-network',
	run,
	load: null,
	value: null,
	limit: null,
	cornerOnly: false,
	cures: []
});

/** `object` with one more property, worked out when it is first read. */
function withLazy<T extends object, K extends string, V>(object: T, key: K, make: () => V): T & Record<K, V> {
	let made: { value: V } | null = null;
	const get = () => (made ??= { value: make() }).value;
	return Object.defineProperty(object, key, { get, enumerable: true }) as T & Record<K, V>;
}

interface Fault {
	shape: RunShape;
	why: Solution;
}
/** The run ready to be chosen, or why it cannot be. */
function prepare(run: RunWays, tap: number, options: ChooseOptions): WaysOfRun | Fault {
	const { shape, held } = run;
	const size = held?.size ?? options.sizes[0];
	if (!size) {
		const message = 'There is no cable size to choose from. Give one that has a price.';
		return { shape, why: { ok: false, why: 'bad-network', at: 0, message } };
	}
	const tapVolts = held?.tapVolts ?? tap;
	const why = faultOfShape(shape, size, tapVolts, options);
	return why ? { shape, why } : new WaysOfRun(run, options, tapVolts);
}
const byId = (a: { shape: RunShape }, b: { shape: RunShape }): number =>
	a.shape.id < b.shape.id ? -1 : a.shape.id > b.shape.id ? 1 : 0;

function problemsOf(plan: Planned, broken: Broken[], runs: WaysOfRun[], options: ChooseOptions): ChoiceProblem[] {
	const ways = new Map(runs.map((run) => [run.plain.shape.id, run]));
	return broken.map((problem, k) =>
		withLazy({ ...problem }, 'cures', () =>
			k < curedAtMost ? curesOf(plan.assessed, broken, problem, ways, options) : []
		)
	);
}

/**
 * Chooses for runs of given shape, and of the ways they come with. Never throws: with no size or no transformer to choose
 * from, or a shape that is no network, the choice says so in `problems`. `value` of transformer-load includes the room for
 * growth; for lamps and cables there is one problem per run and code, naming the worst. The order of runs, sizes and ways
 * does not bear on the choice; transformers are tried in theirs.
 *
 * `alternatives` and each problem's `cures` are worked out when they are first read, since most choices are made only to be
 * compared. Above 400 lamps no cures are sought, and a run of more than that is laid in its plain way. The search is capped
 * (12,000 partial combinations a transformer and try, `search.ts`): beyond that the choice keeps the limits it says it
 * keeps, but a cheaper one may exist.
 */
export const chooseSupply = (given: readonly (RunShape | RunWays)[], all: ChooseOptions): Choice =>
	chooseBelow(given, all, Infinity)!;

/**
 * The same where only a choice without a problem for less than `atMost` (currency) is of use. Where there is none the search
 * is given up early, and null comes back.
 */
export function chooseBelow(given: readonly (RunShape | RunWays)[], all: ChooseOptions, atMost: number): Choice | null {
	const sizes = all.sizes.filter((size) => soldAt(size, all) !== null).toSorted(byThickness);
	const options = { ...all, sizes, transformers: all.transformers.filter(isTransformer) };
	const tap = options.transformers[0]?.taps[0] ?? 12;
	const asked = given.map((run): RunWays => ('shape' in run ? run : { shape: run }));
	const prepared = asked.map((run) => prepare(run, tap, options));
	const sound = prepared.filter((run) => run instanceof WaysOfRun);
	const isIn = (run: WaysOfRun | Fault): run is WaysOfRun => run instanceof WaysOfRun;

	// One order for one set of runs: sums of volts and choices between equals then come out the same.
	const order = sound.toSorted((a, b) => byId(a.plain, b.plain));
	const plan = bestOf(order, options, atMost);
	if (!plan) return null;
	const { assessed } = plan;
	const place = sound.map((run) => order.indexOf(run));
	const runs = place.map((at) => chosen(assessed.runs[at]!, options));
	const inOrder = { ...assessed, runs: place.map((at) => assessed.runs[at]!) };
	const shown = sizes[0] ?? usualSizes('awg')[0]!;
	const next = runs.values();
	const choice = {
		transformer: assessed.transformer,
		runs: prepared.map((run) => (isIn(run) ? next.next().value! : unsound(run, shown, tap, options))),
		loadVoltAmps: assessed.voltAmps,
		loadWatts: watts(assessed.runs, assessed.voltAmps),
		cost: plan.cost + assessed.transformer.price,
		problems: [
			...prepared.flatMap((run) => (isIn(run) ? [] : [noNetwork(run.shape.id)])),
			...problemsOf(plan, judge(inOrder, options), order, options)
		]
	};
	return withLazy(choice, 'alternatives', () => place.flatMap((at) => alternativesOf(plan, order, at, options)));
}
