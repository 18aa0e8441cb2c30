/** For tests: every setup and every count of every offer tried, the order of `search` applied word by word. No bounds, no knapsacks. */
import type { Offer, Problem, Purchase, SearchWish, SetupIndex } from './search-types';

const product = (lists: number[][]): number[][] =>
	lists.reduce<number[][]>((all, list) => all.flatMap((head) => list.map((one) => [...head, one])), [[]]);
const upTo = (count: number): number[] => Array.from({ length: count }, (_, k) => k);

/** Each thing wanted, and how much of it an offer holds. */
type Wants = { amount: number; held: (offer: Offer) => number }[];
function wantsOf({ needs, runs, connectors }: Problem, { products, sizes, transformer }: SetupIndex): Wants {
	const whole = (metres: number) => Math.round(metres * 1000);
	const sum = (list: number[]) => list.reduce((a, b) => a + b, 0);
	return [
		{ amount: 1, held: (offer) => (offer.transformer === transformer ? 1 : 0) },
		{ amount: connectors, held: (offer) => offer.connectors },
		...[...new Set(products)].map((one) => ({
			amount: sum(needs.map(({ count }, n) => (products[n] === one ? count : 0))),
			held: (offer: Offer) => offer.fixtures.get(one) ?? 0
		})),
		...[...new Set(sizes)].map((one) => ({
			amount: sum(runs.map((metres, r) => (sizes[r] === one ? whole(metres) : 0))),
			held: (offer: Offer) => whole(offer.cable.get(one) ?? 0)
		}))
	];
}
interface Tried extends Purchase {
	lines: number;
	pieces: number;
}
/** Below 0: `a` is first. */
function compare(a: Tried, b: Tried): number {
	const by = [a.cents - b.cents, a.lines - b.lines, a.pieces - b.pieces, ...a.counts.map((n, i) => b.counts[i]! - n)];
	const numbers = ({ setup }: Tried) => [setup.transformer, ...setup.sizes, ...setup.products];
	const other = numbers(b);
	return [...by, ...numbers(a).map((n, i) => n - other[i]!)].find((difference) => difference !== 0) ?? 0;
}
const covers = (wants: Wants, offers: Offer[], counts: number[]): boolean =>
	wants.every(({ amount, held }) => offers.reduce((sum, offer, i) => sum + counts[i]! * held(offer), 0) >= amount);

/** How many of each offer there is any sense in for a setup: what alone covers all of the setup's wants that it holds. */
function useful({ offers }: Problem, wants: Wants, least: number[]): number[] {
	return offers.map((offer, i) => {
		const need = wants.map(({ amount, held }) => (held(offer) > 0 ? Math.ceil(amount / held(offer)) : 0));
		return Math.max(least[i]!, Math.min(offer.stock, Math.max(...need)));
	});
}
/** Purchases for a setup: kits up to `mostKits`, for the first with some kits may be one in which a kit is idle; loose items as far as they are of use. */
function* purchases(problem: Problem, setup: SetupIndex, least: number[], mostKits: number[]): Generator<Tried> {
	const { offers } = problem;
	const wants = wantsOf(problem, setup);
	const most = useful(problem, wants, least).map((n, i) => (offers[i]!.isKit ? mostKits[i]! : n));
	for (const counts of product(offers.map((_, i) => upTo(most[i]! + 1).filter((n) => n >= least[i]!)))) {
		if (!covers(wants, offers, counts)) continue;
		const cents = counts.reduce((sum, n, i) => sum + n * offers[i]!.cents, 0);
		const pieces = counts.reduce((sum, n) => sum + n, 0);
		yield { setup, counts, cents, lines: counts.filter((n) => n > 0).length, pieces };
	}
}

/** As `search`. */
export function brute(problem: Problem, { most, atLeast }: SearchWish): Purchase[] {
	const { offers, needs, runs } = problem;
	const least = offers.map((_, i) => atLeast?.get(i) ?? 0);
	if (least.some((n, i) => n > offers[i]!.stock)) return [];
	const best = new Map<string, Tried>();
	const setups = upTo(problem.transformers).flatMap((transformer) =>
		product(runs.map(() => upTo(problem.sizes))).flatMap((sizes) =>
			product(needs.map((need) => need.products)).map((products) => ({ transformer, sizes, products }))
		)
	);
	const passing = setups.filter((setup) => problem.passes(setup));
	const each = passing.map((setup) => useful(problem, wantsOf(problem, setup), least));
	const mostKits = offers.map((_, i) => Math.max(0, ...each.map((most) => most[i]!)));
	for (const setup of passing)
		for (const tried of purchases(problem, setup, least, mostKits)) {
			const kits = tried.counts.filter((_, i) => offers[i]!.isKit).join();
			const kept = best.get(kits);
			if (!kept || compare(tried, kept) < 0) best.set(kits, tried);
		}
	const isIdle = ({ setup, counts }: Tried): boolean =>
		counts.some(
			(n, i) =>
				offers[i]!.isKit &&
				n > least[i]! &&
				covers(
					wantsOf(problem, setup),
					offers,
					counts.map((m, j) => (j === i ? m - 1 : m))
				)
		);
	return [...best.values()]
		.filter((tried) => !isIdle(tried))
		.sort(compare)
		.slice(0, most)
		.map(({ setup, counts, cents }) => ({ setup, counts, cents }));
}
