/** A file that was opened: read, shown, read again after each word of the person. Nothing of it is on the shelf before they say so. */
import type { LineKind, Shelf } from '$lib/domain/kits/types';
import { tooLarge, type Field, type ReadShelf, type Trouble, type Wish } from '$lib/shelf';
import { emptyShelf, merged } from './changes';
import { lineKinds } from './contents-words';
import { readList } from './reading';
import { moneySign } from './typed-line';

/** What becomes of the lines that are there. */
export type Place = 'instead' | 'beside';

export class OpenedList {
	read = $state.raw<ReadShelf | null>(null);
	isReading = $state(true);
	/** Why the file was not read; null: it was, or is being read. */
	refused = $state<string | null>(null);
	wish = $state.raw<Wish>({});
	place = $state<Place>('instead');
	private bytes: Uint8Array | null = null;
	/** Orders given: only the last one's answer counts. */
	private orders = 0;

	constructor(
		private readonly file: Pick<File, 'name' | 'size' | 'arrayBuffer'>,
		private readonly shelf: Shelf
	) {
		const name = shelf.name || file.name.replace(/\.[^.]*$/, '');
		this.wish = { name, currency: shelf.currency || emptyShelf.currency };
	}
	get name(): string {
		return this.file.name;
	}
	async start(): Promise<void> {
		const why = tooLarge(this.file.size);
		if (why) return this.refuse(why);
		try {
			this.bytes = new Uint8Array(await this.file.arrayBuffer());
		} catch {
			return this.refuse('This file could not be read from this device. Copy it somewhere else and open it again.');
		}
		await this.again({});
	}
	/** Reads it once more with what the person said. */
	async again(wish: Wish): Promise<void> {
		if (!this.bytes) return;
		this.wish = { ...this.wish, ...wish };
		this.isReading = true;
		const order = ++this.orders;
		try {
			const read = await readList({ bytes: this.bytes, wish: this.wish });
			if (order !== this.orders) return;
			this.read = read;
			this.isReading = false;
			if (read.refused) this.refuse(read.troubles.map(({ message }) => message).join(' '));
		} catch (error) {
			if (order === this.orders) this.refuse(error instanceof Error ? error.message : String(error));
		}
	}
	/** One column means something else. What it means now is taken from the column that had it. */
	match(at: number, field: Field | null): Promise<void> {
		const fields = (this.read?.columns ?? []).map((column, index) => {
			if (index === at) return field;
			return column.field === field ? null : column.field;
		});
		return this.again({ fields });
	}
	/** Headings or none: what each column was taken for is found out anew. */
	setHeader(hasHeader: boolean): Promise<void> {
		return this.again({ hasHeader, fields: undefined });
	}
	private refuse(why: string): void {
		this.refused = why;
		this.isReading = false;
	}
	/** Whether the lines can stand beside those that are there; one shelf has one currency. */
	get canStandBeside(): boolean {
		const { read, shelf } = this;
		return read !== null && moneySign(read.shelf.currency) === moneySign(shelf.currency);
	}
	/** The shelf as it would be. */
	get result(): Shelf | null {
		if (!this.read) return null;
		return this.place === 'beside' && this.canStandBeside ? merged(this.shelf, this.read.shelf) : this.read.shelf;
	}
}

export const countsByKind = ({ lines }: Shelf): { kind: LineKind; count: number }[] =>
	lineKinds
		.map((kind) => ({ kind, count: lines.filter((line) => line.kind === kind).length }))
		.filter(({ count }) => count > 0);
/** `Row 14, Price: …`; stops first. */
export const inOrder = (troubles: readonly Trouble[]): Trouble[] => [
	...troubles.filter(({ rank }) => rank === 'stop'),
	...troubles.filter(({ rank }) => rank === 'look')
];
export const troubleWords = ({ row, column, message }: Trouble): string => {
	const where = [row === null ? '' : `Row ${row}`, column ?? ''].filter(Boolean).join(', ');
	return where ? `${where}: ${message}` : message;
};
const delimiterWords: Record<string, string> = { ',': 'commas', ';': 'semicolons', '\t': 'tabs', '|': 'bars' };
/** How the file was taken: `Letters as UTF-8, cells parted by commas, headings in row 1.` */
export const takenWords = ({ encoding, delimiter, headerRow }: ReadShelf): string =>
	[
		encoding ? `letters as ${encoding}` : '',
		`cells parted by ${delimiterWords[delimiter] ?? delimiter}`,
		headerRow === null ? 'no headings' : `headings in row ${headerRow}`
	]
		.filter(Boolean)
		.join(', ');
