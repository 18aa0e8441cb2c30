/**
 * The yard and the text not yet committed, kept in the browser under our own keys. Every function says what went wrong
 * in a sentence; none throws. The store is handed in: a browser's `localStorage`, or a plain map in a test.
 */
import type { Yard } from '../domain/yard';
import { readYard, writeYard } from '../domain/yard';
import { isYard } from './check';

export type Store = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;
/** Text that is typed but not an answer yet, by `path|item`. */
export type Drafts = Readonly<Record<string, string>>;

export const keys = {
	yard: 'duskwright/yard',
	drafts: 'duskwright/drafts',
	/** Yards that could not be read, kept as they were found: this key, then with -2, -3, … */
	aside: 'duskwright/yard-aside'
} as const;
const mostAside = 20;

export interface Loaded {
	yard: Yard | null;
	drafts: Drafts;
	/** What could not be read, and where it is kept. */
	problem: string | null;
	/** Saving here would lose nothing that could not be read. */
	mayKeep: boolean;
}

const cannotKeep =
	'This browser does not let Duskwright keep anything here (a private window, or storage is switched off). Save a copy before you close the tab.';
const isFull =
	'There is no room left in this browser to keep your yard. Save a copy now; then free some space and change any answer to try again.';

const unfit =
	'An answer in this yard cannot be written down, so the yard is kept as it was before it. Take back the last change, then go on.';

const isDrafts = (value: unknown): value is Drafts =>
	typeof value === 'object' &&
	value !== null &&
	!Array.isArray(value) &&
	Object.values(value).every((text) => typeof text === 'string');

function readDrafts(text: string | null): { drafts: Drafts; lost: boolean } {
	if (text === null) return { drafts: {}, lost: false };
	try {
		const value: unknown = JSON.parse(text);
		return isDrafts(value) ? { drafts: value, lost: false } : { drafts: {}, lost: true };
	} catch {
		return { drafts: {}, lost: true };
	}
}
const asideKeys = Array.from({ length: mostAside }, (_, i) => (i === 0 ? keys.aside : `${keys.aside}-${i + 1}`));

/** Puts unreadable text under the first free key. False when it could not be kept. */
function setAside(store: Store, text: string): boolean {
	try {
		const key = asideKeys.find((one) => [null, text].includes(store.getItem(one)));
		if (key === undefined) return false;
		store.setItem(key, text);
		return store.getItem(key) === text;
	} catch {
		return false;
	}
}

/** What was kept last time. A yard that cannot be read is moved aside, not deleted, and said. */
export function load(store: Store): Loaded {
	try {
		const { drafts, lost } = readDrafts(store.getItem(keys.drafts));
		const text = store.getItem(keys.yard);
		const halfTyped = lost ? 'Half-typed text from last time could not be read. Your answers are all here.' : null;
		if (text === null) return { yard: null, drafts, problem: halfTyped, mayKeep: true };
		const read = readYard(text);
		if (read.ok) return { yard: read.yard, drafts, problem: halfTyped, mayKeep: true };
		const why = `The yard kept in this browser could not be read: ${read.problems[0] ?? 'it is not a yard.'}`;
		return setAside(store, text)
			? { yard: null, drafts, mayKeep: true, problem: `${why} It is set aside unchanged; you can download it.` }
			: {
					yard: null,
					drafts,
					mayKeep: false,
					problem: `${why} It stays where it is, so nothing new is kept in this browser. Save a copy of what you do now.`
				};
	} catch {
		return { yard: null, drafts: {}, problem: cannotKeep, mayKeep: false };
	}
}

/** Keeps yard and drafts. Null when that worked, else what to tell the person. */
export function save(store: Store, yard: Yard, drafts: Drafts): string | null {
	if (!isYard(yard)) return unfit;
	try {
		store.setItem(keys.yard, writeYard(yard));
		if (Object.keys(drafts).length > 0) store.setItem(keys.drafts, JSON.stringify(drafts));
		else store.removeItem(keys.drafts);
		return null;
	} catch (error) {
		return error instanceof Error && error.name === 'QuotaExceededError' ? isFull : cannotKeep;
	}
}

/** Whether what is kept is another yard than this one: another tab wrote it. */
export function differs(store: Store, yard: Yard): boolean {
	try {
		const text = store.getItem(keys.yard);
		return text !== null && text !== writeYard(yard);
	} catch {
		return false;
	}
}

/** The texts of yards that were set aside, oldest first. */
export function asideTexts(store: Store): string[] {
	try {
		return asideKeys.map((key) => store.getItem(key)).filter((text) => text !== null);
	} catch {
		return [];
	}
}
