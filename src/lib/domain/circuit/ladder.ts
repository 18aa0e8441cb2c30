/**
 * One linear pass over a tree, O(n): each branch is folded, tip first, into the draw J + Y·V that its parent sees
 * through the segment (Norton's theorem), then the volts are unfolded from the supply. In this form nothing is
 * divided by the ohms of a segment, so a segment of no length is nothing special, and the only subtraction is where
 * an LED's negative slope makes one.
 */
import type { Rooted } from './tree';

/** Replaces the laws of all buses by J + Y·V and solves. */
export interface Linear {
	/** Buses: what the volts are indexed by. */
	buses: number;
	/**
	 * Volts into `volts`; `slope` (siemens) and `draw` (amperes at zero volts) by bus are used up. Returns −1, or the bus
	 * whose pivot is not above zero: the slopes are then too steep for these conductors.
	 */
	pass(slope: Float64Array, draw: Float64Array, volts: Float64Array): number;
}

/** Buses are the positions of `tree`; `ohms` by position is the segment to the parent, at 0 the source's own. Both may be changed between passes. */
export class Ladder implements Linear {
	readonly buses: number;
	private readonly parent: Int32Array;
	/** Reciprocals, so that a pass divides once a bus. */
	private readonly shares: Float64Array;
	private readonly ohms: Float64Array;
	sourceVolts: number;

	/** `shares` is room to work in, by position. */
	constructor({ parent }: Rooted, ohms: Float64Array, sourceVolts: number, shares = new Float64Array(parent.length)) {
		this.buses = parent.length;
		this.parent = parent;
		this.shares = shares;
		this.ohms = ohms;
		this.sourceVolts = sourceVolts;
	}

	pass(slope: Float64Array, draw: Float64Array, volts: Float64Array): number {
		const { buses, parent, ohms, shares } = this;
		for (let p = buses - 1; p > 0; p--) {
			const steep = slope[p]!;
			const pivot = 1 + ohms[p]! * steep;
			if (!(pivot > 0)) return p;
			const share = 1 / pivot;
			shares[p] = share;
			const above = parent[p]!;
			slope[above]! += steep * share;
			draw[above]! += draw[p]! * share;
		}
		const root = 1 + ohms[0]! * slope[0]!;
		if (!(root > 0)) return 0;
		volts[0] = (this.sourceVolts - ohms[0]! * draw[0]!) / root;
		// 1 − R·Y / (1 + R·Y) is the share itself.
		for (let p = 1; p < buses; p++) volts[p] = (volts[parent[p]!]! - ohms[p]! * draw[p]!) * shares[p]!;
		return -1;
	}
}
