/** To find the cell of a table in a few steps, whatever the steps of its angles: a light map asks millions of times. */
export interface Lookup {
	/** The angles, ascending, and 1 ÷ the width of each cell between two of them. */
	nodes: Float64Array;
	inverse: Float64Array;
	cells: number;
	/**
	 * Buckets of equal width from the first angle on, `scale` of them per degree, and one at the end: the cell at the lower edge of
	 * each. From there the cell is found by stepping up; it is the same or the next one unless steps differ much.
	 */
	start: Uint16Array;
	scale: number;
	buckets: number;
}

/** At most so many buckets; in finer tables one steps further. */
const mostBuckets = 4096;

/** For two or more ascending angles. */
export function lookupOf(angles: readonly number[]): Lookup {
	const nodes = Float64Array.from(angles);
	const cells = nodes.length - 1;
	const low = nodes[0]!;
	const span = nodes[cells]! - low;
	const inverse = Float64Array.from({ length: cells }, (_, i) => 1 / (nodes[i + 1]! - nodes[i]!));
	const buckets = Math.min(mostBuckets, Math.max(1, Math.ceil(span * Math.max(...inverse))));
	const scale = buckets / span;
	const start = new Uint16Array(buckets + 1);
	let cell = 0;
	for (let b = 0; b <= buckets; b++) {
		// Below the edge by more than the rounding of the product that finds the bucket: stepping goes up only.
		while (cell < cells - 1 && nodes[cell + 1]! < low + b / scale - 1e-9) cell++;
		start[b] = cell;
	}
	return { nodes, inverse, cells, start, scale, buckets };
}
