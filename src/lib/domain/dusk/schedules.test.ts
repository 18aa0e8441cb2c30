import { describe, expect, it } from 'vitest';
import type { Fixture } from '../placement';
import type { Hours } from '../yard';
import { costWorking, energyWorking, hoursWorking, type Draw } from './energy';
import { lifeAssumptions, lifeAt, soonestLives } from './lamp-years';
import { compareSchedules } from './schedules';
import { duskYear, type Setting } from './year';
import { clockZone } from './zone';

const place = (latitude: number, longitude: number, name: string) => ({
	latitude,
	longitude,
	zone: clockZone(name)!,
	findings: [],
	assumptions: []
});
const newYork = place(40.7, -74, 'America/New_York');
const draw: Draw = { watts: 100, efficiency: 0.9, idleWatts: 3.8, assumptions: [] };
const price = { perKwh: 0.2, currency: '$', assumptions: [] };
const all = (schedule: Hours): Setting => ({ schedule, season: null });
const compared = (setting: Setting, lives = [] as ReturnType<typeof soonestLives>, at = newYork) =>
	compareSchedules(duskYear(at, setting), draw, price, lives);
const five = all({ kind: 'after-dusk', hours: 5 });

describe('ways to set the hours', () => {
	it('a bill by hand: 5 hours and 3 hours of 100 W behind a transformer', () => {
		// 365 × 5 h = 1825 h: 1825 × 100 ÷ 0.9 ÷ 1000 = 202.78 kWh, 3.8 W × 8760 h ÷ 1000 = 33.29: 236.1 kWh, × $0.20 = $47.22.
		// 365 × 3 h = 1095 h: 121.67 + 33.29 = 155.0 kWh, $31.00.
		const figures = compared(five);
		expect(figures.find(({ id }) => id === 'hours-5')).toMatchObject({
			hoursPerYear: 1825,
			energy: 236.1,
			cost: 47.22
		});
		expect(figures.find(({ id }) => id === 'hours-3')).toMatchObject({ hoursPerYear: 1095, energy: 155, cost: 31 });
	});
	it('each costs what the plan says of it once it is chosen', () => {
		for (const { schedule, season, ...figures } of compared(five)) {
			const hours = hoursWorking(duskYear(newYork, { schedule, season }).days);
			const energy = energyWorking(hours, draw);
			expect(figures).toMatchObject({
				hoursPerYear: hours.value,
				energy: energy.value,
				cost: costWorking(energy, price).value
			});
			const chosen = compared({ schedule, season }).filter((one) => one.chosen);
			expect(chosen).toEqual([expect.objectContaining({ id: figures.id, hoursPerYear: figures.hoursPerYear })]);
		}
	});
	it('have one id each; a setting of one’s own comes first', () => {
		const usual = compared(five).map(({ id }) => id);
		expect(new Set(usual).size).toBe(usual.length);
		const own = compared({
			schedule: five.schedule,
			season: { from: '05-01', to: '08-31', hours: { kind: 'until', clock: '22:30' } }
		});
		expect(own.map(({ id }) => id)).toEqual(['own', ...usual]);
		expect(own.map(({ chosen }) => chosen)).toEqual([true, ...usual.map(() => false)]);
		expect(own[0]!.label).toBe('5 hours from dusk; from 1 May to 31 August from dusk until 22:30');
	});
	it('light after 23:00: none by 22:00 or 23:00, and from dusk to dawn the rest of each night, minute by minute', () => {
		const late = (id: string): number => compared(five).find((one) => one.id === id)!.lateHours;
		expect([late('until-22'), late('until-23')]).toEqual([0, 0]);
		const { days } = duskYear(newYork, all({ kind: 'dusk-to-dawn' }));
		let minutes = 0;
		for (const { on, off } of days) for (let at = 23 * 60; at < off!; at += 1) if (at >= on!) minutes += 1;
		// On the clock: the two nights of a change have an hour more and an hour less, which cancel.
		expect(Math.abs(late('all-night') - minutes / 60)).toBeLessThan(365 / 60 / 2 + 0.1);
		expect(late('split')).toBeGreaterThan(100);
		expect(late('split')).toBeLessThan(late('all-night'));
	});
	it('where it is never dark there is nothing to burn, and no lamp years; figures stay finite', () => {
		const pole = compared(all({ kind: 'dusk-to-dawn' }), [{ kind: 'led', hours: 25000 }], place(90, 0, 'UTC'));
		for (const { hoursPerYear, energy, cost, lateHours } of pole)
			expect([hoursPerYear, energy, cost, lateHours].every(Number.isFinite)).toBe(true);
		const none = compared(all({ kind: 'until', clock: '12:01' }), [{ kind: 'led', hours: 25000 }]);
		expect(none[0]).toMatchObject({ id: 'own', hoursPerYear: 0, lampYears: [] });
	});
});

