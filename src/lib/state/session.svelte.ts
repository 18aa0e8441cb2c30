/** The session: the yard in hand, the plan worked out from it, undo, and keeping it all in the browser. */
import type { Plan } from '../domain/plan';
import { blankYard, type Yard } from '../domain/yard';
import { fieldOf, writeAnswer, type Each } from '../flow';
import { isYard } from './check';
import { draftKey, withDraft } from './drafts';
import { changed, historyOf, redone, undone, type History } from './history';
import type { Engine } from './engine.svelte';
import { makeSaver, type Saver } from './saver';
import { asideTexts, differs, keys, load, save, type Drafts, type Store } from './storage';
import type { Keeper } from './undo';

export interface Answer {
	path: string;
	item: string | null;
	each: Each;
	/** Undefined takes the answer back. */
	value: unknown;
}

const otherTabWords =
	'This yard is open in another tab too, and was changed there just now. What is changed last is what is kept, with its undo steps.';
const undoWords = 'Undo works until you close this page: this browser does not keep its steps for the next visit.';
const engineWords =
	'The part that works out the plan did not load. Your answers are safe. Check the connection and reload.';
/** The browser's store, or null where there is none or it is barred. */
function browserStore(): Store | null {
	try {
		return window.localStorage;
	} catch {
		return null;
	}
}

export class Session {
	#history = $state.raw<History<Yard>>(historyOf(blankYard()));
	#engine = $state.raw<Engine | null>(null);
	#store: Store | null = null;
	#saver: Saver | null = null;
	#started: Promise<void> | null = null;
	#keeper: Keeper | null = null;
	#keeping: Promise<unknown> | null = null;
	#loading: Promise<void> | null = null;

	/** Typed but not committed text, by `draftKey(path, item)`. */
	drafts = $state.raw<Drafts>({});
	/** What was kept has been read. Until then the yard is blank. */
	ready = $state(false);
	/** When it was last kept in the browser. */
	savedAt = $state.raw<Date | null>(null);
	/** Why it is not being kept. */
	saveProblem = $state<string | null>(null);
	/** What is wrong with keeping the steps of undo. */
	undoProblem = $state<string | null>(null);
	/** What was kept but could not be read. */
	loadProblem = $state<string | null>(null);
	/** Why there is no plan though the engine was asked for. */
	engineProblem = $state<string | null>(null);
	/** Another tab changed the kept yard. */
	otherTab = $state<string | null>(null);

