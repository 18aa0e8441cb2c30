/** Seeing that another tab has cleared the customer. Small, since every page loads it. */

/** Keys that begin like this are the shop's own: they stay from customer to customer. */
export const shopKeys = 'duskwright/shop/';
/** Counts the customers, so that another tab, and a page that the browser brings back as it was, see that theirs has gone. */
export const customerKey = `${shopKeys}customer`;

function read(): string | null {
	try {
		return localStorage.getItem(customerKey);
	} catch {
		// Barred: then no tab can tell another.
		return null;
	}
}
/** Of the browser's own list of pages; not every browser has it. */
interface WithNavigation {
	navigation?: {
		currentEntry: { getState(): unknown } | null;
		updateCurrentEntry(options: { state: unknown }): void;
	};
}
/**
 * Whether this entry of the browser's history was first shown for a customer who has been cleared since: its address may hold their yard. Marks an
 * entry that is new. False where the browser does not tell.
 */
export function isOfEarlierCustomer(): boolean {
	const { navigation } = window as WithNavigation;
	const state = navigation?.currentEntry?.getState();
	const now = read() ?? '';
	if (typeof state === 'object' && state !== null && 'customer' in state) return state.customer !== now;
	navigation?.updateCurrentEntry({ state: { customer: now } });
	return false;
}
/**
 * Calls `gone` when another tab has cleared the customer whom this page was opened for, or did so while the browser held this page back. Returns
 * what ends the watch. In a browser only.
 */
export function watchCustomer(gone: () => void): () => void {
	const here = read();
	const look = () => {
		if (read() !== here) gone();
	};
	const onstorage = ({ key }: StorageEvent) => {
		if (key === customerKey) look();
	};
	const onshow = ({ persisted }: PageTransitionEvent) => {
		if (persisted) look();
	};
	window.addEventListener('storage', onstorage);
	window.addEventListener('pageshow', onshow);
	return () => {
		window.removeEventListener('storage', onstorage);
		window.removeEventListener('pageshow', onshow);
	};
}
