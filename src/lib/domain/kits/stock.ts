/** What there is on a shelf: products, transformers and sizes of cable, each named once. */
import type { CableSize } from '../circuit';
import type { Needs, Shelf, ShelfFixture, ShelfLine, ShelfTransformer } from './types';

export interface Product {
	id: string;
	fixture: ShelfFixture;
}
/** Transformers that are alike are one, whatever they are sold in. */
export interface Supply {
	transformer: ShelfTransformer;
	/** Codes of the lines that it comes in, in the order of the shelf. */
	codes: string[];
}
export interface Stock {
	products: Product[];
	supplies: Supply[];
	/** Of the system that the plan is in; of any where the shelf has none of that. */
	sizes: CableSize[];
	/** By code of a line: place of its transformer among the supplies. */
	supplyOf: ReadonlyMap<string, number>;
	line: ReadonlyMap<string, ShelfLine>;
	product: ReadonlyMap<string, number>;
	size: ReadonlyMap<string, number>;
}
export const sizeKey = ({ system, size }: CableSize): string => `${system} ${size}`;
export const supplyKey = ({ voltAmps, taps, secondaries, regulation }: ShelfTransformer): string =>
	[voltAmps, taps.join('/'), secondaries, regulation].join(' ');

function productsOf(lines: readonly ShelfLine[]): Product[] {
	const found = new Map<string, Product>();
	for (const { contents } of lines)
		for (const { product, fixture } of contents.fixtures)
			if (!found.has(product)) found.set(product, { id: product, fixture });
	return [...found.values()];
}
function sizesOf(lines: readonly ShelfLine[], system: CableSize['system']): CableSize[] {
	const all = new Map(
		lines.flatMap(({ contents }) => contents.cable.map(({ size }) => [sizeKey(size), size] as const))
	);
	const own = [...all.values()].filter((size) => size.system === system);
	return own.length > 0 ? own : [...all.values()];
}
function suppliesOf(lines: readonly ShelfLine[]): Pick<Stock, 'supplies' | 'supplyOf'> {
	const found = new Map<string, { place: number; supply: Supply }>();
	const supplyOf = new Map<string, number>();
	for (const { code, contents } of lines) {
		const { transformer } = contents;
		if (!transformer) continue;
		const key = supplyKey(transformer);
		const one = found.get(key) ?? { place: found.size, supply: { transformer, codes: [] } };
		one.supply.codes.push(code);
		found.set(key, one);
		supplyOf.set(code, one.place);
	}
	return { supplies: [...found.values()].map(({ supply }) => supply), supplyOf };
}
const placesOf = (keys: readonly string[]): Map<string, number> => new Map(keys.map((key, k) => [key, k]));

/** Only what needs and shelf are made of; where two lines give one product different figures, the first holds. */
export function stockOf({ lines }: Shelf, { system }: Pick<Needs, 'system'>): Stock {
	const products = productsOf(lines);
	const sizes = sizesOf(lines, system);
	return {
		products,
		sizes,
		...suppliesOf(lines),
		line: new Map(lines.map((line) => [line.code, line])),
		product: placesOf(products.map(({ id }) => id)),
		size: placesOf(sizes.map(sizeKey))
	};
}
