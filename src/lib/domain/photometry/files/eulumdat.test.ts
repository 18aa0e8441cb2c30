import { describe, expect, it } from 'vitest';
import { readEulumdat, tablePhotometry, writeEulumdat, type FileRead, type FileRefused, type Symmetry } from '../index';
import { beamExponent } from '../distribution';
import { radians, seeded, steps, tableOf } from '../photometry.testing';

const cosine = (gamma: number): number => Math.cos(radians(gamma));
const good = (lines: (string | number)[]): FileRead => {
	const result = readEulumdat(lines.join('\r\n'));
	if (!result.ok) throw new Error(result.message);
	return result;
};
const bad = (lines: (string | number)[]): FileRefused => {
	const result = readEulumdat(lines.join('\n'));
	if (result.ok) throw new Error('it was read');
	return result;
};

const sizes = [120, 0, 60, 100, 0, 10, 20, 5, 0];
const lampSet = [2, 'LED', 500, '2700 K', '80', '6,5'];
const secondSet = [1, 'FL', 900, '', '', 14];
const bothSets = [2, 1, 'LED', 'FL', 500, 900, '2700 K', '', '80', '', 6.5, 14];

interface Kind {
	isym: number;
	circle: number[];
	/** C of the planes with intensities, in the order of the file. */
	stored: number[];
	law: (g: number, c: number) => number;
}
/** A file written out line by line here, not by the writer under test: cd/klm by `law`, lamps of 500 lm, LORL 80 %. */
function fileOf({ isym, circle, stored, law }: Kind, vertical = steps(0, 90, 5)): (string | number)[] {
	return [
		'Nobody',
		isym === 1 ? 1 : 3,
		isym,
		circle.length,
		0,
		vertical.length,
		5,
		'R 1',
		'Invented light',
		'N 7',
		'light.ldt',
		'today',
		...sizes,
		100,
		80,
		1,
		0,
		1,
		...lampSet,
		...Array.from({ length: 10 }, () => '0,5'),
		...circle,
		...vertical,
		...stored.flatMap((c) => vertical.map((g) => String(law(g, c)).replace('.', ',')))
	];
}
const kinds: Kind[] = [
	{
		isym: 0,
		circle: steps(0, 345, 15),
		stored: steps(0, 345, 15),
		law: (g, c) => (90 - g) * (2 + Math.sin(radians(c + 20)))
	},
	{ isym: 1, circle: steps(0, 345, 15), stored: [0], law: (g) => 90 - g },
	{ isym: 2, circle: steps(0, 345, 15), stored: steps(0, 180, 15), law: (g, c) => (90 - g) * (2 + cosine(c)) },
	{
		isym: 3,
		circle: steps(0, 345, 15),
		stored: [...steps(270, 345, 15), ...steps(0, 90, 15)],
		law: (g, c) => (90 - g) * (2 + Math.sin(radians(c)))
	},
	{ isym: 4, circle: steps(0, 345, 15), stored: steps(0, 90, 15), law: (g, c) => (90 - g) * (2 + cosine(2 * c)) }
];

