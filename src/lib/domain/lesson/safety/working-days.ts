/** Working days before digging: rule dig.notice. Weeks without holidays. */
import { rules } from '../../shared/rules';

export const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
export type Weekday = (typeof weekdays)[number];
const workingDays = 5;

/** The last day to call so that the full working days of the rule lie between it and the day of digging; a working day itself. */
export function lastDayToCall(dig: Weekday): Weekday {
	let left: number = rules['dig.notice'].figures.days;
	let day = weekdays.indexOf(dig);
	do {
		day = (day + weekdays.length - 1) % weekdays.length;
		if (day < workingDays) left -= 1;
	} while (left >= 0);
	return weekdays[day]!;
}
