import type { BundleGround } from './bundle-ground';
import { Heap } from './heap';

/** Prices of a way, currency: a metre of the run's cable, and a metre of trench in open ground. */
export interface Prices {
	cable: number;
	trench: number;
}
/** Two ways this close cost the same, currency. */
export const sameMoney = 1e-7;

/** Legs that cables lie in, with how many. */
export class Dug {
	private readonly cables = new Map<number, number>();
	private readonly near = new Map<number, number[]>();
	constructor(readonly ground: BundleGround) {}
	/** Where the legs from a node lead. */
	from(node: number): readonly number[] {
		return this.near.get(node) ?? none;
	}
	private join(a: number, b: number): void {
		const list = this.near.get(a);
		if (list) list.push(b);
		else this.near.set(a, [b]);
	}
	private part(a: number, b: number): void {
		const list = this.near.get(a)!;
		list.splice(list.indexOf(b), 1);
	}
	has(a: number, b: number): boolean {
		return this.cables.has(this.ground.key(a, b));
	}
	/** One cable more along a chain of nodes. */
	add(chain: readonly number[]): void {
		for (let k = 1; k < chain.length; k++) {
			const [a, b] = [chain[k - 1]!, chain[k]!];
			const key = this.ground.key(a, b);
			const cables = this.cables.get(key) ?? 0;
			this.cables.set(key, cables + 1);
			if (cables > 0) continue;
			this.join(a, b);
			this.join(b, a);
		}
	}
	remove(chain: readonly number[]): void {
		for (let k = 1; k < chain.length; k++) {
			const [a, b] = [chain[k - 1]!, chain[k]!];
			const key = this.ground.key(a, b);
			const cables = this.cables.get(key)! - 1;
			if (cables > 0) {
				this.cables.set(key, cables);
				continue;
			}
			this.cables.delete(key);
			this.part(a, b);
			this.part(b, a);
		}
	}
	/** What a cable along a chain costs where these legs need no digging, currency. */
	price(chain: readonly number[], prices: Prices): number {
		const { ground } = this;
		let sum = 0;
		for (let k = 1; k < chain.length; k++) {
			const [a, b] = [chain[k - 1]!, chain[k]!];
			sum += prices.cable * ground.apart(a, b) + (this.has(a, b) ? 0 : prices.trench * ground.cost(a, b));
		}
		return sum;
	}
}

const none: readonly number[] = [];

/**
 * A search for the cheapest way of one cable where a leg that others have dug costs only its cable: A* (Hart, Nilsson &
 * Raphael, IEEE Transactions on Systems Science and Cybernetics 4, 1968) with the cable of the straight line as what is
 * still to come, so that it looks no further than a way could lead that is cheaper than the one known.
 */
export class WaySearch {
	private readonly reach: Float64Array;
	private readonly before: Int32Array;
	private readonly heap = new Heap();
	private touched: number[] = [];
	constructor(private readonly dug: Dug) {
		this.reach = new Float64Array(dug.ground.count).fill(Infinity);
		this.before = new Int32Array(dug.ground.count).fill(-1);
	}
	/** Nodes of a way that costs less than `below`; null where there is none. */
	find(from: number, to: number, prices: Prices, below: number): number[] | null {
		const { dug, reach, before, heap } = this;
		const { ground } = dug;
		const { corners, sought, terminals } = ground;
		const { links, exits, entries } = sought.graph;
		for (const node of this.touched) reach[node] = Infinity;
		this.touched = [];
		heap.clear();
		let limit = below - sameMoney;
		const visit = (node: number, at: number, fixed: number, digging: number): void => {
			// Digging alone tells of most legs that they lead too far.
			if (fixed + digging >= limit) return;
			const cost = fixed + digging + prices.cable * ground.apart(at, node);
			if (cost >= reach[node]! - sameMoney) return;
			const whole = cost + prices.cable * ground.apart(node, to);
			if (whole >= limit) return;
			if (reach[node] === Infinity) this.touched.push(node);
			reach[node] = cost;
			before[node] = at;
			if (node === to) limit = cost;
			else heap.push(whole, node);
		};
		reach[from] = 0;
		before[from] = -1;
		this.touched.push(from);
		heap.push(0, from);
		for (let at = heap.pop(); at >= 0; at = heap.pop()) {
			const cost = reach[at]!;
			if (heap.key >= limit) break;
			// A node met again at less stands in the heap twice.
			if (at !== from && heap.key > cost + prices.cable * ground.apart(at, to) + sameMoney) continue;
			for (const next of dug.from(at)) visit(next, at, cost, 0);
			if (at < corners) {
				for (let l = links.start[at]!; l < links.start[at + 1]!; l++)
					visit(links.to[l]!, at, cost, prices.trench * links.cost[l]!);
				for (let l = entries.start[at]!; l < entries.start[at + 1]!; l++)
					visit(corners + entries.to[l]!, at, cost, prices.trench * entries.cost[l]!);
				continue;
			}
			const terminal = at - corners;
			for (let l = exits.start[terminal]!; l < exits.start[terminal + 1]!; l++)
				visit(exits.to[l]!, at, cost, prices.trench * exits.cost[l]!);
			for (let other = 0; other < terminals; other++) {
				const node = corners + other;
				const least = cost + prices.cable * (ground.apart(at, node) + ground.apart(node, to));
				if (other !== terminal && least < limit) visit(node, at, cost, prices.trench * ground.direct(terminal, other));
			}
		}
		if (reach[to] === Infinity) return null;
		const chain: number[] = [];
		for (let node = to; node >= 0; node = before[node]!) chain.push(node);
		return chain.reverse();
	}
}
