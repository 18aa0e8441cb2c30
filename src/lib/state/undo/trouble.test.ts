import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { blankYard, writeYard, type Yard } from '../../domain/yard';
import { wipeStore } from '.';
import { databaseName } from './store';
import { bareTab, everyFile, openTab, type UndoTab } from './tab.testing';

beforeEach(() => {
	vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
	vi.restoreAllMocks();
	vi.unstubAllGlobals();
});
const named = (name: string): Yard => ({ ...blankYard(), name });
const file = (name: string): string => writeYard(named(name));
async function changes(tab: UndoTab, ...names: string[]): Promise<void> {
	for (const name of names) {
		tab.change(named(name), `to ${name}`);
		await tab.idle();
	}
}
const labels = async (name: string) => everyFile(await openTab(file(name))).labels;

describe('two tabs', () => {
	it('that take turns: the list is that of the tab that changed last, whole, and each keeps its own', async () => {
		const one = await openTab();
		await changes(one, 'a', 'b');
		const two = await openTab(file('b'));
		expect(everyFile(two).labels).toEqual(['to a', 'to b']);
		await changes(two, 'c');
		expect(await labels('c')).toEqual(['to a', 'to b', 'to c']);
		await changes(one, 'd');
		expect(await labels('d')).toEqual(['to a', 'to b', 'to d']);
		two.undo();
		await two.idle();
		expect(everyFile(await openTab(file('b')))).toEqual({
			back: [file('a'), writeYard(blankYard())],
			ahead: [file('c')],
			labels: ['to a', 'to b', 'to c']
		});
		expect([everyFile(one).labels, everyFile(two).labels]).toEqual([
			['to a', 'to b', 'to d'],
			['to a', 'to b', 'to c']
		]);
	});
	it('that write in the same instant leave one whole list, never a mixture', async () => {
		const one = await openTab();
		const two = await openTab();
		for (let n = 0; n < 20; n += 1) {
			one.change(named(`one ${n}`), `one ${n}`);
			two.change(named(`two ${n}`), `two ${n}`);
			if (n % 7 === 3) one.undo();
			await Promise.resolve();
		}
		await Promise.all([one.idle(), two.idle()]);
		const after = await openTab(two.file());
		const seen = everyFile(after);
		const whose = [one, two].map((tab) => everyFile(tab).labels.join());
		const kept = seen.labels.filter((label) => label !== 'the last change').join();
		expect(whose).toContain(kept);
		expect(after.file()).toBe(two.file());
	});
	it('one of which clears everything: the other goes on, and keeps its own list from its next change', async () => {
		const one = await openTab();
		await changes(one, 'a', 'b');
		await wipeStore();
		expect(await indexedDB.databases()).toEqual([]);
		await changes(one, 'c');
		expect(await labels('c')).toEqual(['to a', 'to b', 'to c']);
		expect(one.said).toEqual([]);
	});
});

describe('a store that is not there', () => {
	it('is told to whoever asks, and the steps in memory stay', async () => {
		vi.stubGlobal('indexedDB', undefined);
		const { tab, arrive } = bareTab();
		tab.change(named('a'));
		await expect(arrive()).rejects.toThrow();
		tab.undo();
		expect([tab.file(), tab.history.future.length]).toEqual([writeYard(blankYard()), 1]);
	});
	it('because it is barred likewise', async () => {
		vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
			throw new DOMException('denied', 'SecurityError');
		});
		await expect(bareTab().arrive()).rejects.toThrow('denied');
	});
	it('any more while the page is open is opened again', async () => {
		const tab = await openTab();
		await changes(tab, 'a');
		tab.keeper?.lostStore();
		await changes(tab, 'b');
		expect(await labels('b')).toEqual(['to a', 'to b']);
		expect(tab.said).toEqual([]);
	});
	it('any more and cannot be opened is said once, and again when it is well', async () => {
		const tab = await openTab();
		await changes(tab, 'a');
		const barred = vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => {
			throw new DOMException('gone', 'UnknownError');
		});
		tab.keeper?.lostStore();
		await changes(tab, 'b', 'c');
		expect(tab.said).toEqual([expect.stringMatching(/did not keep its last steps/)]);
		tab.undo();
		expect(tab.file()).toBe(file('b'));
		barred.mockRestore();
		await changes(tab, 'd');
		expect(tab.said).toEqual([expect.any(String), null]);
		expect(await labels('d')).toEqual(['to a', 'to b', 'to d']);
	});
});

