/**
 * The volts of a network with lamps whose current depends on them.
 *
 * Let T(V) be the volts where each bus takes the current I(V) of its loads: T(V) = E − Z·I(V), with Z ≥ 0 and E at most `top`,
 * the highest source volts. A solution is V = T(V).
 *
 * **Quickly, where all volts are high.** The laws of LED (S/V), halogen (c·V^0.55) and resistance have this in common: V·|I'(V)|
 * ≤ I(V). So in the norm max |u|/V the slope of T at V is at most Z·I(V)/V = (E − V)/V ≤ q = (top − least)/least. Where every bus
 * is above half of `top`, q < 1 and T is a contraction: by Banach's theorem there is a solution, no other beside it, and a bound for
 * its distance. Nor is there one above, for the chords upwards from V are no steeper than I(V)/V either, and any other
 * solution has one above both. After a short step of δ a tangent is off the law by I(V)·(δ/V)² at most, so the volts are then
 * within q/(1 − q)·(δ/V)² of the solution, as a fraction of the volts. This is the test for the end, so the start need only be
 * near: the drop d at `top`, scaled by κ = 1/(1 − κ·m), m being the mean rise of current with the drop, weighted by current
 * and drop; then T once. T itself brings any volts q times nearer, and makes currents and volts agree to the last digits.
 *
 * **From above, where they are not.** Let F(V) be the current that leaves each bus beyond what arrives. Start at V = `top`, where
 * F ≥ 0. Each step replaces the lamps by straight lines that lie below their laws and solves the linear network. F has no
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
 * reach is kept only if it passes the converse test (above half of `top`, or lines from below with pivots above zero: no
 * solution lies higher); otherwise the chords decide.
 *
 * Tolerance: quickly, an error of 1e-11 of the volts by the bound above, as a rule far less. From above, a step of 1e-11 of the
 * source volts, after which a second-order step has already passed 1e-16; or, with tangents alone, a step that foretells such
 * a one (a second-order step is C times the square of the one before, and C is known from the last two); or, once steps are
 * under 1e-8, the first that no longer shrinks, where rounding rules. Step limit 8 quickly, then 200: at the very edge of
 * solvability the iteration only halves its error, which takes about 45.
 */
import { rules } from '../shared/rules';
import { loadAmps } from './lamps';
import type { Linear } from './ladder';
import type { Load, Network } from './types';

export const stepLimit = 200;
/** What has not ended after so many steps is near the edge of solvability. */
const quickLimit = 8;
export const tolerance = 1e-11;
/** Fraction of the volts within which their law is close to its tangent. */
const nearBy = 1e-3;
const roundingRules = 1e-8;

/** Loads as columns: the inner loops meet numbers and not objects. */
export interface Hung {
	/** By load. */
	bus: Int32Array;
	/** 0 LED, 1 halogen, 2 resistance. */
	kind: Uint8Array;
	/** LED: S. Halogen: W / Vr^1.55, so that I = c V^0.55. Resistance: 1/R. */
	factor: Float64Array;
	/** By bus: the factors of each kind added up. */
	led: Float64Array;
	halogen: Float64Array;
	siemens: Float64Array;
	halogens: number;
	resistances: number;
}

export const roomToHang = (buses: number, loads: number): Hung => ({
	bus: new Int32Array(loads),
	kind: new Uint8Array(loads),
	factor: new Float64Array(loads),
	led: new Float64Array(buses),
	halogen: new Float64Array(buses),
	siemens: new Float64Array(buses),
	halogens: 0,
	resistances: 0
});

/** Takes all loads off the first `buses` buses. */
export function clear(hung: Hung, buses: number): void {
	hung.led.fill(0, 0, buses);
	hung.halogen.fill(0, 0, buses);
	hung.siemens.fill(0, 0, buses);
	hung.halogens = hung.resistances = 0;
}

