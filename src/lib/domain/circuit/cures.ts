/** What would cure a problem: each change is made to the whole plan and solved, and offered only if it works. */
import { rules } from '../shared/rules';
import { assess, sizeLimit, type Assessed, type Pick } from './assess';
import { changesTo, largerThan, type Change } from './changes';
import { ohmsPerKm } from './conductors';
import { casesOf, type Cases } from './corners';
import { excessOf, groupOf, isHard, judge, nameOf, type Broken } from './judge';
import { Sketcher } from './sketch';
import type { ChooseOptions, Cure, RunShape } from './types';
import type { WaysOfRun } from './ways';

/** Problems beyond this many get no cures: one cure usually clears several, and the person starts at the top. */
export const curedAtMost = 12;
/** Larger networks than this get none: a home has a few dozen lamps. */
const mostLamps = 400;

/** Volts of the problem's lamp in the changed plan, nominal. */
function voltsOf(plan: Assessed, load: string | null): number | undefined {
	for (const { shape, nominal } of plan.runs) {
		const lamp = shape.loads.find(({ id }) => id === load);
		if (lamp && nominal.ok) return nominal.volts[lamp.node];
	}
	return undefined;
}

/** Volts by which a quick look may be out: terminal volts move a little with every change. */
const quickSlack = 0.05;

/**
 * A quick look at the changed runs alone, from the kindest terminal volts that the change could leave: false when the
 * problem would surely stay, or another surely come in its place.
 */
function isPromising(
	plan: Assessed,
	broken: Broken[],
	problem: Broken,
	{ replaced }: Change,
	cases: Cases,
	options: ChooseOptions,
	sketchers: Map<RunShape, Sketcher>
): boolean {
	const run = plan.runs.find(({ shape }) => shape.id === problem.run);
	if (!run || problem.code === 'secondary-amps' || problem.code === 'no-tap') return true;
	const code = problem.code;
	const [starves, name] = [
		code !== 'lamp-high',
		problem.cornerOnly ? (code === 'lamp-high' ? 'high' : 'low') : 'nominal'
	] as const;
	const solved = run[name];
	const kindest = starves || !solved.ok ? cases[name].mains : solved.volts[0]! / run.tapVolts;
	const group = groupOf(plan, problem.load);
	const was = new Set(broken.filter((b) => b.run === problem.run).map((b) => b.code));
	/** Where the run was right, in the cases that this problem may not be cured at the expense of, it is still. */
	const staysRight = (sketcher: Sketcher, { size, tapVolts }: Pick): boolean =>
		(isHard(problem) ? (['nominal'] as const) : (['nominal', 'low', 'high'] as const)).every((other) => {
			const now = run[other];
			if (!now.ok) return true;
			const volts = (now.volts[0]! / run.tapVolts) * tapVolts;
			const { ok, lowRoom, highRoom } = sketcher.at(size, ohmsPerKm(size, cases[other].celsius), cases[other], volts);
			return (
				ok &&
				(was.has('lamp-low') || lowRoom >= -2 * quickSlack) &&
				(was.has('lamp-high') || highRoom >= -2 * quickSlack)
			);
		});
	return replaced.every((pick) => {
		const { shape, size, tapVolts } = pick;
		const sketcher = sketchers.get(shape) ?? new Sketcher(shape);
		sketchers.set(shape, sketcher);
		const sketch = sketcher.at(size, ohmsPerKm(size, cases[name].celsius), cases[name], tapVolts * kindest);
		if (!sketch.ok || !staysRight(sketcher, pick)) return false;
		if (code === 'lamp-low') return sketch.lowRoom >= -quickSlack;
		if (code === 'lamp-high') return sketch.highRoom >= -quickSlack;
		if (code === 'cable-amps') return sketch.cable <= sizeLimit(size, options) * (1 + quickSlack);
		const g = sketcher.groups.findIndex((one) => one === group);
		return (
			code !== 'uneven' ||
			g < 0 ||
			sketch.highs[g]! - sketch.lows[g]! <= rules['cable.volts'].figures.alike + quickSlack
		);
	});
}

/** By so much may a lamp that is out of its window already come further out: less load on one run is a little more on all. */
const alsoVolts = 0.15;
const isOfVolts = ({ code }: Broken): boolean => code === 'lamp-low' || code === 'lamp-high';

