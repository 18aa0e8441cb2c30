/** The open sky of a place: the 21st of each month, and one night minute by minute. The same for every spot of a yard. */
import { crossing, solarNoon, type Crossing } from '../crossing';
import { msPerDay, planningSun, planningYear, type Sun } from '../ephemeris';
import type { Place } from '../place';
import { offAltitude, onAltitude, skyLux } from '../twilight';
import { inLeaf } from './leaves';

/** The night of a 21st. Instants in milliseconds since 1970. */
export interface OpenDay {
	/** 1 to 12. */
	month: number;
	/** Trees that shed their leaves bear them. */
	leaves: boolean;
	noon: number;
	nextNoon: number;
	/** A window in the open switches on, and off in the morning. */
	on: Crossing;
	off: Crossing;
}
export interface OpenNight extends OpenDay {
	/** ISO. */
	date: string;
	/** Minutes after local midnight of the date of a minute of the night, counted from its noon. */
	clock: (minute: number) => number;
	/** Light of the sky on level ground in the open, lux, each minute from noon to noon. */
	lux: Float64Array;
}
export interface PlaceSky {
	latitude: number;
	days: readonly OpenDay[];
	/** The longest of the twelve nights that has a dusk and a dawn; December's where none has. */
	night: OpenNight;
}
const radian = Math.PI / 180;
const msPerMinute = 60_000;

function openDay(sun: Sun, place: Place, month: number): OpenDay {
	const clockNoon = Date.UTC(planningYear, month - 1, 21) + msPerDay / 2;
	const noon = solarNoon(sun, clockNoon - place.zone.offsetAt(clockNoon), place.longitude);
	const nextNoon = solarNoon(sun, noon + msPerDay, place.longitude);
	const on = crossing(sun, noon, place.latitude, onAltitude, 'evening');
	const off = crossing(sun, nextNoon, place.latitude, offAltitude, 'morning');
	return { month, leaves: inLeaf(month, place.latitude), noon, nextNoon, on, off };
}
/** Altitude of the sun's centre, degrees: sin h = sin φ sin δ + cos φ cos δ cos H. */
export function altitudeOf(sun: Sun, ms: number, { latitude, longitude }: Place): number {
	const declination = sun.declinationAt(ms) * radian;
	const turn = Math.cos(sun.hourAngleAt(ms, longitude) * radian);
	const up =
		Math.sin(latitude * radian) * Math.sin(declination) + Math.cos(latitude * radian) * Math.cos(declination) * turn;
	return Math.asin(Math.min(1, Math.max(-1, up))) / radian;
}
function openNight(sun: Sun, place: Place, day: OpenDay): OpenNight {
	const midnight = Date.UTC(planningYear, day.month - 1, 21);
	const lux = Float64Array.from({ length: Math.round((day.nextNoon - day.noon) / msPerMinute) + 1 }, (_, minute) =>
		skyLux(altitudeOf(sun, day.noon + minute * msPerMinute, place))
	);
	// Clocks are set on nights before a Sunday early or late in a month: one offset serves the night of a 21st.
	const atNoon = (day.noon + place.zone.offsetAt(day.noon) - midnight) / msPerMinute;
	const clock = (minute: number): number => atNoon + minute;
	return { ...day, date: new Date(midnight).toISOString().slice(0, 10), clock, lux };
}
const length = ({ on, off }: OpenDay): number => ('at' in on && 'at' in off ? off.at - on.at : -1);

/** The last one asked for: nearly every change to a yard leaves its place as it is. */
let last: { place: Place; sky: PlaceSky } | null = null;
export function skyOfPlace(place: Place): PlaceSky {
	const { latitude, longitude, zone } = place;
	if (last && last.place.latitude === latitude && last.place.longitude === longitude && last.place.zone === zone)
		return last.sky;
	const sun = planningSun();
	const days = Array.from({ length: 12 }, (_, month) => openDay(sun, place, month + 1));
	const longest = days.reduce((long, day) => (length(day) > length(long) ? day : long), days.at(-1)!);
	const sky = { latitude, days, night: openNight(sun, place, longest) };
	last = { place, sky };
	return sky;
}
