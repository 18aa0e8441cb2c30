import { describe, expect, it } from 'vitest';
import {
	readLm63,
	tablePhotometry,
	writeLm63,
	type CandelaTable,
	type FileRead,
	type FileRefused,
	type Symmetry
} from '../index';
import { beamExponent } from '../distribution';
import { radians, seeded, steps, tableOf } from '../photometry.testing';

const cosine = (gamma: number): number => Math.cos(radians(gamma));
const good = (text: string): FileRead => {
	const result = readLm63(text);
	if (!result.ok) throw new Error(result.message);
	return result;
};
const bad = (text: string): FileRefused => {
	const result = readLm63(text);
	if (result.ok) throw new Error('it was read');
	return result;
};

/** A flat diffuse source of 100 cd, by hand: 314.159 lm. Values break over lines and are parted by blanks and commas. */
const byHand = [
	'IESNA:LM-63-2002',
	'[TEST] invented',
	'[MANUFAC] nobody',
	'[LUMINAIRE] Diffuse disc',
	'[MORE] second line',
	'[LAMP] one invented lamp',
	'TILT=NONE',
	'1 -1 1 19 1 1 1 -0.5 0 0',
	'1.0 1.0 4.5',
	'0,5,10 15 20, 25 30 35 40 45',
	'50 55 60 65 70 75 80 85 90',
	'0',
	steps(0, 45, 5)
		.map((g) => (100 * cosine(g)).toFixed(3))
		.join(', '),
	steps(50, 90, 5)
		.map((g) => (100 * cosine(g)).toFixed(3))
		.join(' '),
	''
];
const changed = (line: number, text: string): string => byHand.map((l, i) => (i === line - 1 ? text : l)).join('\n');

describe('a file by hand', () => {
	it('gives its light and says what it is', () => {
		const { photometry, about, notes, table } = good(byHand.join('\r\n'));
		expect(Math.abs(photometry.lumens / (100 * Math.PI) - 1)).toBeLessThan(0.005);
		expect(photometry.candela(cosine(60), 123)).toBeCloseTo(50, 3);
		expect(table.symmetry).toBe('rotational');
		expect(about).toMatchObject({
			format: 'LM-63',
			edition: '2002',
			name: 'Diffuse disc second line',
			maker: 'nobody',
			lamp: 'one invented lamp',
			lampLumens: null,
			lamps: 1,
			watts: 4.5,
			opening: { width: -0.1524, length: 0, height: 0 },
			centre: 100,
			turned: false
		});
		expect(notes).toEqual([]);
	});
	it('line ends of every system, blank lines and an old end-of-file mark do not matter', () => {
		for (const text of [byHand.join('\r'), byHand.join('\n\n'), `\uFEFF\n${byHand.join('\n')}\u001A`])
			expect(good(text).photometry.lumens).toBe(good(byHand.join('\n')).photometry.lumens);
	});
	it('editions are told by the first line; without one it is of 1986', () => {
		const edition = (first: string) => good(changed(1, first)).about.edition;
		expect(edition('IESNA91')).toBe('1991');
		expect(edition('IESNA:LM-63-1995')).toBe('1995');
		expect(edition('IES:LM-63-2019')).toBe('2019');
		expect(edition('A label of one’s own')).toBe('1986');
		expect(good(byHand.slice(1).join('\n')).about.edition).toBe('1986');
		const labels = ['Diffuse disc', 'tested by nobody', ...byHand.slice(6)].join('\n');
		expect(good(labels).about).toMatchObject({ edition: '1986', name: 'Diffuse disc' });
		expect(good(changed(1, 'IES:LM-63-2031')).notes[0]).toContain('2031');
	});
});

describe('what multiplies the candela', () => {
	const lumens = (first: string, factors: string, numbers = byHand[7]!) =>
		good(byHand.map((l, i) => (i === 0 ? first : i === 7 ? numbers : i === 8 ? factors : l)).join('\n')).photometry
			.lumens;
	const plain = lumens('IESNA:LM-63-2002', '1 1 4.5');
	it('multiplier and ballast factor', () => {
		expect(lumens('IESNA:LM-63-2002', '0.8 1 0', '1 -1 2.5 19 1 1 1 0 0 0')).toBeCloseTo(2 * plain, 6);
	});
	it('the ballast-lamp factor up to 1995; from 2002 the field is something else', () => {
		expect(lumens('IESNA:LM-63-1995', '1 0.9 0')).toBeCloseTo(0.9 * plain, 6);
		expect(lumens('IESNA91', '1 0.9 0')).toBeCloseTo(0.9 * plain, 6);
		expect(lumens('IESNA:LM-63-2002', '1 0.9 0')).toBeCloseTo(plain, 9);
		expect(lumens('IES:LM-63-2019', '1 1.1 0')).toBeCloseTo(plain, 9);
		expect(good(changed(9, '1 0.9 0')).notes[0]).toContain('future use');
	});
	it('2019 says when the light was simulated', () => {
		const made = (code: string) => good(changed(1, 'IES:LM-63-2019').replace('1.0 1.0 4.5', `1 ${code} 0`)).notes;
		expect(made('1.01000')).toEqual(['Its light was simulated, not measured.']);
		expect(made('1.11000')).toHaveLength(1);
		expect([made('1.10000'), made('1.00001'), made('1.00100')]).toEqual([[], [], []]);
	});
});

