import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { blankYard, writeYard, type Yard } from '../../domain/yard';
import { openStore, readList } from './store';
import { bareTab, everyFile, openTab, yardIn, type UndoTab } from './tab.testing';

beforeEach(() => {
	vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
	vi.unstubAllGlobals();
});
const example = readFileSync(join(import.meta.dirname, '../../domain/yard/examples/suburban.json'), 'utf8');
const alderBend = yardIn(example);
/** A yard of a hundred trees and walks. */
const large: Yard = {
	...alderBend,
	trees: Array.from({ length: 60 }, (_, i) => ({ ...alderBend.trees?.[i % 3], id: `tree-${i}`, name: 'oak' })),
	walks: Array.from({ length: 40 }, (_, i) => ({ ...alderBend.walks?.[0], id: `walk-${i}`, name: 'walk' }))
};
/** Change number n: answers come and go, lists grow, records of prices and rules keep their own order of keys. */
function turned(yard: Yard, n: number): Yard {
	const kinds: (() => Yard)[] = [
		() => ({ ...yard, house: { ...yard.house, depth: 8 + (n % 70) / 10 } }),
		() => ({ ...yard, name: n % 3 === 0 ? undefined : `Yard “${n}” 🌙` }),
		() => ({
			...yard,
			trees: [...(yard.trees ?? []).filter(({ id }) => !id.startsWith('new')), { id: `new-${n}`, name: 'oak' }]
		}),
		() => ({ ...yard, rules: { [`b.${n % 5}`]: n, ...yard.rules, [`a.${n % 7}`]: n } }),
		() => {
			const rest = Object.fromEntries(Object.entries(yard).filter(([key]) => key !== 'name')) as Yard;
			return { ...rest, done: [`step-${n}`, ...(yard.done ?? [])].slice(0, 30) };
		}
	];
	return kinds[n % kinds.length]?.() ?? yard;
}
function changeOften(tab: UndoTab, times: number): string[] {
	const files = [tab.file()];
	for (let n = 1; n <= times; n += 1) {
		tab.change(turned(tab.history.now, n), `change ${n}`);
		files.push(tab.file());
	}
	return files;
}
const kept = async () => {
	const databases = await indexedDB.databases();
	return databases.map(({ name }) => name);
};

describe('undo over a reload', () => {
	it.each([
		['Alder Bend', alderBend, 600],
		['a yard of a hundred trees and walks', large, process.env.LONG ? 600 : 60]
	])('keeps the steps of %s, to the byte, back and forth, each with its name', async (_name, yard, count) => {
		const first = await openTab(writeYard(yard));
		const files = changeOften(first, count + 20).slice(-count - 1);
		await first.idle();

		const again = await openTab(first.file());
		expect(again.history.past.length).toBe(count === 600 ? 600 : count + 20);
		for (let n = count - 1; n >= 0; n -= 1) {
			again.undo();
			if (again.file() !== files[n]) expect(again.file(), `after undo to ${n}`).toBe(files[n]);
		}
		expect(again.history.future[0]?.label).toBe('change 21');
		await again.idle();

		const third = await openTab(again.file());
		expect(third.history.future.length).toBe(count);
		for (let n = 1; n <= count; n += 1) {
			third.redo();
			if (third.file() !== files[n]) expect(third.file(), `after redo to ${n}`).toBe(files[n]);
		}
		expect(third.file()).toBe(first.file());
		expect([third.said, again.said, first.said].flat()).toEqual([]);
	});
	it('keeps what is ahead until something else is changed', async () => {
		const first = await openTab();
		const files = changeOften(first, 5);
		for (let i = 0; i < 3; i += 1) first.undo();
		await first.idle();
		const second = await openTab(files[2]);
		expect(everyFile(second)).toEqual({
			back: [files[1], files[0]],
			ahead: files.slice(3),
			labels: [1, 2, 3, 4, 5].map((n) => `change ${n}`)
		});
		second.change(alderBend, 'opening Alder Bend');
		await second.idle();
		const third = await openTab(writeYard(alderBend));
		expect(everyFile(third)).toEqual({
			back: [files[2], files[1], files[0]],
			ahead: [],
			labels: ['change 1', 'change 2', 'opening Alder Bend']
		});
	});
	it('drops what was ahead even where it would fit the new yard', async () => {
		const named = (name: string): Yard => ({ ...blankYard(), name });
		const first = await openTab();
		for (const name of ['a', 'b', 'c']) first.change(named(name), `to ${name}`);
		await first.idle();
		first.undo();
		first.undo();
		first.change(named('b'), 'to b again');
		await first.idle();
		const { ahead, labels } = everyFile(await openTab(first.file()));
		expect([ahead, labels]).toEqual([[], ['to a', 'to b again']]);
	});
	it('takes the steps kept before those made while they were read', async () => {
		const first = await openTab();
		const files = changeOften(first, 3);
		await first.idle();
		const { tab, arrive } = bareTab(files[3]);
		tab.change(alderBend, 'one');
		tab.change(large, 'two');
		tab.undo();
		expect(tab.file()).toBe(writeYard(alderBend));
		await arrive();
		const all = {
			back: files.toReversed(),
			ahead: [writeYard(large)],
			labels: ['change 1', 'change 2', 'change 3', 'one', 'two']
		};
		expect(everyFile(tab)).toEqual(all);
		expect(everyFile(await openTab(tab.file()))).toEqual(all);
	});
	it('writes nothing while a page is only looked at', async () => {
		const first = await openTab();
		changeOften(first, 3);
		await first.idle();
		const looking = await openTab(writeYard(alderBend));
		expect(looking.history.past.at(-1)?.label).toBe('the last change');
		// The first tab still finds its own mark, and appends.
		first.change(large, 'on and on');
		await first.idle();
		const after = await openTab(writeYard(large));
		expect(everyFile(after).labels).toEqual(['change 1', 'change 2', 'change 3', 'on and on']);
	});
	it('takes little room: six hundred answers in a large yard are shorter than two of its files', async () => {
		const tab = await openTab(writeYard(large));
		for (let n = 0; n < 600; n += 1) {
			const { house } = tab.history.now;
			tab.change({ ...tab.history.now, house: { ...house, depth: 8 + n / 100 } }, 'Depth of the house');
		}
		await tab.idle();
		const db = await openStore(() => {});
		const found = await readList(db);
		db.close();
		expect(found?.list.past.length).toBe(600);
		expect(JSON.stringify(found?.list.past).length).toBeLessThan(2 * tab.file().length);
	});
	it('begins with a browser that has kept nothing', async () => {
		const tab = await openTab();
		expect([tab.history.past, tab.history.future, tab.said]).toEqual([[], [], []]);
		expect(await kept()).toEqual(['duskwright-undo']);
	});
});

