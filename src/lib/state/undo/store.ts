/**
 * The undo list in IndexedDB: one small record a step under the step's number, and the head, which says how many steps are
 * done and holds the file of the yard that stands there. A change appends its own record and writes the head; the list is
 * written whole only when another tab has written since.
 */
import { deleteDB, openDB, type DBSchema, type IDBPDatabase, type IDBPObjectStore } from 'idb';
import type { Kept, KeptList } from './kept';

export const databaseName = 'duskwright-undo';
interface Head {
	at: number;
	text: string;
	/** Another one with every write: who finds the mark that they left know that nobody wrote since. */
	mark: string;
}
interface Shape extends DBSchema {
	steps: { key: number; value: Kept };
	head: { key: 'head'; value: Head };
}
export type UndoStore = IDBPDatabase<Shape>;
type StepStore = IDBPObjectStore<Shape, ('steps' | 'head')[], 'steps', 'readwrite'>;

/** What is to be written. */
export interface Batch {
	at: number;
	text: string;
	/** Numbers of the oldest and the newest step that are kept. */
	from: number;
	to: number;
	/** Steps made or changed since the last write. */
	fresh: ReadonlyMap<number, Kept>;
	/** The whole list, for when the store holds another one. */
	all: ReadonlyMap<number, Kept>;
}

/**
 * Opens the store. Rejects where there is none or it is barred. `onClosed`: it has to be opened again, because the browser
 * shut it or another tab is clearing it away.
 */
export async function openStore(onClosed: () => void): Promise<UndoStore> {
	return openDB<Shape>(databaseName, 1, {
		upgrade(db) {
			db.createObjectStore('steps');
			db.createObjectStore('head');
		},
		blocking(_now, _wanted, event) {
			(event.target as IDBDatabase).close();
			onClosed();
		},
		terminated: onClosed
	});
}
const isKept = (value: Kept | undefined): value is Kept =>
	value !== undefined &&
	[value.label, value.gone, value.come].every((text) => typeof text === 'string') &&
	Number.isInteger(value.at);

/** The steps from `number` on in one direction, as far as none is missing. */
function unbroken(steps: ReadonlyMap<number, Kept>, number: number, direction: 1 | -1): Kept[] {
	const found: Kept[] = [];
	for (let n = number; ; n += direction) {
		const step = steps.get(n);
		if (!isKept(step)) return found;
		found.push(step);
	}
}
/** The kept list and its mark; null when nothing is kept. */
export async function readList(db: UndoStore): Promise<{ list: KeptList; mark: string } | null> {
	const tx = db.transaction(['steps', 'head']);
	const store = tx.objectStore('steps');
	const [head, numbers, values] = await Promise.all([
		tx.objectStore('head').get('head'),
		store.getAllKeys(),
		store.getAll(),
		tx.done
	]);
	if (!head || typeof head.text !== 'string' || !Number.isInteger(head.at)) return null;
	const steps = new Map(numbers.map((number, i) => [number, values[i] as Kept]));
	const past = unbroken(steps, head.at, -1).reverse();
	const list = { at: head.at, text: head.text, past, future: unbroken(steps, head.at + 1, 1) };
	return { list, mark: head.mark };
}
const freshMark = (): string => Array.from(crypto.getRandomValues(new Uint32Array(4))).join('-');

/**
 * Writes a batch in one transaction, all or nothing, and returns the mark it left. When the store does not carry `known`,
 * another tab wrote since: this tab changed last, so its list takes the place of the other.
 */
export async function writeBatch(db: UndoStore, known: string | null, batch: Batch): Promise<string> {
	const tx = db.transaction(['steps', 'head'], 'readwrite', { durability: 'relaxed' });
	// Heard from the start, or a failure before it is awaited would count as met by nobody.
	const end = tx.done.then(
		() => null,
		(error: unknown) => error
	);
	const mark = freshMark();
	try {
		const before = await tx.objectStore('head').get('head');
		await Promise.all(requestsOf(tx.objectStore('steps'), before?.mark === known, batch));
		await tx.objectStore('head').put({ at: batch.at, text: batch.text, mark }, 'head');
	} catch (error) {
		// What was asked for until then must not be kept by half; a transaction that failed has aborted by itself.
		if (!(error instanceof DOMException)) tx.abort();
		throw (await end) ?? error;
	}
	const failure = await end;
	if (failure !== null) throw failure;
	return mark;
}
function requestsOf(steps: StepStore, ours: boolean, { from, to, fresh, all }: Batch): Promise<unknown>[] {
	const clearing = ours
		? [steps.delete(IDBKeyRange.upperBound(from, true)), steps.delete(IDBKeyRange.lowerBound(to, true))]
		: [steps.clear()];
	return [...clearing, ...[...(ours ? fresh : all)].map(([number, kept]) => steps.put(kept, number))];
}
/** Lets the oldest steps go, up to and without `from`, to make room. */
export const dropBefore = (db: UndoStore, from: number): Promise<void> =>
	db.delete('steps', IDBKeyRange.upperBound(from, true));

/** Empties the store and removes it. Another tab that still holds it open finds it empty. */
export async function wipeStore(): Promise<void> {
	const db = await openStore(() => {});
	const tx = db.transaction(['steps', 'head'], 'readwrite');
	await Promise.all([tx.objectStore('steps').clear(), tx.objectStore('head').clear(), tx.done]);
	db.close();
	await new Promise<void>((done, fail) => {
		deleteDB(databaseName, { blocked: () => done() }).then(done, fail);
	});
}
