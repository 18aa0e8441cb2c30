/** A file or a text to a shelf: letters, rows, headings, values. */
import { columnsOf, headerIndex } from './columns';
import { decode } from './decode';
import { readRows, type Rows } from './read';
import { rowsToShelf } from './rows-to-shelf';
import type { ReadShelf, Trouble, Wish } from './types';
import { quoted } from './values/types';

/** Rows of one list. */
export const mostRows = 20_000;
const mostColumns = 400;

const ofFile = (rank: Trouble['rank'], message: string, row: number | null = null): Trouble => ({
	rank,
	row,
	column: null,
	field: null,
	message
});
const refusal = (why: string, wish: Wish, encoding: string | null): ReadShelf => ({
	shelf: { name: wish.name ?? 'The shelf', currency: wish.currency ?? '', lines: [] },
	columns: [],
	troubles: [ofFile('stop', why)],
	leftOut: [],
	encoding,
	delimiter: ',',
	headerRow: null,
	refused: true
});
function whyNot({ rows }: Rows): string | null {
	if (!rows.some((row) => row.some((cell) => cell.trim() !== '')))
		return 'This file is empty. Save the list as CSV once more and open that.';
	if (rows.length > mostRows)
		return `This list has ${rows.length} rows; up to ${mostRows} can be kept. Save only the goods for garden lighting.`;
	if (rows.some((row) => row.length > mostColumns))
		return `This file has more than ${mostColumns} columns: it is no list of goods as it stands. Save only the columns that matter.`;
	return null;
}
function ofHeadings(header: number | null, columns: ReadShelf['columns'], rows: Rows): Trouble[] {
	const unused = columns
		.filter(({ field, sample }) => field === null && sample !== '')
		.map(({ header }) => quoted(header));
	const troubles: Trouble[] = [];
	if (columns.every(({ field }) => field === null))
		troubles.push(
			ofFile('stop', 'No row of headings was found. Say what each column holds, or write headings into the first row.')
		);
	else if (unused.length > 0)
		troubles.push(
			ofFile('look', `Not used: ${unused.slice(0, 12).join(', ')}${unused.length > 12 ? ' and more' : ''}.`)
		);
	if (header !== null && header > 0)
		troubles.push(ofFile('look', `What stands above the headings in row ${header + rows.skipped + 1} was not read.`));
	if (rows.unclosed !== null)
		troubles.push(
			ofFile(
				'look',
				'A quotation mark is opened here and never closed: all that follows was read as one cell. Close it and open the file again.',
				rows.unclosed
			)
		);
	return troubles;
}

/**
 * Reads a shop's list. Bytes in UTF-8, UTF-16 or Windows-1252, or text; any of `,` `;` tab `|` between cells; headings in the first 20
 * rows, or none. Never throws: what is no list is `refused`, with one trouble that says what to do. Nothing in it is ever run.
 */
export function readShelf(input: Uint8Array | string, wish: Wish = {}): ReadShelf {
	const decoded = typeof input === 'string' ? { ok: true as const, text: input, encoding: null } : decode(input);
	if (!decoded.ok) return refusal(decoded.why, wish, null);
	const read = readRows(decoded.text);
	const why = whyNot(read);
	if (why) return refusal(why, wish, decoded.encoding);
	const header = wish.hasHeader === false ? null : (headerIndex(read.rows) ?? (wish.hasHeader ? 0 : null));
	const first = header === null ? 0 : header + 1;
	const rows = read.rows.slice(first);
	const columns = columnsOf(header === null ? null : read.rows[header]!, rows, wish.fields);
	const about = ofHeadings(header, columns, read);
	const isUnknown = columns.every(({ field }) => field === null);
	const result = isUnknown
		? { shelf: { name: wish.name ?? 'The shelf', currency: wish.currency ?? '', lines: [] }, troubles: [], leftOut: [] }
		: rowsToShelf({ firstRow: first + read.skipped + 1, rows, columns }, wish);
	return {
		...result,
		columns,
		troubles: [...about, ...result.troubles],
		encoding: decoded.encoding,
		delimiter: read.delimiter,
		headerRow: header === null ? null : header + read.skipped + 1,
		refused: false
	};
}
