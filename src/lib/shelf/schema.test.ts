import { describe, expect, it } from 'vitest';
import { demoShelf } from './demo';
import { checkedLeftOut, checkedLine, checkedShelf } from './schema';

const kit = () => structuredClone(demoShelf.lines[0]!);
type Path = (string | number)[];
/** The kit with one value put elsewhere. */
function spoilt(path: Path, value: unknown): unknown {
	const whole: unknown = kit();
	let at = whole as Record<string | number, unknown>;
	for (const step of path.slice(0, -1)) at = at[step] as Record<string | number, unknown>;
	at[path.at(-1)!] = value;
	return whole;
}

describe('a kept line', () => {
	it('is taken as it was', () => expect(checkedLine(kit())).toEqual(kit()));
	it.each<[Path, unknown]>([
		[['code'], ''],
		[['code'], 17],
		[['code'], 'x'.repeat(61)],
		[['kind'], 'mulch'],
		[['cents'], -1],
		[['cents'], 1.5],
		[['cents'], Number.NaN],
		[['stock'], -1],
		[['stock'], Infinity],
		[['place'], undefined],
		[['contents'], null],
		[['contents', 'connectors'], 1e9],
		[['contents', 'fixtures', 0, 'count'], 0],
		[['contents', 'fixtures', 0, 'fixture', 'kind'], '__proto__'],
		[['contents', 'fixtures', 0, 'fixture', 'lamp', 'watts'], 0],
		[['contents', 'fixtures', 0, 'fixture', 'lamp', 'minVolts'], 20],
		[['contents', 'transformer', 'taps'], []],
		[
			['contents', 'transformer', 'taps'],
			[13, 12]
		],
		[['contents', 'transformer', 'taps'], [120]],
		[['contents', 'transformer', 'voltAmps'], '60'],
		[['contents', 'cable', 0, 'metres'], 1e6],
		[['contents', 'cable', 0, 'size', 'system'], 'swg'],
		[['extra'], 1]
	])('is refused with %j as %j', (path, value) => expect(checkedLine(spoilt(path, value))).toBeNull());
});

describe('a kept shelf', () => {
	it('loses only the lines that do not hold, and the second of two with one code', () => {
		const [first, second] = demoShelf.lines;
		const { shelf, lost } = checkedShelf({ ...demoShelf, lines: [first, null, { code: 'x' }, first, second] })!;
		expect(shelf.lines).toEqual([first, second]);
		expect(lost).toBe(3);
	});
	it.each([
		null,
		1,
		'text',
		[],
		{},
		{ name: 'a', currency: '$' },
		{ name: 'a', currency: '$', lines: {} },
		{ name: 1, currency: '$', lines: [] }
	])('is none: %j', (value) => expect(checkedShelf(value)).toBeNull());
});

describe('kept rows', () => {
	it('are taken whole or not at all', () => {
		const row = { row: 3, cells: [{ header: 'code', text: '0017' }], why: ['x'] };
		expect(checkedLeftOut([row, row])).toEqual([row, row]);
		expect(checkedLeftOut([row, { row: 'x' }])).toBeNull();
		expect(checkedLeftOut(undefined)).toBeNull();
	});
});