describe('a file written out by hand', () => {
	it.each(kinds)('symmetry indicator $isym: the light of the full circle, in candela', (kind) => {
		const { photometry, about } = good(fileOf(kind));
		const full = tablePhotometry(tableOf((g, c) => kind.law(g, c) / 2, steps(0, 90, 5), steps(0, 360, 15), 'none'));
		expect(photometry.lumens).toBeCloseTo(full.lumens, 8);
		const next = seeded(kind.isym);
		for (let i = 0; i < 1000; i++) {
			const [x, c] = [next(), 360 * next()];
			expect(photometry.candela(x, c)).toBeCloseTo(full.candela(x, c), 8);
		}
		expect(about).toMatchObject({
			format: 'EULUMDAT',
			name: 'Invented light',
			maker: 'Nobody',
			lamp: 'LED',
			statedLumens: 400,
			lampLumens: 500,
			lamps: 2,
			watts: 6.5,
			opening: { width: -0.1, length: 0, height: 0.02 }
		});
	});
	it('flat diffuse: 1000/π cd/klm are all the lumens of the lamp', () => {
		const flat: Kind = { ...kinds[1]!, law: (g) => (1000 / Math.PI) * cosine(g) };
		const { photometry, notes } = good(fileOf(flat));
		expect(Math.abs(photometry.lumens / 500 - 1)).toBeLessThan(0.005);
		expect(notes).toEqual(['Its candela add up to 500 lm, 25 % more than the 400 lm it states. The candela are used.']);
	});
	it.each([15, 36, 60, 120])('a %i° beam of cosⁿ', (angle) => {
		const n = beamExponent(angle);
		const per = (1000 * (n + 1)) / (2 * Math.PI);
		const { photometry } = good(fileOf({ ...kinds[1]!, law: (g) => per * cosine(g) ** n }, steps(0, 90, 1)));
		expect(Math.abs(photometry.lumens / 500 - 1)).toBeLessThan(0.005);
	});
	it('absolute photometry: a negative number of lamps', () => {
		const lines = fileOf(kinds[1]!);
		lines[26] = -1;
		expect(good(lines).about).toMatchObject({ lampLumens: null, lamps: 1, statedLumens: 400 });
	});
	it('several sets of lamps, set by set or field by field: the first is taken', () => {
		const lines = fileOf(kinds[1]!);
		const bySet = [...lines.slice(0, 25), 2, ...lampSet, ...secondSet, ...lines.slice(32)];
		const byField = [...lines.slice(0, 25), 2, ...bothSets, ...lines.slice(32)];
		for (const file of [bySet, byField]) {
			const { about, notes, photometry } = good(file);
			expect(about).toMatchObject({ lampLumens: 500, lamp: 'LED', lamps: 2, watts: 6.5 });
			expect(photometry.lumens).toBeCloseTo(good(lines).photometry.lumens, 9);
			expect(notes.some((note) => note.includes('2 sets'))).toBe(true);
		}
	});
	it('conversion factor, tilt, angles that end early, lines left over are told', () => {
		const lines = fileOf(kinds[1]!, steps(5, 85, 5));
		lines[23] = 2;
		lines[24] = 15;
		const { notes, photometry } = good([...lines, 'remark', '']);
		expect(photometry.candela(cosine(45), 0)).toBeCloseTo(45, 9);
		for (const word of ['conversion factor, 2', 'tilted by 15°', 'beyond 85°', 'within 5°', '1 line after'])
			expect(notes.some((note) => note.includes(word))).toBe(true);
	});
});

describe('round trips', () => {
	it.each([
		['rotational', [0]],
		['quadrant', [0, 30, 90]],
		['bilateral', [0, 30, 90, 130, 180]],
		['bilateral-90', [90, 120, 180, 240, 270]],
		['none', [0, 40, 77.25, 200, 360]]
	] as [Symmetry, number[]][])('%s: the same table', (symmetry, planes) => {
		const next = seeded(planes.length + 40);
		const table = tableOf(() => 1000 * next(), steps(0, 180, 7.5), planes, symmetry);
		if (symmetry === 'none') table.candela.copyWithin(table.candela.length - 25, 0, 25);
		const text = writeEulumdat(table, { name: 'Round trip', watts: 3.25 });
		const read = good(text.split('\r\n'));
		// Of random candela the brightest lies anywhere; nothing else is odd.
		expect(read.notes.filter((note) => !note.includes('brightest'))).toEqual([]);
		expect(read.about).toMatchObject({ name: 'Round trip', watts: 3.25, lampLumens: null });
		expect([read.table.symmetry, read.table.horizontal, read.table.vertical]).toEqual([
			symmetry,
			planes,
			table.vertical
		]);
		for (const [i, value] of table.candela.entries()) expect(read.table.candela[i]).toBeCloseTo(value, 9);
	});
	it('planes that do not divide by quarters are written all round', () => {
		const table = tableOf((g, c) => 200 - g + c, [0, 90, 180], [90, 120, 180, 270], 'bilateral-90');
		const read = good(writeEulumdat(table, { name: '' }).split('\r\n'));
		const [a, b] = [tablePhotometry(table), read.photometry];
		expect(read.table.symmetry).toBe('none');
		for (const c of [0, 45, 90, 100, 200, 275, 359]) expect(b.candela(0.3, c)).toBeCloseTo(a.candela(0.3, c), 8);
	});
});

