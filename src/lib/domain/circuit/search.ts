/**
 * The cheapest combination of one candidate per run that passes. Combinations are met in the order of their cost (best
 * first, each once), so the first that passes is the cheapest of all; at home size the search is exhaustive.
 */
import { rules } from '../shared/rules';
import type { Candidate, Offer } from './candidates';

/** Combinations looked at, and verified by solving, before the search gives up and says so. */
const looks = 6000;
const verifications = 150;

interface Vector {
	at: number[];
	/** Runs before this one stay as they are, so that each combination is met once. */
	from: number;
	cost: number;
	rank: number;
}
/** Whole hundredths of a cent, so that the order of adding does not decide between equals. */
const price = (cost: number) => Math.round(cost * 1e4);
const before = (a: Vector, b: Vector): boolean => {
	if (a.cost !== b.cost) return a.cost < b.cost;
	if (a.rank !== b.rank) return a.rank < b.rank;
	for (let k = 0; k < a.at.length; k++) if (a.at[k] !== b.at[k]) return a.at[k]! < b.at[k]!;
	return false;
};

/** Binary heap, least vector first. */
class Queue {
	private readonly heap: Vector[] = [];
	get size(): number {
		return this.heap.length;
	}
	push(vector: Vector): void {
		const heap = this.heap;
		let k = heap.push(vector) - 1;
		while (k > 0) {
			const up = (k - 1) >> 1;
			if (!before(heap[k]!, heap[up]!)) break;
			[heap[k], heap[up]] = [heap[up]!, heap[k]!];
			k = up;
		}
	}
	pop(): Vector {
		const heap = this.heap;
		const top = heap[0]!;
		const last = heap.pop()!;
		if (heap.length === 0) return top;
		heap[0] = last;
		for (let k = 0; ;) {
			const [left, right] = [2 * k + 1, 2 * k + 2];
			let least = k;
			if (left < heap.length && before(heap[left]!, heap[least]!)) least = left;
			if (right < heap.length && before(heap[right]!, heap[least]!)) least = right;
			if (least === k) return top;
			[heap[k], heap[least]] = [heap[least]!, heap[k]!];
			k = least;
		}
	}
}

/** False where a group of lamps on several runs is surely not alike. */
export function mayBeAlike(candidates: Candidate[], broken: Set<string>, slack: number): boolean {
	const limit = rules['cable.volts'].figures.alike + slack;
	const range = new Map<string, { low: number; high: number }>();
	for (const { groups } of candidates)
		for (const [name, { low, high }] of groups) {
			if (broken.has(name)) continue;
			const known = range.get(name);
			const joined = { low: Math.min(low, known?.low ?? low), high: Math.max(high, known?.high ?? high) };
			if (joined.high - joined.low > limit) return false;
			range.set(name, joined);
		}
	return true;
}

/** What `verify` makes of the cheapest combination for which `quick` holds and `verify` gives something; else null. */
export function cheapest<T>(
	offers: Offer[],
	quick: (candidates: Candidate[]) => boolean,
	verify: (candidates: Candidate[]) => T | null,
	patience = verifications
): T | null {
	const queue = new Queue();
	const costOf = (at: number[]) => at.reduce((sum, k, run) => sum + price(offers[run]!.candidates[k]!.cost), 0);
	const first = offers.map(() => 0);
	queue.push({ at: first, from: 0, cost: costOf(first), rank: 0 });
	let verified = 0;
	for (let looked = 0; looked < looks && queue.size > 0 && verified < patience; looked++) {
		const { at, from, rank } = queue.pop();
		const candidates = at.map((k, run) => offers[run]!.candidates[k]!);
		if (quick(candidates)) {
			verified++;
			const found = verify(candidates);
			if (found) return found;
		}
		for (let run = from; run < at.length; run++) {
			if (at[run]! + 1 >= offers[run]!.candidates.length) continue;
			const next = at.with(run, at[run]! + 1);
			queue.push({ at: next, from: run, cost: costOf(next), rank: rank + 1 });
		}
	}
	return null;
}
