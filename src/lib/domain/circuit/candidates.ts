/** Every size and tap for one run, tried at the volts that the whole plan is expected to leave at the terminals. */
import { rules } from '../shared/rules';
import { rounding, sizeLimit, type Pick } from './assess';
import { ohmsPerKm } from './conductors';
import type { CaseName, Cases } from './corners';
import { margin, outside, type Sketch, type Sketcher } from './sketch';
import type { CableSize, ChooseOptions, RunShape } from './types';

/**
 * How much of rule cable.corners a run keeps. Strict: windows kept in both corners. Still: kept in both corners with
 * the mains at its nominal volts; a halogen window of 10.8 to 12.0 V is 11 % wide, and a mains swing of ±5 % alone takes
 * 10 %, so next to no halogen run can be strict. Nominal: kept in the nominal case. None: not even that.
 */
export const levels = { strict: 0, still: 1, nominal: 2, none: 3 } as const;
export type Level = (typeof levels)[keyof typeof levels];

export interface Candidate extends Pick {
	cost: number;
	level: Level;
	/** Least room to a window's edge over the cases of its level, volts. */
	margin: number;
	/** Most amperes over the cases, and least and most of tap × amperes, which the sag goes by. */
	amps: number;
	burden: { least: number; most: number };
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

/** What a run is tried with: shared by all of its sizes and taps. */
export interface Trial {
	sketcher: Sketcher;
	/** Sizes to be had, with the run's price in each. */
	sizes: { size: CableSize; cost: number }[];
	taps: number[];
	cases: Cases;
	expected: Expected;
	options: ChooseOptions;
}
type Try = { size: CableSize; tapVolts: number; cost: number };

const at = ({ sketcher, cases, expected }: Trial, { size, tapVolts }: Try, name: CaseName): Sketch =>
	sketcher.at(size, ohmsPerKm(size, cases[name].celsius), cases[name], tapVolts * expected.u[name]);

/**
 * Inside every window and cable limit, give or take the slack. Slack above zero errs towards keeping, and what is kept is
 * verified exactly later; below zero it keeps only what is right wherever in that range the volts turn out to lie.
 */
const sits = ({ expected }: Trial, { tapVolts }: Try, sketch: Sketch): boolean =>
	sketch.ok && margin(sketch) >= -expected.slack * tapVolts - rounding;
const isCool = ({ expected, options }: Trial, { size }: Try, sketch: Sketch): boolean =>
	sketch.ok && sketch.cable <= sizeLimit(size, options) * (1 + expected.slack) + rounding;

function candidate(trial: Trial, one: Try, level: Level, all: Sketch[], judged: Sketch[]): Candidate {
	const nominal = all[0]!;
	const solved = all.filter((s) => s.ok);
	const limit = sizeLimit(one.size, trial.options);
	const excess = (s: Sketch) => (s.ok ? outside(s) : 0) + Math.max(0, s.cable - limit);
	const weights = solved.map((s) => s.amps * one.tapVolts);
	return {
		shape: trial.sketcher.shape,
		...one,
		level,
		margin: Math.min(...judged.map(margin)),
		amps: Math.max(0, ...solved.map((s) => s.amps)),
		burden: { least: Math.min(Infinity, ...weights), most: Math.max(0, ...weights) },
		lows: nominal.lows,
		highs: nominal.highs,
		badness: [3 - solved.length, excess(nominal), solved.reduce((worst, s) => Math.max(worst, excess(s)), 0)]
	};
}

/**
 * All that are strict. For each tap the sizes are walked from thick to thin: where a lamp is starved or a cable too hot in
 * the low corner, it is so in every thinner size.
 */
function strictOnes(trial: Trial): Candidate[] {
	const perKm = (size: CableSize) => ohmsPerKm(size, trial.cases.low.celsius);
	const thickFirst = trial.sizes.toSorted((a, b) => perKm(a.size) - perKm(b.size));
	return trial.taps.flatMap((tapVolts) => {
		const found: Candidate[] = [];
		for (const { size, cost } of thickFirst) {
			const one = { size, cost, tapVolts };
			const fits = (sketch: Sketch) => sits(trial, one, sketch) && isCool(trial, one, sketch);
			const low = at(trial, one, 'low');
			if (!low.ok || (low.lowRoom < 0 && !sits(trial, one, low)) || !isCool(trial, one, low)) break;
			if (!fits(low)) continue;
			const high = at(trial, one, 'high');
			if (!fits(high)) continue;
			const nominal = at(trial, one, 'nominal');
			const all = [nominal, low, high];
			if (fits(nominal)) found.push(candidate(trial, one, levels.strict, all, all));
		}
		return found;
	});
}

/** One size on one tap where nothing is strict. */
function relaxed(trial: Trial, one: Try): Candidate {
	const all = (['nominal', 'low', 'high'] as const).map((name) => at(trial, one, name));
	if (!all.every((s) => isCool(trial, one, s)) || !sits(trial, one, all[0]!))
		return candidate(trial, one, levels.none, all, all);
	const still = (['longHot', 'shortCold'] as const).map((name) => at(trial, one, name));
	return still.every((s) => sits(trial, one, s))
		? candidate(trial, one, levels.still, all, [all[0]!, ...still])
		: candidate(trial, one, levels.nominal, all, all.slice(0, 1));
}

/** The price of a size on a run; null where the size is not to be had. */
export function runPrice(shape: RunShape, pricePerMetre: number): number | null {
	const cost = shape.segments.reduce((sum, { metres }) => sum + metres, 0) * pricePerMetre;
	return Number.isFinite(cost) && cost >= 0 ? cost : null;
}

const spreadOf = ({ lows, highs }: Candidate): number =>
	lows.reduce((most, low, g) => Math.max(most, highs[g]! - low), 0);

const roundTo = (difference: number): number => (Math.abs(difference) < rounding ? 0 : difference);

const byBadness = (a: Candidate, b: Candidate): number =>
	a.badness[0] - b.badness[0] ||
	roundTo(a.badness[1] - b.badness[1]) ||
	roundTo(a.badness[2] - b.badness[2]) ||
	a.cost - b.cost ||
	a.tapVolts - b.tapVolts;
/** Cheapest first; at one price the one with most room, then the lower tap. */
const byCost = (a: Candidate, b: Candidate): number =>
	roundTo(a.cost - b.cost) || roundTo(b.margin - a.margin) || a.tapVolts - b.tapVolts;

export interface Offer {
	level: Level;
	/** In the order they are to be tried; not empty. */
	candidates: Candidate[];
	/** Groups that no candidate of this level keeps alike within the run itself. */
	broken: Set<string>;
}

/**
 * What one run may be: all candidates of the best level it reaches, those alike within themselves if there are any; where no
 * limit can be kept, the least bad one.
 */
export function offer(trial: Trial): Offer {
	const strict = strictOnes(trial);
	const candidates = strict.length
		? strict
		: trial.sizes.flatMap((sized) => trial.taps.map((tapVolts) => relaxed(trial, { ...sized, tapVolts })));
	const level = candidates.reduce<Level>((best, c) => (c.level < best ? c.level : best), levels.none);
	const own = candidates.filter((c) => c.level === level);
	if (level === levels.none)
		return { level, candidates: own.toSorted(byBadness).slice(0, 1), broken: new Set(trial.sketcher.groups) };
	const alike = rules['cable.volts'].figures.alike + Math.max(0, trial.expected.slack) * Math.max(...trial.taps);
	const even = own.filter((c) => spreadOf(c) <= alike);
	const isUneven = (_: string, g: number) => own.every(({ lows, highs }) => highs[g]! - lows[g]! > alike);
	return {
		level,
		candidates: (even.length ? even : own).toSorted(byCost),
		broken: new Set(even.length ? [] : trial.sketcher.groups.filter(isUneven))
	};
}