/** Hangs load number `k` on bus `b`. */
export function hangOne(hung: Hung, k: number, b: number, load: Load): void {
	hung.bus[k] = b;
	if (load.kind !== 'led') return hangOther(hung, k, b, load);
	hung.kind[k] = 0;
	hung.factor[k] = load.voltAmps;
	hung.led[b]! += load.voltAmps;
}
export function hangOther(hung: Hung, k: number, b: number, load: Exclude<Load, { kind: 'led' }>): void {
	const isHalogen = load.kind === 'halogen';
	const factor = loadAmps(load, 1);
	hung.kind[k] = isHalogen ? 1 : 2;
	hung.factor[k] = factor;
	if (isHalogen) {
		hung.halogen[b]! += factor;
		hung.halogens++;
	} else {
		hung.siemens[b]! += factor;
		hung.resistances++;
	}
}

/** Columns of `loads`; `busOf` gives the bus of a node, and there are no more buses than nodes. */
export function hang(loads: Network['loads'], busOf: Int32Array): Hung {
	const hung = roomToHang(busOf.length, loads.length);
	for (let k = 0; k < loads.length; k++) hangOne(hung, k, busOf[loads[k]!.node]!, loads[k]!.load);
	return hung;
}
/** `isHigh`: every bus is above half of the highest source volts. */
export type Settled =
	| { ok: true; volts: Float64Array; steps: number; isHigh: boolean }
	| { ok: false; why: 'no-solution' | 'step-limit'; bus: number };

/** Line put in place of a halogen lamp: its tangent, its chord to the origin, or its chord to the source volts. */
type HalogenLine = 'tangent' | 'above' | 'below';
export const exponent = rules['lamp.halogen'].figures.current;

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
	/** The next volts become the present ones. */
	turn(): void {
		const { volts, next } = this;
		this.volts = next;
		this.next = volts;
	}
}

/** Linear pass with each load as a line through its present volts: −1, or the bus of a pivot that is not above zero. */
function step(linear: Linear, hung: Hung, line: HalogenLine, top: number, work: Work): number {
	const { buses } = linear;
	const { slope, draw, volts, next } = work;
	const { halogen, siemens, halogens, resistances } = hung;
	slope.fill(0, 0, buses);
	draw.fill(0, 0, buses);
	if (resistances > 0) for (let b = 0; b < buses; b++) slope[b] = siemens[b]!;
	if (halogens > 0) {
		const atTop = line === 'below' ? top ** exponent : 0;
		for (let b = 0; b < buses; b++) {
			const c = halogen[b]!;
			if (c === 0) continue;
			const v = volts[b]!;
			const amps = c * v ** exponent;
			let s = amps / v;
			if (line === 'tangent') s *= exponent;
			else if (line === 'below') s = top > v ? (c * atTop - amps) / (top - v) : s * exponent;
			slope[b]! += s;
			draw[b] = amps - s * v;
		}
	}
	return linear.pass(slope, draw, hung.led, volts, next);
}

/** Volts into the next ones of `work` where each load takes what it does at the present ones; `draw` as `fall` leaves it. */
export function carry(linear: Linear, hung: Hung, { draw, volts, next }: Work): void {
	const { buses } = linear;
	const { halogen, siemens, halogens, resistances } = hung;
	draw.fill(0, 0, buses);
	if (resistances > 0) for (let b = 0; b < buses; b++) draw[b] = siemens[b]! * volts[b]!;
	if (halogens > 0)
		for (let b = 0; b < buses; b++) if (halogen[b]! > 0) draw[b]! += halogen[b]! * volts[b]! ** exponent;
	linear.fall(draw, hung.led, volts, next);
}

/** The same where every bus is at `top`. */
function carryAt(
	top: number,
	linear: Linear,
	{ halogen, siemens, halogens, resistances, led }: Hung,
	work: Work
): void {
	const { buses } = linear;
	const { draw, volts, next } = work;
	volts.fill(top, 0, buses);
	draw.fill(0, 0, buses);
	if (resistances > 0) for (let b = 0; b < buses; b++) draw[b] = siemens[b]! * top;
	if (halogens > 0) {
		const power = top ** exponent;
		for (let b = 0; b < buses; b++) if (halogen[b]! > 0) draw[b]! += halogen[b]! * power;
	}
	linear.fall(draw, led, volts, next);
}

