import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLength } from './read-length';
import { formatLength, formatLengthFinely, type UnitSystem } from './units';

// 1 ft = 0.3048 m and 1 in = 25.4 mm exactly: international yard and pound agreement, 1959.
const ft = (feet: number, inches = 0) => feet * 0.3048 + inches * 0.0254;
const wide = { min: 0, max: 100 };

const readings: [text: string, metresInFeetYard: number, metresInMetreYard?: number][] = [
	[`12' 6"`, ft(12, 6)],
	[`12'6"`, ft(12, 6)],
	[`12'-6"`, ft(12, 6)],
	[`12' - 6"`, ft(12, 6)],
	[`12’ 6”`, ft(12, 6)],
	[`12‘ 6“`, ft(12, 6)],
	['12′ 6″', ft(12, 6)],
	['12′6', ft(12, 6)],
	[`12' 6''`, ft(12, 6)],
	['12ʹ 6ʺ', ft(12, 6)],
	['12＇6＂', ft(12, 6)],
	['12 ft 6 in', ft(12, 6)],
	['12 ft. 6 in.', ft(12, 6)],
	['12ft6in', ft(12, 6)],
	['12ft6', ft(12, 6)],
	['12 FT 6 IN', ft(12, 6)],
	['12 ft, 6 in', ft(12, 6)],
	['12 ft and 6 in', ft(12, 6)],
	['12 feet 6 inches', ft(12, 6)],
	['12 foot 6', ft(12, 6)],
	['1 foot 1 inch', ft(1, 1)],
	['12 ft 6 1/2 in', ft(12, 6.5)],
	[`12' 6 1/2"`, ft(12, 6.5)],
	[`12' 6-1/2"`, ft(12, 6.5)],
	[`12’ 6½”`, ft(12, 6.5)],
	[`12' 6 ½"`, ft(12, 6.5)],
	[`12' ¾"`, ft(12, 0.75)],
	[`12' 0.5"`, ft(12, 0.5)],
	[`12' 0"`, ft(12)],
	[`12' 11.5"`, ft(12, 11.5)],
	["7'9", ft(7, 9)],
	['7’9', ft(7, 9)],
	["7'", ft(7)],
	['7 ft', ft(7)],
	['7ft', ft(7)],
	['12 feet', ft(12)],
	['7.5 ft', ft(7.5)],
	['7,5 ft', ft(7.5)],
	['7 1/2 ft', ft(7.5)],
	['½ ft', ft(0.5)],
	['6 1/2"', ft(0, 6.5)],
	['6½"', ft(0, 6.5)],
	['6⅝”', ft(0, 6.625)],
	['6 1⁄2 in', ft(0, 6.5)],
	['3/4 in', ft(0, 0.75)],
	['18 in', ft(0, 18)],
	['30"', ft(0, 30)],
	['9 inches', ft(0, 9)],
	['3.8 m', 3.8],
	['3,8 m', 3.8],
	['3.8m', 3.8],
	['3.80 M', 3.8],
	['.8 m', 0.8],
	[',8 m', 0.8],
	['3. m', 3],
	['3.8 metres', 3.8],
	['3.8 meters', 3.8],
	['1 metre', 1],
	['1.250 m', 1.25],
	['380 cm', 3.8],
	['380cm', 3.8],
	['37.5 cm', 0.375],
	['12 centimetres', 0.12],
	['3800 mm', 3.8],
	['3800 millimeters', 3.8],
	['3 m 80 cm', 3.8],
	['3m80cm', 3.8],
	['3 m 805 mm', 3.805],
	['1½ m', 1.5],
	['  12 ft  ', ft(12)],
	['12 ft', ft(12)],
	['12 ft', ft(12)],
	['１２ ft', ft(12)],
	['12', ft(12), 12],
	['12.5', ft(12.5), 12.5],
	['12,5', ft(12.5), 12.5],
	['0,125', ft(0.125), 0.125],
	['12 1/2', ft(12.5), 12.5],
	['12½', ft(12.5), 12.5],
	['½', ft(0.5), 0.5],
	['0', 0, 0],
	['+3 ft', ft(3)]
];
describe('lengths as people write them', () => {
	it.each(readings)('%s', (text, inFeet, inMetres = inFeet) => {
		const feet = readLength(text, 'feet', wide);
		const metres = readLength(text, 'metres', wide);
		expect(feet).toMatchObject({ ok: true });
		expect(metres).toMatchObject({ ok: true });
		expect(feet.ok && feet.metres).toBeCloseTo(inFeet, 6);
		expect(metres.ok && metres.metres).toBeCloseTo(inMetres, 6);
	});
	it('reads the same length however it is written', () => {
		const ways = [`19' 8"`, '19 ft 8 in', '236 in', '19 2/3 ft', `19' 7 16/32"`];
		const found = ways.map((text) => readLength(text, 'feet', wide));
		expect(found.slice(0, 4).map((one) => one.ok && one.metres)).toEqual(Array(4).fill(5.9944));
		expect(found[4]).toMatchObject({ ok: true, metres: 5.9817 });
	});
});

