import { Buffer } from 'node:buffer';
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import * as fc from 'fast-check';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { blankYard, readYard, writeYard, type Yard } from '../domain/yard';
import { openFile } from './files';
import { asAddress, ofAddress, withoutPictures, withPictures } from './files-pictures';
import { hashOf, Pictures, pictures, type Picture } from './pictures';

beforeEach(() => {
	vi.unstubAllGlobals();
	vi.stubGlobal('indexedDB', new IDBFactory());
});
const bytesOf = (size: number) => Uint8Array.from({ length: size }, (_, i) => (i * 7919 + (i >> 5)) % 256);
const picture = (size = 5000): Picture => ({ type: 'image/png', bytes: bytesOf(size) });
/** Byte by byte takes the test library ten seconds. */
const asText = (one: Picture | null) => one && [one.type, one.bytes.length, Buffer.from(one.bytes).toString('latin1')];
const yardWith = (id: string): Yard => ({
	...blankYard(),
	name: 'Juniper Close',
	underlay: { picture: id, width: 800, height: 600, opacity: 0.6, from: { x: 10.5, y: 20 }, to: { x: 700, y: 33 } }
});

describe('a picture as an address', () => {
	it('is what another implementation makes of the same bytes (base64 of RFC 4648), and comes back', () =>
		fc.assert(
			fc.property(fc.uint8Array({ maxLength: 300 }), (found) => {
				const one: Picture = { type: 'image/jpeg', bytes: Uint8Array.from(found) };
				expect(asAddress(one)).toBe(`data:image/jpeg;base64,${Buffer.from(found).toString('base64')}`);
				if (found.length > 0) expect(ofAddress(asAddress(one))).toEqual(one);
			}),
			{ numRuns: 300 }
		));
	it('of the largest size too', () =>
		expect(asText(ofAddress(asAddress(picture(1_200_000))))).toEqual(asText(picture(1_200_000))));
	it.each(['', 'data:text/html;base64,AAAA', 'data:image/png;base64,AAAAA', 'data:image/png,AAAA'])(
		'%j is none',
		(address) => expect(ofAddress(address)).toBeNull()
	);
});

describe('a yard with a picture', () => {
	it('goes into a file whole and comes out on another device, the picture by the same bytes', async () => {
		const here = new Pictures('here');
		const { id } = await here.put(picture(1_200_000));
		const text = writeYard(await withPictures(yardWith(id), here));
		const read = readYard(text);
		if (!read.ok) throw new Error(read.problems.join(' '));
		const there = new Pictures('there');
		expect(await withoutPictures(read.yard, there)).toEqual({ ok: true, yard: yardWith(id) });
		expect(asText(await there.get(id))).toEqual(asText(picture(1_200_000)));
		expect(writeYard(await withPictures(yardWith(id), there))).toBe(text);
	});
	it('in hand holds the name alone, whichever way it was opened', async () => {
		const id = await hashOf(picture().bytes);
		const text = writeYard({ ...yardWith(id), pictures: { [id]: asAddress(picture()) } });
		expect(await openFile(new File([text], 'a.json'))).toEqual({ ok: true, yard: yardWith(id) });
		expect(await pictures.get(id)).toEqual(picture());
	});
	it('is refused when the bytes are not those of the name', async () => {
		const id = await hashOf(picture().bytes);
		const other: Picture = { ...picture(), bytes: bytesOf(5001) };
		const text = writeYard({ ...yardWith(id), pictures: { [id]: asAddress(other) } });
		expect(await openFile(new File([text], 'a.json'))).toEqual({
			ok: false,
			problems: [expect.stringContaining('damaged or changed')]
		});
		expect(await new Pictures().has(id)).toBe(false);
	});
	it('is saved without it where this device does not have it, and opens so', async () => {
		const yard = yardWith('0'.repeat(64));
		expect(await withPictures(yard, new Pictures('empty'))).toBe(yard);
		expect(await openFile(new File([writeYard(yard)], 'a.json'))).toEqual({ ok: true, yard });
	});
	it('opens without it where the browser offers no cryptography', async () => {
		const id = await hashOf(picture().bytes);
		vi.stubGlobal('crypto', {});
		const yard: Yard = { ...yardWith(id), pictures: { [id]: asAddress(picture()) } };
		expect(await withoutPictures(yard, new Pictures('insecure'))).toEqual({ ok: true, yard: yardWith(id) });
	});
	it('is saved without it where the store cannot be read', async () => {
		const store = new Pictures('torn');
		vi.spyOn(store, 'get').mockRejectedValue(new DOMException('torn', 'UnknownError'));
		const yard = yardWith('0'.repeat(64));
		expect(await withPictures(yard, store)).toBe(yard);
	});
	it('leaves behind what nothing uses', async () => {
		const id = await hashOf(picture().bytes);
		const store = new Pictures('unused');
		const yard: Yard = { ...blankYard(), pictures: { [id]: asAddress(picture()) } };
		expect(await withoutPictures(yard, store)).toEqual({ ok: true, yard: blankYard() });
		expect(await store.has(id)).toBe(false);
	});
});
