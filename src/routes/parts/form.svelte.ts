/** The state of one question's page beside its answers: what is being typed, what may be complained about. */
import { SvelteSet } from 'svelte/reactivity';
import { fieldStatus, fullPath, readAnswer, type Field, type Place } from '$lib/flow';
import type { YardPoint } from '$lib/domain/yard';
import { session } from '$lib/state';
import type { Typed } from '$lib/ui/types';
import { typedOf, readText, type TypedField } from './reading';

/** Milliseconds after the last key. */
const pause = 300;

/** Id in the document of the control for a path. */
export const controlId = (path: string): string => `f-${path.replace(/[^A-Za-z0-9]+/g, '-')}`;

/** A list cut into cells keeps its unfinished rows here: JSON in the draft of the list. */
export function readDraft<T>(path: string, holds: (value: unknown) => value is T): T | null {
	const text = session.draft(path);
	if (text === null) return null;
	try {
		const value: unknown = JSON.parse(text);
		return holds(value) ? value : null;
	} catch {
		// Not ours, or from an older build: the stored answer is shown instead.
		return null;
	}
}

export class Form {
	/** Controls that may complain: left once, or met by Continue. */
	readonly complaining = new SvelteSet<string>();
	/** Controls that Continue found empty. */
	readonly empty = new SvelteSet<string>();
	/** Who waits for a point on the drawing. */
	picking = $state.raw<{ key: string; take: (at: YardPoint) => void } | null>(null);

	/** Paths that had an answer while this page was open. */
	private readonly known = new Set<string>();
	/** What reads the controls that were shown, by the path of their text: a field may be made of several. */
	private readonly readBy = new Map<string, TypedField>();
	private readonly waiting = new Map<string, { run: () => void; timer: ReturnType<typeof setTimeout> }>();

	constructor(readonly step: Place) {}

