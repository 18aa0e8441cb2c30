/** A yard to a file and back. Nothing here touches the yard in hand. */
import type { Yard } from '../domain/yard';
import { readYard, writeYard } from '../domain/yard';

export const extension = '.duskwright.json';
const mostBytes = 5_000_000;

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

/** Hands text to the browser's downloads as a file. */
export function download(name: string, text: string, type = 'application/json'): void {
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

/** Downloads the yard as `name.duskwright.json` and returns that name. */
export function saveFile(yard: Yard): string {
	const name = fileName(yard);
	download(name, writeYard(yard));
	return name;
}
/** Downloads text that could not be read as a yard, as it is. */
export const saveAside = (text: string): void => download(`set-aside${extension}`, text);

export type OpenedFile = { ok: true; yard: Yard } | { ok: false; problems: string[] };
/** Reads a file that a person chose. On failure: sentences saying what and where. */
export async function openFile(file: Pick<File, 'name' | 'size' | 'text'>): Promise<OpenedFile> {
	if (file.size > mostBytes) {
		return {
			ok: false,
			problems: [`${file.name} is too large to be a yard. Choose a file that ends in ${extension}.`]
		};
	}
	try {
		return readYard(await file.text());
	} catch {
		return {
			ok: false,
			problems: [`${file.name} could not be read from this device. Copy it somewhere else and try again.`]
		};
	}
}
