import { describe, expect, test } from 'vitest';
import { rules } from '../shared/rules';
import { ampsLimit, awgSquareMillimetres, ohmsPerKm, usualSizes } from './conductors';
import published from './conductors.published.json';

const awg = (size: number) => ({ system: 'awg', size }) as const;
const mm2 = (size: number) => ({ system: 'mm2', size }) as const;
/** Ohm/km to ohm/kft. */
const perKft = (perKm: number) => perKm * 0.3048;

describe(published.awgStranded.source, () => {
	test.each(published.awgStranded.rows)('%s AWG: %s ohm/kft, %s circular mils', (gauge, ohms, mils) => {
		expect(perKft(ohmsPerKm(awg(gauge!), 75))).toBeCloseTo(ohms!, 12);
		// K = R × CM / 1000 comes to 12.9 for the stranded column.
		expect(Math.abs((ohms! * mils!) / 1000 - 12.9)).toBeLessThan(0.06);
		expect(awgSquareMillimetres(gauge!) / (Math.PI / 4) / 0.0254 ** 2 / mils!).toBeCloseTo(1, 2);
	});
});

test('K = 10.4, also met in the trade, belongs to wire at about 20 °C; 12.9 to 75 °C', () => {
	for (const [gauge, , mils] of published.awgStranded.rows) {
		const k = (celsius: number) => (perKft(ohmsPerKm(awg(gauge!), celsius)) * mils!) / 1000;
		expect(k(75)).toBeGreaterThan(12.8);
		expect(k(20)).toBeGreaterThan(10.4);
		expect(k(20)).toBeLessThan(10.4 * 1.03);
		expect(k(10)).toBeLessThan(10.4);
	}
});

describe(published.awgSolid.source, () => {
	test.each(published.awgSolid.rows)('%s AWG: %s ohm/kft', (gauge, ohms) => {
		const mils = awgSquareMillimetres(gauge!) / (Math.PI / 4) / 0.0254 ** 2;
		const solid = (10.371 / mils) * 1000 * (1 + 0.00393 * (75 - 20));
		expect(Math.abs(solid / ohms! - 1)).toBeLessThan(0.001);
		// Stranded wire of the same gauge is 1 to 3 % over solid.
		const stranded = perKft(ohmsPerKm(awg(gauge!), 75));
		expect(stranded / ohms!).toBeGreaterThan(1.01);
		expect(stranded / ohms!).toBeLessThan(1.03);
	});
});

describe(published.metric.source, () => {
	test.each(published.metric.rows)('%s mm²: class 2 %s, class 5 %s ohm/km', (size, two, five) => {
		expect(ohmsPerKm(mm2(size!), 20, 2)).toBe(two);
		expect(ohmsPerKm(mm2(size!), 20)).toBe(five);
	});
});

test('alpha75 = 0.00323 (Table 8 note) and alpha20 = 0.00393 are one law at two base temperatures', () => {
	expect(0.00393 / (1 + 0.00393 * 55)).toBeCloseTo(0.00323, 5);
	const ratio = (celsius: number) => ohmsPerKm(mm2(2.5), celsius) / ohmsPerKm(mm2(2.5), 75);
	for (const celsius of [-10, 20, 30, 50])
		expect(ratio(celsius)).toBeCloseTo(ohmsPerKm(awg(12), celsius) / ohmsPerKm(awg(12), 75), 3);
});

test('warmer or thinner is never less resistance', () => {
	for (const system of ['awg', 'mm2'] as const) {
		const sizes = usualSizes(system);
		for (const [k, size] of sizes.entries()) {
			expect(ohmsPerKm(size, 50)).toBeGreaterThan(ohmsPerKm(size, 30));
			if (k > 0) expect(ohmsPerKm(size, 30)).toBeLessThan(ohmsPerKm(sizes[k - 1]!, 30));
		}
	}
});

test('a size between the rows lies between its neighbours; what is no size is an open circuit without amperes', () => {
	expect(ohmsPerKm(awg(13), 75)).toBeGreaterThan(ohmsPerKm(awg(12), 75));
	expect(ohmsPerKm(awg(13), 75)).toBeLessThan(ohmsPerKm(awg(14), 75));
	for (const size of [mm2(0), mm2(-1), mm2(Number.NaN), awg(Number.NaN)]) {
		expect(ohmsPerKm(size, 30)).toBe(Infinity);
		expect(ampsLimit(size)).toBe(0);
	}
});

test('amperes by rule cable.fuse (NEC 240.4(D); 18 and 16 AWG from memory), mm² by the gauge of no larger cross-section', () => {
	expect([18, 16, 14, 12, 10, 8].map((g) => ampsLimit(awg(g)))).toEqual([7, 10, 15, 20, 30, 30]);
	expect([1, 1.5, 2.5, 4, 6, 10].map((s) => ampsLimit(mm2(s)))).toEqual([7, 10, 15, 20, 30, 30]);
	expect(ampsLimit(awg(20))).toBe(0);
	expect(rules['cable.fuse'].figures.awg12).toBe(20);
});
