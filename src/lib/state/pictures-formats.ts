/** What a file is by its first bytes, how small a picture is made, and the words for what cannot be opened. */

/** Largest file that is opened, bytes: photos of today's cameras with room to spare. */
export const mostBytes = 60_000_000;
/** Largest picture that is kept, bytes: in a file of the yard it takes a third more. */
export const afterwards = 1_200_000;
/** Longer side in pixels and JPEG quality, tried in turn until the picture is small enough. */
export const tries = [
	{ side: 2400, quality: 0.85 },
	{ side: 2400, quality: 0.7 },
	{ side: 1800, quality: 0.7 },
	{ side: 1300, quality: 0.7 },
	{ side: 1000, quality: 0.6 }
] as const;

export type Format = 'jpeg' | 'png' | 'webp' | 'heic' | 'pdf' | 'tiff' | 'unknown';
const text = (bytes: Uint8Array, from: number, to: number) => String.fromCharCode(...bytes.subarray(from, to));

/** By the signatures that the formats' own standards put first. */
export function formatOf(head: Uint8Array): Format {
	if (head[0] === 0xff && head[1] === 0xd8 && head[2] === 0xff) return 'jpeg';
	if (text(head, 0, 4) === '\u0089PNG') return 'png';
	if (text(head, 0, 4) === 'RIFF' && text(head, 8, 12) === 'WEBP') return 'webp';
	if (text(head, 4, 8) === 'ftyp' && /^(hei[cfmsx]|hev[cmsx]|mif1|msf1)$/.test(text(head, 8, 12))) return 'heic';
	if (text(head, 0, 5) === '%PDF-') return 'pdf';
	if (['II*\0', 'MM\0*'].includes(text(head, 0, 4))) return 'tiff';
	return 'unknown';
}
/** Width and height with the longer one at most `side`, whole pixels, at least one. Never made larger. */
export function scaledTo({ width, height }: { width: number; height: number }, side: number) {
	const by = Math.min(1, side / Math.max(width, height));
	return { width: Math.max(1, Math.round(width * by)), height: Math.max(1, Math.round(height * by)) };
}

const why: Record<Format, string> = {
	pdf: 'is a PDF, which has pages rather than a picture. Save the page as an image, or take a picture of it on the screen, and open that.',
	heic: 'is a HEIC picture, which this browser cannot open. Save it as JPEG on the device that took it, and open that.',
	tiff: 'is a TIFF picture, which this browser cannot open. Save it as JPEG or PNG, and open that.',
	jpeg: 'begins like a JPEG picture but is broken or cut short. Copy it once more from where it came, or save it anew.',
	png: 'begins like a PNG picture but is broken or cut short. Copy it once more from where it came, or save it anew.',
	webp: 'begins like a WebP picture but is broken or cut short. Copy it once more from where it came, or save it anew.',
	unknown: 'is not a picture that this browser can open. Choose a JPEG, PNG or WebP file.'
};
export const notOpened = (name: string, format: Format): string => `${name} ${why[format]}`;
export const notEven = {
	huge: (name: string) =>
		`${name} is over ${mostBytes / 1e6} MB, too large to open here. Save a smaller copy of it: 2,400 pixels on the longer side are enough.`,
	empty: (name: string) => `${name} is empty. Copy it once more from where it came.`,
	gone: (name: string) => `${name} could not be read from this device. Copy it somewhere else and try again.`,
	room: (name: string) =>
		`${name} has more pixels than this browser can work on. Save a smaller copy of it: 2,400 pixels on the longer side are enough.`
};
