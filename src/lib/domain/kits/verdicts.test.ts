import { describe, expect, test } from 'vitest';
import { judge } from './judge';
import { matchShelf } from './match';
import { awg, chain, feet, halogen, kit, led, line, shelfOf, transformer } from './shelf.testing';
import type { Needs, Shelf } from './types';

const cable = (code: string, gauge: number, cents: number, metres = feet(250)) =>
	line(code, 'cable', cents, { cable: [{ size: awg(gauge), metres, count: 1 }] });
const supply = (code: string, voltAmps: number, cents: number, taps = [12]) =>
	line(code, 'transformer', cents, { transformer: transformer(voltAmps, taps) });
const verdict = (needs: Needs, shelf: Shelf) => matchShelf(needs, shelf).kits[0]!;

/** Eight lamps of 5 VA; the first 40 ft away, 10 ft between them: too far for 16 AWG on a 12 V tap. */
const long = chain(8, feet(40), feet(10));
const strong = led('path', 5, 150);
const looksRight = kit('K', 20000, { fixture: strong, count: 8, metres: feet(150), supply: transformer(75) });

describe('a kit that looks right and leaves its last lamp dim', () => {
	test('lights, cable and volt-amperes are enough, and it is out: the lamp, its volts and what it wants are told', () => {
		const told = verdict(long, shelfOf(looksRight));
		expect(told.short).toEqual([]);
		expect(told.dim).toMatchObject({ label: 'P8', least: 9 });
		expect(told.alone!.loadVoltAmps).toBeLessThan(told.alone!.limitVoltAmps);
		expect(told.why).toMatch(/^As it comes, P8 would get \d\.\d+ V( at the worst)?; it wants 9\.0\.$/);
	});
	test('thicker cable: the cheapest that passes when it is solved', () => {
		const shelf = shelfOf(looksRight, cable('C12', 12, 9000), cable('C10', 10, 7000), cable('C14', 14, 5000, feet(20)));
		const { remedy } = verdict(long, shelf);
		expect(remedy).toMatch(
			/^Lay run 1 in 10 AWG cable from the shelf \(C10, \$70\.00\)\. P8, the lamp with least, then gets/
		);
		const setup = { products: ['P'], sizes: [awg(10)], transformer: 'K' };
		expect(judge(setup, long, shelf).ok).toBe(true);
		expect(judge({ ...setup, sizes: [awg(16)] }, long, shelf).ok).toBe(false);
	});
	test('a larger transformer with a higher tap, and which tap', () => {
		const shelf = shelfOf(looksRight, supply('T', 150, 8000, [12, 13, 14]));
		const { remedy } = verdict(long, shelf);
		expect(remedy).toMatch(/^Take the 150 VA transformer in place of its own, on its 1[34] V tap \(T, \$80\.00\)\./);
		expect(judge({ products: ['P'], sizes: [awg(16)], transformer: 'T' }, long, shelf).ok).toBe(true);
	});
	test('both where neither alone is enough', () => {
		const far = chain(8, feet(60), feet(10));
		const lamps = led('path', 8, 150);
		const own = kit('K', 20000, { fixture: lamps, count: 8, metres: feet(250) });
		const shelf = shelfOf(own, cable('C', 10, 9000), supply('T', 150, 8000));
		expect(verdict(far, shelf).remedy).toMatch(
			/^Lay run 1 in 10 AWG cable from the shelf \(C, \$90\.00\) and take the 150 VA transformer in place of its own, on its 12 V tap \(T, \$80\.00\)\./
		);
		for (const [size, code] of [
			[16, 'T'],
			[10, 'K']
		] as const)
			expect(judge({ products: ['P'], sizes: [awg(size)], transformer: code }, far, shelf).ok).toBe(false);
	});
	test('nothing on the shelf: the far lights on a cable of their own', () => {
		const own = kit('K', 20000, { fixture: strong, count: 8, metres: feet(150), supply: transformer(100, [12], 0.03) });
		const { remedy } = verdict(long, shelfOf(own));
		expect(remedy).toMatch(
			/^Split run 1 in two: P\d.* and P8 on a cable of their own from the transformer, \d+ ft more of 16 AWG\. P\d, the lamp/
		);
	});
	test('where that does not help either, the lights to leave out, the far ones', () => {
		const small = kit('K', 20000, { fixture: strong, count: 8, metres: feet(150), supply: transformer(40) });
		expect(verdict(long, shelfOf(small)).remedy).toMatch(
			/^By itself it carries (\d) of the 8 lights: leave out .*P8\.$/
		);
	});
});

describe('short and spare, in whole feet', () => {
	test('of one kit: lights, cable and connectors', () => {
		const needs = chain(6, feet(40), feet(10));
		const told = verdict(needs, shelfOf(kit('K', 9000, { count: 4, metres: feet(50) })));
		// 40 + 5 × 10 ft and 5 % for waste are 94.5 ft.
		expect(told.short).toEqual(['2 path lights short', '45 ft of cable short', '4 connectors short']);
		expect(told.spare).toEqual([]);
	});
	test('beyond the plan, and what the plan has no place for', () => {
		const needs = chain(3, feet(20), feet(10));
		const own = kit('K', 9000, { count: 4, metres: feet(100) });
		own.contents.fixtures.push({ product: 'W', fixture: led('well', 5, 300, 60), count: 2 });
		const told = verdict(needs, shelfOf(own));
		expect(told.short).toEqual([]);
		expect(told.spare).toEqual(['1 path light', '2 well lights', '58 ft of 16 AWG cable', '2 connectors']);
	});
	test('a kit without a transformer is not judged alone, and the rest is told', () => {
		const needs = chain(4, feet(20), feet(10));
		const told = verdict(needs, shelfOf(kit('K', 9000, { supply: null }), supply('T', 60, 5000)));
		expect(told).toMatchObject({ alone: null, dim: null, growth: null, short: ['no transformer'], isIn: true });
	});
});

describe('why a kit is out', () => {
	const good = kit('G', 9000);
	const needs = chain(4, feet(20), feet(10));
	const why = (bad: Parameters<typeof shelfOf>[0]) => verdict(needs, shelfOf(bad, good)).why;
	test('none of its lights serve', () => {
		expect(why(kit('K', 100, { product: 'D', fixture: led('path', 1, 40) }))).toContain(
			'None of its lights serve: its path lights: too little light: 40 lm, and the plan wants 90 to 240 lm.'
		);
		expect(why(kit('K', 100, { product: 'D', fixture: led('well', 1, 40) }))).toContain(
			'no well lights are wanted here'
		);
		expect(why(kit('K', 100, { product: 'D', fixture: halogen('path', 10, 140) }))).toContain(
			'halogen, and LED is wished'
		);
	});
	test('its transformer is too small by the 80 % rule, whatever its label seems to allow', () => {
		// 4 lamps of 3 VA and the cable are a little more than 12 VA; 80 % of 14 VA are 11.2.
		const told = verdict(needs, shelfOf(kit('K', 100, { supply: transformer(14) }), good));
		expect(told.why).toMatch(/^As it comes, the 14 VA transformer would carry 12 VA; it may carry 11\./);
		expect(told.isIn).toBe(false);
		expect(told.growth).toBeLessThan(0);
	});
	test('none is left', () => {
		expect(why({ ...kit('K', 100), stock: 0 })).toBe('None of it is left.');
	});
	test('it would only lie beside what works', () => {
		expect(why(kit('K', 100, { product: 'D', fixture: led('step', 1, 40), supply: null, metres: 1 }))).toContain(
			'Beside the cheapest that works nothing of it is used.'
		);
	});
});
