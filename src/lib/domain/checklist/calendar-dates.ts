/** Days of the calendar as `YYYY-MM-DD`, and how they come round. */

/** Every so many months or years, on a day of the month up to the 28th, which every month has. */
export type Repeat =
	| { every: 'month'; interval: number; day: number }
	| { every: 'year'; interval: number; months: number[]; day: number };

const two = (value: number): string => String(value).padStart(2, '0');
/** A day so many months after the month of a date. */
const inMonth = (date: string, months: number, day: number): string => {
	const count = Number(date.slice(0, 4)) * 12 + Number(date.slice(5, 7)) - 1 + months;
	return `${Math.floor(count / 12)}-${two((count % 12) + 1)}-${two(day)}`;
};
/** The same day so many months on; at the end of a month the 28th. */
export const addMonths = (date: string, months: number): string =>
	inMonth(date, months, Math.min(28, Number(date.slice(8))));

/** The first day of a repeat after a date. */
export function firstAfter(date: string, repeat: Repeat): string {
	for (let months = 0; months < 12; months += 1) {
		const day = inMonth(date, months, repeat.day);
		const isItsMonth = repeat.every === 'month' || repeat.months.includes(Number(day.slice(5, 7)));
		if (isItsMonth && day > date) return day;
	}
	// A month of the year comes round within twelve.
	return inMonth(date, 12, repeat.day);
}
