/**
 * One linear pass over a network with rings or several feeds: nodes are eliminated one by one, the star of each
 * becoming the mesh of its neighbours (Rosen 1924), fewest neighbours first (minimum degree), which for a tree with a
 * few rings leaves almost nothing to fill in. Written with additions only, so that no digits cancel; every pivot
 * above zero means a positive definite matrix. The order is worked out once and used for every pass.
 */
import type { Linear } from './ladder';

export interface Wire {
	a: number;
	b: number;
	ohms: number;
}
/** A known voltage behind ohms; zero ohms hold the bus itself at the volts. */
export interface Feed {
	bus: number;
	volts: number;
	ohms: number;
}

interface Elimination {
	/** Buses in order of elimination. */
	order: number[];
	/** By step: remaining neighbours and the wire to each, and for each pair (i < j) the wire between them. */
	neighbours: number[][];
	wires: number[][];
	between: number[][];
	/** Siemens by wire, zero where a pass fills in. */
	siemens: number[];
}

/** Buckets by degree with stale entries skipped: the least degree first, then the order of entry, so always the same. */
class ByDegree {
	private readonly buckets: number[][] = [];
	private least = 0;
	push(bus: number, degree: number): void {
		(this.buckets[degree] ??= []).push(bus);
		this.least = Math.min(this.least, degree);
	}
	pop(isStale: (bus: number, degree: number) => boolean): number {
		for (; this.least < this.buckets.length; this.least++) {
			for (let bus = this.buckets[this.least]?.pop(); bus !== undefined; bus = this.buckets[this.least]?.pop())
				if (!isStale(bus, this.least)) return bus;
		}
		return -1;
	}
}

function eliminate(buses: number, held: Uint8Array, wires: Wire[]): Elimination {
	const siemens: number[] = [];
	const links = Array.from({ length: buses }, () => new Map<number, number>());
	const wire = (a: number, b: number, value: number): number => {
		const known = links[a]!.get(b);
		if (known !== undefined) {
			siemens[known]! += value;
			return known;
		}
		links[a]!.set(b, siemens.length);
		links[b]!.set(a, siemens.length);
		return siemens.push(value) - 1;
	};
	for (const { a, b, ohms } of wires) if (!held[a] && !held[b]) wire(a, b, 1 / ohms);
	const result: Elimination = { order: [], neighbours: [], wires: [], between: [], siemens };
	const done = held.slice();
	const queue = new ByDegree();
	for (let bus = 0; bus < buses; bus++) if (!held[bus]) queue.push(bus, links[bus]!.size);
	const isStale = (bus: number, degree: number) => done[bus] === 1 || links[bus]!.size !== degree;
	for (let bus = queue.pop(isStale); bus >= 0; bus = queue.pop(isStale)) {
		done[bus] = 1;
		const near = [...links[bus]!.keys()];
		result.order.push(bus);
		result.neighbours.push(near);
		result.wires.push([...links[bus]!.values()]);
		const between: number[] = [];
		for (const other of near) links[other]!.delete(bus);
		for (let i = 0; i < near.length; i++)
			for (let j = i + 1; j < near.length; j++) between.push(wire(near[i]!, near[j]!, 0));
		result.between.push(between);
		for (const other of near) queue.push(other, links[other]!.size);
	}
	return result;
}

/** `wires` have ohms above zero and join different buses; a bus that a feed without ohms holds is never eliminated. */
export class Mesh implements Linear {
	readonly buses: number;
	moved = 0;
	least = 0;
	private readonly held: Uint8Array;
	private readonly heldVolts: Float64Array;
	/** What known volts add at the buses beside them. */
	private readonly fixedSlope: Float64Array;
	private readonly fixedDraw: Float64Array;
	private readonly plan: Elimination;
	private readonly siemens: Float64Array;
	private readonly pivots: Float64Array;

	constructor(buses: number, wires: Wire[], feeds: Feed[]) {
		this.buses = buses;
		this.held = new Uint8Array(buses);
		this.heldVolts = new Float64Array(buses);
		this.fixedSlope = new Float64Array(buses);
		this.fixedDraw = new Float64Array(buses);
		for (const { bus, volts, ohms } of feeds)
			if (ohms === 0) {
				this.held[bus] = 1;
				this.heldVolts[bus] = volts;
			} else this.tie(bus, volts, ohms);
		for (const { a, b, ohms } of wires) {
			if (this.held[a] && !this.held[b]) this.tie(b, this.heldVolts[a]!, ohms);
			if (this.held[b] && !this.held[a]) this.tie(a, this.heldVolts[b]!, ohms);
		}
		this.plan = eliminate(buses, this.held, wires);
		this.siemens = new Float64Array(this.plan.siemens.length);
		this.pivots = new Float64Array(this.plan.order.length);
	}

	private tie(bus: number, volts: number, ohms: number): void {
		this.fixedSlope[bus]! += 1 / ohms;
		this.fixedDraw[bus]! -= volts / ohms;
	}

	pass(slope: Float64Array, draw: Float64Array, led: Float64Array, volts: Float64Array, next: Float64Array): number {
		for (let bus = 0; bus < this.buses; bus++) {
			const amps = led[bus]! / volts[bus]!;
			slope[bus]! -= amps / volts[bus]!;
			draw[bus]! += 2 * amps;
		}
		const stuck = this.solve(slope, draw, next);
		if (stuck >= 0) return stuck;
		this.moved = 0;
		this.least = Infinity;
		for (let bus = 0; bus < this.buses; bus++) {
			const by = Math.abs(next[bus]! - volts[bus]!);
			if (by > this.moved || by !== by) this.moved = by;
			if (next[bus]! < this.least || next[bus] !== next[bus]) this.least = next[bus]!;
		}
		return -1;
	}

	fall(amps: Float64Array, led: Float64Array, volts: Float64Array, next: Float64Array): void {
		for (let bus = 0; bus < this.buses; bus++) amps[bus]! += led[bus]! / volts[bus]!;
		this.solve(new Float64Array(this.buses), amps, next);
	}

	/** All loads as lines; returns as `pass` does. */
	private solve(slope: Float64Array, draw: Float64Array, volts: Float64Array): number {
		const { buses, held, siemens, pivots } = this;
		const { order, neighbours, wires, between } = this.plan;
		siemens.set(this.plan.siemens);
		for (let bus = 0; bus < buses; bus++) {
			slope[bus]! += this.fixedSlope[bus]!;
			draw[bus]! += this.fixedDraw[bus]!;
			if (held[bus]) volts[bus] = this.heldVolts[bus]!;
		}
		for (let step = 0; step < order.length; step++) {
			const bus = order[step]!;
			const near = neighbours[step]!;
			const wire = wires[step]!;
			let pivot = slope[bus]!;
			for (const w of wire) pivot += siemens[w]!;
			if (!(pivot > 0)) return bus;
			pivots[step] = pivot;
			const fill = between[step]!;
			for (let i = 0, k = 0; i < near.length; i++) {
				const share = siemens[wire[i]!]! / pivot;
				slope[near[i]!]! += share * slope[bus]!;
				draw[near[i]!]! += share * draw[bus]!;
				for (let j = i + 1; j < near.length; j++) siemens[fill[k++]!]! += share * siemens[wire[j]!]!;
			}
		}
		for (let step = order.length - 1; step >= 0; step--) {
			const near = neighbours[step]!;
			const wire = wires[step]!;
			let sum = -draw[order[step]!]!;
			for (let i = 0; i < near.length; i++) sum += siemens[wire[i]!]! * volts[near[i]!]!;
			volts[order[step]!] = sum / pivots[step]!;
		}
		return -1;
	}
}
