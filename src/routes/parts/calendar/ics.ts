/** Upkeep as an iCalendar file (RFC 5545): all-day events, so without any time zone. Loaded when first wanted. */
import { ICalCalendar, ICalEventRepeatingFreq, ICalEventTransparency, type ICalRepeatingOptions } from 'ical-generator';
import type { Repeat, UpkeepEvent } from '$lib/domain/checklist';

function repeating(repeat: Repeat): ICalRepeatingOptions {
	const { interval, day } = repeat;
	return repeat.every === 'month'
		? { freq: ICalEventRepeatingFreq.MONTHLY, interval, byMonthDay: day }
		: { freq: ICalEventRepeatingFreq.YEARLY, interval, byMonth: repeat.months, byMonthDay: day };
}
/** What to do first, then what to watch for, then whom it defers to, a line each. */
const notes = ({ text, cautions, defers }: UpkeepEvent): string => [text, ...cautions, ...defers].join('\n');

/**
 * Text of a calendar file. `yard`: a code of it, so that the events of one yard are known again when its file is taken in once
 * more, and those of two yards stay apart. `stamp`: when it was written.
 */
export function writeCalendar(
	events: readonly UpkeepEvent[],
	{ name, yard, stamp }: { name: string; yard: string; stamp: Date }
): string {
	const calendar = new ICalCalendar({
		// The writer does not escape a calendar's name, as it does all other text.
		name: name.replace(/[\\;,\s]+/g, ' ').trim(),
		prodId: { company: 'Duskwright', product: 'Upkeep', language: 'EN' }
	});
	for (const event of events)
		calendar.createEvent({
			id: `${event.id}-${yard}@duskwright`,
			stamp,
			start: new Date(`${event.first}T00:00:00Z`),
			allDay: true,
			timezone: 'UTC',
			// A reminder takes up no time of its day.
			transparency: ICalEventTransparency.TRANSPARENT,
			summary: event.title,
			description: notes(event),
			...(event.repeat ? { repeating: repeating(event.repeat) } : {})
		});
	return calendar.toString();
}
