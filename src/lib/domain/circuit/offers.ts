/** What one run is offered to be, by itself. */
import { rules } from '../shared/rules';
import { levels, roundTo, strictOf, type Candidate, type Level, type Trial } from './candidates';
import { relaxedOnes } from './relaxed';

const spreadOf = ({ lows, highs }: Candidate): number =>
	lows.reduce((most, low, g) => Math.max(most, highs[g]! - low), 0);

/** Cheapest first; at one price a tap that is safe with lamps out, then the one with most room, then the lower tap. */
const byCost = (a: Candidate, b: Candidate): number =>
	roundTo(a.cost - b.cost) ||
	Number(b.isSafe) - Number(a.isSafe) ||
	roundTo(b.margin - a.margin) ||
	a.tapVolts - b.tapVolts;

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
	const { groups } = trial.ways[0]!.sketcher;
	const strict = trial.ways.flatMap((way) => strictOf(trial, way));
	const candidates = strict.length ? strict : relaxedOnes(trial);
	const level = candidates.reduce<Level>((best, c) => (c.level < best ? c.level : best), levels.none);
	const own = candidates.filter((c) => c.level === level);
	if (level === levels.none) return { level, candidates: own, broken: new Set(groups) };
	const alike = rules['cable.volts'].figures.alike + Math.max(0, trial.expected.slack) * Math.max(...trial.taps);
	const even = own.filter((c) => spreadOf(c) <= alike);
	const isUneven = (_: string, g: number) => own.every(({ lows, highs }) => highs[g]! - lows[g]! > alike);
	return {
		level,
		candidates: (even.length ? even : own).toSorted(byCost),
		broken: new Set(even.length ? [] : groups.filter(isUneven))
	};
}
