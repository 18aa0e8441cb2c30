import { hoursInWords } from '../shared/day-words';
import type { Hours, Season } from '../yard/schema';
import { instantOf } from './crossing';
import { rounded } from './energy';
import { planningSun } from './ephemeris';
import { litHours, litSpans, type Lit } from './hours';
import { nightsOf, type Night } from './nights';
import type { Place } from './place';
import { hoursOn } from './season';
import type { DuskDay } from './types';
import type { ClockZone } from './zone';

/** How the control is set: hours, and others for a part of the year. */
export interface Setting {
	schedule: Hours;
	season: Season | null;
}
/** A year of nights at a place, and when the lights are on by a setting. */
export interface DuskYear {
	place: Place;
	nights: Night[];
	setting: Setting;
	spans: Lit[][];
	days: DuskDay[];
}
/** The stretches with light of each night. */
export const spansOf = (nights: readonly Night[], { schedule, season }: Setting, zone: ClockZone): Lit[][] =>
	nights.map((night) => litSpans(night, hoursOn(night.date, schedule, season), zone));

/** Hours of a night's stretches, to a ten-thousandth (a third of a second). */
export const hoursOf = (spans: readonly Lit[]): number => rounded(litHours(spans), 4);

function dayOf(night: Night, spans: readonly Lit[], zone: ClockZone): DuskDay {
	// Minutes of the local clock since midnight of the night's date, to a hundredth.
	const minutes = (ms: number): number => rounded((ms + zone.offsetAt(ms) - night.midnight) / 60_000, 2);
	const clock = (ms: number | null): number | null => (ms === null ? null : minutes(ms));
	const lit = spans.map(({ on, off }) => ({ on: minutes(on), off: minutes(off) }));
	return {
		date: night.date,
		sunset: clock(instantOf(night.sunset)),
		dusk: clock(instantOf(night.civilDusk)),
		dawn: clock(instantOf(night.civilDawn)),
		sunrise: clock(instantOf(night.sunrise)),
		on: lit[0]?.on ?? null,
		off: lit.at(-1)?.off ?? null,
		spans: lit,
		hours: hoursOf(spans)
	};
}
const isSamePlace = (a: Place, b: Place): boolean =>
	a.latitude === b.latitude && a.longitude === b.longitude && a.zone === b.zone;
/** Hours in words tell any two apart. */
const keyOf = ({ schedule, season }: Setting): string =>
	`${hoursInWords(schedule)}${season ? `;${season.from};${season.to};${hoursInWords(season.hours)}` : ''}`;
export const isSame = (a: Setting, b: Setting): boolean => keyOf(a) === keyOf(b);

/** The last one asked for: nearly every change to a yard leaves place and hours as they are. */
let last: DuskYear | null = null;
/** The planning year at a place by a setting. */
export function duskYear(place: Place, setting: Setting): DuskYear {
	const known = last && isSamePlace(last.place, place) ? last : null;
	if (known && isSame(known.setting, setting)) return known;
	const { latitude, longitude, zone } = place;
	const nights = known?.nights ?? nightsOf(planningSun(), latitude, longitude, zone);
	const spans = spansOf(nights, setting, zone);
	const days = nights.map((night, i) => dayOf(night, spans[i]!, zone));
	return (last = { place, nights, setting, spans, days });
}