describe('notes', () => {
	it('lamps that give less than the candela add up to', () => {
		const { about, notes } = good(changed(8, '2 120 1 19 1 1 2 0.1 0.2 0.3'));
		expect(about).toMatchObject({ lampLumens: 240, lamps: 2, opening: { width: 0.1, length: 0.2, height: 0.3 } });
		expect(notes).toEqual([
			'Its candela add up to 314 lm, more than the 240 lm of its lamps: its multipliers may be wrong.'
		]);
		expect(good(changed(8, '1 500 1 19 1 1 2 0 0 0')).notes).toEqual([]);
	});
	it('light that goes up is turned over; the table stays as in the file', () => {
		const law = (g: number, c: number) => Math.max(0, -100 * cosine(g)) * (2 + Math.sin(radians(c)));
		const table = tableOf(law, steps(90, 180, 5), steps(0, 360, 10), 'none');
		const { photometry, about, notes, table: read } = good(writeLm63(table, { name: 'well' }));
		expect(read).toEqual(table);
		expect(about).toMatchObject({ turned: true, peak: { vertical: 0 } });
		expect(notes[0]).toContain('goes up');
		expect(photometry.candela(1, 0)).toBeCloseTo(200, 9);
		expect(photometry.candela(cosine(30), 270)).toBeCloseTo(300 * cosine(30), 8);
	});
	it('brightest off its axis', () => {
		const table = tableOf((g) => 100 + g * (90 - g), steps(0, 90, 5));
		expect(good(writeLm63(table, { name: 'ring' })).notes).toEqual([
			'It is brightest 45° off its axis, not along it: aim it by that.'
		]);
	});
	it('values left over, planes that do not close', () => {
		expect(good(`${byHand.join('\n')}\n7 8`).notes[0]).toContain('2 values');
		const open = tableOf((g, c) => 100 - g + c, [0, 90], steps(0, 360, 45), 'none');
		expect(good(writeLm63(open, { name: '' })).notes[0]).toContain('same plane');
	});
});

describe('round trips', () => {
	const laws: [Symmetry, number[]][] = [
		['rotational', [0]],
		['quadrant', [0, 22.5, 60, 90]],
		['bilateral', steps(0, 180, 22.5)],
		['bilateral-90', [90, 135, 180, 225, 270]],
		['none', [0, 40, 77.25, 180, 300, 360]]
	];
	it.each(laws)('%s, every edition and range of vertical angles: the same table', (symmetry, planes) => {
		const next = seeded(planes.length);
		for (const edition of ['1986', '1991', '1995', '2002', '2019'] as const)
			for (const [from, to] of [
				[0, 90],
				[90, 180],
				[0, 180]
			] as const) {
				const table = tableOf(() => 1000 * next(), [...steps(from, to, 7.5)], planes, symmetry);
				if (symmetry === 'none')
					table.candela.copyWithin(table.candela.length - table.vertical.length, 0, table.vertical.length);
				const read = good(writeLm63(table, { edition, name: 'Round trip', watts: 3.25, lampLumens: 9000, lamps: 2 }));
				expect(read.table).toEqual(table);
				expect(read.about).toMatchObject({ edition, name: 'Round trip', watts: 3.25, lampLumens: 18_000 });
			}
	});
	it('keeps to 80 characters a line', () => {
		const next = seeded(5);
		const text = writeLm63(
			tableOf(() => next(), steps(0, 180, 1)),
			{ name: 'x'.repeat(300), edition: '1986' }
		);
		expect(Math.max(...text.split('\r\n').map((l) => l.length))).toBeLessThanOrEqual(80);
	});
	it.each([15, 36, 60, 120])('a %i° beam gives the analytic flux back, by each symmetry', (angle) => {
		const n = beamExponent(angle);
		for (const [symmetry, planes] of laws) {
			const law = (g: number) => 1000 * Math.max(0, cosine(g)) ** n;
			const { photometry } = good(writeLm63(tableOf(law, steps(0, 90, 1), planes, symmetry), { name: 'beam' }));
			expect(Math.abs(photometry.lumens / ((2000 * Math.PI) / (n + 1)) - 1)).toBeLessThan(0.005);
		}
	});
	it('a missing plane at 360° is that at 0°', () => {
		const table: CandelaTable = tableOf((g, c) => 200 - g + 50 * cosine(c), [0, 45, 90], steps(0, 315, 45), 'none');
		const read = good(writeLm63(table, { name: '' }));
		expect(read.table.horizontal.at(-1)).toBe(360);
		const full = tablePhotometry(tableOf((g, c) => 200 - g + 50 * cosine(c), [0, 45, 90], steps(0, 360, 45), 'none'));
		expect(read.photometry.lumens).toBeCloseTo(full.lumens, 9);
		expect(read.photometry.candela(0.5, 340)).toBeCloseTo(full.candela(0.5, 340), 9);
	});
});

