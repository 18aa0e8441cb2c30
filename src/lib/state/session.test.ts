import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { blankYard, readYard, writeYard, type Yard } from '../domain/yard';
import { Session } from './session.svelte';
import { keys } from './storage';
import { makeStore, makeTimers, quotaError, type TestStore, type TestTimers } from './browser.testing';

/** As much of a browser as the session touches. */
interface Tab {
	session: Session;
	timers: TestTimers;
	fire(name: string, event?: Record<string, unknown>): void;
	hide(): void;
}
function openTab(store: TestStore | null): Tab {
	const timers = makeTimers();
	const heard = new Map<string, ((event: unknown) => void)[]>();
	const addEventListener = (name: string, run: (event: unknown) => void) =>
		heard.set(name, [...(heard.get(name) ?? []), run]);
	const document = { visibilityState: 'visible', addEventListener };
	vi.stubGlobal('window', {
		get localStorage() {
			if (!store) throw new DOMException('denied', 'SecurityError');
			return store;
		},
		addEventListener,
		setTimeout: timers.set,
		clearTimeout: timers.clear
	});
	vi.stubGlobal('document', document);
	vi.stubGlobal('performance', { now: timers.now });
	const fire = (name: string, event: Record<string, unknown> = {}) => heard.get(name)?.forEach((run) => run(event));
	const hide = () => {
		document.visibilityState = 'hidden';
		fire('visibilitychange');
	};
	return { session: new Session(), timers, fire, hide };
}
const kept = (store: TestStore): Yard | null => {
	const read = readYard(store.all()[keys.yard] ?? '');
	return read.ok ? read.yard : null;
};
let store: TestStore;
beforeEach(() => {
	store = makeStore();
});
afterEach(() => {
	vi.unstubAllGlobals();
});

describe('answers', () => {
	it('are written, undone and redone, with a name for each', () => {
		const { session } = openTab(store);
		expect(session.answer('house.depth', null, undefined, 9)).toBe(true);
		session.answers([
			{ path: 'place.units', item: null, each: undefined, value: 'metres' },
			{ path: 'name', item: null, each: undefined, value: 'Alder Bend' }
		]);
		expect(session.yard).toMatchObject({ name: 'Alder Bend', house: { depth: 9 }, place: { units: 'metres' } });
		expect([session.units, session.undoLabel, session.canRedo]).toEqual(['metres', 'Units', false]);
		session.undo();
		expect(session.yard).toEqual({ ...blankYard(), house: { depth: 9 } });
		expect([session.undoLabel, session.redoLabel]).toEqual(['Depth of the house', 'Units']);
		session.undo();
		expect([session.yard, session.canUndo, session.canRedo]).toEqual([blankYard(), false, true]);
		session.redo();
		expect(session.yard.house.depth).toBe(9);
	});
	it('that no yard can hold are refused, all of them, and the yard stays', () => {
		const { session } = openTab(store);
		session.setDraft('house.depth', null, '900');
		const before = session.yard;
		expect(session.answer('house.depth', null, undefined, 900)).toBe(false);
		expect(session.answer('house.openings', null, undefined, [{ id: 'opening-1' }])).toBe(false);
		expect(
			session.answers([
				{ path: 'house.eaves', item: null, each: undefined, value: 3 },
				{ path: 'house.depth', item: null, each: undefined, value: Number.NaN }
			])
		).toBe(false);
		expect(session.yard).toBe(before);
		expect(session.canUndo).toBe(false);
		expect(session.draft('house.depth')).toBe('900');
	});
	it('drop the text they were typed as; another yard drops all of it', () => {
		const { session } = openTab(store);
		session.setDraft('house.depth', null, "30'");
		session.setDraft('@.spread', 'oak', '6 m or so');
		expect([session.draft('house.depth'), session.draft('@.spread', 'oak'), session.draft('@.spread', 'elm')]).toEqual([
			"30'",
			'6 m or so',
			null
		]);
		session.answer('house.depth', null, undefined, 9);
		expect([session.draft('house.depth'), session.draft('@.spread', 'oak')]).toEqual([null, '6 m or so']);
		session.replace({ ...blankYard(), name: 'Another' }, 'opening a file');
		expect(session.drafts).toEqual({});
		expect(session.undoLabel).toBe('opening a file');
		session.undo();
		expect(session.yard.house.depth).toBe(9);
	});
});

describe('the plan', () => {
	afterEach(() => {
		vi.doUnmock('../domain/plan');
		vi.resetModules();
	});
	it('is there once the engine is, and follows the answers', async () => {
		const { session } = openTab(store);
		expect([session.plan, session.planProblem]).toEqual([null, null]);
		await Promise.all([session.loadEngine(), session.loadEngine()]);
		expect(session.plan?.format).toBe('duskwright/plan');
		expect(session.plan?.site.units).toBe('feet');
		session.answer('place.units', null, undefined, 'metres');
		expect(session.plan?.site.units).toBe('metres');
		expect([session.planProblem, session.engineProblem]).toEqual([null, null]);
	});
	it('is said to be out of reach when the engine does not load, and tried again', async () => {
		vi.doMock('../domain/plan', () => {
			throw new Error('offline');
		});
		const { session } = openTab(store);
		await session.loadEngine();
		expect(session.plan).toBeNull();
		expect(session.engineProblem).toMatch(/did not load/);
		vi.doUnmock('../domain/plan');
		vi.resetModules();
		await session.loadEngine();
		expect(session.plan).not.toBeNull();
		expect(session.engineProblem).toBeNull();
	});
	it('that cannot be worked out is said, and the answers stay', async () => {
		vi.doMock('../domain/plan', () => ({
			makePlan: () => {
				throw new Error('a bug');
			}
		}));
		const { session } = openTab(store);
		await session.loadEngine();
		session.answer('house.depth', null, undefined, 9);
		expect([session.plan, session.yard.house.depth]).toEqual([null, 9]);
		expect(session.planProblem).toMatch(/could not be worked out/);
	});
});

