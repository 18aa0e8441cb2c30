/**
 * The next customer at a shop's counter: everything of the last one is cleared, on all tabs; the shelf in its own database, the shop's choices and
 * day or night colours stay.
 */
import { clearEverything, type Wipe } from './clear';
import { customerKey, shopKeys } from './clear-watch';
import { wipePictures } from './pictures';
import type { Session } from './session.svelte';

const themeKey = 'duskwright/theme';
const isShops = (key: string): boolean => key.startsWith(shopKeys) || key === themeKey;

/** What a tab keeps for itself; `sveltekit:` is what the router remembers of the pages that were open. */
const ofTab = ['duskwright/', 'sveltekit:'];
const wipeTab = async (): Promise<void> => {
	const store = window.sessionStorage;
	for (const key of Object.keys(store)) if (ofTab.some((start) => key.startsWith(start))) store.removeItem(key);
};
const wipes: readonly Wipe[] = [
	{ what: 'pictures', wipe: wipePictures },
	{ what: 'what this tab remembers', wipe: wipeTab }
];

/** Clears what this tab and the stores hold. Null when nothing is left, else what to tell the person. Open the page anew afterwards: memory goes with it. */
export const clearHere = (session: Session): Promise<string | null> => clearEverything(session, wipes, isShops);

/** The same, and tells the other tabs. */
export async function clearCustomer(session: Session): Promise<string | null> {
	const problem = await clearHere(session);
	try {
		const count = Number(localStorage.getItem(customerKey)) || 0;
		localStorage.setItem(customerKey, String(count + 1));
	} catch {
		// Where nothing can be written nothing was kept either; another tab then goes on with what it has in memory.
		return problem ?? 'Other tabs of this site could not be told. Close them.';
	}
	return problem;
}
