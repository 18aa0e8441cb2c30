/**
 * Pictures travel in a file with their yard, and part from it when it is opened: in hand the yard holds only their names. Every picture is checked
 * against its name on the way in, so a file that was damaged on its way is refused rather than shown wrong.
 */
import type { Yard } from '../domain/yard';
import { hashOf, pictures, pictureTypes, type Picture, type Pictures } from './pictures';

/** As a data address (RFC 2397). In pieces: a call takes only so many arguments. */
export function asAddress({ type, bytes }: Picture): string {
	let binary = '';
	for (let i = 0; i < bytes.length; i += 0x8000) binary += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
	return `data:${type};base64,${btoa(binary)}`;
}
/** Null when it is no picture, or its base64 is cut short. */
export function ofAddress(address: string): Picture | null {
	const [, found, code] = /^data:([a-z/]+);base64,(.*)$/.exec(address) ?? [];
	const type = pictureTypes.find((one) => one === found);
	if (!type || code === undefined) return null;
	try {
		return { type, bytes: Uint8Array.from(atob(code), (letter) => letter.charCodeAt(0)) };
	} catch (error) {
		if (error instanceof DOMException && error.name === 'InvalidCharacterError') return null;
		throw error;
	}
}

/** The yard as it goes into a file. The same yard where there is no picture, or this device does not have it or cannot read it: the answers are saved all the same. */
export async function withPictures(yard: Yard, store: Pictures = pictures): Promise<Yard> {
	const id = yard.underlay?.picture;
	const picture = id ? await store.get(id).catch(() => null) : null;
	return id && picture ? { ...yard, pictures: { [id]: asAddress(picture) } } : yard;
}

export type Parted = { ok: true; yard: Yard } | { ok: false; problems: string[] };
/** The yard as it comes out of a file: its picture in the store, its name in the yard. A picture that nothing uses is left behind. */
export async function withoutPictures(yard: Yard, store: Pictures = pictures): Promise<Parted> {
	const { pictures: found = {}, ...rest } = yard;
	// Without https a browser offers nothing to check it with: the answers open, and the drawing says that the picture is not here.
	if (!globalThis.crypto?.subtle) return { ok: true, yard: rest };
	const problems: string[] = [];
	for (const [id, address] of Object.entries(found)) {
		const picture = ofAddress(address);
		if (!picture || (await hashOf(picture.bytes)) !== id)
			problems.push(
				`The picture in this file is not the one that was saved with it (${id.slice(0, 8)}…): the file was damaged or changed. Open another copy of it.`
			);
		else if (id === yard.underlay?.picture) await store.put(picture);
	}
	return problems.length > 0 ? { ok: false, problems } : { ok: true, yard: rest };
}
