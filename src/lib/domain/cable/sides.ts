/** Edges that a trench may follow, and the parts of a line by the kind of ground they lie in. */
import type { Point } from '../shared/geometry';

/** A line follows a side when it is no more than so far off its direction: the sine of 10°. */
const followsWithin = 0.1736;
/** Rounding of coordinates up to 500 m, metres. */
const rounding = 1e-7;

/** A side beside which a trench is easier dug. */
export interface Side {
	kind: number;
	from: Point;
	to: Point;
	/** Metres to either side within which a line follows it, and beyond its ends. */
	reach: number;
	beyond: number;
}
/** Puts a number into its place among the first `count`, which are in order. */
export function sift(list: number[], count: number, value: number): void {
	let i = count;
	for (; i > 0 && list[i - 1]! > value; i--) list[i] = list[i - 1]!;
	list[i] = value;
}

/** Parts of a line by the kind of ground they lie in, metres from its start; they may overlap. */
export class Parts {
	readonly #kind: number[] = [];
	readonly #from: number[] = [];
	readonly #to: number[] = [];
	readonly #cuts: number[] = [];
	#count = 0;
	clear(): void {
		this.#count = 0;
	}
	add(kind: number, from: number, to: number): void {
		this.#kind[this.#count] = kind;
		this.#from[this.#count] = from;
		this.#to[this.#count++] = to;
	}
	/** Sum of metres × `extra`, which is by kind; where kinds overlap the lowest counts. */
	sum(extra: readonly number[]): number {
		const count = this.#count;
		if (count === 0) return 0;
		const [kind, from, to, cuts] = [this.#kind, this.#from, this.#to, this.#cuts];
		if (count === 1) return (to[0]! - from[0]!) * extra[kind[0]!]!;
		for (let p = 0; p < count; p++) {
			sift(cuts, 2 * p, from[p]!);
			sift(cuts, 2 * p + 1, to[p]!);
		}
		let total = 0;
		for (let c = 1; c < 2 * count; c++) {
			const width = cuts[c]! - cuts[c - 1]!;
			if (width <= 0) continue;
			const middle = (cuts[c]! + cuts[c - 1]!) / 2;
			let first = extra.length;
			for (let p = 0; p < count; p++) if (kind[p]! < first && from[p]! < middle && to[p]! > middle) first = kind[p]!;
			if (first < extra.length) total += width * extra[first]!;
		}
		return total;
	}
}

/** So many sides to a box: few enough that it tells something. */
const boxed = 8;
const inChunks = (ring: readonly Side[]): Side[][] =>
	Array.from({ length: Math.ceil(ring.length / boxed) }, (_, i) => ring.slice(i * boxed, (i + 1) * boxed));

/** Sides in flat arrays, a few to a box: asked for every line of the graph. */
export class Sides {
	readonly #side: Float64Array;
	readonly #kind: Uint8Array;
	/** By chunk of a ring: a box round all that its sides reach, and its first side. */
	readonly #box: Float64Array;
	readonly #start: Int32Array;
	constructor(rings: readonly (readonly Side[])[]) {
		const chunks = rings.flatMap(inChunks);
		const sides = chunks.flat();
		this.#side = new Float64Array(7 * sides.length);
		this.#kind = Uint8Array.from(sides, ({ kind }) => kind);
		sides.forEach(({ from, to, reach, beyond }, s) => {
			const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
			const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
			this.#side.set([from.x, from.y, ux, uy, length, reach + rounding, beyond + rounding], 7 * s);
		});
		this.#box = new Float64Array(4 * chunks.length);
		this.#start = new Int32Array(chunks.length + 1);
		chunks.forEach((ring, r) => {
			const by = Math.max(0, ...ring.map(({ reach, beyond }) => reach + beyond));
			const ends = ring.flatMap(({ from, to }) => [from, to]);
			const [xs, ys] = [ends.map(({ x }) => x), ends.map(({ y }) => y)];
			this.#box.set([Math.min(...xs) - by, Math.min(...ys) - by, Math.max(...xs) + by, Math.max(...ys) + by], 4 * r);
			this.#start[r + 1] = this.#start[r]! + ring.length;
		});
	}
	/** Notes the parts of the line from (ax, ay) to (bx, by) along (ux, uy) that follow sides. */
	note(ax: number, ay: number, bx: number, by: number, ux: number, uy: number, length: number, parts: Parts): void {
		const box = this.#box;
		const side = this.#side;
		for (let r = 0; 4 * r < box.length; r++) {
			const minX = box[4 * r]!;
			const maxX = box[4 * r + 2]!;
			if ((ax < minX && bx < minX) || (ax > maxX && bx > maxX)) continue;
			const minY = box[4 * r + 1]!;
			const maxY = box[4 * r + 3]!;
			if ((ay < minY && by < minY) || (ay > maxY && by > maxY)) continue;
			const end = this.#start[r + 1]!;
			for (let s = this.#start[r]!; s < end; s++) {
				const k = 7 * s;
				const sx = side[k + 2]!;
				const sy = side[k + 3]!;
				const sine = sx * uy - sy * ux;
				if (sine > followsWithin || sine < -followsWithin) continue;
				const px = ax - side[k]!;
				const py = ay - side[k + 1]!;
				const off = sx * py - sy * px;
				const offEnd = off + sine * length;
				const reach = side[k + 5]!;
				if ((off > reach && offEnd > reach) || (off < -reach && offEnd < -reach)) continue;
				const beyond = side[k + 6]!;
				const along = sx * px + sy * py;
				const cosine = sx * ux + sy * uy;
				const first = (-beyond - along) / cosine;
				const second = (side[k + 4]! + beyond - along) / cosine;
				let from = Math.max(0, Math.min(first, second));
				let to = Math.min(length, Math.max(first, second));
				if (sine > 1e-9 || sine < -1e-9) {
					const near = (-reach - off) / sine;
					const far = (reach - off) / sine;
					from = Math.max(from, Math.min(near, far));
					to = Math.min(to, Math.max(near, far));
				}
				if (to > from) parts.add(this.#kind[s]!, from, to);
			}
		}
	}
}
