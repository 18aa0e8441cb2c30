import { describe, expect, test } from 'vitest';
import { dice } from '../circuit/networks.testing';
import { Judge, judge } from './judge';
import { awg, chain, feet, halogen, kit, led, line, shelfOf, transformer } from './shelf.testing';
import { stockOf } from './stock';
import type { Needs, Setup, ShelfFixture } from './types';

/** NEC Chapter 9 Table 8, uncoated copper, stranded: ohms in 1000 ft at 75 °C, and its note R2 = R1 (1 + 0.00323 (t − 75)). */
const necOhms = { 16: 4.99, 12: 1.98 } as const;
const loopOhms = (gauge: keyof typeof necOhms, feetLong: number, celsius: number): number =>
	((2 * feetLong) / 1000) * necOhms[gauge] * (1 + 0.00323 * (celsius - 75));
/** Volts of one lamp of constant volt-amperes behind ohms: the upper root of V² − T V + S R = 0. */
const oneLamp = (tap: number, voltAmps: number, ohms: number): number =>
	(tap + Math.sqrt(tap ** 2 - 4 * voltAmps * ohms)) / 2;

const one = (fixture: ShelfFixture, supply = transformer(100, [12], 0)) =>
	shelfOf(kit('K', 100, { fixture, count: 1, supply }));
const setup = (size: number, runs = 1): Setup => ({
	products: ['P'],
	sizes: Array.from({ length: runs }, () => awg(size)),
	transformer: 'K'
});

describe('worked by hand with the figures of NEC Table 8', () => {
	test('12 VA at the end of 100 ft of 12 AWG on 12 V: 0.338 Ω, 11.651 V; at the worst 10.86 V', () => {
		const judged = judge(setup(12), chain(1, feet(100), 0), one(led('path', 12, 150)));
		const ohms = loopOhms(12, 100, 30);
		expect(ohms).toBeCloseTo(0.3384, 4);
		expect(oneLamp(12, 12, ohms)).toBeCloseTo(11.6514, 4);
		expect(judged.lamps[0]!.volts).toBeCloseTo(11.6514, 4);
		// Rule cable.corners: a tenth longer, mains 5 % low, copper at 50 °C.
		expect(judged.lamps[0]!.low).toBeCloseTo(oneLamp(11.4, 12, loopOhms(12, 110, 50)), 6);
		expect(judged.ok).toBe(true);
		expect(judged.margin).toBeCloseTo(judged.lamps[0]!.low! - 9, 9);
	});
	test('30 VA there on 16 AWG: the lamp is dim, and its volts are told', () => {
		const judged = judge(setup(16), chain(1, feet(100), 0), one(led('path', 30, 150)));
		const volts = oneLamp(12, 30, loopOhms(16, 100, 30));
		expect(volts).toBeCloseTo(9.2, 0);
		expect(judged.lamps[0]!.volts).toBeCloseTo(volts, 6);
		expect(judged.ok).toBe(false);
		expect(judged.problems.map(({ code }) => code)).toEqual(['lamp-low']);
	});
	test('the sag of the transformer is its regulation at full load, in proportion to the load', () => {
		const judged = judge(setup(12), chain(1, 0.001, 0), one(led('path', 50, 150), transformer(100, [12], 0.05)));
		// T (1 − 0.05 × (12 × I) ÷ 100), I = 50 ÷ V: V² − 12 V + 12 × 12 × 0.05 × 50 ÷ 100 = 0.
		expect(judged.lamps[0]!.volts).toBeCloseTo(oneLamp(12, 50, (144 * 0.05) / 100), 3);
	});
});

