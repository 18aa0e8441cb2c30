/** How far the runs chosen so far, and the least and most that the others can weigh, leave the terminal volts to move. */
import { rounding } from './assess';
import { figures, fractionOf, groupFigures, type Entrant, type Fractions } from './lines';

/** What the transformer makes of the weights of all runs. */
export interface Sag {
	/** Fraction of the tap volts lost per volt-ampere. */
	perVoltAmpere: number;
	mains: Fractions;
	/** Most volt-amperes at the terminals; Infinity where the limit cannot be kept anyway. */
	mostVoltAmps: number;
}

/** By how much the lines of a candidate may be out: volts, and fraction of amperes and volt-amperes. */
export const doubt = { volts: 0.004, fraction: 0.0002 } as const;

const stride = figures.count;

/** Bounds while runs are chosen one after the other: depth 0 is before the first. */
export class Bounds {
	private readonly sums: Float64Array;
	private readonly least: Float64Array;
	private readonly most: Float64Array;
	/** By case, at the depth last asked for. */
	readonly uLow: Fractions = [1, 1, 1];
	readonly uHigh: Fractions = [1, 1, 1];

	/**
	 * `entrants` in the order they are chosen; `alive` tells which of their candidates still count. `within`: where the
	 * terminal fractions are known to lie; without it between the mains and a tenth less.
	 */
	constructor(
		entrants: Entrant[],
		private readonly sag: Sag,
		alive: (run: number, k: number) => boolean,
		within: { uLow: Fractions; uHigh: Fractions } | null = null
	) {
		const runs = entrants.length;
		this.sums = new Float64Array((runs + 1) * 6);
		this.least = new Float64Array((runs + 1) * 3);
		this.most = new Float64Array((runs + 1) * 3);
		for (let run = runs - 1; run >= 0; run--)
			for (let c = 0; c < 3; c++) {
				let [least, most] = [Infinity, 0];
				entrants[run]!.lines.forEach(({ base, slope }, k) => {
					if (!alive(run, k)) return;
					const [low, high] = within ? [within.uLow[c]!, within.uHigh[c]!] : [sag.mains[c]! * 0.9, sag.mains[c]!];
					const [a, b] = [base[c * stride]! + slope[c * stride]! * low, base[c * stride]! + slope[c * stride]! * high];
					least = Math.min(least, a, b);
					most = Math.max(most, a, b);
				});
				this.least[run * 3 + c] = this.least[(run + 1) * 3 + c]! + (least < Infinity ? Math.max(0, least) : 0);
				this.most[run * 3 + c] = this.most[(run + 1) * 3 + c]! + most;
			}
	}

	/** Adds a candidate of the run at `depth`. */
	add(depth: number, { base, slope }: { base: Float64Array; slope: Float64Array }): void {
		for (let c = 0; c < 3; c++) {
			this.sums[(depth + 1) * 6 + 2 * c] = this.sums[depth * 6 + 2 * c]! + base[c * stride]!;
			this.sums[(depth + 1) * 6 + 2 * c + 1] = this.sums[depth * 6 + 2 * c + 1]! + slope[c * stride]!;
		}
	}

	/** Sets `uLow` and `uHigh` with `depth` runs chosen; false where the load is surely too much. */
	settle(depth: number): boolean {
		const { sums, least, most, sag } = this;
		for (let c = 0; c < 3; c++) {
			const base = sums[depth * 6 + 2 * c]!;
			const slope = sums[depth * 6 + 2 * c + 1]!;
			const give = 1 + sag.perVoltAmpere * slope;
			const mains = sag.mains[c]!;
			const high = (mains - sag.perVoltAmpere * (base + least[depth * 3 + c]!)) / give;
			const low = (mains - sag.perVoltAmpere * (base + most[depth * 3 + c]!)) / give;
			this.uHigh[c] = high;
			this.uLow[c] = low;
			const weight = base + Math.min(slope * low, slope * high) + least[depth * 3 + c]!;
			if (weight * low * (1 - doubt.fraction) > sag.mostVoltAmps + rounding) return false;
		}
		return true;
	}

	/** False where a candidate surely leaves its windows or its cable's amperes, wherever u is between the two ends. */
	mayHold({ bound, lines, offer }: Entrant, k: number, ampsLimit: number): boolean {
		const { base, slope } = lines[k]!;
		for (const c of bound) {
			const [low, high] = [this.uLow[fractionOf[c]], this.uHigh[fractionOf[c]]];
			for (let f = figures.lowRoom; f <= figures.highRoom; f++) {
				const at = c * stride + f;
				if (base[at]! + slope[at]! * low < -doubt.volts && base[at]! + slope[at]! * high < -doubt.volts) return false;
			}
		}
		if (bound.length > 0 && offer.candidates.length > 1)
			for (let c = 0; c < 3; c++) {
				const at = c * stride + figures.cable;
				const most = ampsLimit * (1 + doubt.fraction);
				if (base[at]! + slope[at]! * this.uLow[c]! > most && base[at]! + slope[at]! * this.uHigh[c]! > most)
					return false;
			}
		return true;
	}

	/** False where lamps of one group on the two candidates surely differ by more than `limit` volts. */
	mayMatch(a: Entrant, k: number, b: Entrant, l: number, limit: number): boolean {
		const [one, two] = [a.lines[k]!, b.lines[l]!];
		const apart = (high: Entrant['lines'][number], g: number, low: Entrant['lines'][number], h: number) => {
			const [top, bottom] = [groupFigures + 2 * g + 1, groupFigures + 2 * h];
			const base = high.base[top]! - low.base[bottom]!;
			const slope = high.slope[top]! - low.slope[bottom]!;
			const most = limit + doubt.volts;
			return base + slope * this.uLow[0] > most && base + slope * this.uHigh[0] > most;
		};
		for (let g = 0; g < a.groups.length; g++) {
			if (a.groups[g]! < 0) continue;
			const h = b.groups.indexOf(a.groups[g]!);
			if (h >= 0 && (apart(one, g, two, h) || apart(two, h, one, g))) return false;
		}
		return true;
	}
}
