/** Tables as CSV files: RFC 4180, so that lines end in CRLF; UTF-8 with its mark, without which spreadsheets guess the letters. */
import Papa from 'papaparse';
import type { Table } from './tables';

const byteOrderMark = '\u{feff}';

/**
 * The file's text. Text that a spreadsheet would take for a formula, since it begins with = + - @ or a tab, gets a ' before it: names are
 * typed by people. Numbers are left as they are.
 */
export const csvOf = (table: Table): string =>
	`${byteOrderMark}${Papa.unparse(table, { newline: '\r\n', escapeFormulae: true })}\r\n`;
