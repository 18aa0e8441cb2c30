import { describe, expect, it } from 'vitest';
import { blankYard, writeYard, type Yard } from '../domain/yard';
import { asideTexts, keys, load, save, type Store } from './storage';
import { makeStore, quotaError } from './browser.testing';

const yard: Yard = { ...blankYard(), name: 'Alder Bend', trees: [{ id: 'oak', name: 'oak' }] };

describe('keeping a yard in the browser', () => {
	it('brings back what was kept, half-typed text too', () => {
		const store = makeStore();
		expect(save(store, yard, { 'house.depth|': "30'" })).toBeNull();
		expect(load(store)).toEqual({ yard, drafts: { 'house.depth|': "30'" }, problem: null, mayKeep: true });
	});
	it('leaves nothing behind of text that was committed', () => {
		const store = makeStore();
		save(store, yard, { 'house.depth|': "30'" });
		save(store, yard, {});
		expect(store.all()[keys.drafts]).toBeUndefined();
	});
	it('finds nothing in a fresh browser', () => {
		expect(load(makeStore())).toEqual({ yard: null, drafts: {}, problem: null, mayKeep: true });
	});
	it('says that there is no room', () => {
		const store = makeStore();
		store.failWith(quotaError());
		expect(save(store, yard, {})).toMatch(/no room left .* Save a copy now/);
	});
	it('says that the browser keeps nothing', () => {
		const store = makeStore();
		store.failWith(Object.assign(new Error('denied'), { name: 'SecurityError' }));
		expect(save(store, yard, {})).toMatch(/does not let Duskwright keep anything/);
		const barred: Store = {
			getItem() {
				throw new Error('denied');
			},
			setItem() {},
			removeItem() {}
		};
		expect(load(barred)).toMatchObject({
			yard: null,
			mayKeep: false,
			problem: expect.stringMatching(/does not let Duskwright keep/)
		});
		expect(asideTexts(barred)).toEqual([]);
	});
	it('says that an answer cannot be written, rather than keeping less than the yard', () => {
		const store = makeStore();
		save(store, yard, {});
		const wrong = { ...yard, house: { depth: Number.NaN } };
		expect(save(store, wrong, {})).toMatch(/cannot be written/);
		expect(store.all()[keys.yard]).toBe(writeYard(yard));
	});
});

describe('a kept yard that cannot be read', () => {
	const broken = [
		'{"format":"duskwright/yard","version":1,',
		'nonsense',
		JSON.stringify({ format: 'duskwright/yard', version: 99 })
	];
	it.each(broken)('is set aside as it is, and said: %s', (text) => {
		const store = makeStore({ [keys.yard]: text });
		const found = load(store);
		expect(found).toMatchObject({ yard: null, mayKeep: true });
		expect(found.problem).toMatch(/^The yard kept in this browser could not be read: .*\. It is set aside unchanged/);
		expect(asideTexts(store)).toEqual([text]);
		expect(save(store, yard, {})).toBeNull();
		expect(asideTexts(store)).toEqual([text]);
		expect(load(store)).toMatchObject({ yard, problem: null });
	});
	it('does not push out another that was set aside before', () => {
		const store = makeStore();
		for (const text of broken) {
			store.setItem(keys.yard, text);
			load(store);
			load(store);
		}
		expect(asideTexts(store)).toEqual(broken);
	});
	it('is not written over when it cannot be set aside', () => {
		const store = makeStore({ [keys.yard]: 'nonsense' });
		store.failWith(quotaError());
		expect(load(store)).toMatchObject({ mayKeep: false, problem: expect.stringMatching(/nothing new is kept/) });
		expect(store.all()[keys.yard]).toBe('nonsense');
	});
	it('does not take unreadable drafts for text', () => {
		for (const text of ['{', '[1]', '{"a":1}', 'null']) {
			const found = load(makeStore({ [keys.drafts]: text, [keys.yard]: writeYard(yard) }));
			expect(found).toMatchObject({ yard, drafts: {}, problem: expect.stringMatching(/^Half-typed text/) });
		}
	});
});
