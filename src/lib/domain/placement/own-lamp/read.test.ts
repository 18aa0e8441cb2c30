/** From a file to a lamp of one's own: what is read, thinned, rounded and refused. */
import { describe, expect, it } from 'vitest';
import * as z from 'zod/mini';
import { tableBeam, tableLumens, tableOfMeasured, thinned, turned, writeEulumdat, writeLm63 } from '../../photometry';
import { ownLampSchema, type OwnLamp } from '../../yard';
import { ownLampOf, ownLightOf } from './index';
import { disc, lampOf, radians, steps, tableOf } from './own-lamp.testing';

const models = ['path-led-2.5w-2700'];
const read = (text: string): Omit<OwnLamp, 'id'> => {
	const found = ownLampOf(text, models);
	if (!found.ok) throw new Error(found.message);
	return found.lamp;
};
const lumensOf = (lamp: Omit<OwnLamp, 'id'>): number =>
	tableLumens(tableOfMeasured({ ...lamp, candela: lamp.candela }));
const held = (lamp: Omit<OwnLamp, 'id'>) => z.safeParse(ownLampSchema, { id: 'lamp-1', ...lamp });

describe('a file', () => {
	// A flat diffuse disc: Φ = π·I0, half its intensity 60° off the axis (Lambert's cosine law, any optics textbook).
	it.each([
		['LM-63', writeLm63(disc(100), { name: 'Disc', watts: 4 })],
		['EULUMDAT', writeEulumdat(disc(100), { name: 'Disc', watts: 4 })]
	])('of %s is known by its content', (format, text) => {
		const found = ownLampOf(text, models);
		if (!found.ok) throw new Error(found.message);
		expect(found.format).toBe(format);
		expect(found.lamp).toMatchObject({ name: 'Disc', watts: 4, for: models, symmetry: 'rotational' });
		expect(held(found.lamp).success).toBe(true);
		const light = ownLightOf({ id: 'own', ...found.lamp })!;
		expect(Math.abs(light.lumens / (100 * Math.PI) - 1)).toBeLessThan(0.001);
		expect(light.beamAngle).toBeCloseTo(120, 1);
		expect([light.beam.of, light.beam.byPeak]).toEqual([100, false]);
	});
	it('whose light goes up is turned, so that its axis is its beam', () => {
		const up = turned(disc(100));
		const lamp = read(writeLm63(up, { name: 'Up' }));
		expect([lamp.vertical[0], lamp.candela[0]]).toEqual([0, 100]);
	});
	it('without a name takes the one it is given, without watts has none', () => {
		const text = writeEulumdat(disc(100), { name: '' });
		const found = ownLampOf(text, models, 'garden.ldt');
		expect(found.ok && [found.lamp.name, 'watts' in found.lamp]).toEqual(['garden.ldt', false]);
		const long = read(writeLm63(disc(100), { name: 'x'.repeat(70) }));
		expect([long.name.length, long.name.endsWith('…')]).toEqual([60, true]);
	});
	it('keeps four digits of each candela and its lumens within a thousandth', () => {
		const odd = tableOf((g) => 123.456789 * Math.cos(radians(g)) ** 3 + 0.0123456, steps(0, 90, 0.5));
		const lamp = read(writeLm63(odd, { name: 'Odd' }));
		expect(lamp.candela[0]).toBe(123.5);
		expect(lamp.candela.every((value) => String(value).replace(/^0\.0*|\./g, '').length <= 4)).toBe(true);
		expect(Math.abs(lumensOf(lamp) / tableLumens(odd) - 1)).toBeLessThan(0.001);
	});
});

describe('a file that cannot be used', () => {
	const good = writeLm63(disc(100), { name: 'Disc' });
	it.each([
		['empty', ' \n', /^This file is empty/],
		['a picture', '\u0089PNG\r\n\u001A\n', /no photometric file.*TILT=.*line 2.*line 3/],
		['a yard', '{\n "format": "duskwright/yard"\n}', /no photometric file/],
		[
			'a word among the candela',
			good.replace('98.48', 'lots'),
			/^Line \d+, candela at horizontal 0°, vertical 10°: “lots/
		],
		['tilted', good.replace('TILT=NONE', 'TILT=INCLUDE'), /^Line 4, TILT: .*only TILT=NONE/],
		['cut short', good.slice(0, good.length / 2), /^Line \d+, .*: the file ends before it/],
		['a floodlight', writeLm63(disc(100), { name: 'Flood', watts: 400 }), /400 W.*mains floodlight/],
		['a lighthouse', writeLm63(disc(5e7), { name: 'Rock' }), /5\.0e\+7 .*more than a million/],
		['next to no light', writeLm63(disc(0.1), { name: 'Glim' }), /“Glim” gives less than one lumen/]
	])('says why: %s', (_, text, message) => {
		const found = ownLampOf(text, models);
		expect(found.ok).toBe(false);
		expect(!found.ok && found.message).toMatch(message);
	});
});

