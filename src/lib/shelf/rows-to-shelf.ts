/** Rows under known columns to a shelf, with everything that was wrong. */
import type { ShelfLine } from '../domain/kits/types';
import { lineFromCells, type ReadLine } from './line';
import type { Cells, Context, Said } from './row';
import { lineKindOf } from './values/words';
import { quoted } from './values/types';
import { unitOfHeader } from './values/cable';
import type { Field } from './fields';
import type { Column, LeftOut, Trouble, Wish } from './types';

export interface Body {
	/** Row number of the first of `rows`, as a spreadsheet has it. */
	firstRow: number;
	rows: string[][];
	columns: Column[];
}
interface Found {
	row: number;
	raw: string[];
	read: ReadLine;
}
/** Notes of one kind in one column beyond these are counted, not listed. */
const listed = 3;

function contextOf(columns: readonly Column[], wish: Wish): Context {
	const units = new Map(
		columns.flatMap(({ field, header }) => (field ? [[field, unitOfHeader(header)] as const] : []))
	);
	const none = { length: null, size: null };
	return { products: new Map(), units: wish.units ?? null, unitOf: (field) => units.get(field) ?? none };
}
/** `4` under Aisle is Aisle 4; under Place it is what the shop calls it. */
const inPlace = (header: string, text: string): string =>
	/^(?:aisle|bay|bin)$/i.test(header) && /^\w{1,4}$/.test(text.trim()) ? `${header} ${text.trim()}` : text;
function cellsOf(raw: readonly string[], columns: readonly Column[]): Cells {
	const cells = new Map<Field, string>();
	for (const [at, { field, header }] of columns.entries()) {
		const text = raw[at];
		if (field && text) cells.set(field, field === 'place' ? inPlace(header, text) : text);
	}
	return cells;
}
/** A column that has no heading, or that got its name from us when it was left out. */
const hasNoHeading = ({ header, field }: Column) => field === null && /^Column [A-Z]{1,3}$/.test(header);
/** Whether a row runs over its headings; in a list where most rows do, a heading is missing instead. */
function runsOver(rows: readonly string[][], columns: readonly Column[]): (raw: readonly string[]) => boolean {
	const width = columns.length - [...columns].reverse().findIndex((column) => !hasNoHeading(column));
	const over = (raw: readonly string[]) =>
		width <= columns.length && raw.slice(width).some((cell) => cell.trim() !== '');
	return rows.length >= 3 && rows.filter(over).length * 2 > rows.length ? () => false : over;
}
const overWords =
	'This row has more cells than there are headings, so what stands where is not sure. See whether a text or a price with a comma lacks its quotation marks.';

const isKitRow = (raw: readonly string[], at: number) => at < 0 || lineKindOf(raw[at] ?? '') !== 'fixture';
/** Every row that is not blank; loose lights are read first, since kits name them. */
function readAll({ firstRow, rows, columns }: Body, wish: Wish): Found[] {
	const context = contextOf(columns, wish);
	const typeAt = columns.findIndex(({ field }) => field === 'type');
	const over = runsOver(rows, columns);
	const numbered = rows
		.map((raw, i) => ({ row: firstRow + i, raw, isKit: isKitRow(raw, typeAt) }))
		.filter(({ raw }) => raw.some((cell) => cell.trim() !== ''));
	return [...numbered.filter(({ isKit }) => !isKit), ...numbered.filter(({ isKit }) => isKit)]
		.map(({ row, raw }) => {
			const stop: Said = { rank: 'stop', field: null, message: overWords, about: null };
			const read = over(raw)
				? { line: null, said: [stop], currency: null }
				: lineFromCells(cellsOf(raw, columns), context);
			return { row, raw, read };
		})
		.toSorted((a, b) => a.row - b.row);
}

const sameMoney: Record<string, string> = { USD: '$', US$: '$', EUR: '€', GBP: '£' };
const money = (currency: string) => (Object.hasOwn(sameMoney, currency) ? sameMoney[currency] : currency);
/** What each line breaks that only the whole list shows: its code is there already, its price is in other money. */
function amongOthers(found: readonly Found[], currency: string): Map<number, Said> {
	const rowOf = new Map<string, number>();
	const broken = new Map<number, Said>();
	for (const { row, read } of found) {
		if (!read.line) continue;
		const { code } = read.line;
		const before = rowOf.get(code);
		if (read.currency && money(read.currency) !== money(currency)) {
			const message = `Its price is in ${read.currency}, the list is in ${currency}. One list has one currency.`;
			broken.set(row, { rank: 'stop', field: 'price', message, about: null });
		} else if (before !== undefined) {
			const message = `The code ${quoted(code)} is in row ${before} already. This row was kept aside: give it a code of its own.`;
			broken.set(row, { rank: 'stop', field: 'code', message, about: null });
		} else rowOf.set(code, row);
	}
	return broken;
}

function troublesOf(found: readonly { row: number; said: Said[] }[], columns: readonly Column[]): Trouble[] {
	const headerOf = new Map(columns.map(({ field, header }) => [field, header]));
	const column = (field: Field | null) => (field === null ? null : (headerOf.get(field) ?? null));
	const counts = new Map<string, number>();
	const troubles: Trouble[] = [];
	for (const { row, said } of found)
		for (const { rank, field, message, about } of said) {
			const key = `${field}/${about}`;
			const count = (counts.get(key) ?? 0) + 1;
			if (about) counts.set(key, count);
			if (!about || count <= listed) troubles.push({ rank, row, column: column(field), field, message });
		}
	const more = [...counts].filter(([, count]) => count > listed);
	for (const [key, count] of more) {
		const field = key.split('/')[0] as Field;
		const rows = count - listed === 1 ? '1 more row is' : `${count - listed} more rows are`;
		const message = `${rows} like this in the column ${quoted(column(field) ?? field)}: ${count} in all.`;
		troubles.push({ rank: 'look', row: null, column: column(field), field, message });
	}
	return troubles;
}
const leftOutOf = (
	row: number,
	raw: readonly string[],
	columns: readonly Column[],
	said: readonly Said[]
): LeftOut => ({
	row,
	cells: columns.flatMap(({ header, field }, at) => {
		const text = raw[at] ?? '';
		return text.trim() === '' ? [] : [{ header: field ?? header, text }];
	}),
	why: said.filter(({ rank }) => rank === 'stop').map(({ message }) => message)
});
/** The first text under a field. */
const firstOf = ({ rows, columns }: Body, field: Field): string => {
	const at = columns.findIndex((column) => column.field === field);
	return at < 0 ? '' : (rows.find((row) => row[at]?.trim())?.[at]?.trim() ?? '');
};

/** The shelf of a file's rows; a row with a trouble of rank `stop` is in `leftOut`, every other row that is not blank on the shelf. */
export function rowsToShelf(body: Body, wish: Wish = {}) {
	const found = readAll(body, wish);
	const currency = found.find(({ read }) => read.currency)?.read.currency ?? wish.currency ?? '';
	const broken = amongOthers(found, currency);
	const lines: ShelfLine[] = [];
	const leftOut: LeftOut[] = [];
	const all = found.map(({ row, raw, read }) => {
		const also = broken.get(row);
		const said = also ? [...read.said, also] : read.said;
		if (read.line && !also) lines.push(read.line);
		else leftOut.push(leftOutOf(row, raw, body.columns, said));
		return { row, said };
	});
	const name = firstOf(body, 'shelf name').slice(0, 100) || wish.name || 'The shelf';
	return { shelf: { name, currency, lines }, troubles: troublesOf(all, body.columns), leftOut };
}
