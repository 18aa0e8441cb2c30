import { describe, expect, test } from 'vitest';
import { filament, lampAt, loadAmps, loadFault } from './lamps';
import { halogen, led } from './networks.testing';

describe('Fink & Beaty, Standard Handbook for Electrical Engineers, 11th ed., p. 22-8 (seen second-hand)', () => {
	test('at 0.95 of rated volts: light 0.840, power 0.921, life 1.85 to 2.27', () => {
		const { light, power, lifeLow, lifeHigh } = filament(0.95);
		expect(light).toBeCloseTo(0.84, 3);
		expect(power).toBeCloseTo(0.921, 3);
		expect(lifeLow).toBeCloseTo(1.85, 2);
		expect(lifeHigh).toBeCloseTo(2.27, 2);
	});
	test('at 0.90: light 0.699, power 0.845, current 0.944, life 3.5 to 5.4', () => {
		const { light, power, current, lifeLow, lifeHigh } = filament(0.9);
		expect(light).toBeCloseTo(0.699, 3);
		expect(power).toBeCloseTo(0.845, 3);
		expect(current).toBeCloseTo(0.944, 3);
		expect(lifeLow).toBeCloseTo(3.5, 1);
		expect(lifeHigh).toBeCloseTo(5.4, 1);
		expect(loadAmps(halogen(20), 10.8) / loadAmps(halogen(20), 12)).toBeCloseTo(current, 12);
	});
	test('above rated volts life falls, and the bounds keep their order', () => {
		const { lifeLow, lifeHigh } = filament(1.05);
		expect(lifeLow).toBeLessThan(lifeHigh);
		expect(lifeHigh).toBeLessThan(1);
	});
});

test('LED: the product of volts and amperes is its volt-amperes, also below its window', () => {
	for (const volts of [6, 9, 12, 15]) expect(loadAmps(led(5), volts) * volts).toBeCloseTo(5, 12);
});

describe('what is known of a lamp at the volts it gets', () => {
	test('LED: its light inside its window, edges included; outside it is not known', () => {
		for (const volts of [9, 12, 15])
			expect(lampAt(led(5), volts)).toMatchObject({ state: 'right', light: 1, filament: null });
		expect(lampAt(led(5), 8.99)).toMatchObject({ state: 'low', light: null });
		expect(lampAt(led(5), 15.01)).toMatchObject({ state: 'high', light: null });
	});
	test('halogen: Fink & Beaty at any volts, said to be a guess beyond ±10 % of rated', () => {
		const at = (volts: number) => lampAt(halogen(20), volts);
		expect(at(11.4)).toMatchObject({ state: 'right', isBeyondPublished: false });
		expect(at(11.4).light).toBeCloseTo(0.84, 3);
		expect(at(10.8)).toMatchObject({ state: 'right', isBeyondPublished: false });
		expect(at(13.2)).toMatchObject({ state: 'high', isBeyondPublished: false });
		expect(at(10.7)).toMatchObject({ state: 'low', isBeyondPublished: true });
		expect(at(10.7).filament).toEqual(filament(10.7 / 12));
	});
	test('a plain resistance has no window and no light', () => {
		expect(lampAt({ kind: 'resistance', ohms: 10 }, 3)).toMatchObject({ state: 'right', light: null });
	});
});

test('a load that cannot be worked out says why', () => {
	expect(loadFault(led(5))).toBeNull();
	expect(loadFault({ kind: 'led', voltAmps: 5, minVolts: 15, maxVolts: 9 })).toMatch(/window/);
	expect(loadFault({ kind: 'led', voltAmps: Number.NaN, minVolts: 9, maxVolts: 15 })).toMatch(/volt-amperes/);
	expect(loadFault({ ...halogen(20), watts: -1 } as ReturnType<typeof halogen>)).toMatch(/watts/);
	expect(loadFault({ kind: 'halogen', watts: 20, ratedVolts: 0, minVolts: 1, maxVolts: 2 })).toMatch(/rated/);
	expect(loadFault({ kind: 'resistance', ohms: 0 })).toMatch(/ohms/);
});
