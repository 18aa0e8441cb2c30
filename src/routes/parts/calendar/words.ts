/** Dates of upkeep in words. */
import type { Repeat } from '$lib/domain/checklist';
import { dayInWords, monthNames } from '$lib/domain/shared/day-words';

/** `1 April 2027`, the day held to its month. */
export const dateInWords = (date: string): string => `${dayInWords(date).replace(' ', '\u00a0')} ${date.slice(0, 4)}`;

/** `every month`, `every year in April and October`, `every 17 months`, `once`. */
export function repeatInWords(repeat: Repeat | null): string {
	if (!repeat) return 'once';
	if (repeat.every === 'month') return repeat.interval === 1 ? 'every month' : `every ${repeat.interval} months`;
	const months = repeat.months.map((month) => monthNames[month - 1]).join(' and ');
	return repeat.interval === 1 ? `every year in ${months}` : `every ${repeat.interval} years in ${months}`;
}
/** A day on this device's calendar, `YYYY-MM-DD`. */
export function dayHere(now: Date): string {
	const two = (value: number): string => String(value).padStart(2, '0');
	return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