	yard: Yard = $derived(this.#history.now);
	units = $derived(this.yard.place.units ?? 'feet');
	/**
	 * Null until `loadEngine` is done, and while a yard put in hand is worked out for the first time. After a change it is the plan from before
	 * for as long as the new one takes (`isPlanCurrent`): the page stays what it was rather than going blank.
	 */
	plan: Plan | null = $derived(this.#engine?.plan ?? null);
	planProblem: string | null = $derived(this.#engine?.problem ?? null);
	/** The plan is that of the yard in hand, not of the one before the last change. */
	isPlanCurrent = $derived(this.#engine?.isCurrent ?? true);
	canUndo = $derived(this.#history.past.length > 0);
	canRedo = $derived(this.#history.future.length > 0);
	/** What undo would take back, and redo bring again, in a few words. */
	undoLabel = $derived(this.#history.past.at(-1)?.label ?? null);
	redoLabel = $derived(this.#history.future[0]?.label ?? null);

	#move(next: History<Yard>): void {
		if (next === this.#history) return;
		this.#history = next;
		this.#saver?.touch();
		if (this.#store) this.#keepUndo();
		this.#keeper?.moved(next);
	}

	/**
	 * Writes one answer and drops its draft. Undefined takes the answer back. False, and nothing changes, when the yard
	 * would not be a yard with it (half a row, a figure beyond its range): keep it as a draft.
	 */
	answer(path: string, item: string | null, each: Each, value: unknown): boolean {
		return this.answers([{ path, item, each, value }]);
	}
	/** Writes several answers as one change that one undo takes back; all or, when they do not fit, none. */
	answers(list: readonly Answer[], label?: string): boolean {
		const next = list.reduce(
			(yard, { path, item, each, value }) => writeAnswer(yard, path, item, each, value),
			this.yard
		);
		if (next !== this.yard && !isYard(next)) return false;
		const first = list[0];
		this.#move(
			changed(this.#history, next, label ?? (first && fieldOf(first.path, first.each)?.label) ?? 'the last answer')
		);
		for (const { path, item } of list) this.setDraft(path, item, null);
		return true;
	}
	/** Takes a changed yard, worked out by whoever calls, as one change that undo takes back. False, and nothing changes, when it is no yard. */
	change(next: Yard, label: string): boolean {
		if (next !== this.yard && !isYard(next)) return false;
		this.#move(changed(this.#history, next, label));
		return true;
	}
	/** Puts another yard in hand, as one change that undo takes back. Half-typed text belongs to the old one and goes. */
	replace(yard: Yard, label: string): void {
		this.drafts = {};
		// The plan of another yard is none of this one.
		if (yard !== this.yard) this.#engine?.drop();
		this.#move(changed(this.#history, yard, label));
	}
	undo(): void {
		this.#move(undone(this.#history));
	}
	redo(): void {
		this.#move(redone(this.#history));
	}

	/** Reads the steps kept last time, and keeps them from now on. Undo works before they have come: they go before what was done since. */
	#keepUndo(): void {
		this.#keeping ??= import('./undo')
			.then(({ keepUndo }) =>
				keepUndo({
					history: () => this.#history,
					adopt: (history, keeper) => ([this.#history, this.#keeper] = [history, keeper]),
					say: (problem) => (this.undoProblem = problem)
				})
			)
			.catch(() => (this.undoProblem = undoWords));
	}

	/** All steps of undo and redo, once those kept last time have come. */
	async steps(): Promise<History<Yard>> {
		await this.#keeping;
		return this.#history;
	}

	/** Text as it is being typed, or null when there is none. */
	draft(path: string, item: string | null = null): string | null {
		return this.drafts[draftKey(path, item)] ?? null;
	}
	/** Remembers text as it is being typed; null forgets it. */
	setDraft(path: string, item: string | null, text: string | null): void {
		const next = withDraft(this.drafts, draftKey(path, item), text);
		if (next === this.drafts) return;
		this.drafts = next;
		this.#saver?.touch();
	}

	/** Loads what works out the plan. Safe to call often; tries again after a failure. */
	loadEngine(): Promise<void> {
		this.#loading ??= import('./engine.svelte')
			.then(({ Engine }) => {
				this.#engine = new Engine(() => this.yard);
				return this.#engine.start();
			})
			.then(
				() => {
					this.engineProblem = null;
				},
				() => {
					this.engineProblem = engineWords;
					this.#engine = this.#loading = null;
				}
			);
		return this.#loading;
	}
	/** Resolves once the plan is that of the yard in hand, or cannot be had. */
	settled(): Promise<void> {
		return this.#engine?.settled() ?? Promise.resolve();
	}

	/** Reads what was kept and keeps what changes from now on. In a browser only: elsewhere it does nothing. */
	start(): Promise<void> {
		if (typeof window === 'undefined') return Promise.resolve();
		this.#started ??= Promise.resolve(this.#open(browserStore()));
		return this.#started;
	}
	#open(store: Store | null): void {
		const found = store ? load(store) : null;
		if (found?.yard) {
			this.#history = historyOf(found.yard);
			this.#engine?.drop();
		}
		if (found) this.drafts = found.drafts;
		if (store && found?.mayKeep) {
			this.#store = store;
			this.loadProblem = found.problem;
		} else {
			this.saveProblem =
				found?.problem ?? 'This browser keeps nothing between visits. Save a copy before you close the tab.';
		}
		this.#saver = makeSaver(() => this.#save(), {
			set: (run, ms) => window.setTimeout(run, ms),
			clear: (id) => window.clearTimeout(id),
			now: () => performance.now()
		});
		window.addEventListener('pagehide', () => this.#saver?.flush());
		document.addEventListener('visibilitychange', () => {
			if (document.visibilityState === 'hidden') this.#saver?.flush();
		});
		window.addEventListener('storage', (event) => {
			if (event.key === keys.yard && event.newValue !== null) this.otherTab = otherTabWords;
		});
		// a page brought back from the browser's own history has heard nothing while it was away
		window.addEventListener('pageshow', (event) => {
			if (event.persisted && this.#store && differs(this.#store, this.yard)) this.otherTab = otherTabWords;
		});
		this.ready = true;
		if (found?.yard && this.#store) this.#keepUndo();
	}
	#save(): void {
		if (!this.#store) return;
		this.saveProblem = save(this.#store, this.yard, this.drafts);
		if (this.saveProblem === null) this.savedAt = new Date();
	}

	/** Takes the yard as the other tab left it, as one change that undo takes back. */
	takeOtherTab(): void {
		const found = this.#store ? load(this.#store) : null;
		if (found?.yard) this.replace(found.yard, 'the yard of the other tab');
		this.otherTab = null;
	}
	/** Keeps the yard of this tab over that of the other. */
	keepThisTab(): void {
		this.#save();
		this.otherTab = null;
	}
	/** Puts a blank yard in hand and lets go of what is kept, so that `clearEverything` can wipe it. Undo does not take it back. */
	async forget(): Promise<void> {
		this.#saver?.drop();
		this.#history = historyOf(blankYard());
		this.drafts = {};
		this.savedAt = this.saveProblem = this.undoProblem = this.loadProblem = this.otherTab = null;
		this.#engine?.drop();
		await this.#keeping;
		const keeper = this.#keeper;
		this.#keeper = this.#keeping = null;
		await keeper?.stop();
	}
	/** Texts that could not be read as a yard and were set aside, oldest first. */
	setAside(): string[] {
		return this.#store ? asideTexts(this.#store) : [];
	}
}

export const session = new Session();
