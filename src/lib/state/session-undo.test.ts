import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { blankYard, writeYard } from '../domain/yard';
import { clearEverything } from './clear';
import { pictures, wipePictures } from './pictures';
import { Session } from './session.svelte';
import { keys } from './storage';
import { openStore, readList } from './undo/store';

/** As much of a browser as the session touches, with `localStorage` as browsers have it: its keys are its own. */
class Local {
	[key: string]: unknown;
	getItem(key: string): string | null {
		const value = Object.hasOwn(this, key) ? this[key] : null;
		return typeof value === 'string' ? value : null;
	}
	setItem(key: string, text: string): void {
		this[key] = text;
	}
	removeItem(key: string): void {
		delete this[key];
	}
}
let local: Local;
let leave: () => void;
async function openTab(): Promise<Session> {
	const heard: (() => void)[] = [];
	vi.stubGlobal('window', {
		localStorage: local,
		addEventListener: (name: string, run: () => void) => name === 'pagehide' && heard.push(run),
		setTimeout: () => 0,
		clearTimeout: () => {}
	});
	vi.stubGlobal('document', { visibilityState: 'visible', addEventListener: () => {} });
	leave = () => heard.forEach((run) => run());
	const session = new Session();
	await session.start();
	return session;
}
const depth = (session: Session, value: number) => session.answer('house.depth', null, undefined, value);
/** The steps up to the yard in hand are in the store. */
const written = (session: Session) =>
	vi.waitFor(async () => {
		const db = await openStore(() => {});
		const found = await readList(db);
		db.close();
		expect(found?.list.text).toBe(writeYard(session.yard));
	});
beforeEach(() => {
	local = new Local();
	vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
	vi.unstubAllGlobals();
});

describe('a session opened again', () => {
	it('undoes and redoes what was done before, with its name', async () => {
		const first = await openTab();
		depth(first, 9);
		depth(first, 10);
		first.answer('name', null, undefined, 'Alder Bend');
		first.undo();
		await written(first);
		leave();
		const session = await openTab();
		expect(session.yard.house.depth).toBe(10);
		await vi.waitFor(() =>
			expect([session.undoLabel, session.redoLabel]).toEqual(['Depth of the house', 'Name of the yard'])
		);
		session.undo();
		session.undo();
		expect([writeYard(session.yard), session.canUndo]).toEqual([writeYard(blankYard()), false]);
		for (let i = 0; i < 3; i += 1) session.redo();
		expect(session.yard).toMatchObject({ name: 'Alder Bend', house: { depth: 10 } });
		leave();
		expect(local.getItem(keys.yard)).toBe(writeYard(session.yard));
	});
	it('undoes at once, before what was kept has come', async () => {
		const first = await openTab();
		depth(first, 9);
		await written(first);
		leave();
		const session = await openTab();
		expect(session.canUndo).toBe(false);
		depth(session, 10);
		depth(session, 11);
		session.undo();
		expect(session.yard.house.depth).toBe(10);
		await written(session);
		session.undo();
		session.undo();
		expect([session.yard, session.canUndo]).toEqual([blankYard(), false]);
		for (let i = 0; i < 3; i += 1) session.redo();
		expect([session.yard.house.depth, session.canRedo]).toEqual([11, false]);
	});
	it('loads nothing to keep undo while a first visit changes nothing', async () => {
		await openTab();
		await new Promise((resolve) => setTimeout(resolve, 20));
		expect(await indexedDB.databases()).toEqual([]);
	});
	it('says so where the browser keeps no steps, and undo works', async () => {
		vi.stubGlobal('indexedDB', undefined);
		const session = await openTab();
		depth(session, 9);
		await vi.waitFor(() => expect(session.undoProblem).toMatch(/Undo works until you close this page/));
		session.undo();
		expect([session.yard, session.saveProblem]).toEqual([blankYard(), null]);
	});
});

describe('clearing everything', () => {
	it('leaves nothing of ours, and nothing comes back', async () => {
		local.setItem('neighbour', 'theirs');
		local.setItem('duskwright/theme', 'dark');
		local.setItem(keys.aside, 'nonsense');
		const session = await openTab();
		depth(session, 9);
		session.setDraft('house.eaves', null, 'nine');
		leave();
		depth(session, 10);
		await pictures.put({ type: 'image/png', bytes: new Uint8Array([1, 2, 3]) });
		const asked: string[] = [];
		const other = { what: 'other things', wipe: async () => void asked.push('other') };
		expect(await clearEverything(session, [{ what: 'pictures', wipe: wipePictures }, other])).toBeNull();
		leave();
		expect([session.yard, session.canUndo, session.canRedo, session.drafts]).toEqual([blankYard(), false, false, {}]);
		expect([{ ...local }, asked]).toEqual([{ neighbour: 'theirs' }, ['other']]);
		const names = (await indexedDB.databases()).map(({ name }) => name);
		expect(names).not.toContain('duskwright-undo');
		const again = await openTab();
		await new Promise((resolve) => setTimeout(resolve, 20));
		expect([again.yard, again.canUndo]).toEqual([blankYard(), false]);
		// What is done afterwards is kept as ever.
		depth(again, 8);
		await written(again);
		leave();
		const third = await openTab();
		await vi.waitFor(() => expect([third.yard.house.depth, third.canUndo]).toEqual([8, true]));
		third.undo();
		expect([third.yard, third.canUndo]).toEqual([blankYard(), false]);
	});
	it('says what may be left', async () => {
		const session = await openTab();
		const stuck = { what: 'pictures', wipe: () => Promise.reject(new Error('busy')) };
		expect(await clearEverything(session, [stuck])).toMatch(/^Not everything could be cleared: pictures may still/);
	});
});
