/** From one customer to the next. In a browser only. */
import { resolve } from '$app/paths';
import { session } from '$lib/state';

const address = () => resolve('/counter/');

/** Clears the customer and opens the counter anew in place of this page. What to tell the person where something is left; then the page stays. */
export async function nextCustomer(): Promise<string | null> {
	await session.start();
	const { clearCustomer } = await import('$lib/state/clear-customer');
	const problem = await clearCustomer(session);
	if (problem === null) location.replace(address());
	return problem;
}
/** What another tab has cleared, this one drops too. */
export async function follow(): Promise<void> {
	const { clearHere } = await import('$lib/state/clear-customer');
	await clearHere(session);
	location.replace(address());
}
interface Entry {
	url: string | null;
}
/** Not in every browser, nor in the types of all. */
interface WithNavigation {
	navigation?: { entries(): Entry[] };
}
/**
 * Whether a page that one can go back to has a yard in its address: opened from a link and left without a choice. No page can take such an entry
 * out of the browser's history. Null: this browser does not tell.
 */
export function yardInHistory(): boolean | null {
	const { navigation } = window as WithNavigation;
	return navigation ? navigation.entries().some(({ url }) => /\/open\/#[a-z0-9]/.test(url ?? '')) : null;
}
