import { describe, expect, it } from 'vitest';
import { readShelf } from './read-shelf';
import type { ReadShelf, Wish } from './types';

const read = (lines: readonly string[], wish?: Wish): ReadShelf => readShelf(lines.join('\r\n'), wish);
const messages = ({ troubles }: ReadShelf, rank: 'stop' | 'look', row: number | null) =>
	troubles.filter((one) => one.rank === rank && one.row === row).map(({ message, column }) => `${column}: ${message}`);
const lamp = 'LED;2.5;150;120';
const head = 'type;code;name;price;stock;light;source;watts;lumens;beam';
const one = (row: string) => read([head, row]);

describe('a good list', () => {
	const list = read([
		'type;code;name;price;stock;place;light;count;same as;source;watts;lumens;transformer va;taps;cable;cable length;connectors',
		'kit;K1;Walk kit;$199.00;3;Aisle 1;;4;0017;;;;60;12, 13;16 AWG;100 ft;10',
		'fixture;0017;Path light;$34.00;24;Aisle 2;path;;;LED;2.5;150;;;;;',
		'transformer;90.750;Transformer;$86.00;;;;;;;;;"100";"12 V, 13 V";;;',
		'cable;1E5;Cable;$18.00;9;;;;;;;;;;16/2;15 m;',
		'connectors;C;Connectors;$24.00;;;;;;;;;;;;;10',
		''
	]);
	it('gives its lines in its order with codes as text, and nothing to say', () => {
		expect(list.troubles).toEqual([]);
		expect(list.leftOut).toEqual([]);
		expect(list.shelf.currency).toBe('$');
		expect(list.shelf.lines.map(({ code, cents, stock }) => [code, cents, stock])).toEqual([
			['K1', 19_900, 3],
			['0017', 3400, 24],
			['90.750', 8600, null],
			['1E5', 1800, 9],
			['C', 2400, null]
		]);
	});
	it('gives a kit the very light of the loose line that it names, though that stands below', () => {
		const [kit, light] = list.shelf.lines;
		expect(kit?.contents.fixtures).toEqual([{ ...light?.contents.fixtures[0], count: 4 }]);
		expect(light?.contents.fixtures[0]).toEqual({
			product: '0017',
			count: 1,
			fixture: {
				kind: 'path',
				// VA from watts over a power factor of 0.8, window 9 to 15 V: rules supply.load and cable.volts.
				lamp: {
					source: 'led',
					watts: 2.5,
					voltAmps: 3.13,
					lumens: 150,
					beam: null,
					minVolts: 9,
					maxVolts: 15,
					colour: null
				}
			}
		});
	});
});

describe('what is taken, and said', () => {
	it.each([
		['negative stock', 'fixture;a;b;1;-3;path;LED;2.5;150;', /stock: “-3” is less than none/],
		['a unit', 'fixture;a;b;1;1;path;LED;20W;1500;', /watts: “20W” was taken as 20/],
		['a decimal comma', 'fixture;a;b;12,50;1;path;LED;2.5;150;', /price: “12,50” was taken as 12\.50/],
		['degrees', 'fixture;a;b;1;1;path;LED;2.5;150;36°', /beam: “36°” was taken as 36/],
		['a beam in words', 'fixture;a;b;1;1;path;LED;2.5;150;flood', /beam: “flood” is not a number.*left out/],
		['a formula', 'fixture;a;=1+1;1;1;path;LED;2.5;150;', /name: “=1\+1” begins like a formula.*never worked out/],
		['a code that is spoilt', `fixture;1.23E+12;b;1;1;path;${lamp}`, /code: .*a spreadsheet made/],
		['no name', `fixture;a;;1;1;path;${lamp}`, /name: The name is missing/],
		['no source', 'fixture;a;b;1;1;path;;2.5;150;', /source: LED or halogen is not told: taken as LED/],
		['no type', `;a;b;1;1;path;${lamp}`, /type: The type is not told: taken as fixture/]
	])('%s', (_what, row, words) => {
		const list = one(row);
		expect(list.shelf.lines).toHaveLength(1);
		expect(
			messages(list, 'look', 2).some((message) => words.test(message)),
			messages(list, 'look', 2).join('\n')
		).toBe(true);
		expect(list.leftOut).toEqual([]);
	});
	it('keeps formulas and markup as text', () => {
		const link = '"=HYPERLINK(""http://example.org"";""x"")"';
		const list = read([
			head,
			`fixture;a;${link};1;1;path;${lamp}`,
			`fixture;<b>;<script>alert(1)</script>;1;1;path;${lamp}`
		]);
		expect(list.shelf.lines.map(({ code, name }) => [code, name])).toEqual([
			['a', '=HYPERLINK("http://example.org";"x")'],
			['<b>', '<script>alert(1)</script>']
		]);
	});
	it('takes a kit without a transformer and says so', () => {
		const list = one(`kit;a;b;1;1;path;${lamp}`);
		expect(messages(list, 'stop', 2)).toEqual(['null: How many of these lights are in it is missing.']);
		const counted = read([`${head};count`, `kit;a;b;1;1;path;${lamp};4`]);
		expect(counted.shelf.lines[0]?.contents.transformer).toBeNull();
		expect(messages(counted, 'look', 2)).toEqual([
			'null: This kit has no transformer: it is taken as one that adds to another.'
		]);
	});
	it('says a note of one kind three times, then how often', () => {
		const rows = Array.from({ length: 50 }, (_, i) => `fixture;${i};b;12,50;1;path;${lamp}`);
		const list = read([head, ...rows]);
		expect(list.shelf.lines).toHaveLength(50);
		expect(list.troubles).toHaveLength(4);
		expect(list.troubles.at(-1)).toMatchObject({
			row: null,
			field: 'price',
			message: '47 more rows are like this in the column “price”: 50 in all.'
		});
	});
	it('says which light holds where two lines with one product differ', () => {
		const list = read([`${head};count;same as`, `fixture;a;b;1;1;path;${lamp};;`, 'kit;k;b;1;1;path;LED;3;200;;4;a']);
		expect(list.shelf.lines[1]?.contents.fixtures[0]?.fixture.lamp.lumens).toBe(150);
		expect(messages(list, 'look', 3).join('\n')).toMatch(/figures of “a” were taken/);
	});
});

