/** Clearing this browser of everything a person has done here: for a shared computer, or the counter of a shop. */
import type { Session } from './session.svelte';
import { wipeStore } from './undo';

/** Every key of ours begins like this; other pages of the same host have their own. */
const ours = 'duskwright/';
const words = (what: string): string =>
	`Not everything could be cleared: ${what} may still be in this browser. Clear this site’s data in the browser’s settings.`;

/** What another room keeps, and how it is wiped. */
export interface Wipe {
	/** As in a sentence: `pictures`. */
	what: string;
	wipe(): Promise<void>;
}
const wipeKeys = async (keeps: Keeps): Promise<void> => {
	const store = window.localStorage;
	for (const key of Object.keys(store)) if (key.startsWith(ours) && !keeps(key)) store.removeItem(key);
};
/** Which of our keys stay: what is the shop's or the device's own, and not the person's. */
export type Keeps = (key: string) => boolean;
async function failed({ what, wipe }: Wipe): Promise<string | null> {
	try {
		await wipe();
		return null;
	} catch {
		return what;
	}
}
/**
 * Puts a blank yard in hand and wipes yard, half-typed text, yards set aside, choices of paper and colours, the steps of
 * undo, and what `more` names; `keeps` leaves keys of the device where they are. It cannot be undone: ask first. Null when nothing is left, else
 * what to tell the person.
 */
export async function clearEverything(
	session: Session,
	more: readonly Wipe[],
	keeps: Keeps = () => false
): Promise<string | null> {
	await session.forget();
	const wipes: Wipe[] = [
		{ what: 'your answers', wipe: () => wipeKeys(keeps) },
		{ what: 'the steps of undo', wipe: wipeStore },
		...more
	];
	const left = (await Promise.all(wipes.map(failed))).filter((what) => what !== null);
	return left.length > 0 ? words(left.join(' and ')) : null;
}
