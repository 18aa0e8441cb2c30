/** What a run may be where it cannot keep its windows in both corners. */
import { sizeLimit, rounding } from './assess';
import {
	at,
	byBadness,
	candidate,
	excessOf,
	isCool,
	levels,
	sits,
	upwards,
	type Candidate,
	type Sketches,
	type Trial,
	type Try
} from './candidates';
import { ohmsPerKm } from './conductors';
import type { Sketch } from './sketch';
import type { Way } from './ways';

/** Its windows are kept in both corners with the mains at nominal volts; null where they are not. */
function stillOf(trial: Trial, one: Try): [longHot: Sketch, shortCold: Sketch] | null {
	const longHot = at(trial, one, 'longHot');
	if (!sits(trial, one, longHot)) return null;
	const shortCold = at(trial, one, 'shortCold');
	return sits(trial, one, shortCold) ? [longHot, shortCold] : null;
}

/** One size on one tap, where nothing is strict. */
export function relaxed(
	trial: Trial,
	one: Try,
	nominal = at(trial, one, 'nominal'),
	known?: ReturnType<typeof stillOf>
): Candidate {
	const all: Sketches = [nominal, at(trial, one, 'low'), at(trial, one, 'high')];
	if (!all.every((s) => isCool(trial, one, s)) || !sits(trial, one, nominal))
		return candidate(trial, one, levels.none, all, all);
	const still = known === undefined ? stillOf(trial, one) : known;
	return still
		? candidate(trial, one, levels.still, all, [nominal, ...still])
		: candidate(trial, one, levels.nominal, all, [nominal]);
}

/** Inside its windows in the nominal case. */
interface Sitting {
	one: Try;
	nominal: Sketch;
}
/**
 * Those of one way that sit in the nominal case, by size and tap in their order, walked as in `strictOnes`. `seen` takes what
 * was solved, by size × taps + tap.
 */
function sittingOnes(trial: Trial, { sketcher, sizes }: Way, seen: (Sketch | undefined)[]): Sitting[] {
	const { taps, cases, expected } = trial;
	const perKm = sizes.map(({ size }) => ohmsPerKm(size, cases.nominal.celsius));
	const thickFirst = sizes.map((_, s) => s).sort((a, b) => perKm[a]! - perKm[b]!);
	const found: (Sitting | undefined)[] = [];
	let tooMuch = 0;
	for (const t of upwards(taps)) {
		const leeway = expected.slack * taps[t]! + rounding;
		for (let k = tooMuch; k < thickFirst.length; k++) {
			const s = thickFirst[k]!;
			const one: Try = { ...sizes[s]!, sketcher, tapVolts: taps[t]! };
			const place = s * taps.length + t;
			const nominal = (seen[place] = at(trial, one, 'nominal'));
			if (sits(trial, one, nominal)) found[place] = { one, nominal };
			if (nominal.ok && k === tooMuch && nominal.highRoom < -leeway) tooMuch++;
			if (!nominal.ok || nominal.lowRoom < -leeway) break;
		}
	}
	return found.filter((one) => one !== undefined);
}

/** The least bad of all, one try for each size and tap of each way; `seen` by way as from `sittingOnes`. */
function leastBad(trial: Trial, seen: (Sketch | undefined)[][]): Candidate {
	const { ways, taps, options } = trial;
	const tries = ways.flatMap(({ sketcher, sizes }, w) =>
		sizes.flatMap((sized, s) =>
			taps.map((tapVolts, t) => {
				const one: Try = { ...sized, sketcher, tapVolts };
				const nominal = seen[w]![s * taps.length + t] ?? at(trial, one, 'nominal');
				return { one, nominal, excess: nominal.ok ? excessOf(nominal, sizeLimit(sized.size, options)) : Infinity };
			})
		)
	);
	// By how far a lamp is out in the nominal case: what is further out than one that has a solution in each is worse.
	const byExcess = tries.map((_, k) => k).sort((a, b) => tries[a]!.excess - tries[b]!.excess || a - b);
	const solved: (Candidate | undefined)[] = [];
	let enough = Infinity;
	for (const k of byExcess) {
		const { one, nominal, excess } = tries[k]!;
		if (excess > enough) break;
		const next = (solved[k] = relaxed(trial, one, nominal));
		if (next.badness[0] === 0) enough = Math.min(enough, excess + rounding);
	}
	return solved.filter((one) => one !== undefined).toSorted(byBadness)[0]!;
}

/**
 * Where nothing is strict: those that are still, if there are any; those that sit in the nominal case and are cool; or else the
 * one that is least bad.
 */
export function relaxedOnes(trial: Trial): Candidate[] {
	const seen: (Sketch | undefined)[][] = trial.ways.map(() => []);
	const sitting = trial.ways
		.flatMap((way, w) => sittingOnes(trial, way, seen[w]!))
		.map(({ one, nominal }) => ({ one, nominal, still: stillOf(trial, one) }));
	const levelled = (those: typeof sitting) =>
		those.map(({ one, nominal, still }) => relaxed(trial, one, nominal, still));
	const stills = levelled(sitting.filter(({ still }) => still !== null));
	if (stills.some(({ level }) => level === levels.still)) return stills;
	const all = levelled(sitting);
	return all.some(({ level }) => level !== levels.none) ? all : [leastBad(trial, seen)];
}
