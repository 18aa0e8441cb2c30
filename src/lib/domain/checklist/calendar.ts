/** Upkeep as dates: when each step of it comes round. Days of the calendar, without time or zone. */
import type { Dusk, ScheduleFigures } from '../dusk';
import { ratedLife } from '../shared/lamp-life';
import { addMonths, firstAfter, type Repeat } from './calendar-dates';
import type { Checklist, ChecklistStep } from './types';

/** Something to do on a day, and again. */
export interface UpkeepEvent {
	/** Stable: `lenses`, `lamps-halogen`. */
	id: string;
	title: string;
	/** What to do, and what to watch for. */
	text: string;
	cautions: string[];
	/** Where it defers: maker, licensed electrician. */
	defers: string[];
	/** First day, `YYYY-MM-DD`; it is one of the days of `repeat`. */
	first: string;
	/** Null: once. */
	repeat: Repeat | null;
}
interface Dated {
	title: string;
	repeat: (start: string, south: boolean) => Repeat;
}
const dayOf = (date: string): number => Math.min(28, Number(date.slice(8)));
const monthOf = (date: string): number => Number(date.slice(5, 7));
/** The same season on the other half of the earth is half a year away. */
const inSeason = (month: number, south: boolean): number => (south ? ((month + 5) % 12) + 1 : month);
const yearly =
	(month: number, day = 1): Dated['repeat'] =>
	(_, south) => ({
		every: 'year',
		interval: 1,
		months: [inSeason(month, south)],
		day
	});
const anniversary: Dated['repeat'] = (start) => ({
	every: 'year',
	interval: 1,
	months: [monthOf(start)],
	day: dayOf(start)
});
/** When each step of the upkeep is due, months as in the north. Common practice, no source. Steps without a date are not here. */
const dated: Record<string, Dated> = {
	'monthly-gfci': {
		title: 'Garden lights: test the GFCI',
		repeat: (start) => ({ every: 'month', interval: 1, day: dayOf(start) })
	},
	lenses: {
		title: 'Garden lights: wipe the lenses',
		repeat: () => ({ every: 'year', interval: 1, months: [4, 10], day: 1 })
	},
	// Leaves are down, the ground is not yet hard.
	wells: { title: 'Garden lights: clear the flush lights', repeat: yearly(12) },
	stakes: { title: 'Garden lights: set leaning stakes upright', repeat: yearly(4, 15) },
	// The year's growth stands, and the long evenings begin.
	prune: { title: 'Garden lights: prune, and aim again', repeat: yearly(9) },
	'sensor-view': { title: 'Garden lights: wipe the dusk sensor', repeat: yearly(9) },
	connectors: { title: 'Garden lights: measure the far lamps', repeat: anniversary },
	'transformer-look': { title: 'Garden lights: look over the transformer', repeat: anniversary }
};
/** Lamps that last longer than this are nobody's date, years. */
const farthest = 30;

const stepsOf = (checklist: Checklist): ChecklistStep[] =>
	checklist.parts.find(({ id }) => id === 'upkeep')?.steps ?? [];

/** When the first lamp of a kind has burnt its hours, by the hours chosen. */
function lampEvent(chosen: ScheduleFigures, start: string, kind: 'led' | 'halogen'): UpkeepEvent[] {
	const years = chosen.lampYears.find((one) => one.kind === kind)?.years;
	if (years === undefined || years > farthest) return [];
	const months = Math.max(1, Math.round(years * 12));
	const first = addMonths(start, months);
	const name = kind === 'led' ? 'LED' : 'halogen';
	const rated = ratedLife[kind].taken.toLocaleString('en');
	return [
		{
			id: `lamps-${kind}`,
			title: `Garden lights: ${name} lamps about due`,
			text: `At ${Math.round(chosen.hoursPerYear)} hours a year the first ${name} lamp has about burnt its hours: ${rated} at rated volts, from memory, the box comes first. Have one of the same watts at hand, and change a lamp that has failed or gone dim.`,
			cautions: [kind === 'halogen' ? 'Unplug and let the lamps cool first.' : 'Unplug first.'],
			defers: ['The maker’s instructions come before this plan.'],
			first,
			repeat: kind === 'led' ? null : { every: 'month', interval: months, day: dayOf(first) }
		}
	];
}
/**
 * The upkeep of a plan as dated, repeating events, from the day the lights are done (`YYYY-MM-DD`, given by the caller). Steps
 * tied to a season fall into that season on either half of the earth. No event falls before the start.
 */
export function upkeepCalendar(
	{ checklist, dusk }: { checklist: Checklist; dusk: Dusk },
	start: string
): UpkeepEvent[] {
	const south = dusk.latitude < 0;
	const events = stepsOf(checklist).flatMap(({ id, text, cautions, defers }): UpkeepEvent[] => {
		const when = dated[id];
		if (!when) return [];
		const repeat = when.repeat(start, south);
		// On the day itself all has just been done.
		return [{ id, title: when.title, text, cautions, defers, first: firstAfter(start, repeat), repeat }];
	});
	const chosen = dusk.schedules.find((one) => one.chosen);
	if (events.length === 0 || !chosen) return events;
	return [...events, ...lampEvent(chosen, start, 'led'), ...lampEvent(chosen, start, 'halogen')];
}
