/** What reading a shop's list gives beside the shelf itself: how its columns were taken, what was wrong, what was left out. */
import type { UnitSystem } from '../domain/shared/units';
import type { Shelf } from '../domain/kits/types';
import type { Field } from './fields';

/** `stop`: the row was left out (or, without a row, the file). `look`: it was taken, but see whether it is right. */
export type Rank = 'stop' | 'look';
export interface Trouble {
	rank: Rank;
	/** Row as a spreadsheet numbers it, the first is 1; null: of the whole file. */
	row: number | null;
	/** Heading of the column as the file has it; null: of the whole row. */
	column: string | null;
	/** What the column was taken for; null where no one field is meant. */
	field: Field | null;
	/** In plain words: what is there, what was made of it or what to do. */
	message: string;
}
/** A column of the file. A person may change `field` and read again with `Wish.fields`. */
export interface Column {
	header: string;
	/** The first text in it, cut at 60 characters; empty where it has none. */
	sample: string;
	/** What it was taken for; null: not used. */
	field: Field | null;
}
/** A row that was left out, with all its text. */
export interface LeftOut {
	row: number;
	/** Cells that are not empty: under our own heading where the column was matched, else under the file's. */
	cells: { header: string; text: string }[];
	/** Why, each a sentence. */
	why: string[];
}
/** What the person says about the file. Whatever is absent is found out. */
export interface Wish {
	/** Of the shelf, where the file does not name it: the file's own name, say. */
	name?: string;
	/** Where no price says it. */
	currency?: string;
	/** What each column holds, left to right. */
	fields?: (Field | null)[];
	/** False: the first row is goods already. */
	hasHeader?: boolean;
	/** In which a bare length is. */
	units?: UnitSystem;
}
export interface ReadShelf {
	shelf: Shelf;
	columns: Column[];
	troubles: Trouble[];
	leftOut: LeftOut[];
	/** How the bytes were taken for letters: `UTF-8`; null for text that came as text. */
	encoding: string | null;
	/** What stands between cells: `,`. */
	delimiter: string;
	/** Row of the headings; null: there are none. */
	headerRow: number | null;
	/** The file was not read at all: the one trouble says why. */
	refused: boolean;
}
