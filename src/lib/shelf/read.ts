/** Text to rows of cells: RFC 4180, with any of four marks between cells. Row numbers are a spreadsheet's: blank rows count. */
import Papa from 'papaparse';
import { countKnown } from './columns';
import { unguard } from './safe-cell';

export interface Rows {
	/** Every row, blank ones too: the row at index i is a spreadsheet's row i + 1 (+ `skipped`). */
	rows: string[][];
	/** Rows above the first that are no cells: a line `sep=;`. */
	skipped: number;
	delimiter: string;
	/** Row in which a quotation mark is opened and never closed; null: none. */
	unclosed: number | null;
}
const delimiters = [',', ';', '\t', '|'];
/** Rows in which headings are looked for. */
const top = 20;
/** Letters in which they are looked for: the rest of a large file need not be gone through for it. */
const head = 100_000;

const parse = (text: string, delimiter: string, preview = 0, newline?: '\r' | '\n') =>
	Papa.parse<string[]>(text, { delimiter, preview, newline, delimitersToGuess: delimiters });
/** Lists put together by hand end their lines both ways, so CR LF is read as LF with a CR left behind. */
const endOf = (text: string): '\r' | '\n' =>
	parse(text.slice(0, head), ',', top).meta.linebreak === '\r' ? '\r' : '\n';
function withoutCr(row: string[]): string[] {
	const last = row.at(-1);
	if (last?.endsWith('\r')) row[row.length - 1] = last.slice(0, -1);
	return row;
}

/** The mark by which the most headings are known; where none is, the one that papaparse finds the most even. */
function delimiterOf(whole: string): string {
	const text = whole.slice(0, head);
	let best = { delimiter: '', known: 0 };
	for (const delimiter of delimiters) {
		const known = Math.max(0, ...parse(text, delimiter, top).data.map(countKnown));
		if (known > best.known) best = { delimiter, known };
	}
	// A single column, which has no mark at all, is told by one known heading under every mark alike.
	if (best.known > 1) return best.delimiter;
	return parse(text, '', top).meta.delimiter || ',';
}

/** Rows of a text. Total: any text gives rows. A text that was made harmless for spreadsheets is given back as it was. */
export function readRows(text: string): Rows {
	const bare = text.startsWith('\u{feff}') ? text.slice(1) : text;
	// A spreadsheet's own line saying which mark it used.
	const told = /^sep=([,;|\t])\r?\n/i.exec(bare);
	const body = told ? bare.slice(told[0].length) : bare;
	const delimiter = told?.[1] ?? delimiterOf(body);
	const { data, errors } = parse(body, delimiter, 0, endOf(body));
	const skipped = told ? 1 : 0;
	const last = data.at(-1);
	if (last?.every((cell) => cell.trim() === '')) data.pop();
	const unclosed = errors.find(({ code }) => code === 'MissingQuotes');
	return {
		rows: data.map((row) => withoutCr(row).map(unguard)),
		skipped,
		delimiter,
		unclosed: unclosed ? (unclosed.row ?? 0) + skipped + 1 : null
	};
}
