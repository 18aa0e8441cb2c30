import { expect, it } from 'vitest';
import { isAllNight } from './clock-order';
import { daysOf, eveningsIn, monthDay, partsOf } from './season';

it.each([
	['04-01', '09-30', 183],
	['10-01', '03-31', 182],
	['06-21', '06-21', 1],
	['12-31', '01-01', 2],
	['01-01', '12-31', 365],
	['03-01', '02-29', 365],
	['02-29', '03-01', 2]
])('from %s to %s there are %d evenings, by the calendar of a common year', (from, to, count) => {
	expect(eveningsIn(from, to)).toBe(count);
});
it('keeps a day within its month', () => {
	expect(monthDay(2, 31)).toBe('02-29');
	expect(monthDay(4, 31)).toBe('04-30');
	expect(partsOf('12-05')).toEqual({ month: 12, day: 5 });
	expect(Array.from({ length: 12 }, (_, i) => daysOf(i + 1).length)).toEqual([
		31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31
	]);
});
it('knows when the halves of a night meet: times count from noon to noon', () => {
	expect(isAllNight('23:00', '05:30')).toBe(false);
	expect(isAllNight('00:30', '05:30')).toBe(false);
	expect(isAllNight('06:00', '05:30')).toBe(true);
	expect(isAllNight('23:00', '23:00')).toBe(true);
	expect(isAllNight('23:00', '22:00')).toBe(true);
});
