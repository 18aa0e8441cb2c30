import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeSite } from '../site';
import { blankYard, type Hours, type Yard } from '../yard';
import { planDusk } from '.';
import type { PowerPoint } from './types';
import type { Working } from '../shared/working';

const place = (latitude: number, longitude: number, timeZone: string) => ({
	location: { latitude, longitude, timeZone }
});
const newYork = place(40.7, -74, 'America/New_York');
const yard = (where: Yard['place'], hours?: Hours, power: Yard['power'] = {}): Yard => ({
	...blankYard(),
	place: where,
	power: { ...power, ...(hours ? { hours } : {}) }
});
const plan = (y: Yard, supply: PowerPoint | null = null) => planDusk(makeSite(y), [], supply, y);
const on = (dusk: ReturnType<typeof plan>, date: string) => dusk.days.find((day) => day.date === date)!;
const hundredWatts: PowerPoint = {
	at: { x: 0, y: 0.1 },
	on: 'wall',
	mountHeight: 0.4,
	model: 'transformer-150',
	loadVoltAmps: 120,
	loadWatts: 100
};

/** What is shown, redone: sums of products and quotients. */
const redone = (working: Working): number =>
	working.expression.split(' + ').reduce((sum, term) => {
		const parts = term.split(/ ([×÷]) /);
		const number = (text: string): number =>
			working.inputs.find((input) => input.symbol === text)?.value ?? Number(text);
		let value = number(parts[0]!);
		for (let i = 1; i < parts.length; i += 2)
			value = parts[i] === '×' ? value * number(parts[i + 1]!) : value / number(parts[i + 1]!);
		return sum + value;
	}, 0);

describe('hours', () => {
	it('come on between sunset and civil dusk, go off between civil dawn and sunrise', () => {
		for (const day of plan(yard(newYork, { kind: 'dusk-to-dawn' })).days) {
			expect(day.sunset!).toBeLessThan(day.on!);
			expect(day.on!).toBeLessThan(day.dusk!);
			expect(day.dawn!).toBeLessThan(day.off!);
			expect(day.off!).toBeLessThan(day.sunrise!);
		}
	});
	it('are elapsed hours when clocks change in the night: an hour less and an hour more on the clock', () => {
		const dusk = plan(yard(newYork, { kind: 'dusk-to-dawn' }));
		const byClock = (date: string): number => (on(dusk, date).off! - on(dusk, date).on!) / 60 - on(dusk, date).hours;
		expect(byClock('2027-03-12')).toBeCloseTo(0, 2);
		expect(byClock('2027-03-13')).toBeCloseTo(1, 2);
		expect(byClock('2027-11-06')).toBeCloseTo(-1, 2);
	});
	it('jump by an hour of clock from 13 to 14 March in New York', () => {
		const dusk = plan(yard(newYork));
		expect(on(dusk, '2027-03-14').sunset! - on(dusk, '2027-03-13').sunset!).toBeCloseTo(61, 0);
	});
	it('after dusk: that many hours, and never past dawn', () => {
		for (const day of plan(yard(newYork, { kind: 'after-dusk', hours: 4 })).days) expect(day.hours).toBeCloseTo(4, 3);
		const long = plan(yard(newYork, { kind: 'after-dusk', hours: 14 }));
		const night = plan(yard(newYork, { kind: 'dusk-to-dawn' }));
		expect(on(long, '2027-06-21').hours).toBe(on(night, '2027-06-21').hours);
		expect(on(long, '2027-12-21').hours).toBe(14);
	});
	it('until a clock time in the evening', () => {
		const dusk = plan(yard(newYork, { kind: 'until', clock: '23:00' }));
		for (const day of dusk.days) expect(day.off).toBe(23 * 60);
		expect(on(dusk, '2027-12-21').hours).toBeCloseTo((23 * 60 - on(dusk, '2027-12-21').on!) / 60, 3);
	});
	it('until a clock time past midnight, or as late as dawn', () => {
		expect(on(plan(yard(newYork, { kind: 'until', clock: '00:30' })), '2027-06-21').off).toBe(24 * 60 + 30);
		const late = plan(yard(newYork, { kind: 'until', clock: '11:00' }));
		expect(on(late, '2027-06-21').off).toBe(on(plan(yard(newYork, { kind: 'dusk-to-dawn' })), '2027-06-21').off);
	});
	it('until a time before dusk: no light that night, and a word about it', () => {
		const dusk = plan(yard(newYork, { kind: 'until', clock: '18:00' }));
		expect(on(dusk, '2027-06-21')).toMatchObject({ on: null, off: null, hours: 0 });
		expect(on(dusk, '2027-12-21').hours).toBeGreaterThan(0.9);
		const found = dusk.findings.find((finding) => finding.code === 'dusk.until-before-dusk');
		expect(found?.message).toMatch(/Dusk comes after 18:00 from .* to .*, so the lights stay off on those \d+ nights/);
	});
});

