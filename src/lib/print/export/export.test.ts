import { deflateSync, crc32 as zlibCrc } from 'node:zlib';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { makePlan } from '../../domain/plan';
import { examples } from '../../domain/yard';
import { csvOf } from './csv';
import { crc32, pngSize, withDpi } from './png-size';
import { tableOf, type TableId } from './tables';

describe('a table as CSV', () => {
	// RFC 4180, section 2: rules 1 (CRLF), 3 (head row), 5 to 7 (quotes, line ends and doubled quotes inside quotes), by hand.
	test('quotes, commas, line ends and empty cells', () => {
		expect(
			csvOf([
				{ name: 'plain', size_m: 1.5, note: null },
				{ name: 'a, b', size_m: -2, note: 'say "so"' },
				{ name: 'two\r\nlines', size_m: 0, note: '' }
			])
		).toBe('\u{feff}name,size_m,note\r\nplain,1.5,\r\n"a, b",-2,"say ""so"""\r\n"two\r\nlines",0,\r\n');
	});
	test('a name that a spreadsheet would work out is text; a number below zero stays a number', () => {
		const text = csvOf([{ a: '=1+1', b: '+x', c: '-y', d: '@z', e: -1.5, f: '\tq' }]);
		expect(text.split('\r\n')[1]).toBe(`"'=1+1","'+x","'-y","'@z",-1.5,"'\tq"`);
	});
	const plans = examples.map(({ id, yard }) => [id, makePlan(yard)] as const);
	test.each(plans)('%s: every list reads back as it was', (_, plan) => {
		for (const id of ['fixtures', 'cable', 'shopping', 'stakes'] satisfies TableId[]) {
			const table = tableOf(plan, id);
			expect(table.length).toBeGreaterThan(0);
			const read = Papa.parse<Record<string, string>>(csvOf(table), { header: true, skipEmptyLines: true });
			expect(read.errors).toEqual([]);
			expect(read.data).toHaveLength(table.length);
			expect(read.meta.fields).toEqual(Object.keys(table[0]!));
			for (const [index, row] of table.entries())
				for (const [key, cell] of Object.entries(row)) {
					const back = read.data[index]![key]!;
					if (typeof cell === 'number') expect(Number(back)).toBe(cell);
					else expect(back.replace(/^'(?=[=+\-@])/, '')).toBe(cell ?? '');
					if (/_(m|V|VA|W|lm|deg|K)$/.test(key)) expect(cell === null || Number.isFinite(cell)).toBe(true);
				}
		}
	});
	test.each(plans)('%s: the figures are the plan’s', (_, plan) => {
		const fixtures = tableOf(plan, 'fixtures');
		for (const [index, fixture] of plan.fixtures.entries()) {
			expect(fixtures[index]!['along_m']).toBeCloseTo(fixture.at.x, 3);
			expect(fixtures[index]!['out_m']).toBeCloseTo(fixture.at.y, 3);
			expect(fixtures[index]!['expected_V']).not.toBeNull();
		}
		const sum = (id: TableId, key: string) => tableOf(plan, id).reduce((all, row) => all + Number(row[key]), 0);
		const laid = plan.runs.flatMap(({ segments }) => segments).reduce((all, { length }) => all + length, 0);
		expect(sum('cable', 'length_m')).toBeCloseTo(laid, 1);
		expect(sum('shopping', 'cost')).toBeCloseTo(plan.shopping.total, 1);
	});
});

describe('a picture of pixels', () => {
	test.each([
		// 8 in by 10 in: 203.2 by 254 mm.
		[203.2, 254, 150, 1200, 1500],
		[203.2, 254, 300, 2400, 3000],
		[100, 50, 300, 1181, 591]
	] as const)('%f by %f mm at %i dpi', (width, height, dpi, w, h) => {
		expect(pngSize({ width, height }, dpi)).toEqual({ ok: true, width: w, height: h });
	});
	test('what no browser draws is refused, with what to do', () => {
		const size = pngSize({ width: 950, height: 1400 }, 300);
		expect(size.ok ? '' : size.problem).toMatch(/11220 by 16535 pixels.*150 dpi/);
		const half = pngSize({ width: 2800, height: 1400 }, 150);
		expect(half.ok ? '' : half.problem).toMatch(/SVG/);
	});
	test('the check is that of zlib', () => {
		// From the PNG specification: the chunk IEND, which has no data, always ends in AE 42 60 82.
		expect(crc32(new TextEncoder().encode('IEND'))).toBe(0xae426082);
		const bytes = Uint8Array.from({ length: 999 }, (_, i) => (i * 7 + 3) % 256);
		expect(crc32(bytes)).toBe(zlibCrc(bytes));
	});
	test('the resolution stands in a chunk of its own before the picture', () => {
		const chunk = (name: string, data: Uint8Array) => {
			const body = Buffer.concat([Buffer.from(name), data]);
			const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
			length.writeUInt32BE(data.length);
			check.writeUInt32BE(zlibCrc(body));
			return Buffer.concat([length, body, check]);
		};
		const header = Buffer.from([0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0]);
		const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
		const rest = [chunk('IDAT', deflateSync(Buffer.from([0, 255]))), chunk('IEND', Buffer.alloc(0))];
		// 300 ÷ 0.0254 = 11,811 to the metre; unit 1 is the metre.
		const density = Buffer.alloc(9);
		density.writeUInt32BE(11811, 0);
		density.writeUInt32BE(11811, 4);
		density.writeUInt8(1, 8);
		const plain = Buffer.concat([signature, chunk('IHDR', header), ...rest]);
		expect(Buffer.from(withDpi(plain, 300))).toEqual(
			Buffer.concat([signature, chunk('IHDR', header), chunk('pHYs', density), ...rest])
		);
	});
});
