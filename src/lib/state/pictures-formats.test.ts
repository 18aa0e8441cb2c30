import { describe, expect, it } from 'vitest';
import { formatOf, notOpened, scaledTo, tries } from './pictures-formats';

const bytes = (...parts: (string | number)[]) =>
	Uint8Array.from(parts.flatMap((part) => (typeof part === 'number' ? [part] : [...part].map((c) => c.charCodeAt(0)))));

describe('what a file is by its first bytes', () => {
	it.each([
		// ISO/IEC 10918-1, B.1.1.3: SOI, then a marker.
		['jpeg', bytes(0xff, 0xd8, 0xff, 0xe1)],
		// W3C PNG (Third Edition), 5.2: the signature.
		['png', bytes(0x89, 'PNG', 13, 10, 26, 10)],
		// RFC 9649, 2.4: the RIFF header.
		['webp', bytes('RIFF', 1, 2, 3, 4, 'WEBPVP8 ')],
		// ISO/IEC 23008-12, 10.2: brands of the image formats in the file type box of ISO/IEC 14496-12.
		['heic', bytes(0, 0, 0, 24, 'ftypheic')],
		['heic', bytes(0, 0, 0, 24, 'ftypmif1')],
		// ISO 32000-2, 7.5.2.
		['pdf', bytes('%PDF-1.7')],
		// TIFF 6.0, section 2: byte order, then 42.
		['tiff', bytes('II', 42, 0)],
		['tiff', bytes('MM', 0, 42)],
		['unknown', bytes('<svg xmlns')],
		['unknown', bytes('RIFF', 1, 2, 3, 4, 'WAVE')],
		['unknown', bytes()]
	] as const)('%s', (format, head) => expect(formatOf(head)).toBe(format));
	it('says what to do with a PDF', () => expect(notOpened('plat.pdf', 'pdf')).toMatch(/^plat\.pdf is a PDF.*image/));
});

describe('how small a picture is made', () => {
	it.each([
		[4000, 3000, 2400, 1800],
		[3000, 4000, 1800, 2400],
		[800, 600, 800, 600],
		[2400, 2400, 2400, 2400],
		[20000, 3, 2400, 1]
	])('%i × %i becomes %i × %i', (width, height, w, h) =>
		expect(scaledTo({ width, height }, 2400)).toEqual({ width: w, height: h })
	);
	it('each try is smaller than the one before', () => {
		for (const [i, { side, quality }] of tries.slice(1).entries()) {
			expect(side).toBeLessThanOrEqual(tries[i]!.side);
			expect(side * quality).toBeLessThan(tries[i]!.side * tries[i]!.quality);
		}
	});
});
