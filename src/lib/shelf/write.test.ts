import * as fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { Contents, Shelf, ShelfFixture, ShelfLine } from '../domain/kits/types';
import { readShelf } from './read-shelf';
import { guard, isFormula, unguard } from './safe-cell';
import { checkedShelf } from './schema';
import { cellsOfLine, shelfCsv } from './write';
import { lineFromCells } from './line';
import { demoShelf } from './demo';

const awkward = [
	'"',
	',',
	';',
	'\t',
	'|',
	'\r\n',
	'\n',
	'=',
	'+',
	'-',
	'@',
	"'",
	' ',
	'<',
	'&',
	'0',
	'E',
	'.',
	'°',
	'＝',
	'🌲'
];
const text = (maxLength: number) =>
	fc
		.oneof(
			fc.array(fc.constantFrom(...awkward, 'a', 'Z'), { minLength: 1, maxLength: 12 }).map((parts) => parts.join('')),
			fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }),
			fc.constantFrom('__proto__', 'constructor', '0017', '90.750', '1E5', '=1+1', "'=1", "''@x", '-5', 'kit')
		)
		.map((one) => one.trim().slice(0, maxLength).trim())
		.filter((one) => one !== '');
const hundredths = (min: number, max: number) => fc.integer({ min: min * 100, max: max * 100 }).map((one) => one / 100);
const fixture: fc.Arbitrary<ShelfFixture> = fc.record({
	kind: fc.constantFrom('spot', 'well', 'wash', 'path', 'marker', 'step'),
	lamp: fc
		.record({
			source: fc.constantFrom('led' as const, 'halogen' as const),
			watts: hundredths(1, 500),
			voltAmps: hundredths(1, 1000),
			lumens: fc.integer({ min: 1, max: 20_000 }),
			beam: fc.option(hundredths(1, 360)),
			minVolts: hundredths(6, 12),
			span: hundredths(1, 15),
			colour: fc.option(fc.integer({ min: 1500, max: 10_000 }))
		})
		.map(({ span, ...lamp }) => ({ ...lamp, maxVolts: Number((lamp.minVolts + span).toFixed(2)) }))
});
const transformer = fc.record({
	voltAmps: hundredths(5, 5000),
	taps: fc.uniqueArray(hundredths(6, 30), { minLength: 1, maxLength: 6 }).map((taps) => taps.toSorted((a, b) => a - b)),
	secondaries: fc.integer({ min: 1, max: 12 }),
	regulation: fc.integer({ min: 0, max: 200 }).map((one) => one / 1000)
});
const cable = fc.record({
	size: fc.oneof(
		fc.integer({ min: 6, max: 18 }).map((size) => ({ system: 'awg' as const, size })),
		fc.constantFrom(0.75, 1, 1.5, 2.5, 4, 6, 10, 16).map((size) => ({ system: 'mm2' as const, size }))
	),
	metres: fc.oneof(
		hundredths(1, 2000),
		fc.integer({ min: 1, max: 1000 }).map((one) => Number((one * 0.3048).toFixed(7)))
	),
	count: fc.integer({ min: 1, max: 1000 })
});
/** Of a list whose lights are known by name: one name is one light. */
const shelves: fc.Arbitrary<Shelf> = fc
	.uniqueArray(fc.tuple(text(60), fixture), { minLength: 1, maxLength: 5, selector: ([product]) => product })
	.chain((lights) => {
		const used = fc.constantFrom(...lights).chain(([product, fixture]) =>
			fc.record({
				product: fc.constant(product),
				fixture: fc.constant(fixture),
				count: fc.integer({ min: 1, max: 1000 })
			})
		);
		const none: Contents = { fixtures: [], transformer: null, cable: [], connectors: 0 };
		const contents = {
			kit: fc.record({
				fixtures: fc.array(used, { minLength: 1, maxLength: 6 }),
				transformer: fc.option(transformer),
				cable: fc.array(cable, { maxLength: 3 }),
				connectors: fc.integer({ min: 0, max: 10_000 })
			}),
			transformer: transformer.map((own) => ({ ...none, transformer: own })),
			cable: cable.map((own) => ({ ...none, cable: [own] })),
			connectors: fc.integer({ min: 1, max: 10_000 }).map((connectors) => ({ ...none, connectors })),
			fixture: used.map((own) => ({ ...none, fixtures: [own] }))
		};
		const line = fc
			.constantFrom(...(Object.keys(contents) as (keyof typeof contents)[]))
			.chain((kind): fc.Arbitrary<ShelfLine> =>
				fc.record({
					code: text(60),
					kind: fc.constant(kind),
					name: text(200),
					cents: fc.integer({ min: 0, max: 100_000_000 }),
					stock: fc.option(fc.integer({ min: 0, max: 1_000_000 })),
					place: fc.option(text(100)),
					contents: contents[kind]
				})
			);
		return fc.record({
			name: text(100),
			currency: fc.constantFrom('$', '€', 'USD', 'kr', 'CHF'),
			lines: fc.uniqueArray(line, { minLength: 1, maxLength: 8, selector: ({ code }) => code })
		});
	});

