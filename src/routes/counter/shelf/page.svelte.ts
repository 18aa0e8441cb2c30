/** The page's own state: the shelf as it is kept, what is being typed or read, and the last change with the way back. */
import { tick } from 'svelte';
import type { LineKind, Shelf, ShelfLine } from '$lib/domain/kits/types';
import type { LeftOut } from '$lib/shelf';
import { loadShelf, saveShelf, watchShelf } from '$lib/state/shelf-store';
import { emptyShelf, withLine, withoutLine } from './changes';
import { LineDraft } from './line-draft.svelte';
import { lineCount } from './lists';
import { OpenedList } from './opened-list.svelte';

interface Kept {
	shelf: Shelf;
	leftOut: LeftOut[];
}
/** Ids in the document, by stock codes that may hold anything. */
export const lineId = (code: string): string => `change-${encodeURIComponent(code)}`;
/** Once the page is drawn: the element of the id, or the first control in it. False: there is none. */
export async function focusOn(id: string): Promise<boolean> {
	await tick();
	const found = document.getElementById(id);
	const at = found?.matches('span, div') ? found.querySelector<HTMLElement>('button, input, select') : found;
	at?.focus();
	return Boolean(at);
}

/** What is being typed is taken as left while its page still stands. */
function leaveField(): void {
	if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
}

export class ShelfPage {
	kept = $state.raw<Kept>({ shelf: emptyShelf, leftOut: [] });
	isReady = $state(false);
	/** Said aloud after a change. */
	status = $state('');
	/** What the store has to say: it refuses, or what it held could not be read. */
	problem = $state<string | null>(null);
	before = $state.raw<(Kept & { label: string }) | null>(null);
	draft = $state.raw<LineDraft | null>(null);
	opened = $state.raw<OpenedList | null>(null);
	search = $state('');

	get shelf(): Shelf {
		return this.kept.shelf;
	}
	get leftOut(): LeftOut[] {
		return this.kept.leftOut;
	}
	/** Saves of ours that are under way: the store tells of them too. */
	private saving = 0;

	/** Shows the shelf, and follows it where another tab changes it. Returns how to stop. */
	start(): () => void {
		void this.load();
		return watchShelf(() => {
			if (this.saving === 0) void this.follow();
		});
	}
	private async load(): Promise<void> {
		const { shelf, leftOut, problem } = await loadShelf();
		this.kept = { shelf: shelf ?? emptyShelf, leftOut };
		this.problem = problem;
		this.isReady = true;
	}
	private async follow(): Promise<void> {
		await this.load();
		this.before = null;
		this.say('The shelf was changed in another tab.');
	}
	/** Makes a change, keeps it on the device, and remembers what was there before. `label`: what was done, `Red kit taken off`. */
	private change(next: Partial<Kept>, label: string): void {
		this.before = { ...this.kept, label };
		this.kept = { ...this.kept, ...next };
		this.say(`${label}.`);
		void this.save();
	}
	private say(what: string): void {
		const { lines } = this.shelf;
		this.status = `${what} ${lines.length === 0 ? 'The shelf is empty' : `${lineCount(lines.length)} on the shelf`}.`;
	}
	private async save(): Promise<void> {
		this.saving += 1;
		this.problem = await saveShelf(this.shelf, this.leftOut);
		this.saving -= 1;
	}
	/** Takes back the last change; pressed again, makes it anew. */
	undo(): void {
		const { before } = this;
		if (!before) return;
		this.before = {
			...this.kept,
			label: before.label.startsWith('Undone: ') ? before.label.slice(8) : `Undone: ${before.label}`
		};
		this.kept = { shelf: before.shelf, leftOut: before.leftOut };
		this.say(before.label.startsWith('Undone: ') ? `${before.label.slice(8)}, again.` : `Undone: ${before.label}.`);
		void this.save();
	}
	async remove(line: ShelfLine, next: string | null): Promise<void> {
		this.change({ shelf: withoutLine(this.shelf, line.code) }, `${line.name} taken off`);
		if (!(next && (await focusOn(next)))) await focusOn(`kind-${line.kind}`);
	}
	rename(name: string, currency: string): void {
		if (name === this.shelf.name && currency === this.shelf.currency) return;
		this.change({ shelf: { ...this.shelf, name, currency } }, 'Name and currency changed');
	}
	putAll(shelf: Shelf, leftOut: LeftOut[], label: string): void {
		leaveField();
		this.change({ shelf, leftOut }, label);
		this.opened = null;
		this.search = '';
		void focusOn('shelf-title');
	}
	forgetLeftOut(): void {
		this.change({ leftOut: [] }, 'Rows left out forgotten');
		void focusOn('shelf-title');
	}
	clear(): void {
		this.change({ shelf: { ...this.shelf, lines: [] } }, 'All lines taken off');
		void focusOn('shelf-title');
	}
	edit(was: ShelfLine | null, kind: LineKind): void {
		leaveField();
		this.status = '';
		this.draft = new LineDraft(() => this.shelf, was, kind);
		void focusOn('draft-title');
	}
	/** The line that is being typed is put on the shelf, or what stands in its way comes into focus. */
	async keepDraft(): Promise<void> {
		const { draft } = this;
		if (!draft) return;
		const done = draft.finish();
		if (!done.line) {
			await focusOn(done.at ?? 'draft-wrong');
			return;
		}
		leaveField();
		const { line, currency } = done;
		const shelf = this.shelf.lines.length === 0 && currency ? { ...this.shelf, currency } : this.shelf;
		this.draft = null;
		this.change(
			{ shelf: withLine(shelf, line, draft.was?.code ?? null) },
			`${line.name} ${draft.was ? 'changed' : 'put on the shelf'}`
		);
		await this.show(line);
	}
	async leaveDraft(): Promise<void> {
		leaveField();
		const was = this.draft?.was;
		this.draft = null;
		if (!(was && (await focusOn(lineId(was.code))))) await focusOn('shelf-title');
	}
	private async show(line: ShelfLine): Promise<void> {
		if (!(await focusOn(lineId(line.code)))) await focusOn('shelf-title');
	}
	async open(file: File): Promise<void> {
		leaveField();
		this.status = '';
		this.draft = null;
		this.opened = new OpenedList(file, this.shelf);
		void focusOn('opened-title');
		await this.opened.start();
	}
	leaveOpened(): void {
		leaveField();
		this.opened = null;
		void focusOn('shelf-title');
	}
}
