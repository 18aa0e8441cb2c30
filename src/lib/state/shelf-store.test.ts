import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { demoShelf, type LeftOut } from '../shelf';
import { dropShelf, loadShelf, saveShelf, shelfDatabase, watchShelf } from './shelf-store';

const row: LeftOut = { row: 7, cells: [{ header: 'code', text: '0017' }], why: ['The price is missing.'] };
const nothing = { shelf: null, leftOut: [], problem: null };
/** What another page, or a failing disk, left there. */
async function put(value: unknown, key = 'now'): Promise<void> {
	const db = await openDB(shelfDatabase, 1, { upgrade: (db) => void db.createObjectStore('shelf') });
	await db.put('shelf', value, key);
	db.close();
}
async function get(key: string): Promise<unknown> {
	const db = await openDB(shelfDatabase, 1);
	const found: unknown = await db.get('shelf', key);
	db.close();
	return found;
}
beforeEach(async () => void (await dropShelf()));
afterEach(() => {
	vi.unstubAllGlobals();
	vi.restoreAllMocks();
});

describe('the kept shelf', () => {
	it('is none at first', async () => expect(await loadShelf()).toEqual(nothing));
	it('comes back as it was saved, with the rows left out', async () => {
		expect(await saveShelf(demoShelf, [row])).toBeNull();
		expect(await loadShelf()).toEqual({ shelf: demoShelf, leftOut: [row], problem: null });
	});
	it('is the last one of several saved at once', async () => {
		const named = ['a', 'b', 'c'].map((name) => ({ ...demoShelf, name }));
		expect(await Promise.all(named.map((shelf) => saveShelf(shelf)))).toEqual([null, null, null]);
		expect((await loadShelf()).shelf?.name).toBe('c');
	});
	it('is gone when it is dropped, and can be kept anew', async () => {
		await saveShelf(demoShelf);
		expect(await dropShelf()).toBeNull();
		expect(await loadShelf()).toEqual(nothing);
		expect(await saveShelf(demoShelf)).toBeNull();
		expect((await loadShelf()).shelf).toEqual(demoShelf);
	});
	it('takes what a page watches, which a store cannot', async () => {
		const watched = new Proxy(structuredClone(demoShelf), {});
		expect(await saveShelf(watched)).toBeNull();
		expect((await loadShelf()).shelf).toEqual(demoShelf);
	});
});

describe('a shelf that cannot be read', () => {
	it.each([['text'], [null], [42], [{ shelf: { lines: 'none' } }], [{ shelf: null, leftOut: [] }]])(
		'%j is set aside, and said',
		async (value) => {
			await put(value);
			const found = await loadShelf();
			expect(found.shelf).toBeNull();
			expect(found.problem).toMatch(/could not be read.*set aside/);
			expect(await get('aside')).toEqual(value);
		}
	);
	it('keeps the lines that hold', async () => {
		const lines = [demoShelf.lines[0], { code: 'broken' }, demoShelf.lines[1]];
		await put({ shelf: { ...demoShelf, lines }, leftOut: 'x' });
		const found = await loadShelf();
		expect(found.shelf?.lines).toEqual([demoShelf.lines[0], demoShelf.lines[1]]);
		expect(found.problem).toMatch(/One line.*The rows left out/);
		expect(await get('aside')).toMatchObject({ leftOut: 'x' });
	});
});

describe('a browser that keeps nothing', () => {
	it('says so, and the shelf serves until the tab is closed', async () => {
		vi.stubGlobal('indexedDB', {
			open: () => {
				throw new DOMException('denied', 'SecurityError');
			}
		});
		expect((await loadShelf()).problem).toMatch(/keeps nothing/);
		expect(await saveShelf(demoShelf, [row])).toMatch(/keeps nothing/);
		expect(await loadShelf()).toEqual({
			shelf: demoShelf,
			leftOut: [row],
			problem: expect.stringMatching(/save it as CSV/)
		});
		expect(await dropShelf()).toMatch(/could not be cleared/);
	});
	it('says when there is no room', async () => {
		vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
			throw new DOMException('full', 'QuotaExceededError');
		});
		expect(await saveShelf(demoShelf)).toMatch(/no room left/);
		vi.restoreAllMocks();
		expect(await loadShelf()).toMatchObject({ shelf: demoShelf, problem: expect.stringMatching(/no room left/) });
		expect(await saveShelf(demoShelf)).toBeNull();
		expect((await loadShelf()).problem).toBeNull();
	});
});

describe('another tab', () => {
	it('is told of a change, until it stops listening', async () => {
		const heard = vi.fn();
		// A channel of its own is what another tab has.
		const other = new BroadcastChannel('duskwright/shelf');
		other.addEventListener('message', heard);
		// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a channel is of one origin and takes none
		const tell = () => other.postMessage('changed');
		await saveShelf(demoShelf);
		await vi.waitFor(() => expect(heard).toHaveBeenCalledTimes(1));
		const changed = vi.fn();
		const stop = watchShelf(changed);
		tell();
		await vi.waitFor(() => expect(changed).toHaveBeenCalledTimes(1));
		await saveShelf(demoShelf);
		await vi.waitFor(() => expect(heard).toHaveBeenCalledTimes(2));
		stop();
		tell();
		await new Promise((done) => setTimeout(done, 30));
		expect(changed).toHaveBeenCalledTimes(1);
		other.close();
	});
});