it('says which aisle it is, where the heading does', () => {
	const list = read([
		'SKU,Type,Name,Price,Connectors,Aisle',
		'1,connectors,a,1,10,4',
		'2,connectors,b,1,10,By the door'
	]);
	expect(list.shelf.lines.map(({ place }) => place)).toEqual(['Aisle 4', 'By the door']);
});

describe('what is left out, with why and all its text', () => {
	it.each([
		['no code', `fixture;;b;1;1;path;${lamp}`, /code: The stock code is missing/],
		['no price', `fixture;a;b;;1;path;${lamp}`, /price: The price is missing/],
		['a formula for a price', `fixture;a;b;=1+1;1;path;${lamp}`, /price: “=1\+1” is not a price/],
		['an unknown type', `mulch;a;b;1;1;path;${lamp}`, /type: “mulch” is nothing that is known/],
		['an unknown light', `fixture;a;b;1;1;lantern;${lamp}`, /light: “lantern” is no kind of light/],
		['no lumens', 'fixture;a;b;1;1;path;LED;2.5;;', /lumens: The lumens.*missing/],
		['no watts', 'fixture;a;b;1;1;path;LED;;150;', /watts: The watts.*missing/],
		['LED or halogen unclear', 'fixture;a;b;1;1;path;;5;170;', /source: Whether it is LED or halogen is missing/],
		[
			'a cell without end',
			`fixture;a;b;${'1 '.repeat(30_000)};1;path;${lamp}`,
			/price: This is longer than 300 letters/
		],
		['nothing in it', 'kit;a;b;1;1;;;;;', /This kit holds nothing/],
		['no type, nothing in it', ';a;b;1;1;;;;;', /type: What it is is missing/],
		['a code without end', `fixture;${'9'.repeat(61)};b;1;1;path;${lamp}`, /longer than 60 letters/],
		['a cell too many', `fixture;a;b;12;50;1;path;${lamp}`, /more cells than there are headings/]
	])('%s', (_what, row, words) => {
		const list = one(row);
		expect(list.shelf.lines).toEqual([]);
		const stops = messages(list, 'stop', 2);
		expect(
			stops.some((message) => words.test(message)),
			stops.join('\n')
		).toBe(true);
		expect(list.leftOut).toHaveLength(1);
		expect(list.leftOut[0]?.row).toBe(2);
		expect(list.leftOut[0]?.cells.map(({ text }) => text)).toEqual(row.split(';').filter(Boolean));
		expect(list.leftOut[0]?.why).toHaveLength(stops.length);
	});
	it('the second of two lines with one code', () => {
		const list = read([
			head,
			`fixture;0017;first;1;1;path;${lamp}`,
			`fixture;0017;second;1;1;path;${lamp}`,
			`fixture;17;third;1;1;path;${lamp}`
		]);
		expect(list.shelf.lines.map(({ name }) => name)).toEqual(['first', 'third']);
		expect(messages(list, 'stop', 3)).toEqual([
			'code: The code “0017” is in row 2 already. This row was kept aside: give it a code of its own.'
		]);
	});
	it('a price in other money', () => {
		const list = read([
			head,
			`fixture;a;b;$1.00;1;path;${lamp}`,
			`fixture;c;d;2.00 €;1;path;${lamp}`,
			`fixture;e;f;USD 3;1;path;${lamp}`
		]);
		expect(list.shelf.lines.map(({ code }) => code)).toEqual(['a', 'e']);
		expect(messages(list, 'stop', 3)[0]).toMatch(/in €, the list is in \$/);
	});
	it('a kit whose light is nowhere', () => {
		const list = read(['type,code,name,price,count,same as', 'kit,k,b,1,4,0099']);
		expect(messages(list, 'stop', 2)[0]).toMatch(/No light with the code “0099”/);
	});
	it('cable whose size or length cannot be read', () => {
		const list = read([
			'type,code,name,price,cable,cable length',
			'cable,a,b,1,10,50 ft',
			'cable,c,d,1,16 AWG,long',
			'cable,e,f,1,16 AWG,50'
		]);
		expect(messages(list, 'stop', 2)[0]).toMatch(/10 AWG or 10 mm²/);
		expect(messages(list, 'stop', 3)[0]).toMatch(/not a length/);
		expect(messages(list, 'look', 4)).toEqual([
			'cable length: “50” has no unit: taken as feet, as the size is in AWG.'
		]);
		expect(list.shelf.lines[0]?.contents.cable[0]?.metres).toBe(15.24);
	});
});