describe('a bad file says line and field', () => {
	const cases: [string, string, number, string, string][] = [
		['empty', '  \n ', 1, 'the file', 'empty'],
		['too large', 'x'.repeat(2_000_001), 1, 'the file', '2 MB'],
		['something else', 'dear diary\ntoday', 2, 'TILT', 'no LM-63 file'],
		['tilt in the file', changed(7, 'TILT=INCLUDE'), 7, 'TILT', '“INCLUDE”'],
		['tilt in another file', changed(7, 'TILT=other.tlt'), 7, 'TILT', '“other.tlt”'],
		['a word for a number', changed(8, '1 -1 one 19 1 1 1 0 0 0'), 8, 'candela multiplier', '“one” is not a number'],
		['half a lamp', changed(8, '1.5 -1 1 19 1 1 1 0 0 0'), 8, 'number of lamps', 'whole number'],
		['no lamp', changed(8, '0 -1 1 19 1 1 1 0 0 0'), 8, 'number of lamps', 'less than 1'],
		['lumens of −5', changed(8, '1 -5 1 19 1 1 1 0 0 0'), 8, 'lumens per lamp', 'less than -1'],
		['lumens of 0', changed(8, '1 0 1 19 1 1 1 0 0 0'), 8, 'lumens per lamp', '−1'],
		['multiplier 0', changed(8, '1 -1 0 19 1 1 1 0 0 0'), 8, 'candela multiplier', 'more than 0'],
		['one vertical angle', changed(8, '1 -1 1 1 1 1 1 0 0 0'), 8, 'number of vertical angles', 'less than 2'],
		['too many angles', changed(8, '1 -1 1 401 1 1 1 0 0 0'), 8, 'number of vertical angles', 'more than 400'],
		['too many planes', changed(8, '1 -1 1 19 99999 1 1 0 0 0'), 8, 'number of horizontal angles', 'more than 400'],
		['type B', changed(8, '1 -1 1 19 1 2 1 0 0 0'), 8, 'photometric type', 'type B'],
		['type A', changed(8, '1 -1 1 19 1 3 1 0 0 0'), 8, 'photometric type', 'type A'],
		['units', changed(8, '1 -1 1 19 1 1 3 0 0 0'), 8, 'units type', 'more than 2'],
		['opening', changed(8, '1 -1 1 19 1 1 1 0 wide 0'), 8, 'length of the luminous opening', '“wide”'],
		['ballast', changed(9, '0 1 4.5'), 9, 'ballast factor', 'more than 0'],
		['watts', changed(9, '1 1 -4'), 9, 'input watts', 'less than 0'],
		['huge', changed(9, '1 1 1e300'), 9, 'input watts', 'more than'],
		['angles fall', changed(10, '0,5,10 15 20, 25 30 30 40 45'), 10, 'vertical angles', 'grow'],
		['begin at 5', changed(10, '1,5,10 15 20, 25 30 35 40 45'), 10, 'vertical angles', 'begin at 1°'],
		['end at 85', changed(11, '50 55 60 65 70 75 80 85 88'), 11, 'vertical angles', 'end at 88°'],
		['angle too large', changed(11, '50 55 60 65 70 75 80 85 270'), 11, 'vertical angles (19 of 19)', 'more than 180'],
		['one plane, not at 0', changed(12, '45'), 12, 'horizontal angles', 'begin at 45°'],
		['candela', changed(14, 'dark'), 14, 'candela at horizontal 0°, vertical 50°', '“dark”'],
		['candela below 0', changed(13, '100 -2'), 13, 'candela at horizontal 0°, vertical 5°', 'less than 0'],
		['cut off', byHand.slice(0, 13).join('\n'), 13, 'candela at horizontal 0°, vertical 50°', 'ends before'],
		['no numbers', byHand.slice(0, 7).join('\n'), 7, 'number of lamps', 'ends before'],
		['no light', [...byHand.slice(0, 12), '0 '.repeat(19)].join('\n'), 13, 'candela', 'zero'],
		['too much light', changed(8, '1 -1 1e9 19 1 1 1 0 0 0'), 13, 'candela', 'more than']
	];
	it.each(cases)('%s', (_, text, line, field, words) => {
		const { message, ...rest } = bad(text);
		expect(rest).toEqual({ ok: false, line, field });
		expect(message).toContain(`Line ${line}, ${field}: `);
		expect(message).toContain(words);
		expect(message.length).toBeLessThan(260);
	});
	it('planes that end where no symmetry does', () => {
		const table = tableOf(() => 1, [0, 90], [0, 45], 'none');
		expect(bad(writeLm63(table, { name: '' }).replace(/\[TEST\].*\r\n/, ''))).toMatchObject({
			field: 'horizontal angles',
			line: 7
		});
	});
});
