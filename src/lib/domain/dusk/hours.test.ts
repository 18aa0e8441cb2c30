import { Body, Observer, SearchAltitude } from 'astronomy-engine';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Hours } from '../yard';
import { daysInYear, planningSun, planningYear } from './ephemeris';
import { darkness, litHours, litSpans, type Lit } from './hours';
import { nightsOf, type Night } from './nights';
import { offAltitude, onAltitude } from './twilight';
import { clockZone, type ClockZone } from './zone';

const hour = 3_600_000;
const placed = (latitude: number, longitude: number, name: string) => {
	const zone = clockZone(name)!;
	return { zone, nights: nightsOf(planningSun(), latitude, longitude, zone) };
};
const newYork = placed(40.7, -74, 'America/New_York');
const longyearbyen = placed(78.22, 15.65, 'Arctic/Longyearbyen');
const night = ({ nights }: { nights: Night[] }, date: string): Night => nights.find((one) => one.date === date)!;
const spans = (at: { nights: Night[]; zone: ClockZone }, date: string, hours: Hours): Lit[] =>
	litSpans(night(at, date), hours, at.zone);
/** What a clock on the wall shows at an instant, by Intl. */
const wall = (ms: number, timeZone: string): string =>
	new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', minute: '2-digit' }).format(ms);
const split: Hours = { kind: 'split', evening: '23:00', morning: '05:30' };

describe('a split night', () => {
	it('in winter has both halves, by the clock on the wall, and the dark between them', () => {
		const [evening, morning, ...none] = spans(newYork, '2027-12-21', split);
		const sky = darkness(night(newYork, '2027-12-21'))!;
		expect(none).toEqual([]);
		expect([evening!.on, morning!.off]).toEqual([sky.on, sky.off]);
		expect([wall(evening!.off, 'America/New_York'), wall(morning!.on, 'America/New_York')]).toEqual(['23:00', '05:30']);
		expect(litHours([evening!, morning!])).toBeCloseTo((sky.off - sky.on) / hour - 6.5, 9);
	});
	it('in summer loses the half that would begin after dawn, or end before dusk', () => {
		const sky = darkness(night(newYork, '2027-06-21'))!;
		expect(spans(newYork, '2027-06-21', split)).toEqual([{ on: sky.on, off: expect.any(Number) }]);
		const early = spans(newYork, '2027-06-21', { kind: 'split', evening: '20:00', morning: '04:00' });
		expect(early.map(({ on, off }) => [wall(on, 'America/New_York'), off])).toEqual([['04:00', sky.off]]);
		expect(spans(newYork, '2027-06-21', { kind: 'split', evening: '20:00', morning: '06:00' })).toEqual([]);
	});
	it('whose halves meet or overlap is one night from dusk to dawn', () => {
		for (const [evening, morning] of [
			['02:00', '02:00'],
			['05:00', '01:30'],
			['00:30', '22:00']
		] as const)
			expect(spans(newYork, '2027-12-21', { kind: 'split', evening, morning })).toEqual(
				spans(newYork, '2027-12-21', { kind: 'dusk-to-dawn' })
			);
	});
	it('in a polar night runs from noon to the evening and from the morning to noon; in a polar day there is none', () => {
		const dark = spans(longyearbyen, '2027-12-21', split);
		expect(dark).toHaveLength(2);
		// Noon to 23:00 and 05:30 to noon: 17.5 h, and the minute by which one solar noon is later than the other.
		expect(litHours(dark)).toBeCloseTo(17.5, 1);
		expect(spans(longyearbyen, '2027-06-21', split)).toEqual([]);
	});
});

