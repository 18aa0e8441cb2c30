import { createHash } from 'node:crypto';
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { hashOf, Pictures, type Picture } from './pictures';

beforeEach(() => {
	vi.unstubAllGlobals();
	vi.stubGlobal('indexedDB', new IDBFactory());
});
const picture = (seed: number, size = 1000): Picture => ({
	type: 'image/jpeg',
	bytes: Uint8Array.from({ length: size }, (_, i) => (i * 31 + seed * 7 + (i >> 8)) % 256)
});
/** A clock that goes on by one at each look. */
const ticking = () => {
	let now = 0;
	return () => (now += 1);
};

const neverAsked = () => Promise.reject(new Error('must not be asked'));

describe('the name of a picture', () => {
	it('is its SHA-256: the check value of FIPS 180-2, appendix B.1', async () =>
		expect(await hashOf(new TextEncoder().encode('abc'))).toBe(
			'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'
		));
	it('is that of another implementation', async () => {
		for (const size of [0, 1, 55, 56, 64, 1_200_000]) {
			const { bytes } = picture(size, size);
			expect(await hashOf(bytes)).toBe(createHash('sha256').update(bytes).digest('hex'));
		}
	});
});

describe('the store of pictures', () => {
	it('gives back the bytes that were put, also to the next visit', async () => {
		const { id, kept } = await new Pictures().put(picture(1));
		expect(kept).toBe(true);
		const later = new Pictures();
		expect(await later.has(id)).toBe(true);
		expect(await later.get(id)).toEqual(picture(1));
	});
	it('holds one picture once', async () => {
		const store = new Pictures();
		expect((await store.put(picture(1))).id).toBe((await store.put(picture(1))).id);
	});
	it('says that it does not have one', async () => {
		const store = new Pictures();
		expect(await store.get('0'.repeat(64))).toBeNull();
		expect(await store.has('0'.repeat(64))).toBe(false);
	});
	it('is swept of what was used longest ago, never of what is needed', async () => {
		const store = new Pictures(undefined, ticking());
		const ids: string[] = [];
		for (let i = 0; i < 28; i += 1) ids.push((await store.put(picture(i))).id);
		await store.get(ids[2]!);
		const dropped = await store.sweep(() => Promise.resolve(new Set([ids[0]!])));
		expect(dropped.toSorted()).toEqual([ids[1], ids[3], ids[4]].toSorted());
		expect(await store.has(ids[0]!)).toBe(true);
		expect(await store.get(ids[1]!)).toBeNull();
		expect(await store.sweep(() => Promise.resolve(new Set([ids[0]!])))).toEqual([]);
	});
	it('is not swept while there are few', async () => {
		const store = new Pictures();
		const { id } = await store.put(picture(1));
		expect(await store.sweep(neverAsked)).toEqual([]);
		expect(await store.has(id)).toBe(true);
	});
	it('is wiped whole', async () => {
		const store = new Pictures();
		const { id } = await store.put(picture(1));
		await store.wipe();
		expect(await store.has(id)).toBe(false);
		expect(await new Pictures().get(id)).toBeNull();
	});
	it('serves from this tab where the browser keeps nothing, and says so', async () => {
		vi.stubGlobal('indexedDB', undefined);
		const store = new Pictures();
		const { id, kept } = await store.put(picture(1));
		expect(kept).toBe(false);
		expect(await store.get(id)).toEqual(picture(1));
		expect(await store.sweep(neverAsked)).toEqual([]);
		await store.wipe();
		expect(await store.get(id)).toBeNull();
	});
	it('serves from this tab where there is no room', async () => {
		const store = new Pictures();
		await store.has('0');
		const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
			throw new DOMException('full', 'QuotaExceededError');
		});
		const { id, kept } = await store.put(picture(1));
		full.mockRestore();
		expect(kept).toBe(false);
		expect(await store.get(id)).toEqual(picture(1));
		expect(await new Pictures().has(id)).toBe(false);
	});
});
