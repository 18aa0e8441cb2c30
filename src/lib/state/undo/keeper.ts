/** Keeps the undo list as it changes, one write at a time, each with all that came since the last. */
import { writeYard, type Yard } from '../../domain/yard';
import { mostSteps, type History, type Step } from '../history';
import { joined } from './join';
import { keptOf, type Kept, type KeptList } from './kept';
import { batchOf } from './batch';
import { dropBefore, openStore, writeBatch, type Batch, type UndoStore } from './store';

/** What the keeper needs of the session. */
export interface Desk {
	history(): History<Yard>;
	/** The history with what was kept before it. The yard in hand stays as it is. */
	adopt(history: History<Yard>, keeper: Keeper): void;
	/** What the person has to know; null when that is over. */
	say(problem: string | null): void;
}
const failedWords =
	'Undo works until you close this page, but this browser did not keep its last steps. Your yard is still kept.';
const tightWords = (steps: number): string =>
	`There is little room left in this browser: only your last ${steps} undo steps are kept for the next visit. Your yard is still kept.`;
const fullWords =
	'There is no room left in this browser to keep your undo steps. Undo works until you close this page, and your yard is still kept.';
const unreadableWords = 'Undo ends here: the steps before this one can no longer be read. Your yard is as you left it.';

/** Fewer steps than this are not worth another try when there is no room. */
const fewest = 20;

const isFull = (error: unknown): boolean => error instanceof DOMException && error.name === 'QuotaExceededError';

export class Keeper {
	#desk: Desk;
	#db: Promise<UndoStore> | null = null;
	#mark: string | null = null;
	#kept = new WeakMap<Step<Yard>, Kept>();
	#history: History<Yard>;
	#text: string;
	/** Number of the last step done. */
	#at: number;
	/** Numbers of steps made since the last write. */
	#fresh = new Set<number>();
	/** How many steps the store has room for. */
	#most = mostSteps;
	/** Room has to be made before the next write. */
	#tight = false;
	#said: string | null = null;
	#due = false;
	#writing: Promise<void> = Promise.resolve();
	#busy = false;
	#stopped = false;

	constructor(desk: Desk, db: UndoStore, list: KeptList | null, mark: string | null) {
		this.#desk = desk;
		this.#db = Promise.resolve(db);
		const own = desk.history();
		const { history, kept, at, same } = joined(list, own, () => this.#say(unreadableWords));
		for (const [step, one] of kept) this.#kept.set(step, one);
		this.#history = history;
		this.#text = writeYard(history.now);
		this.#at = at;
		// Without its mark the list is written whole, at the next change: looking at a page writes nothing.
		this.#mark = same ? mark : null;
		desk.adopt(history, this);
		if (own.past.length + own.future.length > 0) this.#write();
	}

	/** Takes note of a change, of an undo or of a redo: one call for each. */
	moved(history: History<Yard>): void {
		const before = this.#history;
		this.#history = history;
		if (history.now !== before.now) this.#step(history.future.length > before.future.length);
		this.#write();
	}
	#step(back: boolean): void {
		const text = writeYard(this.#history.now);
		this.#at += back ? -1 : 1;
		const step = this.#history.past.at(-1);
		if (!back && step && !this.#kept.has(step)) {
			this.#kept.set(step, keptOf(step.label, this.#text, text));
			this.#fresh.add(this.#at);
		}
		this.#text = text;
	}

	/** Resolves when all that was noted is written, or has failed and was said. */
	idle(): Promise<void> {
		return this.#writing;
	}
	/** Writes no more, and lets the store go. */
	async stop(): Promise<void> {
		this.#stopped = true;
		await this.#writing;
		const db = await this.#db?.catch(() => null);
		db?.close();
	}
	/** To be called when the store was closed from outside. */
	lostStore(): void {
		this.#db = null;
	}

	#write(): void {
		this.#due = true;
		if (this.#busy) return;
		this.#busy = true;
		// What changes within one task goes into one write.
		this.#writing = Promise.resolve().then(() => this.#writeAll());
	}
	async #writeAll(): Promise<void> {
		let failures = 0;
		while (this.#due && !this.#stopped) {
			this.#due = false;
			const batch = this.#batch();
			this.#fresh.clear();
			try {
				await this.#put(batch);
				this.#say(this.#most < mostSteps ? tightWords(this.#most) : null);
			} catch (error) {
				failures += 1;
				for (const number of batch.fresh.keys()) this.#fresh.add(number);
				this.#failed(error, failures);
			}
		}
		this.#busy = false;
	}
	async #put(batch: Batch): Promise<void> {
		this.#db ??= openStore(() => this.lostStore());
		const db = await this.#db;
		if (this.#tight) await dropBefore(db, batch.from);
		this.#tight = false;
		this.#mark = await writeBatch(db, this.#mark, batch);
	}
	/** The oldest steps go first when there is no room; anything else is tried once more on a store opened anew. */
	#failed(error: unknown, failures: number): void {
		if (isFull(error)) {
			this.#tight = this.#due = this.#most > fewest;
			if (this.#due) this.#most = Math.floor(this.#most / 2);
			else this.#say(fullWords);
			return;
		}
		this.lostStore();
		if (failures < 2) this.#due = true;
		else this.#say(failedWords);
	}
	#batch(): Batch {
		const history = this.#history;
		const at = this.#at;
		const [past, future] = [history.past, history.future].map((steps) => steps.map((step) => this.#kept.get(step)));
		return batchOf(at, this.#text, past ?? [], future ?? [], this.#fresh, this.#most);
	}
	#say(problem: string | null): void {
		if (problem === this.#said) return;
		this.#said = problem;
		this.#desk.say(problem);
	}
}
