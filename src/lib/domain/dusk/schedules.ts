/** Usual ways to set the hours, worked out beside the one chosen. */
import { dayInWords, hoursInWords } from '../shared/day-words';
import type { Hours } from '../yard/schema';
import { costOf, energyOf, hoursWorking, rounded, type Draw, type Price } from './energy';
import { clockInstant, darkness, litWithin, type Lit } from './hours';
import type { SoonestLife } from './lamp-years';
import type { Night } from './nights';
import type { ScheduleFigures } from './types';
import { hoursOf, isSame, type DuskYear, type Setting } from './year';
import type { ClockZone } from './zone';

/** What is met in the trade: common practice, no source. */
const usual: readonly { id: string; schedule: Hours }[] = [
	{ id: 'hours-3', schedule: { kind: 'after-dusk', hours: 3 } },
	{ id: 'hours-5', schedule: { kind: 'after-dusk', hours: 5 } },
	{ id: 'until-22', schedule: { kind: 'until', clock: '22:00' } },
	{ id: 'until-23', schedule: { kind: 'until', clock: '23:00' } },
	{ id: 'split', schedule: { kind: 'split', evening: '23:00', morning: '05:30' } },
	{ id: 'all-night', schedule: { kind: 'dusk-to-dawn' } }
];
/** From here on a light is late: an hour often set for a curfew on light. Common practice, no source. */
const late = '23:00';

interface Burning {
	hoursPerYear: number;
	lateHours: number;
}
function burningOf(nights: readonly Night[], spans: readonly (readonly Lit[])[], lateFrom: readonly number[]): Burning {
	let lateMs = 0;
	const days = nights.map(({ date }, i) => {
		for (const { on, off } of spans[i]!) lateMs += Math.max(0, off - Math.max(on, lateFrom[i]!));
		return { date, hours: hoursOf(spans[i]!) };
	});
	return { hoursPerYear: hoursWorking(days).value, lateHours: rounded(lateMs / 3_600_000, 1) };
}
const lateInstants = (nights: readonly Night[], zone: ClockZone): number[] =>
	nights.map((night) => clockInstant(late, night, zone));

/** The usual ways at the places asked for last, by their nights. */
const burnings = new WeakMap<readonly Night[], Burning[]>();
function usualBurnings(nights: readonly Night[], zone: ClockZone): Burning[] {
	const known = burnings.get(nights);
	if (known) return known;
	const lateFrom = lateInstants(nights, zone);
	const skies = nights.map(darkness);
	const made = usual.map(({ schedule }) => {
		const spans = nights.map((night, i) => {
			const sky = skies[i];
			return sky ? litWithin(sky, schedule, night, zone) : [];
		});
		return burningOf(nights, spans, lateFrom);
	});
	burnings.set(nights, made);
	return made;
}
export function labelOf({ schedule, season }: Setting): string {
	const words = hoursInWords(schedule);
	const label = `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
	return season
		? `${label}; from ${dayInWords(season.from)} to ${dayInWords(season.to)} ${hoursInWords(season.hours)}`
		: label;
}
/**
 * The setting of a year and the usual ones, with what each costs: same formulas as the plan's own figures. The chosen
 * one comes first where it is none of the usual, under the id `own`.
 */
export function compareSchedules(
	{ nights, spans, setting, place }: DuskYear,
	draw: Draw,
	price: Price,
	lives: readonly SoonestLife[]
): ScheduleFigures[] {
	const figures = (id: string, as: Setting, chosen: boolean, burning: Burning): ScheduleFigures => {
		const energy = energyOf(burning.hoursPerYear, draw);
		return {
			id,
			label: labelOf(as),
			...as,
			chosen,
			...burning,
			energy,
			cost: costOf(energy, price),
			lampYears:
				burning.hoursPerYear > 0
					? lives.map(({ kind, hours }) => ({ kind, years: rounded(hours / burning.hoursPerYear, 1) }))
					: []
		};
	};
	const known = usualBurnings(nights, place.zone);
	const others = usual.map(({ id, schedule }, i) => {
		const as = { schedule, season: null };
		return figures(id, as, isSame(as, setting), known[i]!);
	});
	return others.some(({ chosen }) => chosen)
		? others
		: [figures('own', setting, true, burningOf(nights, spans, lateInstants(nights, place.zone))), ...others];
}