const lamp = (kind: 'led' | 'halogen'): Fixture['lamp'] => ({
	kind,
	watts: 5,
	voltAmps: 6,
	lumens: 300,
	beamAngle: 36,
	colourTemperature: 2700,
	ratedVolts: 12,
	minVolts: kind === 'led' ? 9 : 10.8,
	maxVolts: kind === 'led' ? 15 : 12
});
const fixture = (id: string, kind: 'led' | 'halogen'): Fixture => ({ id, lamp: lamp(kind) }) as unknown as Fixture;
const run = (volts: Record<string, number | null>) =>
	[{ nodes: Object.entries(volts).map(([id, value]) => ({ id, fixture: id, volts: value })) }] as unknown as Parameters<
		typeof soonestLives
	>[1];

describe('lamp years', () => {
	/**
	 * Fink & Beaty, Standard Handbook for Electrical Engineers, 11th ed., p. 22-8, seen second-hand: at 0.95 of rated volts a
	 * filament lasts 1.85 to 2.27 times its life, at 0.90 3.5 to 5.4 times. Rated lives are from memory.
	 */
	it('of a filament by the published exponents, the shorter of the two', () => {
		expect(lifeAt(lamp('halogen'), 12 * 0.95)! / 3000).toBeCloseTo(1.85, 2);
		expect(lifeAt(lamp('halogen'), 12 * 0.9)! / 3000).toBeCloseTo(3.54, 2);
		// 1.05^−16 = 0.458: too many volts cost more than half the life.
		expect(lifeAt(lamp('halogen'), 12 * 1.05)! / 3000).toBeCloseTo(0.458, 3);
		expect(lifeAt(lamp('halogen'), 12)).toBe(3000);
	});
	it('by hand: 5 hours a night, LED at 25 000 h, and the halogen lamp that gets most', () => {
		const lives = soonestLives(
			[fixture('a', 'led'), fixture('b', 'halogen'), fixture('c', 'halogen')],
			run({ a: 11, b: 11.4, c: 11.76 })
		);
		// 25 000 ÷ 1825 = 13.7 years. 0.98^−12 = 1.2743: 3823 h ÷ 1825 = 2.1 years.
		expect(compared(five, lives).find(({ chosen }) => chosen)!.lampYears).toEqual([
			{ kind: 'led', years: 13.7 },
			{ kind: 'halogen', years: 2.1 }
		]);
	});
	it('a lamp starved of volts is not the first to go; one whose life nobody knows leaves its kind unsaid', () => {
		const two = [fixture('a', 'halogen'), fixture('b', 'halogen')];
		expect(soonestLives(two, run({ a: 8, b: 12 }))).toEqual([{ kind: 'halogen', hours: 3000 }]);
		expect(soonestLives(two, run({ a: 13.5, b: 12 }))).toEqual([]);
		expect(soonestLives(two, run({ a: null, b: 12 }))).toEqual([]);
		expect(soonestLives([fixture('a', 'led')], run({ a: 15.2 }))).toEqual([]);
	});
	it('of lamps on no run at their rated volts', () => {
		expect(soonestLives([fixture('a', 'halogen'), fixture('b', 'led')], [])).toEqual([
			{ kind: 'led', hours: 25000 },
			{ kind: 'halogen', hours: 3000 }
		]);
	});
	it('rest on lives from memory, and say so for the kinds that are there', () => {
		expect(lifeAssumptions([])).toEqual([]);
		expect(lifeAssumptions([fixture('a', 'halogen')])[0]!.message).toBe(
			'Halogen lamps are taken to last 3,000 hours at their rated volts, from memory; the box comes first.'
		);
	});
});
