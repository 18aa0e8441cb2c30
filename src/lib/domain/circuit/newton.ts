/**
 * The volts of a network with lamps whose current depends on them, found from above.
 *
 * Let F(V) be the current that leaves each bus beyond what arrives. Start at V = the highest source volts, where F ≥ 0.
 * Each step replaces the lamps by straight lines that lie below their laws and solves the linear network. F has no
 * positive coupling between buses, so the theory of monotone Newton iteration applies (Ortega & Rheinboldt, Iterative
 * Solution of Nonlinear Equations in Several Variables, 13.3): every step stays above every solution, the steps descend,
 * and they end at the highest one, which is the one a circuit takes when switched on; the lower root is never met. If
 * a solution exists below a point that is not one, the matrix there is a nonsingular M-matrix (Berman & Plemmons,
 * Nonnegative Matrices, theorem 6.2.7: it takes a positive vector to a non-negative one that is not zero), all of its
 * pivots are above zero. So a pivot of zero or less, or volts of zero or less, proves that there is no solution:
 * for one LED lamp that is S > V²/4R.
 *
 * For LED and resistance the tangent is such a line and the iteration is Newton's own, of second order. Halogen is
 * concave: its line from above is the chord to the origin, of first order. So tangents are tried first, and what they
 * reach is kept only if it passes the converse test (lines from below, pivots above zero: no solution lies higher);
 * otherwise the chords decide.
 *
 * Tolerance: a step of 1e-11 of the source volts, after which a second-order step has already passed 1e-16; or, with
 * tangents alone, a step that foretells such a one (a second-order step is C times the square of the one before, and C is
 * known from the last two); or, once steps are under 1e-8, the first that no longer shrinks, where rounding rules. Step
 * limit 200: at the very edge of solvability the iteration only halves its error, which takes about 45.
 */
import { rules } from '../shared/rules';
import { loadAmps } from './lamps';
import type { Linear } from './ladder';
import type { Network } from './types';

export const stepLimit = 200;
export const tolerance = 1e-11;
const roundingRules = 1e-8;

/** Loads by bus as columns: the inner loop of everything, so it meets numbers and not objects. */
export interface Hung {
	bus: Int32Array;
	/** 0 LED, 1 halogen, 2 resistance. */
	kind: Uint8Array;
	/** LED: S. Halogen: W / Vr^1.55, so that I = c V^0.55. Resistance: 1/R. */
	factor: Float64Array;
	halogens: number;
	resistances: number;
}

/** Columns of `loads`; `busOf` gives the bus of a node. */
export function hang(loads: Network['loads'], busOf: Int32Array): Hung {
	const count = loads.length;
	const bus = new Int32Array(count);
	const kind = new Uint8Array(count);
	const factor = new Float64Array(count);
	let halogens = 0;
	let resistances = 0;
	for (let k = 0; k < count; k++) {
		const { node, load } = loads[k]!;
		bus[k] = busOf[node]!;
		if (load.kind === 'led') factor[k] = load.voltAmps;
		else if (load.kind === 'halogen') {
			kind[k] = 1;
			factor[k] = loadAmps(load, 1);
			halogens++;
		} else {
			kind[k] = 2;
			factor[k] = 1 / load.ohms;
			resistances++;
		}
	}
	return { bus, kind, factor, halogens, resistances };
}
export type Settled =
	{ ok: true; volts: Float64Array; steps: number } | { ok: false; why: 'no-solution' | 'step-limit'; bus: number };

/** Line put in place of a halogen lamp: its tangent, its chord to the origin, or its chord to the source volts. */
type HalogenLine = 'tangent' | 'above' | 'below';
const exponent = rules['lamp.halogen'].figures.current;

/** Room to work in, for one network or for one shape solved again and again. */
export class Work {
	readonly slope: Float64Array;
	readonly draw: Float64Array;
	/** Present volts and the next ones: they change places at each step. */
	volts: Float64Array;
	next: Float64Array;
	constructor(buses: number) {
		this.slope = new Float64Array(buses);
		this.draw = new Float64Array(buses);
		this.volts = new Float64Array(buses);
		this.next = new Float64Array(buses);
	}
}

/** Linear pass with each load as a line through its present volts: −1, or the bus of a pivot that is not above zero. */
function step(
	linear: Linear,
	{ bus, kind, factor, halogens, resistances }: Hung,
	line: HalogenLine,
	top: number,
	{ slope, draw, volts, next }: Work
): number {
	slope.fill(0);
	draw.fill(0);
	if (halogens + resistances === 0) {
		for (let k = 0; k < bus.length; k++) {
			const b = bus[k]!;
			const inverse = 1 / volts[b]!;
			const amps = factor[k]! * inverse;
			slope[b]! -= amps * inverse;
			draw[b]! += 2 * amps;
		}
		return linear.pass(slope, draw, next);
	}
	const atTop = line === 'below' ? top ** exponent : 0;
	for (let k = 0; k < bus.length; k++) {
		const b = bus[k]!;
		const v = volts[b]!;
		const f = factor[k]!;
		if (kind[k] === 0) {
			const s = f / (v * v);
			slope[b]! -= s;
			draw[b]! += 2 * s * v;
		} else if (kind[k] === 1) {
			const amps = f * v ** exponent;
			let s = amps / v;
			if (line === 'tangent') s *= exponent;
			else if (line === 'below') s = top > v ? (f * atTop - amps) / (top - v) : s * exponent;
			slope[b]! += s;
			draw[b]! += amps - s * v;
		} else slope[b]! += f;
	}
	return linear.pass(slope, draw, next);
}

const lowest = (volts: Float64Array): number => {
	let at = 0;
	for (let b = 1; b < volts.length; b++) if (volts[b]! < volts[at]!) at = b;
	return at;
};

function descend(linear: Linear, hung: Hung, top: number, line: HalogenLine, work: Work): Settled {
	const isSecondOrder = hung.halogens === 0;
	const small = tolerance * top;
	work.volts.fill(top);
	let before = Infinity;
	for (let steps = 1; steps <= stepLimit; steps++) {
		const { volts, next } = work;
		if (step(linear, hung, line, top, work) >= 0) return { ok: false, why: 'no-solution', bus: lowest(volts) };
		let change = 0;
		let least = Infinity;
		for (let b = 0; b < next.length; b++) {
			const now = next[b]!;
			const moved = Math.abs(now - volts[b]!);
			if (!(moved <= change)) change = moved;
			if (!(now >= least)) least = now;
		}
		work.volts = next;
		work.next = volts;
		if (!(least > 0)) return { ok: false, why: 'no-solution', bus: lowest(next) };
		const shrink = change / before;
		const foretold = isSecondOrder && steps > 1 && shrink < 0.1 && change * shrink * shrink <= small / 10;
		if (foretold || change <= small || (change <= roundingRules * top && change >= before))
			return { ok: true, volts: next, steps };
		before = change;
	}
	return { ok: false, why: 'step-limit', bus: lowest(work.volts) };
}

/** Highest solution, by bus, in the volts of `work`. `top`: highest source volts. */
export function settle(linear: Linear, hung: Hung, top: number, work: Work): Settled {
	const quick = descend(linear, hung, top, 'tangent', work);
	if (hung.halogens === 0) return quick;
	if (quick.ok && step(linear, hung, 'below', top, work) < 0) return quick;
	return descend(linear, hung, top, 'above', work);
}
