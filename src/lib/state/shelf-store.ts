/**
 * The shop's shelf, on this device only: one record in a database of its own, which clearing after a customer leaves alone. A change is heard in
 * other tabs. The last one to save has the shelf.
 */
import { deleteDB, openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { Shelf } from '../domain/kits/types';
import type { LeftOut } from '../shelf/types';
import { checkedLeftOut, checkedShelf } from '../shelf/schema';

export const shelfDatabase = 'duskwright-shelf';
interface Shape extends DBSchema {
	/** `now`: the shelf. `aside`: the last one that could not be read whole, as it was found. */
	shelf: { key: 'now' | 'aside'; value: unknown };
}
export interface LoadedShelf {
	/** Null: there is none yet. */
	shelf: Shelf | null;
	/** Rows of the file that were left out, to be put right. */
	leftOut: LeftOut[];
	/** What to tell the person; null: nothing. */
	problem: string | null;
}

const notKept =
	'This browser keeps nothing here (a private window, or its settings). The shelf lasts until this tab is closed: save it as CSV.';
const isFull = (error: unknown): boolean => error instanceof DOMException && error.name === 'QuotaExceededError';
const fullWords =
	'There is no room left on this device for the shelf as it is now. Save it as CSV, make room, and open it again.';
const lostWords = (lost: number): string =>
	lost === 1
		? 'One line of the kept shelf could not be read and was set aside. Open your list again, or type the line anew.'
		: `${lost} lines of the kept shelf could not be read and were set aside. Open your list again, or type them anew.`;

let opening: Promise<IDBPDatabase<Shape>> | null = null;
/** Rejects where the browser has no such store or bars it. */
function database(): Promise<IDBPDatabase<Shape>> {
	const mine = (opening ??= openDB<Shape>(shelfDatabase, 1, {
		upgrade: (db) => void db.createObjectStore('shelf'),
		// Another tab wipes or renews the store: let go, and open it anew when next asked.
		blocking(_current, _blocked, event) {
			(event.target as IDBDatabase).close();
			opening = null;
		},
		terminated: () => (opening = null)
	}));
	mine.catch(() => {
		// Said by whoever asked; the next one tries again.
		if (opening === mine) opening = null;
	});
	return mine;
}
/** What could not be kept: there until the tab is closed. */
let loose: LoadedShelf | null = null;

/** A record as it was found: the shelf in it, as far as it holds. What does not hold is set aside as it was found. */
async function opened(db: IDBPDatabase<Shape>, found: unknown): Promise<LoadedShelf> {
	const record = typeof found === 'object' && found !== null ? (found as Record<string, unknown>) : {};
	const checked = checkedShelf(record.shelf);
	const leftOut = checkedLeftOut(record.leftOut);
	if (!checked || checked.lost > 0 || !leftOut) await db.put('shelf', found, 'aside');
	if (!checked)
		return {
			shelf: null,
			leftOut: leftOut ?? [],
			problem: 'The shelf kept on this device could not be read. It was set aside: open your list again.'
		};
	const problems = [
		checked.lost > 0 ? lostWords(checked.lost) : null,
		leftOut ? null : 'The rows left out of your list could not be read and were set aside.'
	].filter((one) => one !== null);
	return { shelf: checked.shelf, leftOut: leftOut ?? [], problem: problems.join(' ') || null };
}
/** The shelf as it is kept. Never rejects: what stands in the way is said. */
export async function loadShelf(): Promise<LoadedShelf> {
	if (loose) return loose;
	try {
		const db = await database();
		const found = await db.get('shelf', 'now');
		return found === undefined ? { shelf: null, leftOut: [], problem: null } : await opened(db, found);
	} catch {
		return { shelf: null, leftOut: [], problem: notKept };
	}
}

/** Plain copies: what a page holds may be watched by it, and a store takes plain things only. */
const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
/**
 * Keeps the shelf and the rows left out of it. Null when it is kept, else what to tell the person; the shelf then serves in this tab
 * until it is closed. Saves are kept in the order in which they were asked for.
 */
export async function saveShelf(shelf: Shelf, leftOut: readonly LeftOut[] = []): Promise<string | null> {
	const kept = plain({ shelf, leftOut: [...leftOut] });
	try {
		const db = await database();
		await db.put('shelf', kept, 'now');
	} catch (error) {
		loose = { ...kept, problem: isFull(error) ? fullWords : notKept };
		tellOtherTabs();
		return loose.problem;
	}
	loose = null;
	tellOtherTabs();
	return null;
}
/** Forgets the shelf and what was set aside. Null when nothing is left of it, else what to tell the person. */
export async function dropShelf(): Promise<string | null> {
	loose = null;
	try {
		const db = await database();
		await db.clear('shelf');
		db.close();
		opening = null;
		await new Promise<void>((done, fail) => {
			deleteDB(shelfDatabase, { blocked: () => done() }).then(done, fail);
		});
	} catch {
		return 'The shelf could not be cleared: it may still be in this browser. Clear this site’s data in the browser’s settings.';
	} finally {
		tellOtherTabs();
	}
	return null;
}

const channelName = 'duskwright/shelf';
const listeners = new Set<() => void>();
let channel: BroadcastChannel | null = null;
function tellOtherTabs(): void {
	if (typeof BroadcastChannel === 'undefined') return;
	// A channel does not hear itself.
	const own = channel ?? new BroadcastChannel(channelName);
	// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a channel is of one origin and takes none
	own.postMessage('changed');
	if (own !== channel) own.close();
}
/** Calls back when the shelf has been saved or dropped in another tab. Returns how to stop it. */
export function watchShelf(changed: () => void): () => void {
	listeners.add(changed);
	if (!channel && typeof BroadcastChannel !== 'undefined') {
		channel = new BroadcastChannel(channelName);
		channel.addEventListener('message', () => {
			for (const one of listeners) one();
		});
	}
	return () => {
		listeners.delete(changed);
		if (listeners.size > 0) return;
		channel?.close();
		channel = null;
	};
}
