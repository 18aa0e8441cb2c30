import { describe, expect, it } from 'vitest';
import { lengthText, readCableLength, readSize, unitOfHeader } from './cable';
import { readPrice, readStock } from './money';
import { plainNumber, readFigure } from './number';
import type { ReadValue } from './types';
import { readTaps, readWindow } from './volts';
import { lightKindOf, lineKindOf, sourceOf } from './words';

const value = <T>(read: ReadValue<T>): T | string => (read.ok ? read.value : `no: ${read.why}`);
const note = (read: ReadValue<unknown>): string | null => (read.ok ? (read.note?.words ?? null) : null);
const no = expect.stringMatching(/^no: /);

describe('numbers', () => {
	// Marks of thousands and decimals as the Unicode CLDR has them for en, de, fr (narrow space) and de-CH.
	it.each([
		['1234.5', 1234.5],
		['1,234.50', 1234.5],
		['1.234,50', 1234.5],
		['1\u202f234,50', 1234.5],
		["1'234.50", 1234.5],
		['1.234.567', 1_234_567],
		['1,234,567', 1_234_567],
		['.5', 0.5],
		[',5', 0.5],
		['-3', -3],
		['5.', 5]
	])('reads %s', (text, wanted) => expect(plainNumber(text)?.value).toBe(wanted));
	it.each(['', '1.2.3', '1,2,3', '1,23.4', '1e5', '--1', '0x10', 'Infinity', 'NaN', '12 34'])('refuses %j', (text) =>
		expect(plainNumber(text)).toBeNull()
	);
	const watts = { min: 0.1, max: 500, units: ['w', 'watts'] };
	it('takes a unit and says how', () => {
		expect(note(readFigure('20W', watts))).toBe('“20W” was taken as 20.');
		expect(value(readFigure('20 Watts', watts))).toBe(20);
		expect(note(readFigure('20', watts))).toBeNull();
	});
	it.each([
		['20V', /unit that does not belong/],
		['1,234', /can mean 1234 or 1\.234/],
		['-5', /outside/],
		['600', /outside.*0\.1 to 500/],
		['=1+1', /not a number/],
		['=HYPERLINK("x")', /not a number/],
		['about 5', /not a number/]
	])('refuses %s in words', (text, words) => expect(value(readFigure(text, watts))).toMatch(words));
	it('takes a thousand of what is large, and whole numbers where halves make no sense', () => {
		expect(value(readFigure('1,200 lm', { min: 1, max: 20_000, units: ['lm'], isLarge: true }))).toBe(1200);
		expect(value(readFigure('2.5', { min: 1, max: 9, units: [], isWhole: true }))).toMatch(/not a whole number/);
	});
});

describe('prices', () => {
	it.each([
		['12.50', 1250, null],
		['$12.50', 1250, '$'],
		['12,50', 1250, null],
		['12,50 €', 1250, '€'],
		['1.234,50', 123_450, null],
		['USD 1,234.50', 123_450, 'USD'],
		['99 usd', 9900, 'USD'],
		['1,234', 123_400, null],
		['£5', 500, '£'],
		['0.29', 29, null],
		['0.295', 30, null],
		['12,-', 1200, null]
	])('reads %s', (text, cents, currency) => expect(value(readPrice(text))).toEqual({ cents, currency }));
	it('says what it made of marks, nothing and fractions of a cent', () => {
		expect(note(readPrice('1.234,50'))).toBe('“1.234,50” was taken as 1234.50.');
		expect(note(readPrice('12,50'))).toBe('“12,50” was taken as 12.50.');
		expect(note(readPrice('0'))).toMatch(/nothing/);
		expect(note(readPrice('0.295'))).toMatch(/rounded to 0\.30/);
		expect(note(readPrice('$12.50'))).toBeNull();
	});
	it.each([
		['', /missing/],
		['free', /not a price/],
		['1.005', /can mean 1005 or 1\.005/],
		['19.999', /can mean 19999 or 19\.999/],
		['-4', /less than nothing/],
		['=2*6', /not a price/],
		['2000000', /more than a million/],
		['12-15', /not a price/]
	])('refuses %j', (text, words) => expect(value(readPrice(text))).toMatch(words));
});

describe('how many there are', () => {
	it.each([
		['', null],
		['12', 12],
		['-3', 0],
		['20+', 20],
		['12.0', 12],
		['12.5', 12],
		['1,200', 1200],
		['4.000', 4],
		['none', 0],
		['in stock', null],
		['4 pcs', 4]
	])('reads %j', (text, wanted) => expect(value(readStock(text))).toBe(wanted));
	it('says when it is less than none, and when three decimals could be thousands', () => {
		expect(note(readStock('-3'))).toMatch(/less than none/);
		expect(note(readStock('4.000'))).toBe('“4.000” was taken as 4.');
	});
	it('refuses words', () => expect(value(readStock('call us'))).toEqual(no));
});

