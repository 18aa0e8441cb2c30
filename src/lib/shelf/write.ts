/** A shelf as the file that `readShelf` reads back equal: RFC 4180, UTF-8 with its mark, nothing in it that a spreadsheet would run. */
import Papa from 'papaparse';
import type { Shelf, ShelfFixture, ShelfLine } from '../domain/kits/types';
import {
	cableField,
	fields,
	isField,
	lightField,
	type CableSet,
	type Field,
	type LightField,
	type LightSet
} from './fields';
import { guard } from './safe-cell';
import type { LeftOut } from './types';
import { lengthText } from './values/cable';
import { sizeName } from '../domain/circuit';

const byteOrderMark = '\u{feff}';
const volts = (list: readonly number[]) => list.map((one) => `${one} V`).join(', ');
const text = (value: number | null) => (value === null ? '' : String(value));

function* lightCells({ kind, lamp }: ShelfFixture): Generator<[LightField, string]> {
	yield ['light', kind];
	yield ['source', lamp.source === 'led' ? 'LED' : 'halogen'];
	yield ['watts', text(lamp.watts)];
	yield ['va', text(lamp.voltAmps)];
	yield ['lumens', text(lamp.lumens)];
	yield ['beam', text(lamp.beam)];
	// Not `9-15`: a spreadsheet makes a date of it.
	yield ['volts', `${lamp.minVolts} V to ${lamp.maxVolts} V`];
	yield ['colour', text(lamp.colour)];
}
function lightsOf({ code, kind, contents }: ShelfLine, put: (field: Field, text: string) => void): void {
	for (const [i, { product, fixture, count }] of contents.fixtures.entries()) {
		const set = (i + 1) as LightSet;
		for (const [base, cell] of lightCells(fixture)) put(lightField(base, set), cell);
		put(lightField('count', set), text(count));
		if (product !== (kind === 'kit' ? `${code} light ${set}` : code)) put(lightField('same as', set), product);
	}
}
/** The cells of a line by field, as they are typed and written; empty ones are absent. `lineFromCells` makes the line of them again. */
export function cellsOfLine(line: ShelfLine, currency = ''): Map<Field, string> {
	const cells = new Map<Field, string>();
	const put = (field: Field, cell: string) => void (cell !== '' && cells.set(field, cell));
	const { transformer, cable, connectors } = line.contents;
	put('type', line.kind);
	put('code', line.code);
	put('name', line.name);
	put('price', (line.cents / 100).toFixed(2));
	put('currency', currency);
	put('stock', text(line.stock));
	put('place', line.place ?? '');
	lightsOf(line, put);
	if (transformer) {
		put('transformer va', text(transformer.voltAmps));
		put('taps', volts(transformer.taps));
		put('secondaries', text(transformer.secondaries));
		put('regulation', text(transformer.regulation));
	}
	for (const [i, { size, metres, count }] of cable.entries()) {
		const set = (i + 1) as CableSet;
		put(cableField('cable', set), sizeName(size));
		put(cableField('cable length', set), lengthText(metres));
		put(cableField('cable pieces', set), text(count));
	}
	if (connectors > 0) put('connectors', text(connectors));
	return cells;
}

/** Headings that are none of ours, each as often as one row has it. */
function othersIn(leftOut: readonly LeftOut[]): string[] {
	const most = new Map<string, number>();
	for (const { cells } of leftOut) {
		const here = new Map<string, number>();
		for (const { header } of cells) if (!isField(header)) here.set(header, (here.get(header) ?? 0) + 1);
		for (const [header, count] of here) most.set(header, Math.max(count, most.get(header) ?? 0));
	}
	return [...most].flatMap(([header, count]) => Array.from({ length: count }, () => header));
}
function leftOutRow({ cells }: LeftOut, columns: readonly string[]): string[] {
	const rest = [...cells];
	return columns.map((column) => {
		const at = rest.findIndex(({ header }) => header === column);
		return at < 0 ? '' : rest.splice(at, 1)[0]!.text;
	});
}
/** What every file of ours has, so that an empty one can be filled in. */
const always: readonly Field[] = ['type', 'code', 'name', 'price', 'stock', 'place'];

/**
 * The text of the file: the shelf's lines, then the rows that were left out with all their text. Read back it gives the same lines, name and
 * currency (where there is a line), and the same rows left out.
 */
export function shelfCsv(shelf: Shelf, leftOut: readonly LeftOut[] = []): string {
	const lines = shelf.lines.map((line) => cellsOfLine(line, shelf.currency).set('shelf name', shelf.name));
	const used = new Set<string>(always);
	for (const cells of lines) for (const field of cells.keys()) used.add(field);
	for (const { cells } of leftOut) for (const { header } of cells) used.add(header);
	const ours = fields.filter((field) => used.has(field));
	const columns = [...ours, ...othersIn(leftOut)];
	const rows = [
		columns,
		...lines.map((cells) => columns.map((column) => (isField(column) ? (cells.get(column) ?? '') : ''))),
		...leftOut.map((row) => leftOutRow(row, columns))
	];
	return `${byteOrderMark}${Papa.unparse(
		rows.map((row) => row.map(guard)),
		{ newline: '\r\n' }
	)}\r\n`;
}
