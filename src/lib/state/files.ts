/** A yard to a file and back. Nothing here touches the yard in hand. */
import type { Yard } from '../domain/yard';
import { readYard, writeYard } from '../domain/yard';

export const extension = '.duskwright.json';
/** A yard, and a picture in it. */
const mostBytes = 9_000_000;

/** A file name from the yard's name: letters and digits of any script, dashes between. */
export function fileName(yard: Yard): string {
	const name = (yard.name ?? '')
		.normalize('NFKC')
		.toLowerCase()
		.replace(/[^\p{L}\p{N}]+/gu, '-')
		.replace(/^-+|-+$/g, '')
		.slice(0, 40)
		.replace(/-+$/, '');
	return `${name || 'yard'}${extension}`;
}

/** Hands text or bytes to the browser's downloads as a file. */
export function download(name: string, text: BlobPart, type = 'application/json'): void {
	const url = URL.createObjectURL(new Blob([text], { type }));
	const link = document.createElement('a');
	link.href = url;
	link.download = name;
	document.body.append(link);
	link.click();
	link.remove();
	// Safari reads the address after the click has returned
	setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** What reads and writes pictures: most yards have none. */
const pictureParts = () => import('./files-pictures');
export interface SavedFile {
	name: string;
	/** False: the picture under the drawing is not in it. Say so. */
	isWhole: boolean;
}
/** Downloads the yard, with its picture where it has one, as `name.duskwright.json`. */
export async function saveFile(yard: Yard): Promise<SavedFile> {
	const name = fileName(yard);
	// The answers are saved whether or not the picture can be.
	const whole = yard.underlay
		? await pictureParts().then(
				(parts) => parts.withPictures(yard),
				() => yard
			)
		: yard;
	download(name, writeYard(whole));
	return { name, isWhole: !yard.underlay || whole !== yard };
}
/** Downloads text that could not be read as a yard, as it is. */
export const saveAside = (text: string): void => download(`set-aside${extension}`, text);

export type OpenedFile = { ok: true; yard: Yard } | { ok: false; problems: string[] };
/** Reads a file that a person chose; a picture in it goes into the store. On failure: sentences saying what and where. */
export async function openFile(file: Pick<File, 'name' | 'size' | 'text'>): Promise<OpenedFile> {
	if (file.size > mostBytes) {
		return {
			ok: false,
			problems: [`${file.name} is too large to be a yard. Choose a file that ends in ${extension}.`]
		};
	}
	let text: string;
	try {
		text = await file.text();
	} catch {
		return {
			ok: false,
			problems: [`${file.name} could not be read from this device. Copy it somewhere else and try again.`]
		};
	}
	const read = readYard(text);
	if (!read.ok || !read.yard.pictures) return read;
	return pictureParts().then(
		(parts) => parts.withoutPictures(read.yard),
		() => ({ ok: false, problems: ['What opens pictures did not load. Check the connection and reload.'] })
	);
}
