/** What is typed in a line's form, read by the same words as a row of a file. */
import type { LineKind, Shelf, ShelfFixture, ShelfLine } from '$lib/domain/kits/types';
import { cellsOfLine, lineFromCells, type Context, type Field } from '$lib/shelf';
import type { Cells, FormGroup } from './form-fields';

export interface TypedLine {
	/** Null: it cannot be taken as it stands. */
	line: ShelfLine | null;
	/** Money told by the price; null: none. */
	currency: string | null;
	/** By field, what is wrong. */
	wrong: Map<Field, string>;
	/** By field, how it was taken. */
	taken: Map<Field, string>;
	/** What is wrong with the line as a whole. */
	whole: string[];
}
/** A line's cells as they stand in its form: a share in per cent. */
export function cellsOf(line: ShelfLine): Cells {
	const cells: Cells = Object.fromEntries(cellsOfLine(line));
	const { transformer } = line.contents;
	if (transformer) cells.regulation = `${Number((transformer.regulation * 100).toFixed(4))} %`;
	return cells;
}
export type Products = ReadonlyMap<string, ShelfFixture>;

/** Lights that the rest of the shelf knows, by what names them: loose lines, then kits. A line's own figures do not stand against its change. */
export function productsBeside(shelf: Shelf, was: ShelfLine | null): Products {
	const products = new Map<string, ShelfFixture>();
	const others = shelf.lines.filter(({ code }) => code !== was?.code);
	for (const isLoose of [true, false])
		for (const { kind, contents } of others)
			if ((kind === 'fixture') === isLoose)
				for (const { product, fixture } of contents.fixtures)
					if (!products.has(product)) products.set(product, fixture);
	if (was?.kind === 'fixture') for (const { product } of was.contents.fixtures) products.delete(product);
	return products;
}

/** `$` for USD and for CAD; a sign stays one. */
export const moneySign = (currency: string): string =>
	/^[A-Z]{3}$/.test(currency)
		? (new Intl.NumberFormat('en', { style: 'currency', currency, currencyDisplay: 'narrowSymbol' })
				.formatToParts(0)
				.find(({ type }) => type === 'currency')?.value ?? currency)
		: currency;

function amongOthers(code: string | undefined, currency: string | null, shelf: Shelf, was: ShelfLine | null) {
	const wrong = new Map<Field, string>();
	const same = shelf.lines.find((line) => line.code === code && line.code !== was?.code);
	if (same) wrong.set('code', `“${code}” is on the shelf already: ${same.name}. Each line has a code of its own.`);
	if (currency && shelf.lines.length > 0 && moneySign(currency) !== moneySign(shelf.currency))
		wrong.set('price', `The shelf is in ${shelf.currency}, this price in ${currency}. One shelf has one currency.`);
	return wrong;
}

/** Reads the fields of `groups` only: what was typed for another kind of line is not looked at. */
export function readTyped(
	shelf: Shelf,
	was: ShelfLine | null,
	kind: LineKind,
	cells: Cells,
	groups: readonly FormGroup[],
	products: Products
): TypedLine {
	const shown = groups.flatMap(({ fields }) => fields.map(({ field }) => field));
	const filled = new Map<Field, string>([['type', kind]]);
	for (const field of shown) if (cells[field]?.trim()) filled.set(field, cells[field]);
	const code = filled.get('code')?.trim();
	const context: Context = {
		products: new Map(products),
		units: null,
		unitOf: () => ({ length: null, size: null })
	};
	// A loose line says itself what its light is, whatever kits say of it.
	if (kind === 'fixture') context.products.delete(code ?? '');
	const read = lineFromCells(filled, context);
	// Without a code nothing behind it is read: it is read once more under one, so that all that is wrong is said at once.
	const said = filled.has('code') ? read.said : [...read.said, ...lineFromCells(filled.set('code', '?'), context).said];
	const wrong = new Map<Field, string>();
	const taken = new Map<Field, string>();
	const whole: string[] = [];
	for (const { rank, field, message } of said) {
		const isShown = field !== null && shown.includes(field);
		const by = rank === 'stop' ? wrong : taken;
		if (isShown && !by.has(field)) by.set(field, message);
		else if (!isShown && rank === 'stop') whole.push(message);
	}
	for (const [field, message] of amongOthers(code, read.currency, shelf, was)) wrong.set(field, message);
	const isWrong = wrong.size + whole.length > 0;
	return { line: isWrong ? null : read.line, currency: read.currency, wrong, taken, whole };
}
