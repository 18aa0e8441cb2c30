/** Read back by ical.js, an independent reader of RFC 5545. */
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { upkeepCalendar, type UpkeepEvent } from '$lib/domain/checklist';
import { makePlan } from '$lib/domain/plan';
import { examples } from '$lib/domain/yard';
import { writeCalendar } from './ics';

const stamp = new Date('2026-11-25T10:00:00Z');
const about = { name: 'Garden lights, Quince; Row', yard: 'ABC1234', stamp };
const read = (text: string) => {
	const calendar = new ICAL.Component(ICAL.parse(text));
	const events = calendar.getAllSubcomponents('vevent').map((component) => new ICAL.Event(component));
	return { calendar, events };
};
/** The days on which an event falls, as the reader has them. */
function days(event: ICAL.Event, most: number): string[] {
	if (!event.isRecurring()) return [event.startDate.toString()];
	const walk = event.iterator();
	return Array.from({ length: most }, () => walk.next()).flatMap((day) => (day ? [day.toString()] : []));
}
const event = (more: Partial<UpkeepEvent>): UpkeepEvent => ({
	id: 'one',
	title: 'Wipe the lenses',
	text: 'Wipe.',
	cautions: [],
	defers: [],
	first: '2027-04-01',
	repeat: null,
	...more
});
const back = (one: UpkeepEvent): ICAL.Event => read(writeCalendar([one], about)).events[0]!;

describe('an event', () => {
	it('is a day without a clock or a zone, and takes up no time', () => {
		const { startDate, component } = back(event({}));
		expect(startDate.isDate).toBe(true);
		expect(startDate.zone).toBe(ICAL.Timezone.localTimezone);
		expect(startDate.toString()).toBe('2027-04-01');
		expect(component.getFirstPropertyValue('transp')).toBe('TRANSPARENT');
		expect(writeCalendar([event({})], about)).not.toMatch(/TZID|VTIMEZONE/);
	});
	it('comes round on the days of its rule, by the reader’s own reckoning', () => {
		const lenses = back(event({ repeat: { every: 'year', interval: 1, months: [4, 10], day: 1 } }));
		expect(days(lenses, 4)).toEqual(['2027-04-01', '2027-10-01', '2028-04-01', '2028-10-01']);
		const monthly = back(event({ first: '2027-01-28', repeat: { every: 'month', interval: 1, day: 28 } }));
		expect(days(monthly, 3)).toEqual(['2027-01-28', '2027-02-28', '2027-03-28']);
		const lamps = back(event({ first: '2028-08-15', repeat: { every: 'month', interval: 20, day: 15 } }));
		expect(days(lamps, 3)).toEqual(['2028-08-15', '2030-04-15', '2031-12-15']);
	});
	it('keeps commas, semicolons, backslashes, line ends and letters of any script', () => {
		const text = 'Unplug, wait; then “wipe” \\ the lens: größer, 庭の灯り 🌳.';
		const one = back(
			event({ title: 'Lenses, heads; wells', text, cautions: ['Hot, mind.'], defers: ['The maker’s word.'] })
		);
		expect(one.summary).toBe('Lenses, heads; wells');
		expect(one.description).toBe(`${text}\nHot, mind.\nThe maker’s word.`);
	});
	it('has one id for one yard, and another for another', () => {
		expect(back(event({})).uid).toBe('one-ABC1234@duskwright');
	});
});

describe.each(examples.map(({ id, yard }) => [id, makePlan(yard)] as const))('the upkeep of %s', (_, plan) => {
	const wanted = upkeepCalendar(plan, '2026-11-30');
	const text = writeCalendar(wanted, about);
	it('is read back event for event, each first on the day it was meant for and on its rule', () => {
		const { calendar, events } = read(text);
		expect(calendar.getFirstPropertyValue('x-wr-calname')).toBe('Garden lights Quince Row');
		expect(events).toHaveLength(wanted.length);
		events.forEach((one, i) => {
			expect(one.summary).toBe(wanted[i]!.title);
			expect(days(one, 1)).toEqual([wanted[i]!.first]);
			expect(one.description.split('\n')).toEqual([wanted[i]!.text, ...wanted[i]!.cautions, ...wanted[i]!.defers]);
		});
		expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
	});
	it('keeps RFC 5545: lines end in CRLF and have at most 75 octets', () => {
		expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
		const octets = text.split('\r\n').map((line) => new TextEncoder().encode(line).length);
		expect(Math.max(...octets)).toBeLessThanOrEqual(75);
		expect(Math.max(...octets)).toBeGreaterThan(60);
	});
});