	get units() {
		return session.units;
	}
	path(field: Field): string {
		return fullPath(field.path, this.step.item, this.step.question.each);
	}
	shown(field: Field): boolean {
		return field.when?.(session.yard, this.step.item) ?? true;
	}
	value(path: string): unknown {
		return readAnswer(session.yard, path);
	}
	/** Writes an answer by its full path. `label`: what undo says it takes back. */
	set(path: string, value: unknown, label: string): boolean {
		this.empty.clear();
		return session.answers([{ path, item: null, each: undefined, value }], label);
	}
	typed(field: TypedField, path: string, stored: unknown): Typed {
		this.readBy.set(path, field);
		const id = controlId(path);
		const known = stored !== undefined && stored !== 'unsure';
		// An answer that was here and was taken back by undo takes its text with it.
		const undone = !known && this.known.has(path) && !this.waiting.has(path);
		if (known) this.known.add(path);
		const draft =
			undone && readText(field, session.draft(path) ?? '', this.units).error === null ? null : session.draft(path);
		// Until what is being typed is taken, it is no news that the answer says something else.
		const against = this.waiting.has(path) ? undefined : stored;
		const typed = typedOf(field, draft, against, this.units, this.complaining.has(id));
		return this.empty.has(id) && !typed.error ? { ...typed, error: emptyWords(field) } : typed;
	}
	/**
	 * Remembers what is typed at once; hands on the value (undefined: emptied) a moment after the last key, so that one
	 * undo takes back a length and not its last digit.
	 */
	type(field: TypedField, path: string, text: string, take: (value: string | number | undefined) => void): void {
		session.setDraft(path, null, text);
		this.empty.clear();
		const reading = readText(field, text, this.units);
		if (reading.error === null) this.complaining.delete(controlId(path));
		this.later(path, () => {
			if (reading.error !== null) return;
			take(reading.value);
			// Taking an answer forgets its draft; the text stays as the person wrote it.
			session.setDraft(path, null, text);
		});
	}
	/** Runs after a short pause; a later call for the same path takes its place. */
	later(path: string, run: () => void): void {
		clearTimeout(this.waiting.get(path)?.timer);
		this.waiting.set(path, { run, timer: setTimeout(() => this.settle(path), pause) });
	}
	/** What was typed last is taken now: for one path, or for all. */
	settle(only?: string): void {
		for (const [path, { run, timer }] of this.waiting) {
			if (only !== undefined && path !== only) continue;
			clearTimeout(timer);
			this.waiting.delete(path);
			run();
		}
	}
	leave(path: string): void {
		this.settle();
		if ((session.draft(path) ?? '').trim() !== '') this.complaining.add(controlId(path));
	}
	pick(key: string, take: (at: YardPoint) => void): void {
		this.picking = this.picking?.key === key ? null : { key, take };
	}
	/** Complaint of a field as a whole, for those that are not typed in. */
	complaint(field: Field): string | null {
		return this.complaintAt(this.path(field), field);
	}
	/** The same where the path is known: a cell of a row. */
	complaintAt(path: string, field: Field): string | null {
		return this.empty.has(controlId(path)) ? emptyWords(field) : null;
	}
	/** Marks what stands in the way of going on: the ids of the controls concerned, in order, and whether any is misread rather than empty. */
	check(): { ids: string[]; wrong: boolean } {
		this.settle();
		this.takeDrafts();
		this.empty.clear();
		const found: string[] = [];
		let misread = false;
		for (const field of this.step.question.fields) {
			if (!this.shown(field)) continue;
			const path = this.path(field);
			const wrong = this.wrongDrafts(field, path);
			for (const id of wrong) this.complaining.add(id);
			found.push(...wrong);
			misread ||= wrong.length > 0;
			const unfinished = wrong.length === 0 ? this.unfinished(field, path) : [];
			for (const id of unfinished) this.empty.add(id);
			found.push(...unfinished);
			if (
				wrong.length + unfinished.length === 0 &&
				fieldStatus(session.yard, field, this.step.item, this.step.question.each) === 'open'
			) {
				const id = controlId(path);
				this.empty.add(id);
				found.push(id);
			}
		}
		return { ids: found, wrong: misread };
	}
	/** Text that was typed and understood but never taken (the page was reloaded in between). */
	private takeDrafts(): void {
		for (const field of this.step.question.fields) {
			if (!isTyped(field) || !this.shown(field)) continue;
			const path = this.path(field);
			const text = session.draft(path);
			if (text === null || this.value(path) !== undefined || this.typed(field, path, undefined).text !== text) continue;
			const { value } = readText(field, text, this.units);
			if (value === undefined) continue;
			this.set(path, value, field.label);
			session.setDraft(path, null, text);
		}
	}
	/** Drafts under a field that are not understood. */
	private wrongDrafts(field: Field, path: string): string[] {
		if (isTyped(field)) return this.wrong(field, path);
		switch (field.kind) {
			case 'rows': {
				const rows = this.value(path);
				const ids = [
					...(Array.isArray(rows) ? rows.map((row: { id: string }) => row.id) : []),
					...(readDraft(`${path}#rows`, isPending) ?? []).map(({ id }) => id)
				];
				return ids.flatMap((id) =>
					field.columns.filter(isTyped).flatMap((column) => this.wrong(column, `${path}.${id}.${column.path}`))
				);
			}
			case 'point':
				return this.value(path) === 'none' ? [] : this.wrongPoint(path);
			case 'spot':
				return this.value(path) === 'suggest' ? [] : [...this.wrongPoint(`${path}.at`), ...this.wrongParts(path)];
			case 'line':
				return (readDraft(`${path}/points`, isTexts) ?? []).flatMap((texts, index) =>
					texts.flatMap((text, part) =>
						readText(pointLength, text, this.units).error === null ? [] : [controlId(`${path}/${index}/${part}`)]
					)
				);
			default:
				return this.value(path) === 'unsure' ? [] : this.wrongParts(path);
		}
	}
	/** Controls inside a field: a count of hours, a price, a height. */
	private wrongParts(path: string): string[] {
		return [...this.readBy].flatMap(([at, field]) => (/^[/.]/.test(at.replace(path, '')) ? this.wrong(field, at) : []));
	}
	private wrongPoint(path: string): string[] {
		return (['along', 'out'] as const).flatMap((part) => this.wrong(pointLength, `${path}/${part}`));
	}
	/** Rows that were begun and lack a cell: the first empty cell of each. */
	private unfinished(field: Field, path: string): string[] {
		if (field.kind !== 'rows') return [];
		return (readDraft(`${path}#rows`, isPending) ?? []).flatMap((row) => {
			const column = field.columns.find((one) => !one.optional && row.cells[one.path] === undefined);
			return column ? [controlId(`${path}.${row.id}.${column.path}`)] : [];
		});
	}
	private wrong(field: TypedField, path: string): string[] {
		const value = this.value(path);
		return typedOf(field, session.draft(path), value, this.units, true).error === null ? [] : [controlId(path)];
	}
}

/** Two lengths that make a point, as far out as a yard can reach. */
export const pointLength: TypedField = { kind: 'length', path: '', label: '', min: -500, max: 500, example: '12 ft' };

/** A line while it is typed: two texts for each point. */
export type Texts = [along: string, out: string][];
export const isTexts = (value: unknown): value is Texts =>
	Array.isArray(value) &&
	value.every((row) => Array.isArray(row) && row.length === 2 && row.every((cell) => typeof cell === 'string'));

export interface PendingRow {
	id: string;
	cells: Record<string, unknown>;
}
export const isPending = (value: unknown): value is PendingRow[] =>
	Array.isArray(value) &&
	value.every((row) => typeof row?.id === 'string' && typeof row?.cells === 'object' && row.cells !== null);

export const isTyped = (field: Field): field is TypedField & Field =>
	['length', 'number', 'count', 'text', 'bearing'].includes(field.kind);

function emptyWords(field: Field): string {
	switch (field.kind) {
		case 'choice':
		case 'bearing':
		case 'hours':
			return 'Choose one.';
		case 'rows':
			return field.none
				? 'Add one, or say that there are none. A line with empty cells does not count yet.'
				: 'Add at least one, and fill in its cells.';
		case 'items':
			return 'Add one, or say that there are none.';
		case 'point':
			return 'Give both lengths, or point on the drawing.';
		case 'line':
			return `Give at least ${field.least} points, each with both lengths.`;
		case 'spot':
			return 'Let us suggest one, or say where and on what.';
		case 'place':
			return 'Choose a place, or type its latitude and longitude.';
		default:
			return 'Nothing is typed here yet.';
	}
}
