/** The session: the yard in hand, the plan worked out from it, undo, and keeping it all in the browser. */
import type { Plan } from '../domain/plan';
import { blankYard, type Yard } from '../domain/yard';
import { fieldOf, writeAnswer, type Each } from '../flow';
import { isYard } from './check';
import { draftKey, withDraft } from './drafts';
import { changed, historyOf, redone, undone, type History } from './history';
import { makeSaver, type Saver } from './saver';
import { asideTexts, differs, keys, load, save, type Drafts, type Store } from './storage';

type MakePlan = (yard: Yard) => Plan;
export interface Answer {
	path: string;
	item: string | null;
	each: Each;
	/** Undefined takes the answer back. */
	value: unknown;
}

const otherTabWords =
	'This yard is open in another tab too, and was changed there just now. What is changed last is what is kept.';
const engineWords =
	'The part that works out the plan did not load. Your answers are safe. Check the connection and reload.';
const planWords =
	'The plan could not be worked out from these answers. Your answers are safe: take back the last change, or save a copy and report it.';

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
	#makePlan = $state.raw<MakePlan | null>(null);
	#store: Store | null = null;
	#saver: Saver | null = null;
	#started: Promise<void> | null = null;
	#engine: Promise<void> | null = null;

	/** Typed but not committed text, by `draftKey(path, item)`. */
	drafts = $state.raw<Drafts>({});
	/** What was kept has been read. Until then the yard is blank. */
	ready = $state(false);
	/** When it was last kept in the browser. */
	savedAt = $state.raw<Date | null>(null);
	/** Why it is not being kept. */
	saveProblem = $state<string | null>(null);
	/** What was kept but could not be read. */
	loadProblem = $state<string | null>(null);
	/** Why there is no plan though the engine was asked for. */
	engineProblem = $state<string | null>(null);
	/** Another tab changed the kept yard. */
	otherTab = $state<string | null>(null);

	yard: Yard = $derived(this.#history.now);
	units = $derived(this.yard.place.units ?? 'feet');
	#worked = $derived.by(() => this.#work(this.yard));
	/** Null until `loadEngine` is done. */
	plan: Plan | null = $derived(this.#worked.plan);
	planProblem: string | null = $derived(this.#worked.problem);
	canUndo = $derived(this.#history.past.length > 0);
	canRedo = $derived(this.#history.future.length > 0);
	/** What undo would take back, and redo bring again, in a few words. */
	undoLabel = $derived(this.#history.past.at(-1)?.label ?? null);
	redoLabel = $derived(this.#history.future[0]?.label ?? null);

	#work(yard: Yard): { plan: Plan | null; problem: string | null } {
		if (!this.#makePlan) return { plan: null, problem: null };
		try {
			return { plan: this.#makePlan(yard), problem: null };
		} catch {
			return { plan: null, problem: planWords };
		}
	}
	#move(next: History<Yard>): void {
		if (next === this.#history) return;
		this.#history = next;
		this.#saver?.touch();
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
		this.#move(changed(this.#history, yard, label));
	}
	undo(): void {
		this.#move(undone(this.#history));
	}
	redo(): void {
		this.#move(redone(this.#history));
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
		this.#engine ??= import('../domain/plan').then(
			({ makePlan }) => {
				this.#makePlan = makePlan;
				this.engineProblem = null;
			},
			() => {
				this.engineProblem = engineWords;
				this.#engine = null;
			}
		);
		return this.#engine;
	}

	/** Reads what was kept and keeps what changes from now on. In a browser only: elsewhere it does nothing. */
	start(): Promise<void> {
		if (typeof window === 'undefined') return Promise.resolve();
		this.#started ??= Promise.resolve(this.#open(browserStore()));
		return this.#started;
	}
	#open(store: Store | null): void {
		const found = store ? load(store) : null;
		if (found?.yard) this.#history = historyOf(found.yard);
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
	/** Texts that could not be read as a yard and were set aside, oldest first. */
	setAside(): string[] {
		return this.#store ? asideTexts(this.#store) : [];
	}
}

export const session = new Session();
