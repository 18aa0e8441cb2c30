/**
 * One linear pass over a tree, O(n): each branch is folded, tip first, into the draw J + Y·V that its parent sees
 * through the segment (Norton's theorem), then the volts are unfolded from the supply. In this form nothing is
 * divided by the ohms of a segment, so a segment of no length is nothing special, and the only subtraction is where
 * an LED's negative slope makes one.
 *
 * Along a cable each node waits for the one beyond it, so what counts is the time from one to the next. Y is therefore carried as
 * a quotient N/D: through R it becomes N/(D + R·N), and no division stands in the way. D is a small change of volts here over
 * that at the tip, so it leaves the range of numbers only where the volts do. What the next node wants stays in a
 * register; only side branches go through the arrays.
 */
import type { Rooted } from './tree';

/** Replaces the laws of all buses by lines J + Y·V and solves. */
export interface Linear {
	/** Buses: what the volts are indexed by; what is given by bus may be longer. */
	buses: number;
	/** Of the last pass: the most by which a bus moved from `volts` to `next`, and the least of `next`; NaN if any was. */
	moved: number;
	least: number;
	/**
	 * Volts into `next`, with each LED's law (`led`: volt-amperes by bus) replaced by its tangent at `volts`, and of all other
	 * loads the lines `slope` (siemens) and `draw` (amperes at zero volts) by bus, which are used up. Returns −1, or the bus
	 * whose pivot is not above zero: the slopes are then too steep for these conductors.
	 */
	pass(slope: Float64Array, draw: Float64Array, led: Float64Array, volts: Float64Array, next: Float64Array): number;
	/** Volts into `next` where each LED takes what it does at `volts`, and the other loads `amps` by bus, which are used up. */
	fall(amps: Float64Array, led: Float64Array, volts: Float64Array, next: Float64Array): void;
}

/**
 * Buses are the positions of `tree`; `ohms` by position is the segment to the parent, at 0 the source's own. All but the length of
 * the arrays may be changed between passes.
 */
export class Ladder implements Linear {
	buses: number;
	moved = 0;
	least = 0;
	sourceVolts: number;
	private readonly parent: Int32Array;
	private readonly ohms: Float64Array;

	constructor({ parent }: Pick<Rooted, 'parent'>, ohms: Float64Array, sourceVolts: number) {
		this.buses = parent.length;
		this.parent = parent;
		this.ohms = ohms;
		this.sourceVolts = sourceVolts;
	}

	pass(slope: Float64Array, draw: Float64Array, led: Float64Array, volts: Float64Array, next: Float64Array): number {
		const { parent, ohms } = this;
		let at = -1;
		let n = 0;
		let d = 1;
		let carried = 0;
		for (let p = this.buses - 1; p >= 0; p--) {
			const inverse = 1 / volts[p]!;
			const amps = led[p]! * inverse;
			const steep = slope[p]! - amps * inverse;
			let drawn = draw[p]! + 2 * amps;
			if (at === p) {
				n += steep * d;
				drawn += carried;
			} else {
				if (at >= 0) {
					slope[at]! += n / d;
					draw[at]! += carried;
				}
				n = steep;
				d = 1;
			}
			const whole = d + ohms[p]! * n;
			if (!(whole > 0)) return p;
			const share = d / whole;
			d = whole;
			slope[p] = share;
			draw[p] = drawn;
			carried = drawn * share;
			at = parent[p]!;
		}
		this.unfold(slope, draw, volts, next);
		return -1;
	}

	/** 1 − R·Y / (1 + R·Y) is the share itself. */
	private unfold(shares: Float64Array, draw: Float64Array, volts: Float64Array, next: Float64Array): void {
		const { buses, parent, ohms } = this;
		let now = (this.sourceVolts - ohms[0]! * draw[0]!) * shares[0]!;
		next[0] = now;
		let moved = Math.abs(now - volts[0]!);
		let least = now;
		for (let p = 1; p < buses; p++) {
			const above = parent[p]!;
			if (above !== p - 1) now = next[above]!;
			now = (now - ohms[p]! * draw[p]!) * shares[p]!;
			next[p] = now;
			const by = Math.abs(now - volts[p]!);
			if (by > moved || by !== by) moved = by;
			if (now < least || now !== now) least = now;
		}
		this.moved = moved;
		this.least = least;
	}

	/** `amps` become those that flow into each position from its parent. */
	fall(amps: Float64Array, led: Float64Array, volts: Float64Array, next: Float64Array): void {
		this.gather(amps, led, volts);
		const { buses, parent, ohms } = this;
		let now = this.sourceVolts - ohms[0]! * amps[0]!;
		next[0] = now;
		for (let p = 1; p < buses; p++) {
			const above = parent[p]!;
			if (above !== p - 1) now = next[above]!;
			now -= ohms[p]! * amps[p]!;
			next[p] = now;
		}
	}

	private gather(amps: Float64Array, led: Float64Array, volts: Float64Array): void {
		const { parent } = this;
		let at = -1;
		let carried = 0;
		for (let p = this.buses - 1; p >= 0; p--) {
			let sum = amps[p]! + led[p]! / volts[p]!;
			if (at === p) sum += carried;
			else if (at >= 0) amps[at]! += carried;
			amps[p] = carried = sum;
			at = parent[p]!;
		}
	}
}
