import { beforeAll, describe, expect, it } from 'vitest';
import { readLength } from '$lib/domain/shared/read-length';
import { readCount, readDegrees, readNumber } from '$lib/domain/shared/read-number';
import { exampleOf, giveReaders, readText, typedOf, writeText, type TypedField } from './reading';

beforeAll(() => giveReaders({ readLength, readCount, readDegrees, readNumber }));

const width: TypedField = { kind: 'length', path: 'w', label: 'Width', min: 0.3, max: 40, example: '18 ft' };
const out: TypedField = { ...width, min: -30 };

describe('readText', () => {
	it('reads lengths and says what was understood', () => {
		expect(readText(width, "19' 8", 'feet')).toMatchObject({
			value: 19 * 0.3048 + 8 * 0.0254,
			readback: '19 ft 8 in · 5.99 m',
			error: null
		});
	});
	it('refuses what can be read in two ways, with suggestions that are then read', () => {
		const reading = readText(width, '12 6', 'feet');
		expect(reading.error).not.toBeNull();
		expect(reading.suggestions.length).toBeGreaterThan(1);
		for (const { text } of reading.suggestions) expect(readText(width, text, 'feet').error).toBeNull();
	});
	it('takes a minus only where the range has one', () => {
		expect(readText(out, '−4 ft', 'feet').value).toBeCloseTo(-1.2192, 9);
		expect(readText(width, '−4 ft', 'feet').error).not.toBeNull();
	});
	it('is silent about an empty field', () => {
		expect(readText(width, '  ', 'feet')).toEqual({ value: undefined, readback: null, error: null, suggestions: [] });
	});
});

describe('typedOf', () => {
	const shown = (draft: string | null, stored: unknown, complain = true) =>
		typedOf(width, draft, stored, 'feet', complain);
	it('keeps what was typed while it says what is stored', () => {
		expect(shown("12'", 12 * 0.3048).text).toBe("12'");
	});
	it('keeps what is not understood, and complains only when asked', () => {
		expect(shown('wide', 3).text).toBe('wide');
		expect(shown('wide', 3, false).error).toBeNull();
		expect(shown('wide', 3).error).not.toBeNull();
	});
	it('shows the answer once it was changed elsewhere', () => {
		expect(shown("12'", 3.048).text).toBe('10 ft');
	});
	it('shows nothing for an answer that is not there or not sure', () => {
		expect(shown(null, undefined).text).toBe('');
		expect(shown(null, 'unsure').text).toBe('');
	});
	it('shows an answer so that reading it again comes within a rounding of it', () => {
		for (const metres of [0.31, 1, 2.345, 17.9, 39.99]) {
			for (const units of ['feet', 'metres'] as const) {
				const read = readText(width, writeText(width, metres, units), units).value;
				expect(Math.abs(Number(read) - metres)).toBeLessThanOrEqual(0.0064);
			}
		}
	});
});

it('gives examples in the units of the yard, which are themselves read', () => {
	expect(exampleOf({ example: '18 ft' }, 'feet')).toBe('18 ft');
	expect(exampleOf({ example: '18 ft' }, 'metres')).toBe('5.50 m');
	expect(exampleOf({ example: '12 in' }, 'metres')).toBe('300 mm');
});