/** κ of the scaled drop, from the drop where every load takes what it does at `top`; NaN where there is none. */
function dropScale(
	{ led, halogen, siemens, halogens, resistances }: Hung,
	top: number,
	volts: Float64Array,
	buses: number
): number {
	let weight = 0;
	let rise = 0;
	for (let b = 0; b < buses; b++) {
		const drop = top - volts[b]!;
		const power = led[b]! * drop;
		weight += power;
		rise += power * drop;
	}
	if (halogens + resistances > 0) {
		const warm = top ** (exponent + 1);
		for (let b = 0; b < buses; b++) {
			const drop = top - volts[b]!;
			const h = halogen[b]! * warm * drop;
			const r = siemens[b]! * top * top * drop;
			weight += h + r;
			rise -= (exponent * h + r) * drop;
		}
	}
	return weight > 0 ? 2 / (1 + Math.sqrt(1 - (4 * rise) / (weight * top))) : 1;
}

/** Volts to start from into those of `work`, above zero or not; false where the drop is beyond such a guess. */
function guess(linear: Linear, hung: Hung, top: number, work: Work): boolean {
	const { buses } = linear;
	const { volts, next } = work;
	carryAt(top, linear, hung, work);
	const scale = dropScale(hung, top, next, buses);
	if (!(scale <= 2)) return false;
	for (let b = 0; b < buses; b++) volts[b] = top - scale * (top - next[b]!);
	carry(linear, hung, work);
	work.turn();
	return true;
}

/** The solution where every bus is above half of `top`; null where that cannot be shown. */
function quickly(linear: Linear, hung: Hung, top: number, work: Work): Settled | null {
	if (!guess(linear, hung, top, work)) return null;
	for (let steps = 3; steps <= quickLimit; steps++) {
		if (step(linear, hung, 'tangent', top, work) >= 0) return null;
		work.turn();
		const { moved, least } = linear;
		if (!(2 * least > top)) return null;
		// A long step says nothing: it may come from volts below zero, where no lamp has a law.
		if (!(moved <= nearBy * least)) continue;
		const q = (top - least) / least;
		if (q * (moved / least) ** 2 <= tolerance * (1 - q)) return { ok: true, volts: work.volts, steps, isHigh: true };
	}
	return null;
}

const lowest = (volts: Float64Array, buses: number): number => {
	let at = 0;
	for (let b = 1; b < buses; b++) if (volts[b]! < volts[at]!) at = b;
	return at;
};

function descend(linear: Linear, hung: Hung, top: number, line: HalogenLine, work: Work): Settled {
	const { buses } = linear;
	const isSecondOrder = hung.halogens === 0;
	const small = tolerance * top;
	work.volts.fill(top, 0, buses);
	let before = Infinity;
	for (let steps = 1; steps <= stepLimit; steps++) {
		if (step(linear, hung, line, top, work) >= 0)
			return { ok: false, why: 'no-solution', bus: lowest(work.volts, buses) };
		work.turn();
		const { moved, least } = linear;
		if (!(least > 0)) return { ok: false, why: 'no-solution', bus: lowest(work.volts, buses) };
		const shrink = moved / before;
		const foretold = isSecondOrder && steps > 1 && shrink < 0.1 && moved * shrink * shrink <= small / 10;
		if (foretold || moved <= small || (moved <= roundingRules * top && moved >= before))
			return { ok: true, volts: work.volts, steps, isHigh: 2 * least > top };
		before = moved;
	}
	return { ok: false, why: 'step-limit', bus: lowest(work.volts, buses) };
}

/** Highest solution, by bus, in the volts of `work`. `top`: highest source volts. */
export function settle(linear: Linear, hung: Hung, top: number, work: Work): Settled {
	const quick = quickly(linear, hung, top, work) ?? descend(linear, hung, top, 'tangent', work);
	if (hung.halogens === 0) return quick;
	if (quick.ok && (quick.isHigh || step(linear, hung, 'below', top, work) < 0)) return quick;
	return descend(linear, hung, top, 'above', work);
}