describe('a split night', () => {
	const split = (evening: string, morning: string): Hours => ({ kind: 'split', evening, morning });
	const codes = (dusk: ReturnType<typeof plan>) => dusk.findings.map(({ code }) => code);
	it('has two stretches in winter and one in summer, first on and last off as the day has them', () => {
		const dusk = plan(yard(newYork, split('23:00', '05:30')));
		const winter = on(dusk, '2027-12-21');
		expect(winter.spans.map(({ on: from, off }) => [from, off])).toEqual([
			[winter.on, 23 * 60],
			[(24 + 5.5) * 60, winter.off]
		]);
		expect(on(dusk, '2027-06-21').spans).toHaveLength(1);
		expect(dusk.findings.find(({ code }) => code === 'dusk.no-morning')).toMatchObject({
			rank: 'note',
			message: expect.stringMatching(/^It is light before 05:30 from \d+ May to \d+ July: on those \d+ nights/)
		});
		expect(codes(dusk)).not.toContain('dusk.until-before-dusk');
	});
	it('whose evening ends before dusk, or whose halves meet, is said', () => {
		const early = plan(yard(newYork, split('19:00', '05:30')));
		expect(early.findings.find(({ code }) => code === 'dusk.until-before-dusk')?.message).toMatch(
			/^Dusk comes after 19:00 from .*, so there is no light in the evening on those \d+ nights\./
		);
		const meets = plan(yard(newYork, split('05:00', '04:00')));
		expect(codes(meets)).toContain('dusk.split-meets');
		expect(meets.hoursPerYear).toBe(plan(yard(newYork, { kind: 'dusk-to-dawn' })).hoursPerYear);
	});
	it('costs what its hours come to: a bill by hand on the nights of one latitude', () => {
		// At the equator nights are alike: on at about 18:20, off at about 05:40, so five and a half hours in all: about
		// 4.7 h to 23:00 and 0.2 h from 05:30, × 365.
		const dusk = plan(yard(place(0, 0, 'UTC'), split('23:00', '05:30')));
		const mean = dusk.hoursPerYear / 365;
		const night = on(dusk, '2027-04-15');
		expect(mean).toBeCloseTo((23 * 60 - night.on! + (night.off! - 29.5 * 60)) / 60, 1);
	});
});

