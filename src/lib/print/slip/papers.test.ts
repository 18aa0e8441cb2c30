import { describe, expect, it } from 'vitest';
import { blurred, decoded, rasterOf } from '../../ui/qr.testing';
import { qrOf, quiet } from '../../ui/qr';
import { codeSize, leastModule } from './code-size';
import { heightOn, readSlipPaper, slipPageRule, slipPapers, widthOn } from './papers';

const address = 'https://duskwright.example/open/#1';
const digits = (count: number) => '7482910563'.repeat(Math.ceil(count / 10)).slice(0, count);
const modulesOf = (text: string) => qrOf(text)!.modules + 2 * quiet;

describe('the papers', () => {
	it('are as the standards say', () => {
		// ANSI/ASME Y14.1: 8.5 by 11 in; ISO 216: 210 by 297 mm
		expect(slipPapers.letter.width).toBeCloseTo(8.5 * 25.4, 9);
		expect(slipPapers.letter.height).toBeCloseTo(11 * 25.4, 9);
		expect([slipPapers.a4.width, slipPapers.a4.height]).toEqual([210, 297]);
		// Common practice, no source: 576 dots at 8 to the millimetre on a roll of 80 mm
		expect([slipPapers.receipt.width, widthOn('receipt')]).toEqual([80, 576 / 8]);
	});
	it('make one rule for every page, without a name', () => {
		expect(slipPageRule('a4', 0)).toBe('@page { size: 210mm 297mm; margin: 11mm 12mm 11mm; }');
		// 300.2 mm of slip, 3 of tolerance, up to whole millimetres, 3 and 4 of margin
		expect(slipPageRule('receipt', 300.2)).toBe('@page { size: 80mm 311mm; margin: 3mm 4mm 4mm; }');
		expect(heightOn('receipt')).toBe(Infinity);
		expect(heightOn('a4')).toBe(297 - 22 - 3);
	});
	it('are read back, and nothing else is', () => {
		expect(['letter', 'a4', 'receipt'].map(readSlipPaper)).toEqual(['letter', 'a4', 'receipt']);
		expect([null, '', 'A4', 'constructor', '__proto__'].map(readSlipPaper)).toEqual(Array(5).fill(null));
	});
});

describe('the code on the slip', () => {
	it.each([60, 900, 1500, 2250, 2900])('of %i digits has modules that can be read, and stays on its paper', (n) => {
		const text = address + digits(n);
		for (const paper of ['letter', 'a4', 'receipt'] as const) {
			const size = codeSize(text, paper)!;
			expect(size / modulesOf(text)).toBeGreaterThanOrEqual(leastModule);
			expect(size).toBeLessThanOrEqual(widthOn(paper));
		}
		// Whole dots of a printer with 8 to the millimetre.
		const dots = (codeSize(text, 'receipt')! / modulesOf(text)) * 8;
		expect(Math.abs(dots - Math.round(dots))).toBeLessThan(1e-9);
	});
	it.each([900, 2250, 2900])('of %i digits is read as a receipt printer lays it down, and blurred', async (n) => {
		const text = address + digits(n);
		const dots = Math.round((codeSize(text, 'receipt')! / modulesOf(text)) * 8);
		expect(await decoded(blurred(rasterOf(qrOf(text)!, dots)))).toBe(text);
	});
	it('is not printed where it could not be read', () => {
		// ISO/IEC 18004, from memory: beyond 3057 digits no code of version 25
		for (const paper of ['letter', 'a4', 'receipt'] as const)
			expect(codeSize(address + digits(3100), paper)).toBeNull();
	});
});
