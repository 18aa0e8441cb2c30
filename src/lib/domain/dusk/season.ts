import type { Hours, Season } from '../yard/schema';

const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** A month and day of the planning year, which has no leap day: a day that its month lacks is the month's last. */
function inYear(monthDay: string): string {
	const month = Number(monthDay.slice(0, 2));
	const day = Math.min(Number(monthDay.slice(3)), monthLengths[month - 1]!);
	return `${monthDay.slice(0, 3)}${String(day).padStart(2, '0')}`;
}
/** Does a date (`YYYY-MM-DD`, that of the evening) lie in a season? Both ends are in it; it may pass the new year. */
export function isInSeason(date: string, season: Season): boolean {
	const day = date.slice(5);
	const [from, to] = [inYear(season.from), inYear(season.to)];
	return from <= to ? from <= day && day <= to : from <= day || day <= to;
}
/** The hours in force on the evening of a date. */
export const hoursOn = (date: string, schedule: Hours, season: Season | null): Hours =>
	season && isInSeason(date, season) ? season.hours : schedule;
