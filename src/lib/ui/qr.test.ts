import { describe, expect, it } from 'vitest';
import { largestVersion, qrOf, quiet } from './qr';
import { blurred, decoded, rasterOf } from './qr.testing';

const address = 'https://duskwright.example/open/#1';
const digits = (count: number) => '7482910563'.repeat(Math.ceil(count / 10)).slice(0, count);
const shape = (text: string) => {
	const code = qrOf(text);
	if (!code) throw new Error('It should fit');
	return code;
};
/** Dots a module at 150 dpi when the whole code, border and all, is 65 mm wide. */
const dotsAt150 = ({ modules }: { modules: number }) => ((65 / 25.4) * 150) / (modules + 2 * quiet);

describe('a QR code, read by zxing-cpp', () => {
	it.each([' ', 'a', 'HELLO 123', 'Gärten & Höfe, 庭', `${address}0`])('says %j', async (text) => {
		expect(await decoded(rasterOf(shape(text), 4))).toBe(text);
	});
	it.each([100, 900, 1500, 2250, 2900])(
		'holds an address with %i digits as printed at 150 dpi and blurred',
		async (n) => {
			const code = shape(address + digits(n));
			expect(dotsAt150(code)).toBeGreaterThanOrEqual(3);
			expect(await decoded(blurred(rasterOf(code, dotsAt150(code))))).toBe(address + digits(n));
		}
	);
	it('is made of whole modules, 17 + 4 a version, and never larger than the largest', () => {
		// ISO/IEC 18004: version v has 17 + 4 v modules a side; the white border is 4 on each side
		expect(shape('a').modules).toBe(21);
		expect(shape(address + digits(2900)).modules).toBe(17 + 4 * largestVersion);
		expect(65 / (17 + 4 * largestVersion + 2 * quiet)).toBeGreaterThanOrEqual(0.5);
	});
	it('holds what the standard says the largest version holds, and no more', () => {
		// ISO/IEC 18004, table of capacities, from memory: version 25 holds 3057 digits at level L and 2395 at level M
		expect(qrOf(digits(3057))?.modules).toBe(117);
		expect(qrOf(digits(3058))).toBeNull();
	});
	it('is still read with a spot of three hundredths of it white, where there is room for level M', async () => {
		const text = address + digits(600);
		const raster = rasterOf(shape(text), 4);
		const [from, to] = [Math.round(raster.side * 0.42), Math.round(raster.side * 0.6)];
		for (let y = from; y < to; y += 1) for (let x = from; x < to; x += 1) raster.grey[y * raster.side + x] = 1;
		expect(await decoded(raster)).toBe(text);
	});
});
