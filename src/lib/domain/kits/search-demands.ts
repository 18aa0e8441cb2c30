/**
 * A problem seen evenly: what is wanted are demands, each served by one resource of several. Connectors are a demand with one
 * resource, the transformer one of amount 1 with every transformer, a run one of millimetres with every cable size, a need one of lights
 * with every product that would do.
 */
import { Cover, oneLine, type Item } from './search-cover';
import type { Lack, Offer, Problem, SearchWish } from './search-types';

export interface Demand {
	/** Lights, millimetres, one transformer, connectors. */
	amount: number;
	/** Resources that would do and of which there is enough, ascending. */
	options: number[];
	/** Number of the demands that hang together by resources that more than one of them may have. */
	group: number;
	lack: Lack;
}
/** An offer that holds several resources, or a kit: bought one by one, as against the loose items of one resource. */
export interface Bundle {
	offer: number;
	isKit: boolean;
	cents: number;
	/** How many are of use at all, stock heeded, those bought anyway counted. */
	most: number;
	/** By resource that is of use. */
	holds: { resource: number; amount: number }[];
}
export interface Asked {
	problem: Problem;
	demands: Demand[];
	resources: number;
	/** By resource, the first that it is alike: of two that are alike a setup passes with one just where it does with the other. */
	like: number[];
	covers: Cover[];
	bundles: Bundle[];
	/** By offer, how many are bought whatever else. */
	forced: number[];
	/** Demands that nothing on the shelf can serve. */
	lacks: Lack[];
	/** False where a wish asks for more of an offer than there is. */
	isPossible: boolean;
}
/** Place of the transformer among the demands; before it stand the connectors, after it the runs, then the needs. */
export const transformerAt = 1;
/** Metres are counted in whole millimetres, the nearest. */
const millimetres = (metres: number): number => Math.round(metres * 1000);

/** What an offer holds, by resource: products first, then sizes, transformers, connectors. */
function contentsOf({ products, sizes, transformers }: Problem, offer: Offer): Map<number, number> {
	const holds = new Map<number, number>();
	for (const [product, count] of offer.fixtures) holds.set(product, count);
	for (const [size, metres] of offer.cable) holds.set(products + size, millimetres(metres));
	if (offer.transformer !== null) holds.set(products + sizes + offer.transformer, 1);
	holds.set(products + sizes + transformers, offer.connectors);
	return holds;
}
const upTo = (count: number, from = 0): number[] => Array.from({ length: count }, (_, k) => from + k);

function rawDemands(problem: Problem): Demand[] {
	const { needs, runs, connectors, products, sizes, transformers } = problem;
	const demand = (amount: number, options: number[], lack: Lack): Demand => ({ amount, options, group: -1, lack });
	const kept = (transformer: number) =>
		!problem.hopeless?.({ transformer, products: needs.map(() => null), sizes: runs.map(() => null) });
	return [
		demand(connectors, [products + sizes + transformers], { kind: 'connectors', index: 0 }),
		demand(
			1,
			upTo(transformers)
				.filter(kept)
				.map((index) => products + sizes + index),
			{ kind: 'transformer', index: 0 }
		),
		...runs.map((metres, index) => demand(millimetres(metres), upTo(sizes, products), { kind: 'run', index })),
		...needs.map(({ count, products }, index) =>
			demand(
				count,
				[...new Set(products)].sort((a, b) => a - b),
				{ kind: 'need', index }
			)
		)
	];
}
/** Demands that share a resource, or are joined by others that do, get the same number. */
function group(demands: readonly Demand[]): void {
	demands.forEach((demand, index) => {
		const joined = demands.slice(0, index).filter((other) => other.options.some((r) => demand.options.includes(r)));
		const groups = joined.map((other) => other.group);
		demand.group = index;
		for (const other of demands) if (groups.includes(other.group)) other.group = index;
	});
}
/** By resource, the most that can be wanted of it: all demands that may have it. */
function wantedOf(demands: readonly Demand[], resources: number): number[] {
	const wanted = Array.from({ length: resources }, () => 0);
	for (const { amount, options } of demands) for (const r of options) wanted[r]! += amount;
	return wanted;
}

const resourcesOf = ({ products, sizes, transformers }: Problem): number => products + sizes + transformers + 1;

/** What is wanted, whatever is wished; asks `hopeless` once for each transformer. */
export function demandsOf(problem: Problem): Demand[] {
	const demands = rawDemands(problem);
	const supply = Array.from({ length: resourcesOf(problem) }, () => 0);
	for (const offer of problem.offers)
		for (const [r, amount] of contentsOf(problem, offer))
			if (amount > 0 && offer.stock > 0) supply[r]! += amount * offer.stock;
	for (const demand of demands) demand.options = demand.options.filter((r) => supply[r]! >= demand.amount);
	group(demands);
	return demands;
}

/** Sorts a shelf's offers into loose items by resource and bundles; drops what is of no use. */
export function ask(problem: Problem, demands: Demand[], { atLeast }: Pick<SearchWish, 'atLeast'>): Asked {
	const { offers } = problem;
	const resources = resourcesOf(problem);
	const contents = offers.map((offer) => contentsOf(problem, offer));
	const wanted = wantedOf(demands, resources);
	const forced = offers.map((_, i) => Math.max(0, atLeast?.get(i) ?? 0));
	const items: Item[][] = upTo(resources).map(() => []);
	const bundles: Bundle[] = [];
	offers.forEach(({ cents, stock, isKit }, offer) => {
		const already = forced[offer]!;
		const holds = [...contents[offer]!]
			.map(([resource, amount]) => ({ resource, amount }))
			.filter(({ resource, amount }) => amount > 0 && wanted[resource]! > 0);
		// One more than covers all that can be wanted of all it holds has nothing left to cover.
		const useful = Math.max(0, ...holds.map(({ resource, amount }) => Math.ceil(wanted[resource]! / amount)));
		if (isKit || holds.length > 1) {
			const most = Math.max(already, Math.min(stock, useful));
			if (most > 0) bundles.push({ offer, isKit, cents, most, holds });
		} else if (holds[0]) {
			const { resource, amount } = holds[0];
			const line = already > 0 ? 0 : 1;
			items[resource]!.push({ offer, holds: amount, cents, most: Math.min(stock - already, useful), line });
		}
	});
	return {
		problem,
		demands,
		resources,
		like: upTo(resources).map((r) => problem.alike?.[r] ?? r),
		covers: items.map((own, r) => new Cover(own, wanted[r]!)),
		bundles,
		forced,
		lacks: demands.filter(({ options }) => options.length === 0).map(({ lack }) => lack),
		isPossible: forced.every((count, i) => count <= offers[i]!.stock)
	};
}

/** What is bought whatever else, before anything is chosen. */
export function startOf({ problem, forced, resources }: Asked): { cents: number; minor: number; have: Float64Array } {
	const have = new Float64Array(resources);
	let cents = 0;
	let minor = 0;
	forced.forEach((count, i) => {
		if (count === 0) return;
		const offer = problem.offers[i]!;
		cents += count * offer.cents;
		minor += count + oneLine;
		for (const [r, amount] of contentsOf(problem, offer)) have[r]! += count * amount;
	});
	return { cents, minor, have };
}