describe('names that every object has', () => {
	const names = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf'];
	it('as codes, products and headings', () => {
		const list = read([
			`${head};count;same as;__proto__;constructor`,
			...names.map((name) => `fixture;${name};b;1;1;path;${lamp};;;x;y`),
			...names.map((name) => `kit;kit ${name};b;1;1;;;;;;2;${name};x;y`)
		]);
		expect(list.leftOut).toEqual([]);
		expect(list.shelf.lines.map(({ contents }) => contents.fixtures[0]?.product)).toEqual([...names, ...names]);
		expect(list.columns.slice(-2).map(({ field }) => field)).toEqual([null, null]);
		expect(messages(list, 'look', null)).toContain('null: Not used: “__proto__”, “constructor”.');
		expect(({} as Record<string, unknown>).x).toBeUndefined();
	});
	it('as currency and as type', () => {
		const list = read(['type,code,name,price,currency', '__proto__,a,b,1,__proto__', 'connectors,c,d,1,constructor']);
		expect(list.shelf.lines).toEqual([]);
		expect(list.leftOut).toHaveLength(2);
	});
});

describe('the file as a whole', () => {
	it.each([
		['', /empty/],
		['\r\n\r\n', /empty/],
		['a,b\r\n'.repeat(20_001), /20001 rows; up to 20000/],
		[','.repeat(500), /empty/],
		['x,'.repeat(500), /more than 400 columns/]
	])('refuses %.10j', (text, words) => {
		const list = readShelf(text);
		expect(list.refused).toBe(true);
		expect(list.troubles).toHaveLength(1);
		expect(list.troubles[0]?.message).toMatch(words);
	});
	it('notices that there are no headings, and reads by what the person says', () => {
		const text = '0017,Path light,12.50,connectors,10';
		const none = readShelf(text);
		expect(none.headerRow).toBeNull();
		expect(none.refused).toBe(false);
		expect(none.columns.map(({ header, sample }) => [header, sample])[0]).toEqual(['Column A', '0017']);
		expect(messages(none, 'stop', null)[0]).toMatch(/No row of headings/);
		const told = readShelf(text, { fields: ['code', 'name', 'price', 'type', 'connectors'], name: 'Mine' });
		expect(told.shelf).toMatchObject({
			name: 'Mine',
			lines: [{ code: '0017', cents: 1250, contents: { connectors: 10 } }]
		});
	});
	it('finds headings below a title and counts rows as a spreadsheet does', () => {
		const list = read([
			'Summer list',
			'',
			'SKU,Name,Type,Price,Connectors',
			'',
			'"1","two\r\nlines",connectors,1,10',
			'2,b,c,d,e'
		]);
		expect(list.headerRow).toBe(3);
		expect(list.shelf.lines[0]?.name).toBe('two\r\nlines');
		expect(list.leftOut.map(({ row }) => row)).toEqual([6]);
		expect(messages(list, 'look', null)[0]).toMatch(/above the headings in row 3/);
	});
	it('says where a quotation mark is not closed', () => {
		const list = read(['SKU,Name,Type,Price', '1,"a,connectors,1', '2,b,connectors,2']);
		expect(messages(list, 'look', 2)[0]).toMatch(/opened here and never closed/);
		expect(list.leftOut[0]?.cells.at(-1)?.text).toContain('2,b,connectors,2');
	});
	it('reads lengths without a unit in the units that the person says', () => {
		const list = read(['type,code,name,price,cable,cable length', 'cable,a,b,1,16 AWG,10'], { units: 'metres' });
		expect(list.shelf.lines[0]?.contents.cable[0]?.metres).toBe(10);
		expect(list.troubles).toEqual([]);
	});
	it('reads 10,000 rows within a second, with room for a busy machine', () => {
		const rows = Array.from({ length: 10_000 }, (_, i) => `fixture;${i};Path light ${i};12,50;4;path;${lamp}`);
		const text = new TextEncoder().encode([head, ...rows].join('\r\n'));
		const before = process.cpuUsage();
		const list = readShelf(text);
		const { user, system } = process.cpuUsage(before);
		expect(list.shelf.lines).toHaveLength(10_000);
		expect((user + system) / 1000).toBeLessThan(2000);
	});
});