describe('a shelf written and read', () => {
	it('is the same shelf, by bytes and by text', () => {
		fc.assert(
			fc.property(shelves, (shelf) => {
				const csv = shelfCsv(shelf);
				const read = readShelf(csv);
				expect(read.troubles.filter(({ rank }) => rank === 'stop')).toEqual([]);
				expect(read.shelf).toEqual(shelf);
				expect(readShelf(new TextEncoder().encode(csv)).shelf).toEqual(shelf);
				expect(checkedShelf(JSON.parse(JSON.stringify(shelf)))).toEqual({ shelf, lost: 0 });
			}),
			{ numRuns: process.env.LONG ? 5000 : 150, seed: 9 }
		);
	});
	it('a line typed again from its cells is the same line', () => {
		for (const line of demoShelf.lines) expect(lineFromCells(cellsOfLine(line)).line).toEqual(line);
	});
	it('keeps rows that were left out, with columns of the person’s own, and reads them back as they were', () => {
		const rows = [
			'SKU,Name,Type,Price,Notes,Notes,Connectors',
			'1,good,connectors,1,,,10',
			'2,bad,mulch,1,first,second,',
			'1,twin,connectors,2,,=x,5'
		];
		const first = readShelf(rows.join('\n'));
		expect(first.leftOut.map(({ row }) => row)).toEqual([3, 4]);
		const again = readShelf(shelfCsv(first.shelf, first.leftOut));
		expect(again.leftOut.map(({ cells }) => new Set(cells.map(({ header, text }) => `${header}: ${text}`)))).toEqual(
			first.leftOut.map(({ cells }) => new Set(cells.map(({ header, text }) => `${header}: ${text}`)))
		);
		expect(first.leftOut[0]?.cells).toContainEqual({ header: 'Notes', text: 'second' });
	});
	it('does not take a row that ran over its headings, when it is written and read again', () => {
		const good = Array.from({ length: 3 }, (_, i) => `${i},b,connectors,1,10`);
		const first = readShelf(['code,name,type,price,connectors', ...good, '9,b,connectors,1,50,10'].join('\n'));
		expect(first.leftOut).toHaveLength(1);
		const again = readShelf(shelfCsv(first.shelf, first.leftOut));
		expect(again.shelf).toEqual(first.shelf);
		expect(again.leftOut).toHaveLength(1);
	});
	it('of nothing is a list to fill in', () => {
		const csv = shelfCsv({ name: 'Mine', currency: '$', lines: [] });
		expect(csv).toBe('\u{feff}type,code,name,price,stock,place\r\n');
		expect(readShelf(csv)).toMatchObject({ refused: false, leftOut: [], shelf: { lines: [] } });
	});
});

// What starts a formula: OWASP, "CSV Injection": = + - @, tab (0x09), carriage return (0x0D), and their wide forms.
describe('cells that a spreadsheet would run', () => {
	const runs = /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/;
	it('never begin as one, and come back as they were', () => {
		fc.assert(
			fc.property(fc.oneof(text(50), fc.string()), (cell) => {
				expect(guard(cell)).not.toMatch(runs);
				expect(unguard(guard(cell))).toBe(cell);
			}),
			{ numRuns: 2000, seed: 9 }
		);
	});
	it('hold in the whole file, headings too', () => {
		const evil = '=HYPERLINK("http://example.org","x")';
		const line = { ...demoShelf.lines.at(-1)!, code: '@SUM(A1)', name: evil, place: '-1+1' };
		const leftOut = [{ row: 2, cells: [{ header: '=1+1', text: '+1' }], why: ['x'] }];
		const cells = Papa.parse<string[]>(shelfCsv({ name: '\t=1', currency: '$', lines: [line] }, leftOut)).data.flat();
		expect(cells.filter((cell) => runs.test(cell))).toEqual([]);
		expect(cells).toContain(`'${evil}`);
	});
	it('are told from numbers below zero', () => {
		expect(['=1', '@x', '+1+1', '-cmd', '-5', '-12,50 €', 'a=b', ''].map(isFormula)).toEqual([
			true,
			true,
			true,
			true,
			false,
			false,
			false,
			false
		]);
	});
});
