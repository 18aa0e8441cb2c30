import { describe, expect, it } from 'vitest';
import { decode, mostBytes, tooLarge } from './decode';

const text = 'code,name\r\n0017,Café “Ø” 12 €\r\n';
const bytes = (...list: number[]) => Uint8Array.from(list);
/** UTF-16 by hand: RFC 2781, section 3. */
const wide = (order: 'le' | 'be', mark: boolean): Uint8Array => {
	const units = (mark ? '\u{feff}' : '') + text;
	return Uint8Array.from(
		[...units].flatMap((letter) => {
			const code = letter.charCodeAt(0);
			return order === 'le' ? [code & 255, code >> 8] : [code >> 8, code & 255];
		})
	);
};

describe('bytes to text', () => {
	it('reads UTF-8 with and without its mark', () => {
		expect(decode(new TextEncoder().encode(text))).toEqual({ ok: true, text, encoding: 'UTF-8' });
		expect(decode(new TextEncoder().encode(`\u{feff}${text}`))).toEqual({ ok: true, text, encoding: 'UTF-8' });
	});
	it.each(['le', 'be'] as const)('reads UTF-16 %s with its mark, and without by its zeros', (order) => {
		const encoding = `UTF-16 ${order.toUpperCase()}`;
		expect(decode(wide(order, true))).toEqual({ ok: true, text, encoding });
		expect(decode(wide(order, false))).toEqual({ ok: true, text, encoding });
	});
	// The WHATWG Encoding Standard's index of windows-1252: 0x80 €, 0x93 “, 0xB0 °, 0xE9 é.
	it('takes what is no UTF-8 for Windows-1252, and says so', () => {
		expect(decode(bytes(0x80, 0x93, 0xb0, 0xe9))).toEqual({ ok: true, text: '€“°é', encoding: 'Windows-1252' });
	});
	// First bytes: PKWARE's APPNOTE 4.3.7 for zip; [MS-CFB] 2.2 for the older kind; ISO 32000-1, 7.5.2 for PDF.
	it.each([
		['a spreadsheet’s zip', bytes(0x50, 0x4b, 3, 4, 20, 0), /save as.*CSV/i],
		['an older spreadsheet', bytes(0xd0, 0xcf, 0x11, 0xe0, 0xa1), /save as.*CSV/i],
		['a PDF', bytes(0x25, 0x50, 0x44, 0x46, 0x2d), /PDF/],
		['bytes of zero', bytes(0x61, 0x2c, 0, 0, 0, 0x62, 0x63, 0x64, 0x65, 0x66, 0x67), /damaged or no CSV/]
	])('refuses %s, with what to do', (_name, file, words) => {
		const read = decode(file);
		expect(read.ok ? '' : read.why).toMatch(words);
	});
	it('refuses more than 50 MB before it looks at a byte', () => {
		expect(tooLarge(mostBytes)).toBeNull();
		expect(tooLarge(mostBytes + 1_000_000)).toMatch(/51 MB.*up to 50 MB/);
		const read = decode(new Uint8Array(mostBytes + 1));
		expect(read.ok ? '' : read.why).toMatch(/50 MB/);
	});
	it('reads nothing at all as empty text', () => {
		expect(decode(bytes())).toEqual({ ok: true, text: '', encoding: 'UTF-8' });
	});
});
