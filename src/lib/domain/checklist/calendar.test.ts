import { describe, expect, it } from 'vitest';
import { makePlan } from '../plan';
import { blankYard, examples, type Yard } from '../yard';
import { upkeepCalendar, type UpkeepEvent } from '.';
import { addMonths, firstAfter } from './calendar-dates';

const suburban = examples[0]!.yard;
const plan = makePlan(suburban);
const calendar = (yard: Yard, start: string): UpkeepEvent[] => upkeepCalendar(makePlan(yard), start);
const at = (latitude: number): Yard => ({
	...suburban,
	place: { ...suburban.place, location: { latitude, longitude: 0, timeZone: 'UTC' } }
});
const first = (events: UpkeepEvent[]) => Object.fromEntries(events.map((event) => [event.id, event.first]));

describe('days', () => {
	it.each([
		['2026-11-30', 1, '2026-12-28'],
		['2026-12-05', 1, '2027-01-05'],
		['2027-02-10', 26, '2029-04-10']
	])('%s and %d months', (date, months, then) => expect(addMonths(date, months)).toBe(then));
	it('the first of a repeat lies after its date, within a year', () => {
		expect(firstAfter('2026-11-28', { every: 'month', interval: 1, day: 28 })).toBe('2026-12-28');
		expect(firstAfter('2026-11-27', { every: 'month', interval: 1, day: 28 })).toBe('2026-11-28');
		expect(firstAfter('2026-04-01', { every: 'year', interval: 1, months: [4], day: 1 })).toBe('2027-04-01');
		expect(firstAfter('2026-04-01', { every: 'year', interval: 1, months: [4, 10], day: 1 })).toBe('2026-10-01');
		expect(firstAfter('2026-12-31', { every: 'year', interval: 1, months: [1], day: 1 })).toBe('2027-01-01');
	});
});

describe('upkeep by the calendar', () => {
	it('never falls on the day of the work or before it, and each first day is one of its repeat', () => {
		for (const start of ['2026-01-01', '2026-02-28', '2026-06-30', '2026-11-30', '2026-12-31', '2028-02-29'])
			for (const event of upkeepCalendar(plan, start)) {
				expect(event.first > start, `${event.id} from ${start}`).toBe(true);
				if (!event.repeat) continue;
				expect(Number(event.first.slice(8))).toBe(event.repeat.day);
				if (event.repeat.every === 'year') expect(event.repeat.months).toContain(Number(event.first.slice(5, 7)));
			}
	});
	it('by hand from 25 November 2026, in the north and in the south', () => {
		expect(first(calendar(at(40), '2026-11-25'))).toMatchObject({
			'monthly-gfci': '2026-12-25',
			lenses: '2027-04-01',
			prune: '2027-09-01',
			connectors: '2027-11-25'
		});
		expect(first(calendar(at(-40), '2026-11-25'))).toMatchObject({
			'monthly-gfci': '2026-12-25',
			lenses: '2027-04-01',
			prune: '2027-03-01',
			connectors: '2027-11-25'
		});
	});
	it('says what each step of the checklist says, with its cautions', () => {
		const steps = plan.checklist.parts.find(({ id }) => id === 'upkeep')!.steps;
		const events = upkeepCalendar(plan, '2026-11-25');
		for (const { id, text, cautions, defers } of steps) {
			const event = events.find((one) => one.id === id);
			if (event) expect(event).toMatchObject({ text, cautions, defers });
		}
		expect(events.find(({ id }) => id === 'monthly-gfci')?.cautions).toContain(
			'If it does not trip, unplug the transformer.'
		);
		expect(new Set(events.map(({ id }) => id)).size).toBe(events.length);
	});
	it('lamps fall due by the hours: LED once, halogen again and again, unplugged and cool', () => {
		const led = upkeepCalendar(plan, '2026-11-25').find(({ id }) => id === 'lamps-led')!;
		const years = plan.dusk.schedules.find(({ chosen }) => chosen)!.lampYears.find(({ kind }) => kind === 'led')!.years;
		expect(
			Math.abs(Number(led.first.slice(0, 4)) + Number(led.first.slice(5, 7)) / 12 - 2026 - 11 / 12 - years)
		).toBeLessThan(0.1);
		expect(led.repeat).toBeNull();
		const halogen = calendar({ ...suburban, power: { ...suburban.power, lamp: 'halogen' } }, '2026-11-25');
		const due = halogen.find(({ id }) => id === 'lamps-halogen')!;
		expect(due.repeat).toMatchObject({ every: 'month' });
		expect(due.cautions).toEqual(['Unplug and let the lamps cool first.']);
		expect(due.text).toMatch(/from memory/);
	});
	it('of a yard without lights there is none', () => {
		expect(calendar(blankYard(), '2026-11-25')).toEqual([]);
	});
});