/**
 * Cured: the problem is gone (a corner may stay out where the nominal case was), and nothing is broken that was not broken
 * as badly before, give or take `alsoVolts`.
 */
function cures(
	plan: Assessed,
	broken: Broken[],
	problem: Broken,
	changed: Assessed,
	change: Change,
	after: Broken[]
): boolean {
	// Where a run has been split, both halves answer to its id.
	const halves = new Set(change.replaced.map(({ shape }) => shape.id));
	const named = (of: Assessed, b: Broken) => nameOf(of, b, b.run !== null && halves.has(b.run) ? problem.run : b.run);
	const before = new Map<string, { hard: boolean; excess: number }>();
	for (const b of broken) {
		const name = named(plan, b);
		const known = before.get(name);
		before.set(name, { hard: isHard(b) || known?.hard === true, excess: Math.max(excessOf(b), known?.excess ?? 0) });
	}
	const own = named(plan, problem);
	return after.every((left) => {
		const name = named(changed, left);
		if (name === own) return isHard(problem) && left.cornerOnly;
		const was = before.get(name);
		// A corner newly out is a fair price for putting the nominal case right, on the same run only.
		if (!was) return isHard(problem) && !isHard(left) && left.run === problem.run;
		return (was.hard || !isHard(left)) && excessOf(left) <= was.excess * 1.02 + (isOfVolts(left) ? alsoVolts : 0);
	});
}

/** Differences of money below this are none. */
const epsilon = 1e-9;
/** At one cost the least to do comes first. */
const byEase: Cure['kind'][] = ['tap', 'led', 'larger-transformer', 'thicker', 'feed', 'split'];

/**
 * Cures of a problem, the cheapest first and at most one of each kind, the cheapest of its kind that works. Ways, sizes and
 * taps are free: what was held by hand may be let go. A change that overloads the present transformer is tried on the larger
 * ones too, and then costs and names what that takes.
 */
export function curesOf(
	plan: Assessed,
	broken: Broken[],
	problem: Broken,
	ways: Map<string, WaysOfRun>,
	options: ChooseOptions
): Cure[] {
	if (plan.runs.reduce((sum, { shape }) => sum + shape.loads.length, 0) > mostLamps) return [];
	const cases = casesOf(options);
	const sketchers = new Map<RunShape, Sketcher>();
	const attempt = (change: Change): Cure | null => {
		const { picks, transformer } = change;
		for (const model of [transformer, ...largerThan(transformer, picks, options)]) {
			const changed = assess(picks, model, options, cases);
			const after = judge(changed, options);
			if (cures(plan, broken, problem, changed, change, after)) {
				const volts = voltsOf(changed, problem.load);
				return {
					...change.cure,
					cost: change.cost + model.price - transformer.price,
					...(model !== transformer && { transformer: model.id }),
					...(volts !== undefined && { volts })
				};
			}
			const overloaded = after.some(({ code }) => code === 'transformer-load' || code === 'secondary-amps');
			if (!overloaded || problem.code === 'transformer-load') return null;
		}
		return null;
	};
	const cheapestOf = (changes: Change[]): Cure | null => {
		let best: Cure | null = null;
		for (const change of changes) {
			if (best && change.cost >= best.cost - epsilon) break;
			if (!isPromising(plan, broken, problem, change, cases, options, sketchers)) continue;
			const cure = attempt(change);
			if (cure && (!best || cure.cost < best.cost - epsilon)) best = cure;
		}
		return best;
	};
	// Where another tap is enough by itself, no more than that is to be done on it.
	let enough: number | null = null;
	const curesOfKind = (changes: Change[]): Cure[] => {
		if (problem.code === 'no-tap' && changes[0]?.cure.kind !== 'tap') return [];
		const cure = cheapestOf(
			changes.filter(({ cure: { kind, tapVolts } }) => kind === 'tap' || tapVolts === undefined || tapVolts !== enough)
		);
		if (cure?.kind === 'tap') enough = cure.tapVolts ?? null;
		return cure ? [cure] : [];
	};
	const rank = ({ kind }: Cure) => byEase.indexOf(kind);
	const apart = (a: Cure, b: Cure) => (Math.abs(a.cost - b.cost) < epsilon ? 0 : a.cost - b.cost);
	return changesTo(plan, problem, ways, options)
		.flatMap(curesOfKind)
		.toSorted((a, b) => apart(a, b) || rank(a) - rank(b));
}
