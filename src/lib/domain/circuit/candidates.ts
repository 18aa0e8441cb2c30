/** Every way, size and tap for one run, tried at the volts that the whole plan is expected to leave at the terminals. */
import { markedTotal, rounding, sizeLimit, type Pick } from './assess';
import { ohmsPerKm } from './conductors';
import type { CaseName, Cases } from './corners';
import { margin, outside, type Sketch, type Sketcher } from './sketch';
import type { CableSize, ChooseOptions, RunShape } from './types';
import type { Sized, Way } from './ways';

/**
 * How much of rule cable.corners a run keeps. Strict: windows kept in both corners. Still: kept in both corners with
 * the mains at its nominal volts; a halogen window of 10.8 to 12.0 V is 11 % wide, and a mains swing of ±5 % alone takes
 * 10 %, so next to no halogen run can be strict. Nominal: kept in the nominal case. None: not even that.
 */
export const levels = { strict: 0, still: 1, nominal: 2, none: 3 } as const;
export type Level = (typeof levels)[keyof typeof levels];

export interface Candidate extends Pick {
	/** Of its shape. */
	sketcher: Sketcher;
	cost: number;
	level: Level;
	/** Least room to a window's edge over the cases of its level, volts. */
	margin: number;
	/** With every other lamp out and the mains high, none passes its window: the tap's own volts are within it. */
	isSafe: boolean;
	/** No more than its most amperes over the cases at any sag in range; least and most of tap × amperes, which the sag goes by. */
	amps: number;
	burden: { least: number; most: number };
	/** By case (nominal, low, high), no more than it takes at the terminals at any sag in range; as marked where unsolved. */
	voltAmps: [number, number, number];
	/** Nominal volts by `alike` group, in the order of `Sketcher.groups`; empty without a solution. */
	lows: number[];
	highs: number[];
	/** Ordered badness where the level is none: lamps without solution, worst excess nominal, worst in the corners. */
	badness: [number, number, number];
}

/** Terminal volts per unit of tap by case, and the volts by which that guess may be out. */
export interface Expected {
	u: Record<CaseName, number>;
	slack: number;
}

/** What a run is tried with: shared by all of its ways, sizes and taps. */
export interface Trial {
	ways: Way[];
	taps: number[];
	cases: Cases;
	expected: Expected;
	options: ChooseOptions;
	/** What was found strict before at the same taps and volts, by shape. */
	before?: Before;
	/** The same by size of a way and by tap, where it was worked out one by one (`strict.ts`). */
	strict?: Map<Sized, (Candidate | null)[]>;
}
/** By shape: the sizes tried, and what was found among them. */
export type Before = Map<RunShape, { sizes: Sized[]; found: Candidate[] }>;
/** Of the cases nominal, low and high. */
export type Sketches = readonly [nominal: Sketch, low: Sketch, high: Sketch];
export type Try = { sketcher: Sketcher; size: CableSize; tapVolts: number; cost: number };

export const at = ({ cases, expected }: Trial, { sketcher, size, tapVolts }: Try, name: CaseName): Sketch =>
	sketcher.at(size, ohmsPerKm(size, cases[name].celsius), cases[name], tapVolts * expected.u[name]);

/**
 * Inside every window and cable limit, give or take the slack. Slack above zero errs towards keeping, and what is kept is
 * verified exactly later; below zero it keeps only what is right wherever in that range the volts turn out to lie.
 */
export const sits = ({ expected }: Trial, { tapVolts }: Try, sketch: Sketch): boolean =>
	sketch.ok && margin(sketch) >= -expected.slack * tapVolts - rounding;
export const isCool = ({ expected, options }: Trial, { size }: Try, sketch: Sketch): boolean =>
	sketch.ok && sketch.cable <= sizeLimit(size, options) * (1 + expected.slack) + rounding;