describe('a table larger than a yard holds', () => {
	// A lobe thrown aside: I = 500·cos⁸γ + 300·sin²γ·(1 + cos C)/2, and its integral over the hemisphere:
	// 2π·500/9 + 300·π·(2/3), since the mean of (1 + cos C)/2 is 1/2 and ∫ sin³γ = 2/3.
	const law = (g: number, c: number): number => {
		const cosine = Math.max(0, Math.cos(radians(g)));
		return 500 * cosine ** 8 + (300 * (1 - cosine * cosine) * (1 + Math.cos(radians(c)))) / 2;
	};
	const lumens = (1000 * Math.PI) / 9 + 200 * Math.PI;
	const full = tableOf((g, c) => Math.round(1000 * law(g, c)) / 1000, steps(0, 90, 0.25), steps(0, 360, 2.5), 'none');

	it('is thinned to what it holds, with the lumens of the file', () => {
		expect(full.candela.length).toBe(361 * 145);
		const found = ownLampOf(writeLm63(full, { name: 'Lobe' }), models);
		if (!found.ok) throw new Error(found.message);
		const { lamp, notes } = found;
		expect(held(lamp).success).toBe(true);
		expect(lamp.candela.length).toBe(lamp.vertical.length * lamp.horizontal.length);
		expect([lamp.vertical.at(-1), lamp.horizontal[0], lamp.horizontal.at(-1)]).toEqual([90, 0, 360]);
		expect(Math.abs(lumensOf(lamp) / lumens - 1)).toBeLessThan(0.005);
		// So smooth a table loses next to nothing.
		const { off } = thinned(full, { vertical: 181, horizontal: 73, values: 6000 });
		expect(off).toBeLessThan(0.002);
		expect(notes.some((note) => note.includes('361 × 145'))).toBe(off > 0.001);
	});
	it('keeps a rim sharp and says how far it is off where it cannot', () => {
		const rim = tableOf((g) => (g <= 61.1 ? 100 : 0), steps(0, 90, 0.1));
		const { table, off } = thinned(rim, { vertical: 20, horizontal: 1, values: 20 });
		expect(table.vertical).toContain(rim.vertical.find((g) => g > 61.15)!);
		expect(off).toBeLessThan(1e-3);
		const comb = tableOf((_, c) => 100 + 50 * Math.cos(radians(90 * c)), [0, 45, 90], steps(0, 360, 1), 'none');
		const found = ownLampOf(writeLm63(comb, { name: 'Comb' }), models);
		expect(found.ok && found.notes.join(' ')).toMatch(/3 × 361 directions .* off by up to \d+\.\d % of its greatest/);
		expect(found.ok && Math.abs(lumensOf(found.lamp) / tableLumens(comb) - 1)).toBeLessThan(0.005);
	});
});

describe('the beam of a table', () => {
	it.each([15, 24, 36, 60, 120])('is that of a cosⁿ beam of %i°', (angle) => {
		const n = Math.log(0.5) / Math.log(Math.cos(radians(angle / 2)));
		const beam = tableBeam(tableOf((g) => 900 * Math.max(0, Math.cos(radians(g))) ** n, steps(0, 90, 0.5)));
		expect(Math.abs(beam.first - angle)).toBeLessThan(0.05);
		expect(beam.second).toBe(beam.first);
	});
	it('differs by plane, counts both sides of the axis, and ends with the table', () => {
		// Straight down to nothing: half at half way. C0 20°, C180 40°, across 30° either side.
		const end = (c: number): number => (c === 0 || c === 360 ? 20 : c === 180 ? 40 : 30);
		const wedge = tableOf(
			(g, c) => Math.max(0, 100 - (100 * g) / end(c)),
			steps(0, 90, 1),
			[0, 90, 180, 270, 360],
			'none'
		);
		const beam = tableBeam(wedge);
		expect(beam.first).toBeCloseTo(10 + 20, 9);
		expect(beam.second).toBeCloseTo(15 + 15, 9);
		expect(tableBeam(tableOf(() => 100, [0, 30]))).toMatchObject({ first: 60, second: 60 });
		expect(tableBeam(tableOf((g) => (g > 30 ? 100 : 0), steps(0, 90, 10)))).toMatchObject({ byPeak: true, first: 179 });
	});
});

it('one answer has one light, whatever is planned with it', () => {
	const lamp = lampOf(disc(100), models);
	expect(ownLightOf(lamp)).toBe(ownLightOf(lamp));
	expect(ownLightOf(lamp)!.measured.candela).toBe(lamp.candela);
});
