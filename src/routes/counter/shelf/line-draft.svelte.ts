/** A line while it is typed: its texts, what may be complained about, what is made of it. */
import { SvelteSet } from 'svelte/reactivity';
import type { LineKind, Shelf, ShelfLine } from '$lib/domain/kits/types';
import type { Field } from '$lib/shelf';
import { lightField, type LightSet } from '$lib/shelf/fields';
import type { Typed } from '$lib/ui/types';
import { cableKindsIn, formGroups, lightKindsIn, type Cells, type FormField } from './form-fields';
import { cellsOf, productsBeside, readTyped } from './typed-line';

/** Id in the document of a field's control. */
export const controlId = (field: Field): string => `line-${field.replaceAll(' ', '-')}`;

export class LineDraft {
	cells = $state<Cells>({});
	kind = $state<LineKind>('kit');
	lightKinds = $state(1);
	cableKinds = $state(1);
	/** Fields that may complain: left once, or met by the button that keeps the line. */
	private readonly complaining = new SvelteSet<Field>();
	private tried = $state(false);
	/** The shelf as it is now: another tab may change it meanwhile. */
	private readonly shelf: () => Shelf;
	readonly was: ShelfLine | null;

	constructor(shelf: () => Shelf, was: ShelfLine | null, kind: LineKind) {
		this.shelf = shelf;
		this.was = was;
		this.kind = was?.kind ?? kind;
		if (!was) return;
		this.cells = cellsOf(was);
		this.lightKinds = lightKindsIn(this.cells);
		this.cableKinds = cableKindsIn(this.cells);
	}
	private readonly products = $derived.by(() => productsBeside(this.shelf(), this.was));
	/** The light of a kit that a loose line tells; null: its own figures do. */
	known(set: LightSet) {
		const code = this.cells[lightField('same as', set)]?.trim();
		return (code && this.products.get(code)) || null;
	}
	readonly groups = $derived.by(() =>
		formGroups(this.kind, {
			lightKinds: this.lightKinds,
			cableKinds: this.cableKinds,
			isKnown: (set) => this.known(set) !== null
		})
	);
	readonly read = $derived.by(() =>
		readTyped(this.shelf(), this.was, this.kind, this.cells, this.groups, this.products)
	);
	/** What is wrong with the line as a whole, once it was to be kept. */
	whole = $derived(this.tried ? this.read.whole : []);

	typed(field: Field): Typed {
		const speaks = this.tried || this.complaining.has(field);
		const error = speaks ? (this.read.wrong.get(field) ?? null) : null;
		const readback = speaks && !error && this.cells[field]?.trim() ? (this.read.taken.get(field) ?? null) : null;
		return { text: this.cells[field] ?? '', readback, error, suggestions: [] };
	}
	type(field: Field, text: string): void {
		this.cells[field] = text;
		// What is put right falls silent at once; the next complaint waits until the field is left.
		if (!this.read.wrong.has(field)) this.complaining.delete(field);
	}
	/** The option of a choice: lists write `LED`, `path light` and more, which the fields of a line that is there have as our own words. */
	chosen({ field, options = [] }: FormField): string | null {
		const text = this.cells[field]?.trim().toLowerCase();
		return options.find(({ value }) => value === text)?.value ?? null;
	}
	/** For `same light as`: as many as a list that drops down can hold. */
	get looseFixtures(): ShelfLine[] {
		return this.shelf()
			.lines.filter(({ kind, code }) => kind === 'fixture' && code !== this.was?.code)
			.slice(0, 200);
	}
	leave(field: Field): void {
		if (this.cells[field]?.trim()) this.complaining.add(field);
	}
	/** The line, or the id of the first control that stands in its way (null: none does, see `whole`). */
	finish(): { line: ShelfLine; currency: string | null } | { line: null; at: string | null } {
		const { line, wrong, currency } = this.read;
		if (line) return { line, currency };
		this.tried = true;
		const first = this.groups.flatMap(({ fields }) => fields).find(({ field }) => wrong.has(field));
		return { line: null, at: first ? controlId(first.field) : null };
	}
}
