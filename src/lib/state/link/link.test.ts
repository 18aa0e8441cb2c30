import { createHash } from 'node:crypto';
import { constants, deflateRawSync, inflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import {
	awkward,
	blankYard,
	examples,
	faulty,
	longestFile,
	outlines,
	readYard,
	writeYard,
	type Yard
} from '../../domain/yard';
import { randomYard } from '../../domain/yard/random.testing';
import { crc32 } from './crc';
import { dictionary } from './dictionary';
import { codeTextOf, linkOf, longestFragment, opens, travelling, yardFromFragment } from './index';
import { fromBase64url, fromDigits, toBase64url, toDigits } from './letters';
import { unpack } from './pack';

const base = 'https://duskwright.example/open/';
const after = (link: string) => link.slice(link.indexOf('#'));
const minimal = (yard: Yard) => JSON.stringify(JSON.parse(writeYard(yard)));
const starts = [...examples, ...awkward, ...faulty, ...outlines].map(({ title, yard }) => ({ title, yard }));
const example = starts[1]!.yard;

/** The bytes in a link, by other means than ours. */
const payload = (link: string) => Buffer.from(link.slice(link.indexOf('#') + 2), 'base64url');
/** A link made by zlib: check, then deflated text. */
function linkBy(text: string): string {
	const check = Buffer.alloc(4);
	check.writeUInt32BE(crc32(Buffer.from(text)));
	return `#a${Buffer.concat([check, deflateRawSync(text, { dictionary })]).toString('base64url')}`;
}
const expectSame = (yard: Yard, where: string) => {
	for (const link of [linkOf(yard, base), codeTextOf(yard, base)]) {
		const read = yardFromFragment(after(link));
		expect(read.ok ? writeYard(read.yard) : read.problems, where).toBe(writeYard(travelling(yard)));
	}
};
const problems = (fragment: string): string => {
	const read = yardFromFragment(fragment);
	return read.ok ? 'read' : read.problems.join(' ');
};

describe('a yard in a link', () => {
	it.each(starts)('comes out as it went in: $title', ({ title, yard }) => expectSame(yard, title));
	it('comes out as it went in, whatever the yard', () => {
		for (let seed = 1; seed <= (process.env.LONG ? 2000 : 150); seed += 1) expectSame(randomYard(seed), `seed ${seed}`);
	});
	it.each([
		['blank', blankYard()],
		['unicode', { ...blankYard(), name: 'Żółw 庭 🌳 "quoted" \\ \u0000\u2028' }],
		['half a surrogate pair', { ...blankYard(), name: 'a\ud800b' }],
		['awkward numbers', { ...blankYard(), lot: { street: 0.1 + 0.2 + 0.3, left: 5e-324, right: 1 / 3 } }],
		['done', { ...blankYard(), done: ['before/notice', 'trench/run-1'] }]
	])('keeps what is odd in it: %s', (what, yard) => expectSame(yard, what));
	it('leaves the picture and what belongs to it behind', () => {
		const id = 'ab'.repeat(32);
		const yard: Yard = {
			...example,
			underlay: { picture: id, width: 10, height: 10, opacity: 0.5 },
			pictures: { [id]: 'data:image/png;base64,AAAA' }
		};
		expect(linkOf(yard, base)).toBe(linkOf(example, base));
		expect(yard.underlay).toBeDefined();
	});
	it('is of signs that no mail program and no address changes: RFC 3986, unreserved', () => {
		expect(after(linkOf(example, base))).toMatch(/^#a[\w-]+$/);
		expect(after(codeTextOf(example, base))).toMatch(/^#1\d+$/);
		expect(new URL(linkOf(example, base)).href).toBe(linkOf(example, base));
	});
	it('may have spaces and line ends round it', () => {
		expect(yardFromFragment(` ${after(linkOf(example, base))} \n`).ok).toBe(true);
	});
});

describe('the format, against what is not ours', () => {
	it('is raw DEFLATE with a preset dictionary, as zlib understands it', () => {
		for (const { yard } of starts) {
			const bytes = payload(linkOf(yard, base));
			expect(inflateRawSync(bytes.subarray(4), { dictionary }).toString()).toBe(minimal(yard));
			const read = yardFromFragment(linkBy(minimal(yard)));
			expect(read.ok && writeYard(read.yard)).toBe(writeYard(yard));
		}
	});
	it('keeps its dictionary: links of today are to be read for good', () => {
		expect(createHash('sha256').update(dictionary).digest('hex')).toBe(
			'3e96ad5a78502e201d7c208b453f452c565f00f664357722e1516b63882b0f82'
		);
		expect(dictionary.length).toBeLessThanOrEqual(32_768);
	});
	it('still reads the links it made first', () => {
		const yard = { ...blankYard(), name: 'First', place: { units: 'feet' as const }, lot: { street: 9.144 } };
		for (const link of [
			'#aXXSJfyO1O-GWWQT2FfY-BVLLHrNpBm5lg5sdkHIeKT3U1gIA',
			'#1678875791010469455832910437041058843739022278612997976403252409102165618204599851024896'
		])
			expect(yardFromFragment(link)).toEqual({ ok: true, yard });
	});
	it('checks with CRC-32', () => {
		// The check value by which this CRC is told from others: CRC of the nine digits. And of PNG's last chunk (PNG specification, IEND).
		expect(crc32(Buffer.from('123456789'))).toBe(0xcbf43926);
		expect(crc32(Buffer.from('IEND'))).toBe(0xae426082);
		expect(crc32(new Uint8Array())).toBe(0);
	});
	it.each([
		// RFC 4648, section 10, without padding
		['', ''],
		['f', 'Zg'],
		['fo', 'Zm8'],
		['foo', 'Zm9v'],
		['foob', 'Zm9vYg'],
		['fooba', 'Zm9vYmE'],
		['foobar', 'Zm9vYmFy']
	])('writes %j in base64 as %j', (plain, letters) => {
		expect(toBase64url(Buffer.from(plain))).toBe(letters);
		expect(Buffer.from(fromBase64url(letters) ?? [1]).toString()).toBe(plain);
	});
	it('writes any bytes as digits, zeros in front too, at 0.3 % over what they need', () => {
		for (let length = 0; length < 300; length += 1) {
			const bytes = Uint8Array.from({ length }, (_, i) => (i < length / 3 ? 0 : (i * 7919) % 256));
			const digits = toDigits(bytes);
			expect(fromDigits(digits)).toEqual(bytes);
			// 8 bits a byte and the byte 1, at log2(10) = 3.3219 bits a digit
			expect(digits.length).toBeLessThanOrEqual(Math.ceil((8 * length + 1) / Math.log2(10)));
			expect(toBase64url(bytes)).toBe(Buffer.from(bytes).toString('base64url'));
		}
		expect(['', '0', '2', '12a', '-1', '1e9', '0x10', '16'].map(fromDigits)).toEqual(Array(8).fill(null));
	});
});

describe('a link that is not right', () => {
	it('is refused at every cut', () => {
		for (const link of [after(linkOf(example, base)), after(codeTextOf(example, base))])
			for (let length = 0; length < link.length; length += 1)
				expect(yardFromFragment(link.slice(0, length)).ok, `cut at ${length}`).toBe(false);
	});
	it('never gives another yard when a sign is changed, and never throws', () => {
		const same = writeYard(example);
		for (const link of [after(linkOf(example, base)), after(codeTextOf(example, base))]) {
			let refused = 0;
			for (let at = 2; at < link.length; at += 1) {
				const sign = String((Number.parseInt(link.charAt(at), 36) + 1) % 10);
				const read = yardFromFragment(link.slice(0, at) + sign + link.slice(at + 1));
				if (read.ok) expect(writeYard(read.yard), `${sign} at ${at}`).toBe(same);
				else refused += 1;
			}
			// Only the last bits, which fill the last byte, mean nothing.
			expect(refused).toBeGreaterThan(link.length - 6);
		}
	});
	it('is refused when it is anything at all', () => {
		let state = 1;
		const next = () => (state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0) >>> 16;
		for (let run = 0; run < 3000; run += 1) {
			const bytes = Uint8Array.from({ length: next() % 200 }, () => next() % 256);
			expect(yardFromFragment(`#a${toBase64url(bytes)}`).ok).toBe(false);
			expect(yardFromFragment(`#1${toDigits(bytes)}`).ok).toBe(false);
		}
	});
	it.each([
		['', 'no link to a yard'],
		['#', 'no link to a yard'],
		['#page', 'newer version'],
		['#?', 'no link to a yard'],
		['#Q', 'no link to a yard'],
		['#bABC', 'newer version'],
		['#2123', 'newer version'],
		['#a', 'damaged'],
		['#1', 'damaged'],
		['#a!', 'damaged'],
		['#aAAAA', 'damaged'],
		[`#a${'A'.repeat(longestFragment)}`, 'far too long'],
		[`#1${'9'.repeat(longestFragment - 2)}`, 'damaged'],
		[linkBy('[]'), 'What this link holds is not a Duskwright yard'],
		[linkBy('{'), 'What this link holds is not a yard'],
		[linkBy(JSON.stringify({ ...blankYard(), version: 99 })), 'newer version'],
		[linkBy(JSON.stringify({ ...blankYard(), lot: { street: -3 } })), 'street']
	])('says what is wrong with %.30s', (fragment, words) => expect(problems(fragment)).toContain(words));
	it('cannot reach the page through its names', () => {
		for (const text of [
			'{"format":"duskwright/yard","version":1,"place":{},"house":{},"lot":{},"spots":{},"power":{},"__proto__":{"polluted":1}}',
			'{"format":"duskwright/yard","version":1,"place":{},"house":{},"lot":{},"spots":{},"power":{"prices":{"__proto__":5,"constructor":5}}}'
		]) {
			expect(yardFromFragment(linkBy(text))).toEqual(readYard(text));
			expect('polluted' in {}).toBe(false);
			expect(Object.getPrototypeOf({})).toBe(Object.prototype);
		}
	});
	it('is not followed past the limit when it swells', () => {
		const bomb = deflateRawSync(Buffer.alloc(longestFile * 5), { level: 9 });
		const fragment = `#a${Buffer.concat([Buffer.alloc(4), bomb]).toString('base64url')}`;
		expect(fragment.length).toBeLessThan(longestFragment);
		expect(problems(fragment)).toContain('far too long');
	});
	it('costs little memory when a thousandth swells to a gigabyte', () => {
		// A full flush ends a stretch where another may begin: one megabyte of zeros in a kilobyte, a thousand times over.
		const stretch = deflateRawSync(Buffer.alloc(1_000_000), { finishFlush: constants.Z_FULL_FLUSH });
		expect(stretch.length).toBeLessThan(1100);
		// The end is no DEFLATE at all (a block of the kind that RFC 1951 reserves as an error): who comes that far is told of damage.
		const stretches = Array<Buffer>(1000).fill(stretch);
		const bomb = Buffer.concat([Buffer.alloc(4), ...stretches, Buffer.alloc(100, 0xff)]);
		const before = process.resourceUsage().maxRSS;
		expect(unpack(bomb, longestFile)).toEqual({ problem: 'too-long' });
		// kilobytes; the limit is two megabytes
		expect(process.resourceUsage().maxRSS - before).toBeLessThan(64_000);
		expect(unpack(Buffer.concat([Buffer.alloc(4), stretch, Buffer.alloc(100, 0xff)]), longestFile)).toEqual({
			problem: 'damaged'
		});
	});
});

describe('how long it gets', () => {
	it.each([
		// as measured, rounded up: a change that makes links longer is seen
		['Quince Row', 370],
		['Alder Bend', 715],
		['Hazelmoor', 650]
	])('%s packs into %i bytes', (title, most) => {
		const yard = starts.find((start) => start.title === title)!.yard;
		expect(payload(linkOf(yard, base)).length).toBeLessThanOrEqual(most);
	});
	it('says which link is too long to be opened', () => {
		expect(opens(linkOf(example, base))).toBe(true);
		expect(opens(`${base}#a${'A'.repeat(longestFragment)}`)).toBe(false);
	});
});
