/**
 * A candidate's figures as straight lines in the terminal fraction u, through its solutions at two values of u. In the
 * few hundredths that u can move the curves bend by less than the `doubt` of `bounds.ts`, so that what surely fails is
 * left out without solving; what is taken is solved exactly.
 */
import { levels, type Candidate, type Level } from './candidates';
import { ohmsPerKm } from './conductors';
import type { Cases } from './corners';
import type { Offer } from './offers';

/** The cases by number, and the number of the terminal fraction that each goes by: the last two at nominal mains. */
const caseNames = ['nominal', 'low', 'high', 'longHot', 'shortCold'] as const;
export const fractionOf = [0, 1, 2, 0, 0] as const;
/** By level, the cases in which the windows bind. */
const bound: Record<Level, readonly (0 | 1 | 2 | 3 | 4)[]> = {
	[levels.strict]: [0, 1, 2],
	[levels.still]: [0, 3, 4],
	[levels.nominal]: [0],
	[levels.none]: []
};
export type Fractions = [nominal: number, low: number, high: number];

/** Figures by case, then two by `alike` group: value at u is `base` + `slope` × u. NaN where there is no line. */
export interface Lines {
	base: Float64Array;
	slope: Float64Array;
}
/** Tap × amperes, volts to the lower and the upper edge of the windows, most amperes in a cable. */
export const figures = {
	weight: 0,
	lowRoom: 1,
	highRoom: 2,
	cable: 3,
	count: 4
} as const;
const perCase = figures.count;
export const groupFigures = perCase * caseNames.length;

export interface Entrant {
	offer: Offer;
	lines: Lines[];
	/** By group of the run: a number shared by all runs; −1 where it is not asked for. */
	groups: Int32Array;
	/** Numbers of the cases in which the windows of its level bind. */
	bound: readonly (0 | 1 | 2 | 3 | 4)[];
}

function figuresAt({ sketcher, size, tapVolts, level }: Candidate, cases: Cases, u: Fractions): Float64Array {
	const found = new Float64Array(groupFigures + 2 * sketcher.groups.length).fill(Number.NaN);
	caseNames.forEach((name, c) => {
		if (c > 2 && level !== levels.still) return;
		const one = cases[name];
		const sketch = sketcher.at(size, ohmsPerKm(size, one.celsius), one, tapVolts * u[fractionOf[c]!]);
		if (!sketch.ok) return;
		const at = c * perCase;
		found[at] = sketch.amps * tapVolts;
		found[at + figures.lowRoom] = sketch.lowRoom;
		found[at + figures.highRoom] = sketch.highRoom;
		found[at + figures.cable] = sketch.cable;
		if (c > 0) return;
		for (let g = 0; g < sketch.lows.length; g++) {
			found[groupFigures + 2 * g] = sketch.lows[g]!;
			found[groupFigures + 2 * g + 1] = sketch.highs[g]!;
		}
	});
	return found;
}

/** `from` and `to` differ in each case. A run without a solution weighs nothing, as in `assess.ts`. */
function linesOf(one: Candidate, cases: Cases, from: Fractions, to: Fractions): Lines {
	const base = figuresAt(one, cases, from);
	const slope = figuresAt(one, cases, to);
	for (let f = 0; f < base.length; f++) {
		const c = f < groupFigures ? fractionOf[Math.floor(f / perCase)]! : 0;
		slope[f] = (slope[f]! - base[f]!) / (to[c] - from[c]);
		base[f] = base[f]! - slope[f]! * from[c];
		if (f < groupFigures && f % perCase === figures.weight && Number.isNaN(base[f]!)) base[f] = slope[f] = 0;
	}
	return { base, slope };
}

/** Two terminal fractions in each case through which lines are drawn, and those drawn so far. */
export interface Ends {
	from: Fractions;
	to: Fractions;
	drawn: Map<Candidate, Lines>;
}

/** The offers with their lines; `broken` names the groups that are not asked to be alike. */
export function entrantsOf(offers: Offer[], cases: Cases, { from, to, drawn }: Ends, broken: Set<string>): Entrant[] {
	const lineOf = (one: Candidate): Lines => {
		const known = drawn.get(one);
		if (known) return known;
		const lines = linesOf(one, cases, from, to);
		drawn.set(one, lines);
		return lines;
	};
	const known: string[] = [];
	return offers.map((offer) => {
		const groups = Int32Array.from(offer.candidates[0]!.sketcher.groups, (name) => {
			if (broken.has(name)) return -1;
			const at = known.indexOf(name);
			return at < 0 ? known.push(name) - 1 : at;
		});
		return {
			offer,
			lines: offer.candidates.map(lineOf),
			groups,
			bound: bound[offer.level]
		};
	});
}