describe('clock times', () => {
	it.each([
		['America/New_York', 40.7, -74],
		['Europe/Oslo', 59.9, 10.75],
		['Australia/Lord_Howe', -31.55, 159.08],
		['Asia/Kolkata', 12.97, 77.59],
		['Africa/Casablanca', 33.57, -7.59]
	] as const)('are those of the wall all year in %s, on the nights of a change too', (name, latitude, longitude) => {
		const at = placed(latitude, longitude, name);
		for (const one of at.nights) {
			const [evening, morning] = litSpans(one, split, at.zone);
			if (evening && evening.off !== darkness(one)!.off) expect(wall(evening.off, name), one.date).toBe('23:00');
			if (morning) expect(wall(morning.on, name), one.date).toBe('05:30');
		}
	});
	it('one that a change of clocks leaves out comes an hour on; of one that comes twice the first counts', () => {
		for (const [at, name, spring, autumn, twice, hourBefore] of [
			[newYork, 'America/New_York', '2027-03-13', '2027-11-06', '01:30', '00:30'],
			[placed(59.9, 10.75, 'Europe/Oslo'), 'Europe/Oslo', '2027-03-27', '2027-10-30', '02:30', '01:30']
		] as const) {
			const off = (date: string): number => spans(at, date, { kind: 'until', clock: '02:30' })[0]!.off;
			expect(wall(off(spring), name)).toBe('03:30');
			const first = spans(at, autumn, { kind: 'until', clock: twice })[0]!.off;
			expect([wall(first, name), wall(first + hour, name)]).toEqual([twice, twice]);
			expect(wall(first - hour, name)).toBe(hourBefore);
		}
	});
});

it('a year from dusk to dawn has the hours that astronomy-engine gives for the same two levels', () => {
	for (const [latitude, longitude, name] of [
		[40.7, -74, 'America/New_York'],
		[-33.87, 151.21, 'Australia/Sydney'],
		[59.33, 18.07, 'Europe/Stockholm']
	] as const) {
		const { nights, zone } = placed(latitude, longitude, name);
		const observer = new Observer(latitude, longitude, 0);
		let [ours, theirs] = [0, 0];
		for (const one of nights) {
			ours += litHours(litSpans(one, { kind: 'dusk-to-dawn' }, zone));
			const dusk = SearchAltitude(Body.Sun, observer, -1, new Date(one.noon), 1, onAltitude)!;
			const dawn = SearchAltitude(Body.Sun, observer, +1, dusk.date, 1, offAltitude)!;
			theirs += (dawn.date.getTime() - dusk.date.getTime()) / hour;
		}
		// Six seconds at each end of a night at most (sun.test.ts).
		expect(Math.abs(ours - theirs), name).toBeLessThan((daysInYear * 12) / 3600);
	}
});

it('spans lie in the dark, apart and in order, whatever the place and the hours; a split night holds its evening', () => {
	const zones = ['UTC', 'America/St_Johns', 'Pacific/Chatham', 'Europe/Dublin', 'Pacific/Apia'] as const;
	const clock = fc
		.tuple(fc.integer({ min: 0, max: 23 }), fc.integer({ min: 0, max: 59 }))
		.map((parts) => parts.map((part) => String(part).padStart(2, '0')).join(':'));
	const latitude = fc.double({ min: -90, max: 90, noNaN: true });
	fc.assert(
		fc.property(latitude, fc.constantFrom(...zones), clock, clock, (at, name, evening, morning) => {
			const { nights, zone } = placed(at, 0, name);
			for (const one of nights) {
				const sky = darkness(one);
				const both = litSpans(one, { kind: 'split', evening, morning }, zone);
				const until = litSpans(one, { kind: 'until', clock: evening }, zone);
				if (!sky) expect(both).toEqual([]);
				let end = sky?.on ?? 0;
				for (const { on, off } of both) {
					expect(on).toBeGreaterThanOrEqual(end);
					expect(off).toBeGreaterThan(on);
					end = off;
				}
				if (sky) expect(end).toBeLessThanOrEqual(sky.off);
				expect(litHours(both)).toBeGreaterThanOrEqual(litHours(until) - 1e-9);
				expect(new Date(one.midnight).getUTCFullYear()).toBe(planningYear);
			}
		}),
		{ numRuns: process.env['LONG'] ? 400 : 25, seed: 11 }
	);
});
