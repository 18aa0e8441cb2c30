/** The ground as cables see it that may follow each other: corners of ways, crossings, and the lights themselves. */
import type { Point } from '../shared/geometry';
import type { Portal } from './crossings';
import type { LaidRoute } from './laid';
import type { Sought } from './paths';

/**
 * Nodes of the graph of ways, and after them the terminals, each where its cable reaches open ground. A straight stretch from
 * node to node is a leg; its cost is that of digging it, metres of trench in open ground by the table of laying costs.
 */
export class BundleGround {
	readonly corners: number;
	readonly terminals: number;
	readonly count: number;
	readonly x: Float64Array;
	readonly y: Float64Array;
	private readonly places = new Map<Point, number>();
	/** Costs between terminals, NaN where not yet asked for. */
	private readonly directs: Float64Array;

	constructor(readonly sought: Sought) {
		const { graph, terminals } = sought;
		this.terminals = terminals.length;
		const size = this.terminals;
		this.corners = graph.nodes.length;
		this.count = this.corners + size;
		this.x = new Float64Array(this.count);
		this.y = new Float64Array(this.count);
		this.directs = new Float64Array(size * size).fill(NaN);
		for (let node = 0; node < this.count; node++) {
			const isCorner = node < this.corners;
			const at = isCorner ? graph.nodes[node]!.at : terminals[node - this.corners]!.ground;
			this.x[node] = at.x;
			this.y[node] = at.y;
			if (isCorner) this.places.set(at, node);
		}
	}
	apart(a: number, b: number): number {
		const dx = this.x[a]! - this.x[b]!;
		const dy = this.y[a]! - this.y[b]!;
		return Math.sqrt(dx * dx + dy * dy);
	}
	/** Metres along a chain of nodes. */
	metres(chain: readonly number[]): number {
		let sum = 0;
		for (let k = 1; k < chain.length; k++) sum += this.apart(chain[k - 1]!, chain[k]!);
		return sum;
	}
	key(a: number, b: number): number {
		return a < b ? a * this.count + b : b * this.count + a;
	}
	/** Cost of the straight leg between two terminals, by their number; Infinity where something is in the way. */
	direct(i: number, j: number): number {
		const { graph } = this.sought;
		const key = Math.min(i, j) * this.terminals + Math.max(i, j);
		const known = this.directs[key]!;
		if (known === known) return known;
		return (this.directs[key] = i < j ? graph.direct(i, j) : graph.direct(j, i));
	}
	/** The way under paving that a leg is; null where it is dug. */
	portal(a: number, b: number): Portal | null {
		return a < this.corners && b < this.corners ? this.sought.graph.portal(a, b) : null;
	}
	/** What it costs to dig a leg; Infinity where the graph has none. */
	cost(a: number, b: number): number {
		const { corners } = this;
		const { links, exits } = this.sought.graph;
		if (a >= corners && b >= corners) return this.direct(a - corners, b - corners);
		const [from, to] = a >= corners ? [a, b] : [b, a];
		const [list, row] = from >= corners ? [exits, from - corners] : [links, a];
		const other = from >= corners ? to : b;
		for (let l = list.start[row]!; l < list.start[row + 1]!; l++) if (list.to[l] === other) return list.cost[l]!;
		return Infinity;
	}
	/** The nodes that a route between two terminals goes by; null where it is none of the graph's own, as one drawn by hand. */
	chain(from: number, to: number, { path }: LaidRoute): number[] | null {
		const { corners } = this;
		const { terminals } = this.sought;
		const ends = [terminals[from]!.at, terminals[from]!.ground, terminals[to]!.at, terminals[to]!.ground];
		const chain = [corners + from];
		for (const p of path) {
			if (ends.includes(p)) continue;
			const node = this.places.get(p);
			if (node === undefined) return null;
			chain.push(node);
		}
		if (from !== to) chain.push(corners + to);
		for (let k = 1; k < chain.length; k++) if (this.cost(chain[k - 1]!, chain[k]!) === Infinity) return null;
		return chain;
	}
}
