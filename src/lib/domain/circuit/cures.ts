/** What would cure a problem: each change is made to the whole plan and solved, and offered only if it works. */
import { rules } from '../shared/rules';
import { assess, sizeLimit, type Assessed, type Pick } from './assess';
import { byThickness, ohmsPerKm, usualSizes } from './conductors';
import { casesOf, type Cases } from './corners';
import { isHard, judge, type Broken } from './judge';
import { Sketcher } from './sketch';
import { splitRun, withLeds } from './split';
import type { CableSize, ChooseOptions, Cure, RunShape, TransformerOption } from './types';

/** Problems beyond this many get no cures: one cure usually clears several, and the person starts at the top. */
export const curedAtMost = 12;

interface Change {
	cure: Omit<Cure, 'cost'>;
	picks: Pick[];
	transformer: TransformerOption;
	/** The runs that stand in for the problem's run. */
	replaced: Pick[];
}

const same = (a: CableSize, b: CableSize) => a.system === b.system && a.size === b.size;

function thickerThan(size: CableSize, options: ChooseOptions): CableSize[] {
	const known = [...options.sizes, ...usualSizes(size.system)].filter(
		(s) => s.system === size.system && byThickness(s, size) > 0
	);
	return known.filter((s, k) => known.findIndex((other) => same(s, other)) === k).toSorted(byThickness);
}

/** Changes of one kind in the order of their cost; the first that works is the cure. */
function changesTo(plan: Assessed, problem: Broken, options: ChooseOptions): Change[][] {
	const { transformer } = plan;
	const picks: Pick[] = plan.runs.map(({ shape, size, tapVolts }) => ({ shape, size, tapVolts }));
	const index = picks.findIndex(({ shape }) => shape.id === problem.run);
	const pick = picks[index];
	const larger = options.transformers
		.filter(
			({ voltAmps, taps }) => voltAmps > transformer.voltAmps && picks.every(({ tapVolts }) => taps.includes(tapVolts))
		)
		.map((t): Change => ({
			cure: { kind: 'larger-transformer' },
			picks,
			transformer: t,
			replaced: pick ? [pick] : []
		}));
	const everyLed = picks.map((pick) => ({ ...pick, shape: withLeds(pick.shape) ?? pick.shape }));
	const hasHalogen = picks.some(({ shape }) => withLeds(shape));
	if (!pick) return [larger, hasHalogen ? [{ cure: { kind: 'led' }, picks: everyLed, transformer, replaced: [] }] : []];

	const { shape } = pick;
	const change = (cure: Omit<Cure, 'cost'>, replaced: Pick[]): Change => ({
		cure,
		picks: [...picks.slice(0, index), ...replaced, ...picks.slice(index + 1)],
		transformer,
		replaced
	});
	const thicker = thickerThan(pick.size, options);
	const taps = [pick.tapVolts, ...transformer.taps.filter((tap) => tap !== pick.tapVolts)];
	const told = (tapVolts: number) => (tapVolts === pick.tapVolts ? {} : { tapVolts });
	const halves = splitRun(shape);
	const led = withLeds(shape);
	return [
		taps.slice(1).map((tapVolts) => change({ kind: 'tap', tapVolts }, [{ ...pick, tapVolts }])),
		thicker.flatMap((size) =>
			taps.map((tapVolts) => change({ kind: 'thicker', size, ...told(tapVolts) }, [{ shape, size, tapVolts }]))
		),
		halves
			? [pick.size, ...thicker].flatMap((size) =>
					taps.map((tapVolts) =>
						change(
							{ kind: 'split', size, ...told(tapVolts) },
							halves.map((half) => ({ shape: half, size, tapVolts }))
						)
					)
				)
			: [],
		led ? taps.map((tapVolts) => change({ kind: 'led', ...told(tapVolts) }, [{ ...pick, shape: led, tapVolts }])) : [],
		larger
	];
}

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
	if (!run || problem.code === 'secondary-amps') return true;
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

function groupOf({ runs }: Assessed, load: string | null): string | null {
	for (const { shape } of runs) for (const one of shape.loads) if (one.id === load) return one.alike;
	return null;
}

/** Names a problem apart from its figures: where a run has been split, both halves answer to the run's id. */
function nameOf(plan: Assessed, problem: Broken, halves: Set<string>, run: string | null): string {
	if (problem.code === 'uneven') return `uneven ${groupOf(plan, problem.load)}`;
	return `${problem.code} ${problem.run !== null && halves.has(problem.run) ? run : problem.run}`;
}

/**
 * Cured: the problem is gone (a corner may stay out where the nominal case was), and nothing is broken that was not broken
 * as badly before.
 */
function cures(
	plan: Assessed,
	broken: Broken[],
	problem: Broken,
	changed: Assessed,
	change: Change,
	after: Broken[]
): boolean {
	const halves = new Set(change.replaced.map(({ shape }) => shape.id));
	const before = new Map<string, { hard: boolean; excess: number }>();
	for (const b of broken) {
		const name = nameOf(plan, b, halves, problem.run);
		const known = before.get(name);
		before.set(name, { hard: isHard(b) || known?.hard === true, excess: Math.max(excessOf(b), known?.excess ?? 0) });
	}
	const own = nameOf(plan, problem, halves, problem.run);
	return after.every((left) => {
		const name = nameOf(changed, left, halves, problem.run);
		if (name === own) return isHard(problem) && left.cornerOnly;
		const was = before.get(name);
		// A corner newly out is a fair price for putting the nominal case right, on the same run only.
		if (!was) return isHard(problem) && !isHard(left) && left.run === problem.run;
		return (was.hard || !isHard(left)) && excessOf(left) <= was.excess * 1.02;
	});
}
const excessOf = ({ value, limit }: Broken): number => (value === null || limit === null ? 0 : Math.abs(value - limit));

/**
 * At most one cure of each kind, the cheapest of its kind that works. A change of cable or lamps that overloads the present
 * transformer is tried on the larger ones too: whoever applies it chooses anew, and then gets one.
 */
export function curesOf(plan: Assessed, broken: Broken[], problem: Broken, options: ChooseOptions): Cure[] {
	const cases = casesOf(options);
	const sketchers = new Map<RunShape, Sketcher>();
	const attempt = (change: Change): Cure | null => {
		const { picks, transformer } = change;
		const larger = options.transformers.filter(
			({ voltAmps, taps }) => voltAmps > transformer.voltAmps && picks.every(({ tapVolts }) => taps.includes(tapVolts))
		);
		for (const model of [transformer, ...larger]) {
			const changed = assess(picks, model, options, cases);
			const after = judge(changed, options);
			if (cures(plan, broken, problem, changed, change, after)) {
				const volts = voltsOf(changed, problem.load);
				return volts === undefined ? { ...change.cure, cost: 0 } : { ...change.cure, cost: 0, volts };
			}
			const overloaded = after.some(({ code }) => code === 'transformer-load' || code === 'secondary-amps');
			if (!overloaded || problem.code === 'transformer-load') return null;
		}
		return null;
	};
	return changesTo(plan, problem, options).flatMap((changes) => {
		for (const change of changes) {
			if (!isPromising(plan, broken, problem, change, cases, options, sketchers)) continue;
			const cure = attempt(change);
			if (cure) return [cure];
		}
		return [];
	});
}
