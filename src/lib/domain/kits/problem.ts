/** A plan's needs and a shelf as numbers for the search, and what it finds as words again. */
import { fitsOf } from './fits';
import { hopesOf } from './hopeless';
import { judgeOf, type Judge } from './judge';
import type { Offer, Problem, Purchase, SetupIndex } from './search-types';
import { sizeKey, type Stock } from './stock';
import type { Bought, Fit, Needs, Setup, Shelf, ShelfLine } from './types';

export interface Posed {
	problem: Problem;
	judge: Judge;
	/** By need and product: whether it serves. */
	fits: Fit[][];
	/** By offer: its line. Lines that hold nothing of use are offers too, so that the order is the shelf's. */
	setupOf(purchase: Purchase): Setup;
	buysOf(purchase: Purchase): Bought[];
}

const added = <K>(map: Map<K, number>, key: K | undefined, more: number): void => {
	if (key !== undefined && more > 0) map.set(key, (map.get(key) ?? 0) + more);
};
function offerOf(line: ShelfLine, { product, size, supplyOf }: Stock): Offer {
	const fixtures = new Map<number, number>();
	for (const one of line.contents.fixtures) added(fixtures, product.get(one.product), one.count);
	const cable = new Map<number, number>();
	for (const one of line.contents.cable) added(cable, size.get(sizeKey(one.size)), one.count * one.metres);
	return {
		cents: line.cents,
		stock: line.stock ?? Infinity,
		isKit: line.kind === 'kit',
		fixtures,
		transformer: supplyOf.get(line.code) ?? null,
		cable,
		connectors: line.contents.connectors
	};
}

/** By product, the first whose lamp is the same to the circuit. Filament lamps of two products are asked to look alike, so they stand apart. */
function alikeOf({ products }: Stock): number[] {
	const keys = products.map(({ id, fixture: { lamp } }) =>
		[lamp.source, lamp.watts, lamp.voltAmps, lamp.minVolts, lamp.maxVolts, lamp.source === 'led' ? '' : id].join(' ')
	);
	return keys.map((key) => keys.indexOf(key));
}

/** Poses which of the shelf to buy for the needs; `passes` solves the circuit, `hopeless` goes by volt-amperes, and solves where one such has failed. */
export function problemOf(needs: Needs, shelf: Shelf): Posed {
	const judge = judgeOf(needs, shelf);
	const { stock } = judge;
	const products = stock.products.map(({ fixture }) => fixture);
	const fits = needs.fixtures.map((need) => fitsOf(products, need));
	const asked = needs.fixtures.map(({ fixtures }, n) => ({
		count: fixtures.length,
		products: fits[n]!.flatMap(({ ok }, p) => (ok ? [p] : []))
	}));
	const inNames = (index: SetupIndex) => ({
		products: index.products.map((p) => stock.products[p]!.id),
		sizes: index.sizes.map((s) => stock.sizes[s]!)
	});
	const hopes = hopesOf(asked, judge);
	const problem: Problem = {
		needs: asked,
		runs: needs.runs.map(({ metres }) => metres),
		connectors: needs.connectors,
		products: products.length,
		transformers: stock.supplies.length,
		sizes: stock.sizes.length,
		offers: shelf.lines.map((line) => offerOf(line, stock)),
		alike: alikeOf(stock),
		passes: (index) => {
			const { products: named, sizes } = inNames(index);
			const lamps = named.map((id) => judge.lampsOf(id));
			const ok = judge.passes(lamps, sizes, stock.supplies[index.transformer]!.transformer);
			if (!ok) hopes.failed(index);
			return ok;
		},
		hopeless: hopes.hopeless
	};
	const isBoughtWith = ({ counts, setup }: Purchase) =>
		shelf.lines.find(({ code }, k) => counts[k]! > 0 && stock.supplyOf.get(code) === setup.transformer);
	return {
		problem,
		judge,
		fits,
		setupOf: (purchase) => ({
			...inNames(purchase.setup),
			transformer: isBoughtWith(purchase)?.code ?? stock.supplies[purchase.setup.transformer]!.codes[0]!
		}),
		buysOf: ({ counts }) => shelf.lines.flatMap(({ code }, k) => (counts[k]! > 0 ? [{ code, count: counts[k]! }] : []))
	};
}