describe('a bad file says line and field', () => {
	const at = (line: number, text: string | number, kind = kinds[4]!) =>
		fileOf(kind).map((l, i) => (i === line - 1 ? text : l));
	const cases: [string, (string | number)[], number, string, string][] = [
		['empty', ['', ''], 1, 'the file', 'empty'],
		['too large', ['x'.repeat(2_000_001)], 1, 'the file', '2 MB'],
		['type', at(2, 4), 2, 'type indicator', 'more than 3'],
		['symmetry', at(3, 5), 3, 'symmetry indicator', 'more than 4'],
		['symmetry in words', at(3, 'all'), 3, 'symmetry indicator', '“all” is not a number'],
		['planes', at(4, 401), 4, 'number of C-planes', 'more than 400'],
		['no planes', at(4, 0), 4, 'number of C-planes', 'less than 1'],
		['half a plane', at(4, '23,5'), 4, 'number of C-planes', 'whole'],
		['angles', at(6, 1), 6, 'number of intensities in each C-plane', 'less than 2'],
		['size', at(13, 'wide'), 13, 'length of the luminaire', '“wide”'],
		['conversion', at(24, 0), 24, 'conversion factor for intensities', 'more than 0'],
		['sets', at(26, 0), 26, 'number of standard sets of lamps', 'less than 1'],
		['lamps', at(27, 'two'), 27, 'number of lamps', '“two”'],
		['flux', at(29, -500), 29, 'total luminous flux of lamps', 'more than 0'],
		['no flux', at(29, ''), 29, 'total luminous flux of lamps', 'nothing where a number'],
		['watts', at(32, 'many'), 32, 'watts', '“many”'],
		['C fall', at(44, 0), 44, 'C angles', 'grow'],
		['C begin', at(43, 1), 43, 'C angles', 'instead of 0°'],
		['C too large', at(66, 361), 66, 'C angles (24 of 24)', 'more than 360'],
		['C90 elsewhere', at(49, 91), 49, 'C angles', 'C90'],
		['vertical falls', at(68, 0), 68, 'vertical angles', 'grow'],
		['intensity', at(86, 'x'), 86, 'intensity at C 0°, vertical 0°', '“x”'],
		['intensity below 0', at(107, '-1'), 107, 'intensity at C 15°, vertical 10°', 'less than 0'],
		['cut off in the head', fileOf(kinds[4]!).slice(0, 20), 20, 'height of the luminous area, C270', 'ends before'],
		['cut off in the lamps', fileOf(kinds[4]!).slice(0, 28), 28, 'watts', 'ends before'],
		['cut off', fileOf(kinds[4]!).slice(0, 100), 100, 'intensity at C 0°, vertical 75°', 'ends before'],
		['no light', fileOf({ ...kinds[1]!, law: () => 0 }), 86, 'candela', 'zero']
	];
	it.each(cases)('%s', (_, lines, line, field, words) => {
		const { message, ...rest } = bad(lines);
		expect(rest).toEqual({ ok: false, line, field });
		expect(message).toContain(`Line ${line}, ${field}: `);
		expect(message).toContain(words);
	});
	it('symmetries that the number of planes does not divide by', () => {
		const odd = (isym: number, count: number) =>
			bad(fileOf({ ...kinds[0]!, isym, circle: steps(0, count - 1, 1), stored: [0] }));
		expect(odd(2, 7)).toMatchObject({ line: 4, field: 'number of C-planes' });
		expect(odd(3, 6)).toMatchObject({ line: 4, field: 'number of C-planes' });
		expect(odd(0, 6)).toMatchObject({ field: 'C angles' });
	});
});
