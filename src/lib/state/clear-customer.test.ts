import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { clearCustomer } from './clear-customer';
import { customerKey, shopKeys, watchCustomer } from './clear-watch';
import { Session } from './session.svelte';

type Store = Record<string, unknown> & Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;
/** As a browser's: its keys are its own properties. */
function store(): Store {
	const methods = {
		getItem: (key: string) => (Object.hasOwn(made, key) ? String(made[key]) : null),
		setItem: (key: string, text: string) => void (made[key] = text),
		removeItem: (key: string) => void delete made[key]
	};
	const made: Store = Object.create(methods);
	return made;
}
let [local, tab] = [store(), store()];
const page = new EventTarget();

beforeEach(() => {
	[local, tab] = [store(), store()];
	vi.stubGlobal('localStorage', local);
	vi.stubGlobal('window', Object.assign(page, { localStorage: local, sessionStorage: tab }));
});
afterEach(() => vi.unstubAllGlobals());

it('clears what is the customer’s; the shop’s own, the colours and what is not ours stay', async () => {
	const stays = { neighbour: 'theirs', 'duskwright/theme': 'dark', [`${shopKeys}idle`]: '5' };
	const goes = {
		'duskwright/counter': '{}',
		'duskwright/yard': '{}',
		'duskwright/drafts': '{}',
		'duskwright/paper': 'a4'
	};
	for (const [key, text] of Object.entries({ ...stays, ...goes })) local.setItem(key, text);
	tab.setItem('sveltekit:scroll', '{}');
	tab.setItem('neighbour', 'theirs');
	expect(await clearCustomer(new Session())).toBeNull();
	expect({ ...local }).toEqual({ ...stays, [customerKey]: '1' });
	expect({ ...tab }).toEqual({ neighbour: 'theirs' });
	expect(await clearCustomer(new Session())).toBeNull();
	expect(local.getItem(customerKey)).toBe('2');
});
it('is seen by a page that was held back, and only when the customer is another', async () => {
	const gone = vi.fn();
	const end = watchCustomer(gone);
	const show = () => page.dispatchEvent(Object.assign(new Event('pageshow'), { persisted: true }));
	show();
	expect(gone).not.toHaveBeenCalled();
	await clearCustomer(new Session());
	show();
	expect(gone).toHaveBeenCalledTimes(1);
	end();
	show();
	expect(gone).toHaveBeenCalledTimes(1);
});
