/** Bytes of a file to text. What is no text at all is refused with what to do instead. */

export type Decoded = { ok: true; text: string; encoding: string } | { ok: false; why: string };

/** 50 MB: far beyond any shop's list, and as much as a page can hold twice over. */
export const mostBytes = 50_000_000;
/** Said before a file is opened, so that its bytes need not be loaded at all. */
export const tooLarge = (bytes: number): string | null =>
	bytes > mostBytes
		? `This file has ${Math.round(bytes / 1_000_000)} MB; a list may have up to 50 MB. Save only the goods for garden lighting and open that.`
		: null;

const begins = (bytes: Uint8Array, ...magic: number[]): boolean => magic.every((byte, i) => bytes[i] === byte);
const saveAsCsv = 'Open it in your spreadsheet, choose “Save as”, take CSV, and open that file here.';

function foreign(bytes: Uint8Array): string | null {
	if (begins(bytes, 0x50, 0x4b, 0x03, 0x04))
		return `This is a spreadsheet’s own file or a zip, not a CSV. ${saveAsCsv}`;
	if (begins(bytes, 0xd0, 0xcf, 0x11, 0xe0)) return `This is an older spreadsheet’s own file, not a CSV. ${saveAsCsv}`;
	if (begins(bytes, 0x25, 0x50, 0x44, 0x46))
		return 'This is a PDF. A list can only be read from a CSV: ask whoever made it for one.';
	return null;
}
/** UTF-16 without its mark shows by the zeros: nearly every letter of a list has one, always on the same side. */
function unmarked16(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
	const look = Math.min(bytes.length - (bytes.length % 2), 2000);
	if (look < 4) return null;
	const zeros = [0, 0];
	for (let i = 0; i < look; i++) if (bytes[i] === 0) zeros[i % 2]! += 1;
	const [even = 0, odd = 0] = zeros;
	if (odd > look * 0.3 && even < look * 0.05) return 'utf-16le';
	return even > look * 0.3 && odd < look * 0.05 ? 'utf-16be' : null;
}
const names = { 'utf-8': 'UTF-8', 'utf-16le': 'UTF-16 LE', 'utf-16be': 'UTF-16 BE', 'windows-1252': 'Windows-1252' };
/** 0x80 to 0x9f by the WHATWG Encoding Standard: some runtimes leave these bytes as they are. */
const high = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';
const windows1252 = (text: string): string =>
	text.replace(/[\u0080-\u009f]/g, (letter) => high[letter.charCodeAt(0) - 0x80]!);
function decodeAs(bytes: Uint8Array, label: keyof typeof names): Decoded {
	const text = new TextDecoder(label, { fatal: label === 'utf-8' }).decode(bytes);
	if (text.includes('\0'))
		return {
			ok: false,
			why: `This file holds bytes that no text has, so it is damaged or no CSV. ${saveAsCsv}`
		};
	return { ok: true, text: label === 'windows-1252' ? windows1252(text) : text, encoding: names[label] };
}
function isUtf8(bytes: Uint8Array): boolean {
	try {
		new TextDecoder('utf-8', { fatal: true }).decode(bytes);
		return true;
	} catch {
		// The one way a decoder has of saying that the bytes are no UTF-8.
		return false;
	}
}

/**
 * The text of a file, its byte-order mark taken away, and how its letters were taken: UTF-8, UTF-16 (by its mark, or by its zeros), and
 * Windows-1252, as older spreadsheets write, where it is none of these. Refuses more than 50 MB, spreadsheets' own files and bytes of
 * zero, each with what to do.
 */
export function decode(bytes: Uint8Array): Decoded {
	const why = tooLarge(bytes.length) ?? foreign(bytes);
	if (why) return { ok: false, why };
	if (begins(bytes, 0xff, 0xfe)) return decodeAs(bytes, 'utf-16le');
	if (begins(bytes, 0xfe, 0xff)) return decodeAs(bytes, 'utf-16be');
	const wide = unmarked16(bytes);
	if (wide) return decodeAs(bytes, wide);
	return decodeAs(bytes, isUtf8(bytes) ? 'utf-8' : 'windows-1252');
}