describe('a tab that is cut off between its writes', () => {
	type Act = (tab: UndoTab) => void;
	const change =
		(n: number): Act =>
		(tab) =>
			tab.change(turned(tab.history.now, n), `change ${n}`);
	const acts: Act[] = [
		change(1),
		change(2),
		change(3),
		(tab) => tab.undo(),
		(tab) => tab.undo(),
		change(4),
		change(5),
		(tab) => tab.undo(),
		(tab) => tab.redo(),
		change(6),
		(tab) => tab.undo()
	];
	/** What the steps were after so many acts, and the yard's file after each. */
	async function after(count: number) {
		vi.stubGlobal('indexedDB', new IDBFactory());
		const tab = await openTab();
		const files = [tab.file()];
		for (const act of acts.slice(0, count)) {
			act(tab);
			files.push(tab.file());
		}
		await tab.idle();
		return { tab, files };
	}
	const points = acts.map((_, i) => i + 1);
	it.each(points)('finds yard and steps again when the steps were written up to act %i', async (written) => {
		const all = (await after(acts.length)).files;
		for (const [saved, file] of all.entries()) {
			const { tab } = await after(written);
			const { back, ahead } = everyFile(tab);
			const states = [...back.toReversed(), tab.file(), ...ahead];
			const found = await openTab(file);
			expect(found.file(), `yard of act ${saved}`).toBe(file);
			const seen = everyFile(found);
			// The yard is one of the states: all of them are there around it. It is not: one step more leads to it.
			if (states.includes(file)) expect([...seen.back.toReversed(), file, ...seen.ahead]).toEqual(states);
			else expect(seen).toMatchObject({ back: [tab.file(), ...back], ahead: [] });
			if (!states.includes(file)) expect(seen.labels.at(-1)).toBe('the last change');
			expect(found.said).toEqual([]);
		}
	});
	it('keeps what was found when it is changed again', async () => {
		const { files } = await after(3);
		const found = await openTab(writeYard(alderBend));
		found.change(large, 'more');
		await found.idle();
		expect(everyFile(await openTab(writeYard(large)))).toEqual({
			back: [writeYard(alderBend), ...files.toReversed()],
			ahead: [],
			labels: ['change 1', 'change 2', 'change 3', 'the last change', 'more']
		});
	});
	it('is offered the old steps when the yard itself is gone', async () => {
		const { files } = await after(3);
		const found = await openTab(writeYard(blankYard()));
		expect(everyFile(found).ahead).toEqual(files.slice(1));
	});
});
