import { describe, expect, it } from 'vitest';
import { columnsOf, countKnown, fieldOf, headerIndex, letters } from './columns';
import { fields, fieldWords } from './fields';

describe('headings', () => {
	it('knows every heading of ours, and each once', () => {
		for (const field of fields) expect(fieldOf(field), field).toBe(field);
		expect(new Set(fields).size).toBe(fields.length);
		expect(fields).toHaveLength(8 + 6 * 10 + 4 + 3 * 3 + 1);
	});
	// What people call them: common practice, no source.
	it.each([
		['SKU', 'code'],
		['Item #', 'code'],
		['Stock Code', 'code'],
		['Description', 'name'],
		['Retail ($)', 'price'],
		['Unit price (USD)', 'price'],
		['QTY ON HAND', 'stock'],
		['Aisle / Bay', 'place'],
		['Fixture kind', 'light'],
		['Pack size', 'count'],
		['Qty per kit', 'count'],
		['QOH', 'stock'],
		['Wattage', 'watts'],
		['Watts (W)', 'watts'],
		['Lumens (lm)', 'lumens'],
		['Beam angle (°)', 'beam'],
		['Color temperature', 'colour'],
		['Transformer (VA)', 'transformer va'],
		['Gauge', 'cable'],
		['AWG', 'cable'],
		['Cable mm²', 'cable'],
		['Length (ft)', 'cable length'],
		['Cable length [m]', 'cable length'],
		['Wire connectors', 'connectors'],
		['Fixture 2 watts', 'watts 2'],
		['Watts 3', 'watts 3'],
		['2nd fixture kind', 'light 2'],
		['Light2 lumens', 'lumens 2'],
		['Cable 2 length', 'cable length 2'],
		['Cable gauge 2', 'cable 2']
	])('takes %s for %s', (header, field) => expect(fieldOf(header)).toBe(field));
	it.each(['', '__proto__', 'constructor', 'toString', 'Supplier', 'Price 2', 'Watts 9', 'long '.repeat(20)])(
		'takes “%s” for none',
		(header) => expect(fieldOf(header)).toBeNull()
	);
	it('says each field in words of its own', () => {
		expect(new Set(fields.map(fieldWords)).size).toBe(fields.length);
		expect(fieldWords('watts 2')).toBe('Watts of one light (light 2)');
	});
});

describe('the row of headings', () => {
	it('is found under a title', () => {
		const rows = [['Summer list'], [], ['SKU', 'Name', 'Price'], ['1', 'a', '2']];
		expect(headerIndex(rows)).toBe(2);
	});
	it('is missed when there is none', () => {
		expect(headerIndex([['0017', 'Path light', '12.50']])).toBeNull();
		expect(countKnown(['__proto__', '__proto__', 'SKU', 'sku'])).toBe(1);
	});
});

describe('columns', () => {
	const body = [
		['', 'a', ''],
		['0017', 'b'.repeat(100), '', 'more']
	];
	it('shows the first text of each, and a letter where there is no heading', () => {
		expect(columnsOf(['SKU', 'Name', ''], body)).toEqual([
			{ header: 'SKU', sample: '0017', field: 'code' },
			{ header: 'Name', sample: 'a', field: 'name' },
			{ header: 'Column C', sample: '', field: null },
			{ header: 'Column D', sample: 'more', field: null }
		]);
		expect([0, 25, 26, 701, 702].map(letters)).toEqual(['A', 'Z', 'AA', 'ZZ', 'AAA']);
	});
	it('gives a field to the first heading that means it', () => {
		expect(columnsOf(['SKU', 'Item #'], body).map(({ field }) => field)).toEqual(['code', null, null, null]);
	});
	it('does as the person says', () => {
		const told = columnsOf(['SKU', 'Name', 'x'], body, [null, 'code', 'code']);
		expect(told.map(({ field }) => field)).toEqual([null, 'code', null, null]);
	});
});