describe('cable', () => {
	it.each([
		['16 AWG', 'awg', 16],
		['16AWG', 'awg', 16],
		['16/2', 'awg', 16],
		['12-2', 'awg', 12],
		['14 ga', 'awg', 14],
		['10 gauge', 'awg', 10],
		['AWG 12', 'awg', 12],
		['#12', 'awg', 12],
		['12/2 AWG', 'awg', 12],
		['2.5 mm²', 'mm2', 2.5],
		['2,5mm2', 'mm2', 2.5],
		['2x2.5', 'mm2', 2.5],
		['1.5 sq mm', 'mm2', 1.5],
		['4', 'mm2', 4],
		['12', 'awg', 12],
		['2.5', 'mm2', 2.5]
	])('reads the size %s', (text, system, size) => expect(value(readSize(text, null))).toEqual({ system, size }));
	it('goes by the unit of the heading, and refuses what could be either', () => {
		expect(value(readSize('16', unitOfHeader('Gauge').size))).toEqual({ system: 'awg', size: 16 });
		expect(value(readSize('10', unitOfHeader('Cable (mm²)').size))).toEqual({ system: 'mm2', size: 10 });
		expect(value(readSize('10', null))).toMatch(/10 AWG or 10 mm²/);
	});
	it.each(['', '40 AWG', '250 mm2', 'thick', '16-Feb', '12.5 AWG'])('refuses the size %j', (text) =>
		expect(value(readSize(text, null))).toEqual(no)
	);
	// The international foot is 0.3048 m exactly (NIST Special Publication 811, appendix B.6).
	it.each([
		['15 m', 15],
		['50 ft', 15.24],
		["50'", 15.24],
		['50 feet', 15.24],
		['100', 30.48],
		['7,5 m', 7.5],
		['600 in', 15.24]
	])('reads the length %s', (text, metres) => expect(value(readCableLength(text, 'feet'))).toBe(metres));
	it.each(['', 'long', '0', '9000 m', '1,234 ft'])('refuses the length %j', (text) =>
		expect(value(readCableLength(text, 'feet'))).toEqual(no)
	);
	it('refuses a length without a unit where none is told', () =>
		expect(value(readCableLength('50', null))).toMatch(/50 ft or 50 m/));
	it.each([15.24, 30.48, 15, 7.62, 12.345, 0.3048 * 250])('writes %d m so that it reads back the same', (metres) => {
		const rounded = Number(metres.toFixed(7));
		expect(value(readCableLength(lengthText(rounded), null))).toBe(rounded);
	});
	it('finds units in headings', () => {
		expect(unitOfHeader('Length (ft)').length).toBe('feet');
		expect(unitOfHeader('Roll length [m]').length).toBe('metres');
		expect(unitOfHeader('Number').length).toBeNull();
	});
});

describe('volts', () => {
	it.each([
		['12', [12]],
		['12V', [12]],
		['12-15', [12, 13, 14, 15]],
		['12 V to 14 V', [12, 13, 14]],
		['12,13,14', [12, 13, 14]],
		['12 V, 13 V, 14 V', [12, 13, 14]],
		['15/12', [12, 15]],
		['12; 13.5', [12, 13.5]],
		['12 and 14', [12, 14]],
		['12,5', [12.5]],
		['12 V AC', [12]]
	])('reads the taps %s', (text, taps) => expect(value(readTaps(text))).toEqual(taps));
	it.each(['', '120', '15-12', 'many', '=12', '0', '12-400'])('refuses the taps %j', (text) =>
		expect(value(readTaps(text))).toEqual(no)
	);
	it.each(['15-Dec', 'Dec-15', '12-Mar', '2026-12-15', '12/15/2026'])(
		'tells a date that a spreadsheet made: %s',
		(text) => expect(value(readTaps(text))).toMatch(/looks like a date/)
	);
	it('reads a lamp’s window', () => {
		expect(value(readWindow('9-15 V'))).toEqual({ min: 9, max: 15 });
		expect(value(readWindow('10.8 V to 12 V'))).toEqual({ min: 10.8, max: 12 });
		expect(value(readWindow('12V'))).toBeNull();
		expect(value(readWindow('120 V'))).toMatch(/for 12 V lighting/);
		expect(value(readWindow('15-9'))).toEqual(no);
		expect(value(readWindow('9-Mar'))).toMatch(/looks like a date/);
	});
});

describe('words', () => {
	it.each([
		['Kit', 'kit'],
		['KITS', 'kit'],
		['Starter-kit', 'kit'],
		['Lights', 'fixture'],
		['wire', 'cable'],
		['Connectors', 'connectors'],
		['splice', 'connectors'],
		['mulch', null],
		['__proto__', null],
		['', null]
	])('kind of line %j', (text, kind) => expect(lineKindOf(text)).toBe(kind));
	it.each([
		['Path Light', 'path'],
		['up-light', 'spot'],
		['Well lights', 'well'],
		['flood', 'wash'],
		['Driveway', 'marker'],
		['steps', 'step'],
		['lantern', null],
		['constructor', null]
	])('kind of light %j', (text, kind) => expect(lightKindOf(text)).toBe(kind));
	it('tells LED from halogen, and neither from both', () => {
		expect(['LED', '12 V halogen', 'Integrated LED', 'LED or halogen', 'gas'].map(sourceOf)).toEqual([
			'led',
			'halogen',
			'led',
			null,
			null
		]);
	});
});
