/** Dates of a season as a person chooses them: a day and a month. */
import { monthNames } from '$lib/domain/shared/day-words';

/** The planning year has no leap day, yet some years do: it is offered. */
const lengths = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const two = (value: number): string => String(value).padStart(2, '0');

export const months = monthNames.map((name, i) => ({ value: i + 1, name }));
export const daysOf = (month: number): number[] => Array.from({ length: lengths[month - 1] ?? 31 }, (_, i) => i + 1);

/** `04-30` out of month and day; a day that the month lacks becomes its last. */
export const monthDay = (month: number, day: number): string =>
	`${two(month)}-${two(Math.min(day, lengths[month - 1] ?? 31))}`;
export const partsOf = (text: string): { month: number; day: number } => ({
	month: Number(text.slice(0, 2)),
	day: Number(text.slice(3))
});

const dayNumber = (text: string): number => {
	const { month, day } = partsOf(text);
	// A common year; the leap day counts as the day before it.
	return Date.UTC(2027, month - 1, month === 2 ? Math.min(day, 28) : day) / 86_400_000;
};
/** Evenings from one date to another, both counted; past the new year where the second comes first. */
export const eveningsIn = (from: string, to: string): number => {
	const apart = dayNumber(to) - dayNumber(from);
	return (apart < 0 ? apart + 365 : apart) + 1;
};