const refused: [text: string, units: UnitSystem, suggestions: string[]][] = [
	['', 'feet', []],
	['   ', 'metres', []],
	['12 6', 'feet', ['12 ft 6 in', '12.6 ft']],
	['12 6', 'metres', ['12.6 m', '12 ft 6 in']],
	['12-6', 'feet', ['12 ft 6 in', '12.6 ft']],
	['12 1/2 6', 'feet', []],
	['1,250', 'feet', ['1.25 ft']],
	['1,250', 'metres', ['1.25 m', '1250 mm']],
	['1,250 mm', 'metres', ['1.25 mm', '1250 mm']],
	['1.250 mm', 'metres', ['1.25 mm', '1250 mm']],
	['1 250', 'metres', ['1250 mm', '1.250 m']],
	['1 250 mm', 'metres', ['1250 mm']],
	[`7'13"`, 'feet', ['8 ft 1 in', '7 ft 1 in']],
	[`7' 12"`, 'feet', ['8 ft', '7 ft 1 in']],
	["1'000", 'metres', ['1 ft', '1000 mm']],
	['3.8.1', 'metres', ['3.8 m', '3.81 m']],
	['3,8,1 m', 'metres', ['3.8 m', '3.81 m']],
	['3 m 6 in', 'metres', ['3 m', '6 in']],
	['3 ft 20 cm', 'feet', ['3 ft', '20 cm']],
	['3 m 80', 'metres', ['3.80 m', '3 m 80 cm']],
	['3m8', 'metres', ['3.8 m', '3 m 8 cm']],
	['3.5 m 20 cm', 'metres', ['3.7 m']],
	['1 m 120 cm', 'metres', ['2.2 m']],
	[`5' 10'`, 'feet', ['5 ft 10 in']],
	[`6" 12'`, 'feet', ['12 ft 6 in']],
	[`12.5' 6"`, 'feet', ['12 ft 6 in', '13 ft']],
	['5 ft 6 in 3', 'feet', ['5 ft 6 in']],
	['about 3 m', 'metres', ['3.00 m']],
	['~3 m', 'feet', ['3.00 m']],
	['3 m wide', 'metres', ['3.00 m']],
	['4 yd', 'feet', ['12 ft']],
	['12 ft -', 'feet', ['12 ft']],
	['3 paces', 'feet', ['3 ft']],
	['three feet', 'feet', []],
	['1e3', 'metres', []],
	['0x10', 'metres', []],
	['NaN', 'metres', []],
	['Infinity', 'feet', []],
	['1/0', 'feet', []],
	['5/3 in', 'feet', []],
	['12 m²', 'metres', ['12.00 m']],
	['ft', 'feet', []],
	["'", 'feet', []],
	['9'.repeat(400), 'metres', []]
];
describe('what is refused, and what is suggested instead', () => {
	it.each(refused)('%s in %s', (text, units, suggestions) => {
		const found = readLength(text, units, wide);
		expect(found.ok).toBe(false);
		expect(found.ok ? [] : found.suggestions).toEqual(suggestions);
		expect(found.ok ? '' : found.message).toMatch(/^[A-Z].*\.$/);
	});
	it('every suggestion is a length that the field takes', () => {
		for (const [text, units] of refused) {
			const found = readLength(text, units, wide);
			for (const one of found.ok ? [] : found.suggestions) {
				expect(readLength(one, units, wide), `${text} suggests ${one}`).toMatchObject({ ok: true });
			}
		}
	});
});

