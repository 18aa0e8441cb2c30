import { describe, expect, test } from 'vitest';
import { fixtureModels } from '../shared/catalogue';
import type { Fixture } from '../placement';
import type { Working } from '../shared/working';
import { ratedLife } from './figures';
import { lampAtWork, wholeLamps } from './lamp';

const hours: Working = {
	label: 'Hours of light in a year',
	value: 1825,
	unit: 'h',
	decimals: 1,
	rule: '',
	expression: 'a',
	inputs: [{ symbol: 'a', name: 'hours', value: 1825, unit: 'h' }],
	source: 'asked'
};
function fixtureWith(kind: 'led' | 'halogen'): Fixture {
	const model = fixtureModels.find(({ lamp }) => lamp.kind === kind && lamp.lumens === 300)!;
	return {
		id: 'oak/uplight-1',
		label: 'T1',
		target: { kind: 'tree', id: 'oak' },
		technique: 'uplight',
		at: { x: 0, y: 0 },
		height: 0,
		aim: null,
		model: model.id,
		mount: model.mount,
		lamp: model.lamp,
		reasons: []
	};
}

describe('filament lamps: Fink & Beaty, Standard Handbook for Electrical Engineers, 11th ed., p. 22-8 (seen second-hand)', () => {
	// Light, and life shortest and longest, against rated; the percentage is the light to two digits.
	test.each([
		[0.95, 0.84, 84, 1.85, 2.27],
		[0.9, 0.699, 70, 3.5, 5.4],
		[1, 1, 100, 1, 1],
		// above rated: by the same exponents, computed with a pocket calculator
		[1.05, 1.18, 118, 0.458, 0.557]
	])('at %d of rated volts', (fraction, light, percent, shortest, longest) => {
		const lamp = lampAtWork(fixtureWith('halogen'), 12 * fraction, hours);
		expect(lamp.light!.value / 300).toBeCloseTo(light, 2);
		expect(lamp.percent!.value).toBe(percent);
		expect(lamp.life!.low.value / ratedLife.halogen.taken / shortest).toBeCloseTo(1, 1);
		expect(lamp.life!.high.value / ratedLife.halogen.taken / longest).toBeCloseTo(1, 1);
	});
	test('life to the digits printed at 0.95: 1.85 to 2.27', () => {
		const { life } = lampAtWork(fixtureWith('halogen'), 11.4, hours);
		expect((life!.low.value / 3000).toFixed(2)).toBe('1.85');
		expect((life!.high.value / 3000).toFixed(2)).toBe('2.27');
	});
	test.each([10.79, 13.21, 0, 24])('%d V is beyond a tenth from rated: not known', (volts) => {
		expect(lampAtWork(fixtureWith('halogen'), volts, hours)).toMatchObject({ light: null, life: null, lives: null });
	});
	test.each([10.8, 13.2])('%d V is just within', (volts) => {
		expect(lampAtWork(fixtureWith('halogen'), volts, hours).light).not.toBeNull();
	});
	test('ten years of 1825 hours at rated volts: 6.08 lives of 3000 hours, six lamps replaced', () => {
		const { lives } = lampAtWork(fixtureWith('halogen'), 12, hours);
		expect(lives!.low.value).toBe(6.08);
		expect(wholeLamps(lives!.low)).toBe(6);
		expect([1, 2, 5, 10].map((year) => wholeLamps(lives!.low, year))).toEqual([0, 1, 3, 6]);
	});
	test('more volts, more light and a shorter life', () => {
		const at = (volts: number) => lampAtWork(fixtureWith('halogen'), volts, hours);
		for (let volts = 10.8; volts < 13.1; volts += 0.1) {
			expect(at(volts + 0.1).light!.value).toBeGreaterThan(at(volts).light!.value);
			expect(at(volts + 0.1).life!.low.value).toBeLessThan(at(volts).life!.low.value);
			expect(at(volts).life!.low.value).toBeLessThanOrEqual(at(volts).life!.high.value);
		}
	});
});

describe('LED lamps', () => {
	test.each([9, 10.5, 12, 15])('at %d V, inside the window: marked light, 25 000 hours', (volts) => {
		const lamp = lampAtWork(fixtureWith('led'), volts, hours);
		expect(lamp.light!.value).toBe(300);
		expect(lamp.percent!.value).toBe(100);
		expect(lamp.life!.low.value).toBe(25000);
		expect(wholeLamps(lamp.lives!.high)).toBe(0);
	});
	test.each([8.9, 15.1])('at %d V, outside it: not known', (volts) => {
		expect(lampAtWork(fixtureWith('led'), volts, hours)).toMatchObject({ light: null, life: null });
	});
	test('all night, every night: 43 800 hours are one life and a part of the next', () => {
		const night = { ...hours, value: 4380 };
		expect(wholeLamps(lampAtWork(fixtureWith('led'), 12, night).lives!.high)).toBe(1);
	});
});

test('volts that are not known give nothing that is', () => {
	for (const kind of ['led', 'halogen'] as const)
		expect(lampAtWork(fixtureWith(kind), null, hours)).toMatchObject({
			volts: null,
			light: null,
			percent: null,
			life: null
		});
});
test('a year without light wears no lamp', () => {
	const { lives } = lampAtWork(fixtureWith('halogen'), 12, { ...hours, value: 0 });
	expect(lives!.low.value).toBe(0);
	expect(wholeLamps(lives!.high)).toBe(0);
});
