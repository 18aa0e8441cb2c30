/**
 * What a purchase must cost at the least, whichever setup it is for and whichever kits are still added: a worth for each demand,
 * so chosen that no offer holds more worth than it costs. The worths of all demands together are then below the cost of every
 * purchase (weak duality of linear programming), and what is bought already counts with its price in the place of its worth.
 */
import type { Asked, Demand } from './search-demands';
import { greatestSum } from './search-simplex';

/** By demand in the bound's order: what a holding gives to it, and to it and those before it in its group together. */
export interface Reach {
	own: Float64Array;
	upTo: Float64Array;
}
export interface Bound {
	/** Of all demands, cents. */
	total: number;
	reach: (holds: readonly { resource: number; amount: number }[]) => Reach;
	/** At most so much of the total is covered by two holdings together, cents. */
	worth: (a: Reach, b: Reach) => number;
}
/** Rounds of adding rows; what is violated after them is scaled away, so that the bound holds all the same. */
const rounds = 40;

export function boundOf(asked: Asked): Bound {
	const counted = asked.demands.map((_, d) => d).filter((d) => asked.demands[d]!.amount > 0);
	const offers = [
		...asked.bundles.map(({ cents, holds }) => ({ cents, holds })),
		...asked.covers.flatMap(({ items }, resource) =>
			items.map(({ cents, holds }) => ({ cents, holds: [{ resource, amount: holds }] }))
		)
	];
	// A demand alone is worth no more than it costs of the offer that serves it best.
	const rows: number[][] = counted.map((_, k) => counted.map((_, j) => Number(j === k)));
	const limits = counted.map((d) => alone(asked.demands[d]!, offers));
	let worths = counted.map(() => 0);
	let order = inOrder(asked, counted, worths);
	for (let round = 0; round < rounds; round++) {
		const { reach, shares } = viewOf(asked, counted, order);
		let added = 0;
		for (const { cents, holds } of offers) {
			const own = reach(holds);
			const row = shares(own.own, own.upTo);
			if (round > 0 && dot(row, worths) <= cents + 1e-7) continue;
			rows.push(row);
			limits.push(cents);
			added += 1;
		}
		if (added === 0) break;
		worths = greatestSum(rows, limits, counted.length);
		order = inOrder(asked, counted, worths);
	}
	const { reach, shares } = viewOf(asked, counted, order);
	let scale = 1;
	for (const { cents, holds } of offers) {
		const own = reach(holds);
		const value = dot(shares(own.own, own.upTo), worths);
		if (value > cents + 1e-7) scale = Math.min(scale, cents / value);
	}
	worths = worths.map((worth) => worth * scale);
	return {
		total: worths.reduce((sum, worth) => sum + worth, 0),
		reach,
		worth: worthOf(asked, counted, order, worths)
	};
}
/** As the shares of what both reach times the worths; asked for each kit at each step, so it makes nothing. */
function worthOf({ demands }: Asked, counted: readonly number[], order: readonly number[], worths: readonly number[]) {
	const amounts = order.map((k) => demands[counted[k]!]!.amount);
	const begins = order.map(
		(k, i) => i === 0 || demands[counted[k]!]!.group !== demands[counted[order[i - 1]!]!]!.group
	);
	const units = order.map((k, i) => worths[k]! / amounts[i]!);
	return (a: Reach, b: Reach): number => {
		let worth = 0;
		let given = 0;
		for (let i = 0; i < units.length; i++) {
			if (begins[i]) given = 0;
			const now = Math.min(given + Math.min(amounts[i]!, a.own[i]! + b.own[i]!), a.upTo[i]! + b.upTo[i]!);
			worth += (now - given) * units[i]!;
			given = now;
		}
		return worth;
	};
}
interface Held {
	cents: number;
	holds: { resource: number; amount: number }[];
}
const alone = ({ amount, options }: Demand, offers: readonly Held[]): number =>
	offers.reduce((least, { cents, holds }) => {
		const own = holds.reduce((sum, held) => (options.includes(held.resource) ? sum + held.amount : sum), 0);
		return own > 0 ? Math.min(least, (cents * amount) / Math.min(amount, own)) : least;
	}, Infinity);
const dot = (a: ArrayLike<number>, b: readonly number[]): number => b.reduce((sum, value, k) => sum + value * a[k]!, 0);

/** Places in `counted`, group after group, within a group the dearest unit first. */
function inOrder({ demands }: Asked, counted: readonly number[], worths: readonly number[]): number[] {
	const unit = (k: number) => worths[k]! / demands[counted[k]!]!.amount;
	const groupOf = (k: number) => demands[counted[k]!]!.group;
	return counted.map((_, k) => k).sort((a, b) => groupOf(a) - groupOf(b) || unit(b) - unit(a) || a - b);
}

/**
 * How far a holding serves each demand, as a share of it. Within a group, what goes to the dearest demands first is worth most (the
 * greedy rule for polymatroids, Edmonds 1970). It is bounded from above: a demand gets at most its amount and at most what of the holding would do for
 * it, and the first k get together at most what would do for any of them.
 */
function viewOf({ demands }: Asked, counted: readonly number[], order: readonly number[]) {
	const places = order.map((k) => {
		const { amount, options, group } = demands[counted[k]!]!;
		return { k, amount, group, options: new Set(options) };
	});
	const size = places.length;
	const reach = (holds: readonly { resource: number; amount: number }[]): Reach => {
		const [own, upTo] = [new Float64Array(size), new Float64Array(size)];
		for (const { resource, amount } of holds) {
			const first = places.findIndex(({ options }) => options.has(resource));
			if (first < 0) continue;
			places.forEach(({ options, group }, i) => {
				if (options.has(resource)) own[i]! += amount;
				if (i >= first && group === places[first]!.group) upTo[i]! += amount;
			});
		}
		return { own, upTo };
	};
	const shares = (own: Float64Array, upTo: Float64Array): number[] => {
		const share = Array.from({ length: size }, () => 0);
		let given = 0;
		for (let i = 0; i < size; i++) {
			const { k, amount, group } = places[i]!;
			if (i > 0 && places[i - 1]!.group !== group) given = 0;
			const now = Math.min(given + Math.min(amount, own[i]!), upTo[i]!);
			share[k] = (now - given) / amount;
			given = now;
		}
		return share;
	};
	return { reach, shares };
}
