import { expect, test } from 'vitest';
import type { ShelfLine } from '$lib/domain/kits/types';
import { demoShelf } from '$lib/shelf/demo';
import type { Field } from '$lib/shelf';
import { merged, withLine, withoutLine } from './changes';
import { formGroups, lightKindsIn, cableKindsIn, type Cells } from './form-fields';
import { cellsOf, productsBeside, readTyped } from './typed-line';

const own = { lightKinds: 6, cableKinds: 3, isKnown: () => false };
const lineOf = (code: string): ShelfLine => demoShelf.lines.find((line) => line.code === code)!;
const kits = demoShelf.lines.filter(({ kind }) => kind === 'kit');
const loose = demoShelf.lines.filter(({ kind }) => kind === 'fixture');
/** A loose light that some kit holds too. */
const shared = loose.find(({ code }) =>
	kits.some(({ contents }) => contents.fixtures.some(({ product }) => product === code))
)!;
const read = (was: ShelfLine | null, kind: ShelfLine['kind'], cells: Cells, shelf = demoShelf) =>
	readTyped(shelf, was, kind, cells, formGroups(kind, own), productsBeside(shelf, was));

test('every line of the demo shelf comes back from its own form as it was', () => {
	expect(demoShelf.lines.length).toBeGreaterThan(50);
	for (const line of demoShelf.lines) {
		const back = read(line, line.kind, cellsOf(line));
		expect([...back.wrong.values(), ...back.whole], line.code).toEqual([]);
		expect(back.line).toEqual(line);
		expect(withLine(demoShelf, back.line!, line.code)).toEqual(demoShelf);
	}
});

test('a loose light that is changed is changed in the kits that hold it, also under a new code', () => {
	const cells = { ...cellsOf(shared), watts: '3,5', code: 'NEW-1' };
	const { line, taken } = read(shared, 'fixture', cells);
	expect(taken.get('watts')).toContain('3,5');
	const next = withLine(demoShelf, line!, shared.code);
	expect(next.lines.map(({ code }) => code)).toEqual(
		demoShelf.lines.map(({ code }) => (code === shared.code ? 'NEW-1' : code))
	);
	const before = kits.flatMap(({ contents }) => contents.fixtures).filter(({ product }) => product === shared.code);
	const after = next.lines
		.flatMap(({ kind, contents }) => (kind === 'kit' ? contents.fixtures : []))
		.filter(({ product }) => product === 'NEW-1');
	expect(before.length).toBeGreaterThan(0);
	expect(after.map(({ count }) => count)).toEqual(before.map(({ count }) => count));
	expect(new Set(after.map(({ fixture }) => fixture.lamp.watts))).toEqual(new Set([3.5]));
	// The others are the very same.
	expect(next.lines.find(({ kind }) => kind === 'cable')).toEqual(demoShelf.lines.find(({ kind }) => kind === 'cable'));
});

test('typed figures are read as the file’s are, and said', () => {
	const typed: Cells = {
		code: '0017',
		name: 'Bollard',
		price: '$12,5',
		light: 'path',
		watts: '20W',
		lumens: '900',
		source: 'led',
		volts: '9-15'
	};
	const { line, taken, currency } = read(null, 'fixture', typed);
	expect(line).toMatchObject({ code: '0017', cents: 1250, stock: null });
	expect(line?.contents.fixtures[0]?.fixture.lamp).toMatchObject({ watts: 20, minVolts: 9, maxVolts: 15 });
	expect(currency).toBe('$');
	expect(taken.get('price')).toContain('12.50');
});

test('what stands in the way is said by its field', () => {
	const wrong = (cells: Cells, field: Field) => read(null, 'fixture', cells).wrong.get(field);
	const good: Cells = { code: 'X1', name: 'X', price: '5', light: 'path', watts: '3', lumens: '200', source: 'led' };
	expect(read(null, 'fixture', good).line).not.toBeNull();
	expect(wrong({ ...good, code: shared.code }, 'code')).toContain(shared.name);
	const bare = read(null, 'fixture', { watts: 'three', price: 'dear' });
	expect([...bare.wrong.keys()]).toEqual(expect.arrayContaining(['code', 'price', 'watts']));
	expect(bare.line).toBeNull();
	expect(wrong({ ...good, price: '' }, 'price')).toMatch(/price is missing/);
	expect(wrong({ ...good, price: '5 €' }, 'price')).toMatch(/one currency/i);
	expect(wrong({ ...good, watts: 'three' }, 'watts')).toContain('three');
	expect(wrong({ ...good, code: '__proto__' }, 'code')).toBeUndefined();
	// What was typed for another kind of line is not looked at.
	const asCable: Cells = { ...good, watts: 'three', cable: '16 AWG', 'cable length': '50 ft' };
	expect(read(null, 'cable', asCable).line?.contents.cable).toEqual([
		{ size: { system: 'awg', size: 16 }, metres: 15.24, count: 1 }
	]);
	expect(read(null, 'kit', { code: 'K', name: 'K', price: '1' }).whole.join()).toMatch(/holds nothing/);
});

test('a kit names a loose light instead of figures of its own', () => {
	const cells: Cells = { code: 'K-9', name: 'Walk kit', price: '99', count: '6', 'same as': shared.code };
	const known = formGroups('kit', { lightKinds: 1, cableKinds: 1, isKnown: () => true });
	const { line } = readTyped(demoShelf, null, 'kit', cells, known, productsBeside(demoShelf, null));
	expect(line?.contents.fixtures).toEqual([{ ...shared.contents.fixtures[0], product: shared.code, count: 6 }]);
	expect(read(null, 'kit', { ...cells, 'same as': 'nowhere' }).wrong.get('same as')).toContain('nowhere');
});

test('a list beside the shelf renews what has its code and adds the rest', () => {
	const [first, second] = demoShelf.lines as [ShelfLine, ShelfLine];
	const other = {
		name: 'Other',
		currency: 'USD',
		lines: [
			{ ...second, cents: 1 },
			{ ...first, code: 'Z' }
		]
	};
	const both = merged(demoShelf, other);
	expect(both.lines.length).toBe(demoShelf.lines.length + 1);
	expect(both.lines[1]?.cents).toBe(1);
	expect(both.lines.at(-1)?.code).toBe('Z');
	expect(both.name).toBe(demoShelf.name);
	expect(withoutLine(both, 'Z').lines.map(({ code }) => code)).toEqual(demoShelf.lines.map(({ code }) => code));
});

test('a kit’s form has as many kinds of light and cable as the kit', () => {
	for (const kit of kits) {
		const cells = cellsOf(kit);
		expect(lightKindsIn(cells)).toBe(Math.max(1, kit.contents.fixtures.length));
		expect(cableKindsIn(cells)).toBe(Math.max(1, kit.contents.cable.length));
	}
	expect(lineOf(shared.code)).toBe(shared);
});