/** `all`: nominal, low, high; `judged`: the cases of its level. */
export function candidate(trial: Trial, one: Try, level: Level, all: Sketches, judged: readonly Sketch[]): Candidate {
	const { sketcher, size, tapVolts, cost } = one;
	const { options, expected } = trial;
	const limit = sizeLimit(size, options);
	// Volt-amperes go with the volts of halogen lamps to the power 1.55, and less steeply for all else.
	const sure = 1 - 2 * Math.max(0, expected.slack);
	let [failed, worst, most, least] = [0, 0, 0, Infinity];
	for (const sketch of all) {
		if (!sketch.ok) {
			failed++;
			continue;
		}
		worst = Math.max(worst, excessOf(sketch, limit));
		most = Math.max(most, sketch.amps);
		least = Math.min(least, sketch.amps);
	}
	let room = Infinity;
	for (const sketch of judged) room = Math.min(room, margin(sketch));
	const [nominal, low, high] = all;
	const taken = ({ ok, amps }: Sketch, u: number): number =>
		ok ? amps * tapVolts * u * sure : markedTotal(sketcher.shape);
	return {
		shape: sketcher.shape,
		sketcher,
		size,
		tapVolts,
		cost,
		level,
		margin: room,
		isSafe: tapVolts * (1 + options.corners.mains) <= sketcher.lowestTop + rounding,
		amps: Math.max(0, most * sure),
		burden: { least: least * tapVolts, most: most * tapVolts },
		voltAmps: [taken(nominal, expected.u.nominal), taken(low, expected.u.low), taken(high, expected.u.high)],
		lows: nominal.lows,
		highs: nominal.highs,
		badness: [failed, excessOf(nominal, limit), worst]
	};
}
/** Volts out of the windows and amperes above the limit of the cable. */
export const excessOf = (sketch: Sketch, limit: number): number =>
	(sketch.ok ? outside(sketch) : 0) + Math.max(0, sketch.cable - limit);

/**
 * All of one way that are strict. For each tap the sizes are walked from thick to thin: where a lamp is starved or a cable too hot in
 * the low corner, it is so in every thinner size. Taps are walked upwards: where a lamp gets too much in the high corner, it does so on
 * every higher tap too.
 */
function strictOnes(trial: Trial, { sketcher, sizes }: Way): Candidate[] {
	const { taps, cases, expected } = trial;
	const perKm = new Map(sizes.map(({ size }) => [size, ohmsPerKm(size, cases.low.celsius)]));
	const thickFirst = sizes.toSorted((a, b) => perKm.get(a.size)! - perKm.get(b.size)!);
	const byTap: Candidate[][] = taps.map(() => []);
	/** So many of the thickest sizes are too much for a lamp. */
	let tooMuch = 0;
	for (const t of upwards(taps)) {
		const tapVolts = taps[t]!;
		for (let k = tooMuch; k < thickFirst.length; k++) {
			const { size, cost } = thickFirst[k]!;
			const one = { sketcher, size, cost, tapVolts };
			const low = at(trial, one, 'low');
			if (!low.ok || (low.lowRoom < 0 && !sits(trial, one, low)) || !isCool(trial, one, low)) break;
			if (!sits(trial, one, low)) continue;
			const high = at(trial, one, 'high');
			if (!sits(trial, one, high) || !isCool(trial, one, high)) {
				if (k === tooMuch && high.ok && high.highRoom < -expected.slack * tapVolts - rounding) tooMuch++;
				continue;
			}
			const nominal = at(trial, one, 'nominal');
			if (!sits(trial, one, nominal) || !isCool(trial, one, nominal)) continue;
			const all: Sketches = [nominal, low, high];
			byTap[t]!.push(candidate(trial, one, levels.strict, all, all));
		}
	}
	return byTap.flat();
}
/** The same, unless it has been found before. */
export function strictOf(trial: Trial, way: Way): Candidate[] {
	const { sketcher, sizes } = way;
	const known = trial.before?.get(sketcher.shape);
	if (known?.sizes.length === sizes.length && known.sizes.every((one, s) => one === sizes[s])) return known.found;
	const found = strictOnes(trial, way);
	trial.before?.set(sketcher.shape, { sizes, found });
	return found;
}
/** Places of taps, the lowest first. */
export const upwards = (taps: readonly number[]): number[] => taps.map((_, t) => t).sort((a, b) => taps[a]! - taps[b]!);

export const roundTo = (difference: number): number => (Math.abs(difference) < rounding ? 0 : difference);

export const byBadness = (a: Candidate, b: Candidate): number =>
	a.badness[0] - b.badness[0] ||
	roundTo(a.badness[1] - b.badness[1]) ||
	roundTo(a.badness[2] - b.badness[2]) ||
	a.cost - b.cost ||
	a.tapVolts - b.tapVolts;