describe('high latitudes', () => {
	it('Stockholm is dark enough for the sensor at midsummer without civil night at 61°', () => {
		const dusk = plan(yard(place(61.5, 18, 'Europe/Stockholm'), { kind: 'dusk-to-dawn' }));
		const day = on(dusk, '2027-06-21');
		expect(day.dusk).toBeNull();
		expect(day.dawn).toBeNull();
		expect(day.on).not.toBeNull();
		expect(day.off!).toBeGreaterThan(day.on!);
	});
	it('Tromsø in June: the sun does not set, the lights stay off, a note says from when to when', () => {
		const dusk = plan(yard(place(69.65, 18.96, 'Europe/Oslo'), { kind: 'dusk-to-dawn' }));
		expect(on(dusk, '2027-06-21')).toMatchObject({
			sunset: null,
			dusk: null,
			dawn: null,
			sunrise: null,
			on: null,
			off: null,
			hours: 0
		});
		const note = dusk.findings.find((finding) => finding.code === 'dusk.never-dark');
		expect(note?.rank).toBe('note');
		expect(note?.message).toMatch(/from \d+ (April|May) to \d+ August/);
	});
	it('Longyearbyen in December: dark round the clock, lit round the clock', () => {
		const dusk = plan(yard(place(78.22, 15.65, 'Arctic/Longyearbyen'), { kind: 'dusk-to-dawn' }));
		const day = on(dusk, '2027-12-21');
		expect(day.sunset).toBeNull();
		expect(day.hours).toBeCloseTo(24, 1);
		expect(dusk.findings.map((finding) => finding.code)).toContain('dusk.always-dark');
		for (const one of dusk.days) expect(one.hours).toBeLessThan(24.02);
	});
});

describe('place', () => {
	it('unknown: 40° north by the sun’s time, assumed and said', () => {
		const dusk = plan(blankYard());
		expect(dusk).toMatchObject({ latitude: 40, longitude: 0, timeZone: 'UTC', sensor: null });
		expect(dusk.findings.map((finding) => finding.code)).toEqual(['dusk.place-unknown']);
		expect(dusk.assumptions.map((assumption) => assumption.path)).toEqual(
			expect.arrayContaining(['place.location', 'power.hours', 'power.price'])
		);
	});
	it('with a zone nobody knows, or one of another continent, says so', () => {
		expect(plan(yard(place(40, -74, 'Nowhere/Land'))).findings[0]).toMatchObject({
			code: 'dusk.zone-unknown',
			rank: 'look'
		});
		expect(plan(yard(place(40, -74, 'Asia/Tokyo'))).findings[0]).toMatchObject({
			code: 'dusk.zone-mismatch',
			rank: 'look'
		});
		expect(plan(yard(place(-13.8, -171.8, 'Pacific/Apia'))).findings).toEqual([]);
	});
	it('beyond the date line keeps evening events in the evening of their date', () => {
		for (const where of [
			place(-13.8, -171.8, 'Pacific/Apia'),
			place(1.9, -157.4, 'Pacific/Kiritimati'),
			place(-44, -176.5, 'Pacific/Chatham')
		]) {
			for (const day of plan(yard(where)).days) {
				expect(day.sunset!).toBeGreaterThan(15 * 60);
				expect(day.sunset!).toBeLessThan(24 * 60);
			}
		}
	});
	it('the same place twice, or another between, gives the same answer', () => {
		const first = plan(yard(newYork));
		plan(yard(place(59, 18, 'Europe/Stockholm')));
		expect(plan(yard(newYork))).toEqual(first);
	});
});