describe('limits', () => {
	test('80 % of the rating: 47.9 VA pass on 60 VA, 48.1 do not', () => {
		const short = chain(1, 0.001, 0);
		expect(judge(setup(12), short, one(led('path', 47.9, 150), transformer(60, [12], 0))).ok).toBe(true);
		const over = judge(setup(12), short, one(led('path', 48.1, 150), transformer(60, [12], 0)));
		expect(over.problems.map(({ code }) => code)).toEqual(['transformer-load']);
		expect(over.problems[0]!.message).toBe('The 60 VA transformer would carry 48.1 VA; it may carry 48.0.');
		expect(over.limitVoltAmps).toBe(48);
	});
	test('16 AWG carries 10 A and no more (rule cable.fuse)', () => {
		const big = transformer(600, [12], 0, 2);
		const short = chain(1, 0.001, 0);
		// Mains 5 % low: 10 A are 114 VA.
		expect(judge(setup(16), short, one(led('path', 113.9, 150), big)).ok).toBe(true);
		expect(judge(setup(16), short, one(led('path', 114.2, 150), big)).problems.map(({ code }) => code)).toEqual([
			'cable-amps'
		]);
	});
	test('of several taps the one that serves is taken; on 15 V alone an LED for 9 to 15 V gets too much', () => {
		const near = chain(1, 0.001, 0);
		expect(judge(setup(12), near, one(led('path', 5, 150), transformer(60, [12, 15], 0))).taps).toEqual([12]);
		const high = judge(setup(12), near, one(led('path', 5, 150), transformer(60, [15], 0)));
		expect(high.problems.map(({ code }) => code)).toEqual(['lamp-high']);
		expect(high.problems[0]!.message).toBe('P1 would get 15.7 V at the worst; more than 15.0 shortens its life.');
	});
	test('a filament lamp out of its window at the worst only is a note, as built it is a problem', () => {
		const shelf = one(halogen('path', 10, 140), transformer(60, [12], 0));
		const near = judge(setup(12), chain(1, feet(20), 0, { source: 'halogen' }), shelf);
		expect(near.ok).toBe(true);
		expect(near.notes.length).toBeGreaterThan(0);
		const far = judge(setup(16), chain(4, feet(100), feet(10), { source: 'halogen' }), shelf);
		expect(far.ok).toBe(false);
		expect(far.problems[0]).toMatchObject({ code: 'lamp-low', label: 'P4' });
	});
});

test('the same question is solved once; a product of the same lamp is the same question', () => {
	const needs = chain(3, 5, 3);
	const shelf = shelfOf(
		kit('K', 100),
		line('F', 'fixture', 50, { fixtures: [{ product: 'Q', fixture: led('path', 3, 150), count: 1 }] })
	);
	const first = judge(setup(16), needs, shelf);
	expect(judge(setup(16), needs, shelf)).toBe(first);
	expect(judge({ ...setup(16), products: ['Q'] }, needs, shelf)).toBe(first);
	expect(judge(setup(12), needs, shelf)).not.toBe(first);
});
test('what is not on the shelf is named', () => {
	const needs: Needs = chain(1, 5, 0);
	const shelf = one(led('path', 3, 150));
	expect(() => judge({ ...setup(16), products: ['nothing'] }, needs, shelf)).toThrow('no product nothing');
	expect(() => judge({ ...setup(16), transformer: 'X' }, needs, shelf)).toThrow('X has no transformer');
});

test('the quick answer whether a setup passes is the answer of the full one, LED or halogen', () => {
	const roll = dice(9);
	const asked = 180;
	const passed = { yes: 0, no: 0 };
	for (let k = 0; k < asked; k++) {
		const lights = 2 + Math.floor(roll() * 6);
		const needs = chain(lights, feet(10 + roll() * 80), feet(5 + roll() * 15));
		const fixture = roll() < 0.75 ? led('path', 2 + roll() * 6, 150) : halogen('path', 10, 140);
		const taps = [12, 13, 14].slice(0, 1 + Math.floor(roll() * 3));
		const supply = transformer(30 + roll() * 90, taps);
		const shelf = one(fixture, supply);
		const lamps = [{ product: 'P', lamp: fixture.lamp }];
		const sizes = [awg([16, 14, 12][Math.floor(roll() * 3)]!)];
		const { ok } = new Judge(needs, stockOf(shelf, needs)).of(lamps, sizes, supply);
		expect(new Judge(needs, stockOf(shelf, needs)).passes(lamps, sizes, supply)).toBe(ok);
		passed[ok ? 'yes' : 'no']++;
	}
	expect(Math.min(passed.yes, passed.no)).toBeGreaterThan(asked / 10);
});
