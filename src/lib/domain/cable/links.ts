/** Links by their first node, one after the other: those of node i are `start[i]` to `start[i + 1]`. */
export interface Links {
	start: Int32Array;
	to: Int32Array;
	cost: Float64Array;
}

/** Links gathered in any order, put in order by their first node; those of one node stay in the order they came in. */
export class Gathered {
	readonly #from: number[] = [];
	readonly #to: number[] = [];
	readonly #cost: number[] = [];
	add(from: number, to: number, cost: number): void {
		this.#from.push(from);
		this.#to.push(to);
		this.#cost.push(cost);
	}
	/** Another that holds the same, to add to. */
	copy(): Gathered {
		const copy = new Gathered();
		for (let l = 0; l < this.#from.length; l++) copy.add(this.#from[l]!, this.#to[l]!, this.#cost[l]!);
		return copy;
	}
	/** Links of nodes 0 to `count` − 1. */
	links(count: number): Links {
		return inOrder(count, this.#from, this.#to, this.#cost);
	}
	/** The same the other way round: from second node to first, of which there are `count`. */
	reversed(count: number): Links {
		return inOrder(count, this.#to, this.#from, this.#cost);
	}
}
function inOrder(count: number, from: readonly number[], second: readonly number[], costs: readonly number[]): Links {
	const size = from.length;
	const start = new Int32Array(count + 1);
	for (let l = 0; l < size; l++) start[from[l]! + 1]!++;
	for (let i = 0; i < count; i++) start[i + 1]! += start[i]!;
	const next = start.slice();
	const to = new Int32Array(size);
	const cost = new Float64Array(size);
	for (let l = 0; l < size; l++) {
		const place = next[from[l]!]!++;
		to[place] = second[l]!;
		cost[place] = costs[l]!;
	}
	return { start, to, cost };
}