describe('a store with little room', () => {
	/** Room for so many steps; what is beyond it is refused as browsers do. */
	function roomFor(steps: number): void {
		const put = IDBObjectStore.prototype.put;
		const held = new Set<unknown>();
		const remove = IDBObjectStore.prototype.delete;
		vi.spyOn(IDBObjectStore.prototype, 'delete').mockImplementation(function (this: IDBObjectStore, range) {
			if (range instanceof IDBKeyRange) for (const key of held) if (range.includes(key)) held.delete(key);
			return remove.call(this, range);
		});
		vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value, key) {
			if (this.name === 'steps' && !held.has(key) && held.size >= steps)
				throw new DOMException('full', 'QuotaExceededError');
			if (this.name === 'steps') held.add(key);
			return put.call(this, value, key);
		});
	}
	it('lets the oldest go first, and says how many are kept', async () => {
		roomFor(350);
		const tab = await openTab();
		const names = Array.from({ length: 400 }, (_, n) => `n${n}`);
		for (const name of names) {
			tab.change(named(name), `to ${name}`);
			if (name.endsWith('9')) await tab.idle();
		}
		await tab.idle();
		expect(tab.said).toEqual([expect.stringMatching(/only your last 300 undo steps are kept/)]);
		expect(tab.history.past.length).toBe(400);
		const after = await openTab(file('n399'));
		expect(after.history.past.length).toBe(300);
		expect(everyFile(after).back).toEqual(names.slice(99, 399).toReversed().map(file));
	});
	it('for nothing at all says so once, and undo goes on', async () => {
		roomFor(0);
		const tab = await openTab();
		await changes(tab, 'a', 'b');
		expect(tab.said).toEqual([expect.stringMatching(/no room left/)]);
		tab.undo();
		expect(tab.file()).toBe(file('a'));
	});
});

describe('a kept list that is not sound', () => {
	async function tampered(change: (steps: IDBObjectStore, head: IDBObjectStore) => void): Promise<UndoTab> {
		const tab = await openTab();
		await changes(tab, 'a', 'b', 'c', 'd');
		const db = await openDB(databaseName, 1);
		const tx = db.transaction(['steps', 'head'], 'readwrite');
		change(tx.objectStore('steps') as unknown as IDBObjectStore, tx.objectStore('head') as unknown as IDBObjectStore);
		await tx.done;
		db.close();
		return openTab(file('d'));
	}
	it.each<[string, (steps: IDBObjectStore, head: IDBObjectStore) => void, string[]]>([
		['a step is missing', (steps) => steps.delete(2), ['to c', 'to d']],
		['a step fits no text', (steps) => steps.put({ label: 'x', at: 1, gone: 'no', come: 'such' }, 2), ['to c', 'to d']],
		['a step is no step', (steps) => steps.put('?' as never, 3), ['to d']],
		['the head is gone', (_, head) => head.delete('head'), []],
		['the head is no head', (_, head) => head.put({ at: '4' }, 'head'), []],
		['the head is no yard', (_, head) => head.put({ at: 4, text: '{', mark: 'x' }, 'head'), []]
	])('is used as far as it holds together: %s', async (_what, change, left) => {
		const tab = await tampered(change);
		expect([everyFile(tab).labels, tab.file()]).toEqual([left, file('d')]);
		await changes(tab, 'e');
		expect(await labels('e')).toEqual([...left, 'to e']);
	});
	it('is used ahead, too, as far as it holds together', async () => {
		const tab = await openTab();
		await changes(tab, 'a', 'b', 'c');
		for (let i = 0; i < 3; i += 1) tab.undo();
		await tab.idle();
		const db = await openDB(databaseName, 1);
		await db.put('steps', { label: 'x', at: 1, gone: 'no', come: 'such' }, 2);
		db.close();
		expect(everyFile(await openTab(writeYard(blankYard())))).toEqual({
			back: [],
			ahead: [file('a')],
			labels: ['to a']
		});
	});
	it('ends, in words, at a yard that can no longer be read', async () => {
		const tab = await tampered((steps) =>
			steps.put({ label: 'from nowhere', at: 0, gone: 'not a yard', come: file('d') }, 4)
		);
		expect(everyFile(tab).labels).toEqual(['from nowhere']);
		tab.undo();
		expect([tab.file(), tab.history.past.length]).toEqual([file('d'), 0]);
		expect(tab.said.at(-1)).toMatch(/^Undo ends here/);
	});
	it('is brought into today’s form when its files were written otherwise', async () => {
		const first = await openTab();
		await changes(first, 'a', 'b', 'c');
		first.undo();
		await first.idle();
		// The same yards in a file without line ends, as another version might have written them.
		const small = (name: string) => JSON.stringify(JSON.parse(file(name)));
		const texts = [JSON.stringify(blankYard()), ...['a', 'b', 'c'].map(small)];
		const { keptOf } = await import('./kept');
		const db = await openDB(databaseName, 1);
		const tx = db.transaction(['steps', 'head'], 'readwrite');
		for (const n of [1, 2, 3])
			await tx.objectStore('steps').put(keptOf(`step ${n}`, texts[n - 1] ?? '', texts[n] ?? ''), n);
		await tx.objectStore('head').put({ at: 2, text: texts[2], mark: 'old' }, 'head');
		await tx.done;
		db.close();
		const all = {
			back: [file('a'), writeYard(blankYard())],
			ahead: [file('c')],
			labels: ['step 1', 'step 2', 'step 3']
		};
		const tab = await openTab(file('b'));
		expect(everyFile(tab)).toEqual(all);
		tab.undo();
		tab.redo();
		await tab.idle();
		expect(everyFile(await openTab(file('b')))).toEqual(all);
	});
});
