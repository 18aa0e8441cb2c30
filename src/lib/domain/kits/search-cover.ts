/** The cheapest loose items of one resource (lights of one product, cable of one size, …) that cover an amount of it: a bounded covering knapsack, solved exactly. */

/**
 * What something costs. Bills compare by `cents`, then `minor`: different lines times `oneLine` plus pieces. Both add up over
 * parts that have no line in common, so the least of a sum is the sum of the least.
 */
export interface Bill {
	cents: number;
	minor: number;
}
export const oneLine = 2 ** 20;
export const cheaper = (a: Bill, b: Bill): boolean => a.cents < b.cents || (a.cents === b.cents && a.minor < b.minor);
export const nothing: Bill = { cents: 0, minor: 0 };
export const impossible: Bill = { cents: Infinity, minor: 0 };

export interface Item {
	/** Index of its offer. */
	offer: number;
	/** Units in one, whole and above 0. */
	holds: number;
	cents: number;
	/** How many may be bought. */
	most: number;
	/** What the first of it adds to the count of different lines: 0 where it is bought anyway. */
	line: 0 | 1;
}
interface Choice extends Bill {
	take: number;
}
const none: Choice = { ...nothing, take: 0 };

/**
 * Whether `a` is never bought beside `b` for any amount up to `amount`. Put a `b` in the place of every `a`, and leave out what is
 * then too much: it covers as much; it costs less, or as much with no more lines or pieces and an earlier line. There must be
 * enough of `b` to cover the whole amount alone.
 */
const dominates = (b: Item, a: Item, amount: number): boolean =>
	b !== a &&
	b.holds >= a.holds &&
	b.most * b.holds >= amount &&
	(b.cents < a.cents || (b.cents === a.cents && b.line <= a.line && b.offer < a.offer));

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

export class Cover {
	readonly items: readonly Item[];
	/** Cents of a unit at the least: covering x costs `rate` × x or more. Infinity where nothing is sold loose. */
	readonly rate: number;
	private readonly unit: number;
	private readonly known: Map<number, Choice>[];

	/** `items` in the order of their offers; `amount`: the most that will ever be asked for. */
	constructor(items: readonly Item[], amount: number) {
		this.items = items.filter((a) => a.most > 0 && !items.some((b) => dominates(b, a, amount)));
		this.rate = Math.min(Infinity, ...this.items.map(({ cents, holds }) => cents / holds));
		// Sums of pieces are multiples of this, so amounts between two multiples cost the same.
		this.unit = this.items.reduce((unit, { holds }) => gcd(unit, holds), 0) || 1;
		this.known = this.items.map(() => new Map<number, Choice>());
	}

	/** What it costs to cover so many units; `impossible` where there are too few. */
	bill(amount: number): Bill {
		return amount <= 0 ? nothing : this.from(0, Math.ceil(amount / this.unit) * this.unit);
	}

	/** Adds what is bought for the amount to `counts`, by offer. */
	addCounts(amount: number, counts: number[]): void {
		let left = amount <= 0 ? 0 : Math.ceil(amount / this.unit) * this.unit;
		for (let at = 0; left > 0 && at < this.items.length; at++) {
			const { offer, holds } = this.items[at]!;
			const { take } = this.from(at, left);
			counts[offer]! += take;
			left -= take * holds;
		}
	}

	/** The least over the items from `at` on. Of bills that are the same the one with more of the earliest item is kept. */
	private from(at: number, left: number): Choice {
		if (left <= 0) return none;
		const item = this.items[at];
		if (!item) return { ...impossible, take: 0 };
		const kept = this.known[at]!.get(left);
		if (kept) return kept;
		let best: Choice = { ...impossible, take: 0 };
		for (let take = Math.min(item.most, Math.ceil(left / item.holds)); take >= 0; take--) {
			const rest = this.from(at + 1, left - take * item.holds);
			const cents = rest.cents + take * item.cents;
			const minor = rest.minor + take + (take > 0 ? item.line * oneLine : 0);
			if (cents < best.cents || (cents === best.cents && minor < best.minor)) best = { cents, minor, take };
		}
		this.known[at]!.set(left, best);
		return best;
	}
}