describe('direction and range', () => {
	const offset = { min: -30, max: 30, signed: true };
	it.each(['-3 ft', '−3 ft', '–3 ft', '- 3 ft', "−3'"])('reads %s as behind', (text) => {
		expect(readLength(text, 'feet', offset)).toMatchObject({
			ok: true,
			metres: -0.9144,
			understood: '−3 ft · −914 mm'
		});
	});
	it('refuses a sign where there is no direction, and says the length without it', () => {
		expect(readLength('-3 ft', 'feet', wide)).toMatchObject({ ok: false, suggestions: ['3 ft'] });
	});
	it('keeps the sign in suggestions', () => {
		expect(readLength('-12 6', 'feet', offset)).toMatchObject({ ok: false, suggestions: ['−12 ft 6 in', '−12.6 ft'] });
	});
	it('says the range in the person’s units', () => {
		const eaves = { min: 1.8, max: 15 };
		expect(readLength('40 m', 'metres', eaves)).toMatchObject({
			ok: false,
			message: 'That is 40.00 m. Here it goes from 1.80 m to 15.00 m.'
		});
		expect(readLength('4 ft', 'feet', eaves)).toMatchObject({
			ok: false,
			message: 'That is 4 ft. Here it goes from 5 ft 11 in to 49 ft 2 1/2 in.'
		});
	});
	it('offers the unit that was probably meant when a bare number is out of range', () => {
		expect(readLength('380', 'metres', wide)).toMatchObject({ ok: false, suggestions: ['380 cm', '380 mm', '380 in'] });
	});
	it('takes the ends of the range as they are shown', () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0.02, max: 200, noNaN: true }),
				fc.constantFrom<UnitSystem>('feet', 'metres'),
				(end, units) => {
					const asMost = readLength(formatLength(end, units), units, { min: 0, max: end });
					const asLeast = readLength(formatLength(end, units), units, { min: end, max: 300 });
					expect(asMost).toMatchObject({ ok: true });
					expect(asLeast).toMatchObject({ ok: true });
					expect(asMost.ok && asMost.metres).toBeLessThanOrEqual(end);
					expect(asLeast.ok && asLeast.metres).toBeGreaterThanOrEqual(end);
				}
			)
		);
	});
});

describe('what was understood', () => {
	it.each<[string, UnitSystem, string]>([
		[`19' 8`, 'feet', '19 ft 8 in · 5.99 m'],
		[`19' 8`, 'metres', '5.99 m · 19 ft 8 in'],
		['6 1/4"', 'feet', '6 1/4 in · 159 mm'],
		['3.805 m', 'metres', '3.805 m · 12 ft 6 in'],
		['3.8 m', 'feet', '12 ft 5 1/2 in · 3.80 m']
	])('%s in %s', (text, units, understood) => {
		expect(readLength(text, units, wide)).toMatchObject({ ok: true, understood });
	});
});

describe('round trip', () => {
	const units = fc.constantFrom<UnitSystem>('feet', 'metres');
	const metres = fc.double({ min: -99, max: 99, noNaN: true });
	const everywhere = { min: -100, max: 100, signed: true };
	it.each([
		// half of what each display rounds to: half inch and 10 mm (1 mm below a metre); 1/16 inch and 1 mm
		['formatLength', formatLength, { feet: 0.0254 / 4, metres: 0.005 }],
		['formatLengthFinely', formatLengthFinely, { feet: 0.0254 / 32, metres: 0.0005 }]
	] as const)('%s is read back as it was, but for rounding', (_, format, within) => {
		fc.assert(
			fc.property(metres, units, units, (length, shownIn, yard) => {
				const read = readLength(format(length, shownIn), yard, everywhere);
				expect(read).toMatchObject({ ok: true });
				expect(Math.abs((read.ok ? read.metres : Number.NaN) - length)).toBeLessThanOrEqual(within[shownIn] + 1e-7);
			}),
			{ numRuns: process.env.LONG ? 100_000 : 2_000 }
		);
	});
	it('what was understood reads as what was understood', () => {
		fc.assert(
			fc.property(metres, units, (length, yard) => {
				const first = readLength(formatLengthFinely(length, yard), yard, everywhere);
				expect(first).toMatchObject({ ok: true });
				const own = first.ok ? (first.understood.split(' · ')[0] ?? '') : '';
				expect(readLength(own, yard, everywhere)).toEqual(first);
			})
		);
	});
	it('never throws and never yields a figure that is not one, whatever is typed', () => {
		const pieces = fc.constantFrom(
			'1',
			'12',
			'0',
			'/',
			"'",
			'"',
			' ',
			'.',
			',',
			'-',
			'ft',
			'in',
			'm',
			'cm',
			'mm',
			'½',
			'’',
			'x',
			'and'
		);
		fc.assert(
			fc.property(
				fc.oneof(
					fc.string(),
					fc.array(pieces, { maxLength: 9 }).map((list) => list.join(''))
				),
				units,
				(text, yard) => {
					const read = readLength(text, yard, everywhere);
					if (read.ok) expect(Number.isFinite(read.metres)).toBe(true);
					else {
						expect(read.message).not.toMatch(/NaN|undefined|Infinity/);
						for (const one of read.suggestions) expect(readLength(one, yard, everywhere)).toMatchObject({ ok: true });
					}
				}
			),
			{ numRuns: process.env.LONG ? 200_000 : 5_000 }
		);
	});
});
