/**
 * Cable size and tap for each run, transformer and secondaries: the cheapest that keeps every limit.
 *
 * Limits: each lamp inside its window, nominal and in both corners (rule cable.corners); each cable and secondary within its
 * amperes and the load, with room for growth, within the transformer's limit, in all three; then lamps of one `alike` group
 * within half a volt of each other in the nominal case. A run that cannot keep its windows in the corners keeps them with
 * the mains at nominal volts and the rest of the corners as they are, or failing that in the nominal case; its problems
 * are then marked `cornerOnly`. What meets no limit is chosen as the least bad. See `transformer.ts` for the sag.
 */
import { byThickness, ohmsPerKm } from './conductors';
import { casesOf, runNetwork } from './corners';
import { markedVoltAmps } from './lamps';
import { rules } from '../shared/rules';
import { sizeLimit, type SolvedRun } from './assess';
import { curedAtMost, curesOf } from './cures';
import { hardCount, planFor, priceRuns, type Planned } from './plan';
import { solve } from './solve';
import type {
	CableSize,
	Choice,
	ChoiceProblem,
	ChooseOptions,
	ChosenRun,
	RunShape,
	Solution,
	TransformerOption
} from './types';

/** Stands in where no transformer is offered, so that the runs can still be shown; it never fits. */
const none: TransformerOption = { id: 'none', voltAmps: 0, taps: [12], secondaries: 1, regulation: 0, price: 0 };

interface Option {
	plan: Planned;
	cost: number;
}
const better = (a: Option, b: Option): boolean => {
	const hard = hardCount(a.plan) - hardCount(b.plan);
	const soft = a.plan.levels - b.plan.levels || a.plan.broken.length - b.plan.broken.length;
	return (hard || soft || a.cost - b.cost) < 0;
};

/**
 * Transformers from small to large. The next one up is tried while something hard is unmet, or while it could still be
 * cheaper with thinner cable; a corner alone does not buy a larger transformer.
 */
function bestOf(shapes: RunShape[], options: ChooseOptions): Option {
	const runs = priceRuns(shapes, options);
	const least = runs.reduce((sum, { sizes }) => sum + Math.min(...sizes.map(({ cost }) => cost)), 0);
	const ascending = options.transformers.filter(({ taps, voltAmps }) => taps.length > 0 && voltAmps > 0);
	const marked = shapes.reduce((sum, { loads }) => sum + loads.reduce((va, { load }) => va + floor(load), 0), 0);
	const needed = (marked * (1 + options.growth)) / options.loadLimit;
	const enough = ascending.filter(({ voltAmps }) => voltAmps >= needed);
	const offered = enough.length ? enough : ascending.slice(-1);
	let best: Option | null = null;
	for (const transformer of offered.length ? offered : [none]) {
		const isDone = best !== null && hardCount(best.plan) === 0;
		const left = isDone ? best!.cost - transformer.price : Infinity;
		if (isDone && (best!.plan.broken.length > 0 || least >= left)) continue;
		const plan = planFor(runs, transformer, options, left);
		if (!plan) continue;
		const next = { plan, cost: plan.cableCost + transformer.price };
		if (!best || better(next, best)) best = next;
	}
	return best!;
}
/** Least a load can draw: halogen lamps take less below their rated volts. */
const floor = (load: Parameters<typeof markedVoltAmps>[0]): number =>
	markedVoltAmps(load) * (load.kind === 'led' ? 1 : 0.7);

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

/** A shape that is no network at any size: shown as it is, left out of everything else. */
function unsound(shape: RunShape, why: Solution, size: CableSize, tapVolts: number, options: ChooseOptions): ChosenRun {
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

/**
 * Chooses for runs of given shape. Never throws: with no size or no transformer to choose from, or a shape that is no
 * network, the choice says so in `problems`. `value` of transformer-load includes the room for growth; for lamps and cables
 * there is one problem per run and code, naming the worst. `cures` are in the order tap, thicker, split, led, larger
 * transformer; `volts` is what the lamp named then gets. The search is capped (6,000 partial combinations a transformer and
 * try, `search.ts`): beyond that the choice keeps the limits it says it keeps, but a cheaper one may exist.
 */
export function chooseSupply(shapes: RunShape[], options: ChooseOptions): Choice {
	const sizes = options.sizes
		.filter(
			(size) =>
				Number.isFinite(ohmsPerKm(size, 20)) &&
				options.pricePerMetre(size) >= 0 &&
				options.pricePerMetre(size) < Infinity
		)
		.toSorted(byThickness);
	const thinnest = sizes[0];
	const smallest = options.transformers[0] ?? none;
	if (!thinnest)
		return {
			transformer: smallest,
			runs: [],
			loadVoltAmps: 0,
			loadWatts: 0,
			cost: smallest.price,
			alternatives: [],
			problems: [noNetwork(null)]
		};

	const tap = smallest.taps[0] ?? 12;
	const tried = shapes.map((shape) => solve(runNetwork(shape, thinnest, casesOf(options).nominal, tap)));
	const isSound = (k: number) => {
		const solution = tried[k]!;
		return solution.ok || (solution.why !== 'bad-network' && solution.why !== 'island');
	};
	const sound = shapes.filter((_, k) => isSound(k));
	const { plan, cost } = bestOf(sound, { ...options, sizes });
	const { assessed, broken } = plan;
	const runs = assessed.runs.map((run) => chosen(run, options));
	return {
		transformer: assessed.transformer,
		runs: shapes.map((shape, k) => (isSound(k) ? runs.shift()! : unsound(shape, tried[k]!, thinnest, tap, options))),
		loadVoltAmps: assessed.voltAmps,
		loadWatts: watts(assessed.runs, assessed.voltAmps),
		cost,
		alternatives: [],
		problems: [
			...shapes.filter((_, k) => !isSound(k)).map(({ id }) => noNetwork(id)),
			...broken.map((problem, k) => ({
				...problem,
				cures: k < curedAtMost ? curesOf(assessed, broken, problem, options) : []
			}))
		]
	};
}
