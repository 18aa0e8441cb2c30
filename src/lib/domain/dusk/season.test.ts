import { describe, expect, it } from 'vitest';
import { makeSite } from '../site';
import { blankYard, type Hours, type Season, type Yard } from '../yard';
import { planDusk } from '.';
import { planningYear } from './ephemeris';
import { isInSeason } from './season';

/** Dates of the planning year from one to another, counted off a calendar. */
function datesFrom(from: string, to: string): string[] {
	const found: string[] = [];
	for (let day = new Date(`${planningYear}-${from}T00:00Z`); ; day = new Date(day.getTime() + 86_400_000)) {
		const text = day.toISOString().slice(5, 10);
		if (text !== '02-29') found.push(text);
		if (text === to) return found;
	}
}
const all = datesFrom('01-01', '12-31');
const three: Hours = { kind: 'after-dusk', hours: 3 };
const inIt = (from: string, to: string): string[] =>
	all.filter((date) => isInSeason(`${planningYear}-${date}`, { from, to, hours: three }));

describe('a season', () => {
	it.each([
		['04-01', '09-30', 183],
		['10-01', '03-31', 182],
		['12-15', '01-06', 23],
		['06-21', '06-21', 1],
		['01-01', '12-31', 365],
		['12-31', '01-01', 2]
	])('from %s to %s has its %d evenings, both ends in it', (from, to, count) => {
		expect(inIt(from, to)).toHaveLength(count);
		expect(inIt(from, to).toSorted()).toEqual(datesFrom(from, to).toSorted());
	});
	it('takes a day that its month lacks for the last of the month', () => {
		expect(inIt('02-30', '03-02')).toEqual(['02-28', '03-01', '03-02']);
		expect(inIt('02-20', '02-30').at(-1)).toBe('02-28');
		expect(inIt('04-31', '04-31')).toEqual(['04-30']);
	});
});

const yard = (latitude: number, season: Season): Yard => ({
	...blankYard(),
	place: { location: { latitude, longitude: 0, timeZone: 'UTC' } },
	power: { hours: { kind: 'after-dusk', hours: 5 }, season }
});
const plan = (y: Yard) => planDusk(makeSite(y), [], null, y);

it('by hand: 3 hours from April to September, 5 in the rest of the year', () => {
	// 183 × 3 h + 182 × 5 h = 549 + 910 = 1459 h, wherever each night is long enough.
	for (const latitude of [40, -40]) {
		const dusk = plan(yard(latitude, { from: '04-01', to: '09-30', hours: three }));
		expect(dusk.hoursPerYear).toBe(1459);
		expect(dusk.season).toEqual({ from: '04-01', to: '09-30', hours: three });
		expect(dusk.days.filter(({ hours }) => Math.abs(hours - 3) < 1e-3)).toHaveLength(183);
	}
});
it('south of the equator the same dates fall into the long nights', () => {
	const season: Season = { from: '04-01', to: '09-30', hours: { kind: 'dusk-to-dawn' } };
	expect(plan(yard(-40, season)).hoursPerYear).toBeGreaterThan(plan(yard(40, season)).hoursPerYear + 500);
});
it('past the new year by hand: 2 hours from 1 November to 28 February', () => {
	// 30 + 31 + 31 + 28 = 120 evenings of 2 h, 245 of 5 h: 240 + 1225.
	expect(plan(yard(40, { from: '11-01', to: '02-28', hours: { kind: 'after-dusk', hours: 2 } })).hoursPerYear).toBe(
		1465
	);
});
it('a clock time before dusk is said for the evenings on which it is in force, and no others', () => {
	const season: Season = { from: '07-01', to: '07-31', hours: { kind: 'until', clock: '18:00' } };
	const found = plan(yard(50, season)).findings.find(({ code }) => code === 'dusk.until-before-dusk');
	expect(found?.message).toContain('from 1 July to 31 July, so the lights stay off on those 31 nights');
});
