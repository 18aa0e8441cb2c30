/** One row's cells by field, and what is said of them while it is read. */
import type { CableSize } from '../domain/circuit';
import type { ShelfFixture } from '../domain/kits/types';
import type { UnitSystem } from '../domain/shared/units';
import type { Field } from './fields';
import type { Rank } from './types';
import { readFigure, type NumberKind } from './values/number';
import type { Note, ReadValue } from './values/types';

export type Cells = ReadonlyMap<Field, string>;
export interface Said {
	rank: Rank;
	/** Null: of the whole row. */
	field: Field | null;
	message: string;
	/** Kind of a note on how a value was taken; null: worth saying each time. */
	about: Note['about'] | null;
}
/** What the rest of the list says. */
export interface Context {
	/** Lights known by now, by what names them. */
	products: Map<string, ShelfFixture>;
	/** In which a bare length is; null: not told. */
	units: UnitSystem | null;
	/** Unit in the heading of a column. */
	unitOf: (field: Field) => { length: UnitSystem | null; size: CableSize['system'] | null };
}
export const emptyContext = (): Context => ({
	products: new Map(),
	units: null,
	unitOf: () => ({ length: null, size: null })
});

export class Row {
	readonly said: Said[] = [];

	constructor(
		private readonly cells: Cells,
		readonly context: Context
	) {}

	get isStopped(): boolean {
		return this.said.some(({ rank }) => rank === 'stop');
	}
	/** Trimmed; empty where there is none. */
	text(field: Field): string {
		return this.cells.get(field)?.trim() ?? '';
	}
	has(...fields: Field[]): boolean {
		return fields.some((field) => this.text(field) !== '');
	}
	stop(field: Field | null, message: string): null {
		this.said.push({ rank: 'stop', field, message, about: null });
		return null;
	}
	look(field: Field | null, message: string, about: Said['about'] = null): void {
		this.said.push({ rank: 'look', field, message, about });
	}
	/** The value, with what was said of it; null where it could not be read: the row stops, or with `rank` look goes on without. */
	take<T>(field: Field, read: ReadValue<T>, rank: Rank = 'stop'): T | null {
		if (read.ok) {
			if (read.note) this.look(field, read.note.words, read.note.about);
			return read.value;
		}
		if (rank === 'stop') return this.stop(field, read.why);
		this.look(field, `${read.why} It was left out.`);
		return null;
	}
	/** A number, null where the cell is empty or could not be read. */
	figure(field: Field, kind: NumberKind, rank: Rank = 'stop'): number | null {
		const text = this.text(field);
		return text === '' ? null : this.take(field, readFigure(text, kind), rank);
	}
}
