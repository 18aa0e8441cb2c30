import type { LayingCosts } from './costs';
import type { Node } from './nodes';

/** Cotangent of the angle at which a way joins an edge that costs `ratio` of the ground beside it: cosine = ratio, by the law of refraction. */
const joining = (ratio: number): number => (ratio < 1 ? ratio / Math.sqrt(1 - ratio * ratio) : 0);

/** Where nodes lie, and which lines through them serve. Flat arrays: this is the inner loop of the graph. */
export class Places {
	readonly x: Float64Array;
	readonly y: Float64Array;
	/** Boundary directions, four numbers a node; all zero where there are none. */
	readonly #turn: Float64Array;
	/** 1 where a line is judged by the boundary directions. */
	readonly #isCorner: Uint8Array;
	/** Ways along edges, and their first by node: unit direction, metres, 1 where the edge ends, metres within which it saves. */
	readonly #tucks: Float64Array;
	readonly #start: Int32Array;
	/** Of the ground beside an edge, lawn or bed: the lower and the higher cotangent. */
	readonly #low: number;
	readonly #high: number;
	constructor(nodes: readonly Node[], { lawnEdge, metre, inBed }: LayingCosts) {
		this.#tucks = Float64Array.from(
			nodes.flatMap(({ tucks, saves }) =>
				tucks.flatMap(({ ux, uy, length, ends }) => [ux, uy, length, ends ? 1 : 0, saves])
			)
		);
		this.#start = new Int32Array(nodes.length + 1);
		this.x = Float64Array.from(nodes, ({ at }) => at.x);
		this.y = Float64Array.from(nodes, ({ at }) => at.y);
		this.#turn = new Float64Array(4 * nodes.length);
		this.#isCorner = new Uint8Array(nodes.length);
		for (let i = 0; i < nodes.length; i++) {
			const { before, after, tucks } = nodes[i]!;
			if (before && after) this.#turn.set([before.x, before.y, after.x, after.y], 4 * i);
			this.#start[i + 1] = this.#start[i]! + 5 * tucks.length;
			this.#isCorner[i] = tucks.length === 0 || (before && after) ? 1 : 0;
		}
		const [lawn, bed] = [joining(lawnEdge / metre), joining(lawnEdge / inBed)];
		this.#low = Math.min(lawn, bed);
		this.#high = Math.max(lawn, bed);
	}
	/**
	 * Whether a line that leads from node i by (dx, dy) may be part of a cheapest way: at a corner it must not cut into what
	 * lies on either side, or it must join the edge of a bed next to where the law of refraction would have it. Ends of
	 * crossings serve always.
	 */
	serves(i: number, dx: number, dy: number): boolean {
		if (this.#isCorner[i] === 1) {
			const turn = this.#turn;
			const k = 4 * i;
			if (-(dx * turn[k + 1]! - dy * turn[k]!) * (dx * turn[k + 3]! - dy * turn[k + 2]!) > -1e-9) return true;
		}
		const end = this.#start[i + 1]!;
		for (let t = this.#start[i]!; t < end; t += 5) if (this.#joins(t, dx, dy)) return true;
		return false;
	}
	/** Whether the line between two nodes serves at both. */
	join(i: number, j: number): boolean {
		const dx = this.x[j]! - this.x[i]!;
		const dy = this.y[j]! - this.y[i]!;
		return this.serves(i, dx, dy) && this.serves(j, -dx, -dy);
	}
	/** Whether a line that leads from a node by (dx, dy) joins the edge that way `t` follows. */
	#joins(t: number, dx: number, dy: number): boolean {
		const tucks = this.#tucks;
		const ux = tucks[t]!;
		const uy = tucks[t + 1]!;
		const off = Math.abs(dx * uy - dy * ux);
		if (off > tucks[t + 4]!) return false;
		const along = dx * ux + dy * uy;
		const length = tucks[t + 2]!;
		// Metres along the edge from the node at which a way along it would leave for where the line leads.
		return along + off * this.#low < length && (tucks[t + 3] === 1 || along + off * this.#high > -length);
	}
}
