/** The paper of the slips, which goes with the shop and not with the customer: kept in this browser, also past the next customer. */
import { browser } from '$app/environment';
import { readSlipPaper, type SlipPaper } from '$lib/print/slip/papers';

/** Among the shop’s keys, which the next customer leaves alone (`state/clear-watch.ts`). */
const key = 'duskwright/shop/slip-paper';

function read(): SlipPaper | null {
	if (!browser) return null;
	try {
		return readSlipPaper(localStorage.getItem(key));
	} catch {
		// Storage is shut off: what is chosen lasts as long as the page.
		return null;
	}
}

export class KeptPaper {
	/** Null until one is chosen: it then follows the units. */
	paper = $state<SlipPaper | null>(read());
	/** The browser would not keep the last choice. */
	forgotten = $state(false);

	choose(value: string): void {
		this.paper = readSlipPaper(value) ?? this.paper;
		try {
			localStorage.setItem(key, value);
			this.forgotten = false;
		} catch {
			this.forgotten = true;
		}
	}
}
