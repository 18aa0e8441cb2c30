/** What of a line or of a purchase the needs use, what is left over and what is missing; counted, then put into words. */
import { sizeName, type CableSize } from '../circuit';
import { sizeKey, type Stock } from './stock';
import type { Contents, Fit, FixtureKind, Needs, Setup } from './types';
import { cableLength, counted, kindsCounted } from './words';

/** Metres too few to be worth a word. */
const trifle = 1;

/** Everything in so many of a line, or in several lines. */
export interface Goods {
	/** By place of the product. */
	fixtures: Map<number, number>;
	/** By size, metres. */
	cable: Map<string, { size: CableSize; metres: number }>;
	/** Volt-amperes of each transformer. */
	transformers: number[];
	connectors: number;
}
export function goodsOf(parts: readonly { contents: Contents; count: number }[], stock: Stock): Goods {
	const goods: Goods = { fixtures: new Map(), cable: new Map(), transformers: [], connectors: 0 };
	for (const { contents, count } of parts) {
		for (const one of contents.fixtures) {
			const product = stock.product.get(one.product)!;
			goods.fixtures.set(product, (goods.fixtures.get(product) ?? 0) + one.count * count);
		}
		for (const { size, metres, count: pieces } of contents.cable) {
			const before = goods.cable.get(sizeKey(size))?.metres ?? 0;
			goods.cable.set(sizeKey(size), { size, metres: before + metres * pieces * count });
		}
		const { transformer } = contents;
		if (transformer) goods.transformers.push(...Array.from({ length: count }, () => transformer.voltAmps));
		goods.connectors += contents.connectors * count;
	}
	return goods;
}

/** By need: the product that serves it out of these, and how many of it there are for it; null: none serves. */
export type Allotted = ({ product: number; count: number } | null)[];
/** In the order of the needs, each takes the product of which it gets most; the first of equals. */
export function allot(needs: Needs, fits: readonly Fit[][], fixtures: ReadonlyMap<number, number>): Allotted {
	const left = new Map(fixtures);
	return needs.fixtures.map((need, n) => {
		let best: { product: number; count: number } | null = null;
		for (const [product, there] of left) {
			const count = Math.min(there, need.fixtures.length);
			if (fits[n]![product]!.ok && (!best || count > best.count)) best = { product, count };
		}
		if (best) left.set(best.product, left.get(best.product)! - best.count);
		return best;
	});
}

const byKind = (entries: readonly { kind: FixtureKind; count: number }[]): [FixtureKind, number][] => {
	const sums = new Map<FixtureKind, number>();
	for (const { kind, count } of entries) if (count > 0) sums.set(kind, (sums.get(kind) ?? 0) + count);
	return [...sums];
};
const laid = (needs: Needs): number => needs.runs.reduce((sum, { metres }) => sum + metres, 0);
const cableIn = ({ cable }: Goods): number => [...cable.values()].reduce((sum, { metres }) => sum + metres, 0);

/** What these goods by themselves lack for the plan: `4 path lights`, `a transformer`, `9 m of cable`. */
export function lacksOf(needs: Needs, goods: Goods, allotted: Allotted): string[] {
	const lights = needs.fixtures.map(({ kind, fixtures }, n) => ({
		kind,
		count: fixtures.length - (allotted[n]?.count ?? 0)
	}));
	const metres = laid(needs) - cableIn(goods);
	const connectors = needs.connectors - goods.connectors;
	return [
		...byKind(lights).map(([kind, count]) => kindsCounted(count, kind)),
		...(needs.runs.length > 0 && goods.transformers.length === 0 ? ['a transformer'] : []),
		...(metres > 1e-9 ? [`${cableLength(metres, needs.units, true)} of cable`] : []),
		...(connectors > 0 ? [counted(connectors, 'connector')] : [])
	];
}

const lightsLeft = (goods: Goods, used: ReadonlyMap<number, number>, { products }: Stock): string[] =>
	byKind(
		[...goods.fixtures].map(([product, count]) => ({
			kind: products[product]!.fixture.kind,
			count: count - (used.get(product) ?? 0)
		}))
	).map(([kind, count]) => kindsCounted(count, kind));
const cableLeft = (goods: Goods, used: (size: CableSize) => number, { units }: Pick<Needs, 'units'>): string[] =>
	[...goods.cable.values()].flatMap(({ size, metres }) => {
		const left = metres - used(size);
		return left >= trifle ? [`${cableLength(left, units, false)} of ${sizeName(size)} cable`] : [];
	});
const connectorsLeft = (goods: Goods, needs: Needs): string[] =>
	goods.connectors > needs.connectors ? [counted(goods.connectors - needs.connectors, 'connector')] : [];

function sums(entries: readonly (readonly [product: number, count: number])[]): Map<number, number> {
	const used = new Map<number, number>();
	for (const [product, count] of entries) used.set(product, (used.get(product) ?? 0) + count);
	return used;
}

/** What these goods by themselves have beyond the plan. */
export function spareAlone(needs: Needs, goods: Goods, allotted: Allotted, stock: Stock): string[] {
	const used = sums(allotted.flatMap((one) => (one ? [[one.product, one.count] as const] : [])));
	// Of several sizes the first is taken first: which is laid is not settled yet.
	let rest = laid(needs);
	const take = (size: CableSize): number => {
		const taken = Math.min(rest, goods.cable.get(sizeKey(size))!.metres);
		rest -= taken;
		return taken;
	};
	return [...lightsLeft(goods, used, stock), ...cableLeft(goods, take, needs), ...connectorsLeft(goods, needs)];
}

/** What is bought and not used by a setup: `2 path lights`, `6 m of 12 AWG cable`. */
export function spareOf(needs: Needs, goods: Goods, setup: Setup, stock: Stock): string[] {
	const used = sums(
		setup.products.map((id, n) => [stock.product.get(id)!, needs.fixtures[n]!.fixtures.length] as const)
	);
	const inSize = (size: CableSize): number =>
		needs.runs.reduce((sum, { metres }, r) => sum + (sizeKey(setup.sizes[r]!) === sizeKey(size) ? metres : 0), 0);
	const rating = stock.supplies[stock.supplyOf.get(setup.transformer)!]!.transformer.voltAmps;
	const others = goods.transformers.toSpliced(goods.transformers.indexOf(rating), 1);
	return [
		...lightsLeft(goods, used, stock),
		...others.map((voltAmps) => `a ${voltAmps} VA transformer`),
		...cableLeft(goods, inSize, needs),
		...connectorsLeft(goods, needs)
	];
}