describe('energy and cost', () => {
	const bill = yard(newYork, { kind: 'after-dusk', hours: 5 }, { price: { perKwh: 0.2, currency: '$' } });
	it('a bill by hand: 100 W for 5 hours a night behind a 150 VA transformer', () => {
		// 365 × 5 h = 1825 h. 1825 × 100 ÷ 0.9 ÷ 1000 = 202.78 kWh; 3.8 W × 8760 h ÷ 1000 = 33.29 kWh; together 236.1 kWh.
		// 236.1 × $0.20 = $47.22.
		const dusk = plan(bill, hundredWatts);
		expect(dusk.hoursPerYear).toBe(1825);
		expect(dusk.energy).toBe(236.1);
		expect(dusk.cost).toBe(47.22);
	});
	it('each working, redone with the numbers shown, gives the number shown', () => {
		for (const hours of [
			{ kind: 'dusk-to-dawn' },
			{ kind: 'until', clock: '22:15' },
			{ kind: 'after-dusk', hours: 3.5 }
		] as const) {
			const dusk = plan({ ...bill, power: { ...bill.power, hours } }, { ...hundredWatts, loadWatts: 87.654 });
			for (const working of Object.values(dusk.working))
				expect(redone(working).toFixed(working.decimals)).toBe(working.value.toFixed(working.decimals));
			expect(dusk.working.hours.value).toBe(dusk.hoursPerYear);
			expect(dusk.working.energy.value).toBe(dusk.energy);
			expect(dusk.working.cost.value).toBe(dusk.cost);
		}
	});
	it('hours of the year are the nights added up, to the rounding of twelve months', () => {
		const dusk = plan(yard(newYork, { kind: 'dusk-to-dawn' }));
		const sum = dusk.days.reduce((total, day) => total + day.hours, 0);
		expect(Math.abs(sum - dusk.hoursPerYear)).toBeLessThan(0.6 + 1e-6);
	});
	it('a transformer of one’s own has typical losses, said', () => {
		const dusk = plan(bill, { ...hundredWatts, model: 'mine' });
		expect(dusk.assumptions.map((assumption) => assumption.path)).toContain('power.owned.transformerVoltAmps');
		expect(dusk.energy).toBeGreaterThan(200);
	});
});

it('is total: any place and schedule gives finite figures, nights within a day, off after on', () => {
	const hours = fc.oneof(
		fc.constant<Hours>({ kind: 'dusk-to-dawn' }),
		fc.record({ kind: fc.constant('after-dusk' as const), hours: fc.double({ min: 0.5, max: 14, noNaN: true }) }),
		fc.record({
			kind: fc.constant('until' as const),
			clock: fc.constantFrom('00:00', '00:01', '05:00', '11:59', '12:00', '18:30', '23:59')
		}),
		fc.record({
			kind: fc.constant('split' as const),
			evening: fc.constantFrom('00:00', '12:00', '18:30', '23:00'),
			morning: fc.constantFrom('00:00', '02:30', '05:30', '11:59', '22:00')
		})
	);
	const monthDay = fc.constantFrom('01-01', '02-28', '02-30', '04-31', '06-21', '10-01', '12-31');
	const seasons = fc.option(fc.record({ from: monthDay, to: monthDay, hours }), { nil: undefined });
	const zones = fc.constantFrom('UTC', 'America/Chicago', 'Europe/Oslo', 'Pacific/Apia', 'Asia/Kolkata', 'none', '');
	fc.assert(
		fc.property(
			fc.double({ min: -90, max: 90, noNaN: true }),
			fc.double({ min: -180, max: 180, noNaN: true }),
			zones,
			hours,
			seasons,
			(latitude, longitude, zone, schedule, season) => {
				const power = season ? { season } : {};
				const dusk = plan(yard(place(latitude, longitude, zone), schedule, power), hundredWatts);
				expect(dusk.days).toHaveLength(365);
				const odd = dusk.days.filter((day) => {
					const times = [day.sunset, day.dusk, day.dawn, day.sunrise, day.on, day.off];
					const finite = times.every((time) => time === null || Number.isFinite(time));
					const paired = (day.on === null) === (day.off === null) && (day.on === null) === (day.hours === 0);
					return !finite || !paired || !(day.hours >= 0 && day.hours < 24.02);
				});
				expect(odd).toEqual([]);
				expect(dusk.schedules.filter(({ chosen }) => chosen)).toEqual([
					expect.objectContaining({ hoursPerYear: dusk.hoursPerYear, energy: dusk.energy, cost: dusk.cost })
				]);
				for (const { hoursPerYear, lateHours } of dusk.schedules) {
					expect(lateHours).toBeGreaterThanOrEqual(0);
					// The year is a sum of rounded months.
					expect(lateHours).toBeLessThanOrEqual(hoursPerYear + 0.7);
				}
				expect(Number.isFinite(dusk.energy + dusk.cost + dusk.hoursPerYear)).toBe(true);
			}
		),
		{ numRuns: process.env['LONG'] ? 2000 : 60, seed: 7 }
	);
});
