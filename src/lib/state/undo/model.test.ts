import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import * as fc from 'fast-check';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { writeYard } from '../../domain/yard';
import { randomYard } from '../../domain/yard/random.testing';
import { everyFile, openTab } from './tab.testing';

beforeAll(() => {
	vi.stubGlobal('indexedDB', new IDBFactory());
});
afterAll(() => {
	vi.unstubAllGlobals();
});
const runs = process.env.LONG ? 1500 : 60;
const yards = Array.from({ length: 12 }, (_, seed) => randomYard(seed + 1));
const files = yards.map(writeYard);

const act = fc.oneof(
	{ weight: 5, arbitrary: fc.nat(yards.length - 1) },
	{ weight: 4, arbitrary: fc.constantFrom<'undo' | 'redo'>('undo', 'redo') },
	{ weight: 2, arbitrary: fc.constantFrom<'write' | 'reload'>('write', 'reload') }
);

test('agrees with a plain list of files and a finger on one of them, over reloads at any time', async () => {
	await fc.assert(
		fc.asyncProperty(fc.array(act, { maxLength: 40 }), async (acts) => {
			vi.stubGlobal('indexedDB', new IDBFactory());
			let states = [files[0] ?? ''];
			let labels: string[] = [];
			let finger = 0;
			let tab = await openTab(states[0]);
			for (const one of acts) {
				if (one === 'undo') {
					tab.undo();
					finger = Math.max(0, finger - 1);
				} else if (one === 'redo') {
					tab.redo();
					finger = Math.min(states.length - 1, finger + 1);
				} else if (one === 'write') await tab.idle();
				else if (one === 'reload') {
					await tab.idle();
					await tab.keeper?.stop();
					tab = await openTab(tab.file());
				} else if (files[one] !== states[finger]) {
					tab.change(yards[one] ?? tab.history.now, `yard ${one}`);
					states = [...states.slice(0, finger + 1), files[one] ?? ''];
					labels = [...labels.slice(0, finger), `yard ${one}`];
					finger += 1;
				}
				expect(tab.file()).toBe(states[finger]);
				if (one !== 'reload') continue;
				expect(everyFile(tab)).toEqual({
					back: states.slice(0, finger).toReversed(),
					ahead: states.slice(finger + 1),
					labels
				});
			}
		}),
		{ numRuns: runs }
	);
});