describe('keeping', () => {
	it('does nothing where there is no browser', async () => {
		const session = new Session();
		await session.start();
		session.answer('house.depth', null, undefined, 9);
		expect([session.ready, session.savedAt, session.saveProblem]).toEqual([false, null, null]);
	});
	it('brings back yard and half-typed text after a reload, saved within a second', async () => {
		const first = openTab(store);
		await first.session.start();
		first.session.answer('house.depth', null, undefined, 9);
		first.session.setDraft('house.eaves', null, "9'");
		expect(first.session.savedAt).toBeNull();
		first.timers.pass(1000);
		expect(first.session.savedAt).toBeInstanceOf(Date);

		const { session } = openTab(store);
		await session.start();
		await session.start();
		expect(session.ready).toBe(true);
		expect(session.yard.house.depth).toBe(9);
		expect(session.draft('house.eaves')).toBe("9'");
		expect([session.canUndo, session.saveProblem, session.loadProblem]).toEqual([false, null, null]);
	});
	it.each(['pagehide', 'visibilitychange'])('saves at once on %s', async (way) => {
		const tab = openTab(store);
		await tab.session.start();
		tab.session.answer('house.depth', null, undefined, 9);
		if (way === 'pagehide') tab.fire(way);
		else tab.hide();
		expect(kept(store)?.house.depth).toBe(9);
	});
	it('keeps what undo brings back', async () => {
		const tab = openTab(store);
		await tab.session.start();
		tab.session.answer('house.depth', null, undefined, 9);
		tab.timers.pass(1000);
		tab.session.undo();
		tab.timers.pass(1000);
		expect(kept(store)).toEqual(blankYard());
	});
	it('says that there is no room, and that it is well again', async () => {
		const tab = openTab(store);
		await tab.session.start();
		store.failWith(quotaError());
		tab.session.answer('house.depth', null, undefined, 9);
		tab.timers.pass(1000);
		expect(tab.session.saveProblem).toMatch(/no room left/);
		expect(tab.session.savedAt).toBeNull();
		store.failWith(null);
		tab.session.answer('house.depth', null, undefined, 10);
		tab.timers.pass(1000);
		expect(tab.session.saveProblem).toBeNull();
		expect(kept(store)?.house.depth).toBe(10);
	});
	it('works without a store, and says that nothing is kept', async () => {
		const tab = openTab(null);
		await tab.session.start();
		expect(tab.session.ready).toBe(true);
		expect(tab.session.saveProblem).toMatch(/keeps nothing/);
		tab.session.answer('house.depth', null, undefined, 9);
		tab.timers.pass(1000);
		expect(tab.session.yard.house.depth).toBe(9);
		expect(tab.session.saveProblem).toMatch(/keeps nothing/);
	});
	it('sets a yard aside that it cannot read, says so until it is told, and goes on', async () => {
		store = makeStore({ [keys.yard]: '{"format":"duskwright/yard"' });
		const tab = openTab(store);
		await tab.session.start();
		tab.session.answer('house.depth', null, undefined, 9);
		tab.timers.pass(1000);
		expect(tab.session.loadProblem).toMatch(/set aside unchanged/);
		expect(tab.session.setAside()).toEqual(['{"format":"duskwright/yard"']);
		expect(kept(store)?.house.depth).toBe(9);
	});
	it('never writes over a yard that it could neither read nor set aside', async () => {
		store = makeStore({ [keys.yard]: 'precious' });
		store.failWith(quotaError());
		const tab = openTab(store);
		await tab.session.start();
		store.failWith(null);
		tab.session.answer('house.depth', null, undefined, 9);
		tab.timers.pass(5000);
		tab.fire('pagehide');
		expect(store.all()[keys.yard]).toBe('precious');
		expect(tab.session.saveProblem).toMatch(/nothing new is kept/);
	});
});

describe('two tabs', () => {
	const other: Yard = { ...blankYard(), name: 'Other' };
	async function withOther(): Promise<Tab> {
		const tab = openTab(store);
		await tab.session.start();
		tab.session.answer('house.depth', null, undefined, 9);
		tab.timers.pass(1000);
		store.setItem(keys.yard, writeYard(other));
		return tab;
	}
	it('warn, and let the other be taken, which undo takes back', async () => {
		const tab = await withOther();
		tab.fire('storage', { key: keys.yard, newValue: writeYard(other) });
		expect(tab.session.otherTab).toMatch(/another tab/);
		tab.session.takeOtherTab();
		expect([tab.session.otherTab, tab.session.yard]).toEqual([null, other]);
		tab.session.undo();
		expect(tab.session.yard.house.depth).toBe(9);
	});
	it('or this one be kept', async () => {
		const tab = await withOther();
		tab.fire('storage', { key: keys.yard, newValue: writeYard(other) });
		tab.session.keepThisTab();
		expect(tab.session.otherTab).toBeNull();
		expect(kept(store)?.house.depth).toBe(9);
	});
	it('say nothing of other keys, or of a store that was cleared', async () => {
		const tab = await withOther();
		tab.fire('storage', { key: 'theme', newValue: 'dark' });
		tab.fire('storage', { key: keys.yard, newValue: null });
		expect(tab.session.otherTab).toBeNull();
	});
	it('warn a page that comes back from the browser’s history', async () => {
		const tab = await withOther();
		tab.fire('pageshow', { persisted: false });
		expect(tab.session.otherTab).toBeNull();
		tab.fire('pageshow', { persisted: true });
		expect(tab.session.otherTab).toMatch(/another tab/);
	});
});
