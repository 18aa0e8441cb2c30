/**
 * The strict candidates of a run of LED lamps, the cheapest first and no more than are asked for. Each size on each tap is
 * judged by itself: with LED lamps thinner cable never leaves a lamp more volts, nor takes fewer amperes, so the set is the one
 * that `strictOf` walks to.
 */
import { rounding } from './assess';
import { at, candidate, isCool, levels, sits, upwards, type Candidate, type Trial } from './candidates';
import { loopOhms, ohmsPerKm } from './conductors';
import type { Sized, Way } from './ways';

/** Costs that differ by no more belong to one batch: within it the order of costs may be a matter of rounding. */
const sameCost = 1e-6;

interface Entry {
	/** Place of its way, and in the order thick to thin. */
	way: number;
	thin: number;
	sized: Sized;
}

/** By tap, what is strict of one size of one way. `rising`: places of the taps, the lowest first. */
function strictOn(trial: Trial, rising: number[], { sketcher }: Way, { size, cost }: Sized): (Candidate | null)[] {
	const { taps, cases, expected } = trial;
	const found: (Candidate | null)[] = taps.map(() => null);
	const perMetre = loopOhms(ohmsPerKm(size, cases.low.celsius), cases.low.length);
	for (const t of rising) {
		const tapVolts = taps[t]!;
		const leeway = expected.slack * tapVolts + rounding;
		if (sketcher.isStarved(perMetre, tapVolts * expected.u.low, leeway)) continue;
		const one = { sketcher, size, cost, tapVolts };
		const low = at(trial, one, 'low');
		if (!sits(trial, one, low) || !isCool(trial, one, low)) continue;
		const high = at(trial, one, 'high');
		if (!sits(trial, one, high) || !isCool(trial, one, high)) {
			// Too much on this tap is too much on every higher one.
			if (high.ok && high.highRoom < -leeway) break;
			continue;
		}
		const nominal = at(trial, one, 'nominal');
		if (!sits(trial, one, nominal) || !isCool(trial, one, nominal)) continue;
		found[t] = candidate(trial, one, levels.strict, [nominal, low, high], [nominal, low, high]);
	}
	return found;
}

export class StrictByCost {
	private readonly entries: Entry[];
	private readonly rising: number[];
	private done = 0;

	/** `trial` as `suits` has it. */
	constructor(private readonly trial: Trial) {
		this.entries = trial.ways.flatMap(({ sizes }, way) => {
			const perKm = sizes.map(({ size }) => ohmsPerKm(size, trial.cases.low.celsius));
			const thickFirst = sizes.map((_, s) => s).sort((a, b) => perKm[a]! - perKm[b]!);
			return thickFirst.map((s, thin) => ({ way, thin, sized: sizes[s]! }));
		});
		this.rising = upwards(trial.taps);
		this.entries.sort((a, b) => a.sized.cost - b.sized.cost);
	}
	/** Only where all lamps are LED and none are to be alike. */
	static suits({ ways }: Trial): boolean {
		return ways.every(({ sketcher }) => sketcher.isLed && sketcher.groups.length === 0);
	}
	/** Cost of the next that may be strict; Infinity at the end. */
	get next(): number {
		return this.entries[this.done]?.sized.cost ?? Infinity;
	}
	/** All that cost as much as the next, in the order of ways, taps and sizes from thick to thin; it may be empty. */
	batch(): Candidate[] {
		const { entries, trial } = this;
		const from = this.done++;
		while (this.next - entries[this.done - 1]!.sized.cost <= sameCost) this.done++;
		const batch = entries.slice(from, this.done).sort((a, b) => a.way - b.way || a.thin - b.thin);
		const found = batch.map(({ way, sized }) => this.known(trial.ways[way]!, sized));
		if (found.length === 1) return found[0]!.filter((one) => one !== null);
		return trial.ways.flatMap((_, w) =>
			trial.taps.flatMap((_tap, t) => batch.flatMap(({ way }, k) => (way === w ? (found[k]![t] ?? []) : [])))
		);
	}
	private known(way: Way, sized: Sized): (Candidate | null)[] {
		const { trial } = this;
		const known = trial.strict?.get(sized);
		if (known) return known;
		const found = strictOn(trial, this.rising, way, sized);
		trial.strict?.set(sized, found);
		return found;
	}
}
