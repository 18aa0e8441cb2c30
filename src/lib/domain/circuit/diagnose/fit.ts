/**
 * How well a fault explains what was measured. Beside the fault, two things are never quite as planned and are fitted with it:
 * the mains (with them the meter's own gain, which looks the same), and the copper's length and temperature. Both are held by
 * what is usual for them, so that they do not explain a fault away (least squares with priors: the maximum a posteriori estimate).
 */
import { solve } from '../solve';
import { faulted, type Faulted } from './faulted';
import type { Fault, Inspected, Suspect } from './types';

/**
 * Standard deviations. Mains and meter: ±5 % covers most homes and handheld meters. Copper: lengths within a tenth, and nights
 * colder than planned. A reading: contact and last digit, volts; and with it what each lamp's own watts may be off, as a part of the
 * drop to it. All from memory.
 */
export const spread = { mains: 0.025, copper: 0.06, reading: 0.05, ofDrop: 0.03 } as const;

/** The range searched for an amount, and where the search starts. Ohms; multiples of planned volt-amperes. */
const ranges = {
	splice: { least: 0.005, most: 30, starts: [0.05, 0.5] },
	lead: { least: 0.01, most: 60, starts: [0.2, 3] },
	load: { least: 0.01, most: 8, starts: [0.4, 2] }
} as const;
type Ranged = keyof typeof ranges;
const isRanged = (kind: Fault['kind'] | undefined): kind is Ranged => kind !== undefined && Object.hasOwn(ranges, kind);

/** Mains and copper as multiples of what is planned; the logarithm of the amount where the fault has one. */
type Point = number[];

/** By reading, volts planned, and the standard deviation of what is read. */
export function deviations({ network, readings }: Inspected): number[] | null {
	const planned = solve(network);
	if (!planned.ok) return null;
	const top = planned.volts[0]!;
	return readings.map(({ node }) => Math.hypot(spread.reading, spread.ofDrop * (top - planned.volts[node]!)));
}

class Fit {
	readonly #ranged: Ranged | null;
	/** The run with the fault, where its amount changes nothing about it. */
	readonly #fixed: Faulted | null;
	constructor(
		private readonly inspected: Inspected,
		private readonly fault: Fault | null,
		private readonly sigma: readonly number[]
	) {
		this.#ranged = isRanged(fault?.kind) ? fault.kind : null;
		this.#fixed = this.#ranged ? null : faulted(inspected, fault, 1);
	}
	amount(point: Point): number {
		return this.#ranged ? Math.exp(point[2]!) : point[0]!;
	}
	/** Volts by reading; null where the lamps ask for more than the cable can give. */
	volts(point: Point): number[] | null {
		const { network, at } = this.#fixed ?? faulted(this.inspected, this.fault, this.amount(point));
		if (network.sourceVolts === 0) return this.inspected.readings.map(() => 0);
		const solution = solve({
			...network,
			sourceVolts: network.sourceVolts * point[0]!,
			segments: network.segments.map((one) => ({ ...one, ohms: one.ohms * point[1]! }))
		});
		if (!solution.ok) return null;
		return this.inspected.readings.map(({ node }) => (at[node]! < 0 ? 0 : solution.volts[at[node]!]!));
	}
	/** Residuals over their standard deviations: readings, then mains and copper. */
	residuals(point: Point): number[] | null {
		const volts = this.volts(point);
		if (!volts) return null;
		const off = this.inspected.readings.map((reading, k) => (reading.volts - volts[k]!) / this.sigma[k]!);
		// Mains that are at fault themselves are not held.
		const mains = this.fault?.kind === 'mains' ? 0 : (point[0]! - 1) / spread.mains;
		return [...off, mains, (point[1]! - 1) / spread.copper];
	}
	starts(): Point[] {
		return this.#ranged ? ranges[this.#ranged].starts.map((start) => [1, 1, Math.log(start)]) : [[1, 1]];
	}
	within([mains = 1, copper = 1, amount]: Point): Point {
		const held = [Math.min(1.3, Math.max(0.5, mains)), Math.min(1.5, Math.max(0.6, copper))];
		if (amount === undefined || !this.#ranged) return held;
		const { least, most } = ranges[this.#ranged];
		return [...held, Math.min(Math.log(most), Math.max(Math.log(least), amount))];
	}
}
const squares = (list: readonly number[]): number => list.reduce((sum, one) => sum + one * one, 0);

/** Solves a small symmetric system by elimination; null where it is singular. */
function solved(matrix: number[][], right: number[]): number[] | null {
	const size = right.length;
	const rows = matrix.map((row, k) => [...row, right[k]!]);
	for (let k = 0; k < size; k++) {
		const pivot = rows[k]![k]!;
		if (Math.abs(pivot) < 1e-14) return null;
		for (let r = k + 1; r < size; r++) {
			const factor = rows[r]![k]! / pivot;
			for (let c = k; c <= size; c++) rows[r]![c]! -= factor * rows[k]![c]!;
		}
	}
	const found = Array.from({ length: size }, () => 0);
	for (let k = size - 1; k >= 0; k--) {
		let sum = rows[k]![size]!;
		for (let c = k + 1; c < size; c++) sum -= rows[k]![c]! * found[c]!;
		found[k] = sum / rows[k]![k]!;
	}
	return found;
}

const mostSteps = 25;
const small = 1e-4;

/** Levenberg and Marquardt's descent from one start; null where there is no solution there. */
function descend(fit: Fit, start: Point): { point: Point; misfit: number } | null {
	let point = start;
	let off = fit.residuals(point);
	if (!off) return null;
	let misfit = squares(off);
	let damping = 1e-2;
	for (let step = 0; step < mostSteps && damping < 1e8; step++) {
		const here = off;
		const slopes = point.map((_, k) => {
			const there = fit.residuals(point.with(k, point[k]! + small));
			return there ? there.map((one, i) => (one - here[i]!) / small) : null;
		});
		if (slopes.some((slope) => slope === null)) break;
		const known = slopes as number[][];
		const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, one, i) => sum + one * b[i]!, 0);
		const normal = known.map((a, i) =>
			known.map((b, j) => dot(a, b) * (i === j ? 1 + damping : 1) + (i === j ? 1e-12 : 0))
		);
		const move = solved(
			normal,
			known.map((a) => -dot(a, here))
		);
		const next = move && fit.within(point.map((one, k) => one + move[k]!));
		const after = next && fit.residuals(next);
		const sum = after ? squares(after) : Infinity;
		if (!next || !after || sum >= misfit) {
			damping *= 8;
			continue;
		}
		const gained = misfit - sum;
		[point, off, misfit] = [next, after, sum];
		damping /= 6;
		if (gained < 1e-4) break;
	}
	return { point, misfit };
}

/** The best that a fault can do for the readings; null where the run has no solution with it. `sigma`: `deviations`. */
export function fitted(
	inspected: Inspected,
	fault: Fault | null,
	sigma: readonly number[]
): Omit<Suspect, 'fault'> | null {
	const fit = new Fit(inspected, fault, sigma);
	let best: { point: Point; misfit: number } | null = null;
	for (const start of fit.starts()) {
		const found = descend(fit, start);
		if (found && (!best || found.misfit < best.misfit)) best = found;
	}
	const volts = best && fit.volts(best.point);
	if (!best || !volts) return null;
	const hasAmount = fault !== null && (isRanged(fault.kind) || fault.kind === 'mains');
	return { amount: hasAmount ? fit.amount(best.point) : null, misfit: best.misfit, volts };
}
