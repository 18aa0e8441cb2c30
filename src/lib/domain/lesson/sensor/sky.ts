/** The evening sky of a place in round degrees, clocks on the sun's own time, and a sensor that sees a share of it. Minutes, lux, degrees. */
import { altitudeAt, monthsOf, onLux, placeOf, skyOfPlace, type PlaceSky } from '../../dusk';
import { blankYard } from '../../yard';

const skies = new Map<number, PlaceSky>();
/** Skies kept: as many as a sheet asks for by turns. */
const mostSkies = 32;
/** The sky over a latitude, degrees north, on the meridian by which clocks there go: no summer time. */
export function skyAt(latitude: number): PlaceSky {
	const known = skies.get(latitude);
	if (known) return known;
	if (skies.size >= mostSkies) skies.clear();
	const location = { latitude, longitude: 0, timeZone: 'UTC' };
	const sky = skyOfPlace(placeOf({ ...blankYard(), place: { location } }));
	skies.set(latitude, sky);
	return sky;
}

const msPerMinute = 60_000;
export interface Evening {
	/** 1 to 12, on its 21st. */
	month: number;
	/** Minutes after noon by the clock. */
	open: number;
	on: number;
	/** Minutes by which it switches on before one that sees all of the sky. */
	early: number;
}
/** The 21st of each month for a sensor that sees so much of the sky, 0 to 1; months without such a dusk are left out. */
export function eveningsOf(sky: PlaceSky, share: number): Evening[] {
	return monthsOf(sky, { leafOn: share, leafOff: share }).flatMap(({ month, early }, i) => {
		const { on } = sky.days[i]!;
		if (early === null || !('at' in on)) return [];
		const open = (on.at - Date.UTC(new Date(on.at).getUTCFullYear(), month - 1, 21, 12)) / msPerMinute;
		return [{ month, open, on: open - early, early }];
	});
}
/** The same of one month; undefined where it has no such dusk. */
export const eveningOf = (sky: PlaceSky, share: number, month: number): Evening | undefined =>
	eveningsOf({ ...sky, days: sky.days.filter((day) => day.month === month) }, share)[0];

/** Light of the open sky that a sensor needs when it switches on, lux. */
export const neededLux = (share: number): number => onLux / share;
/** Of the sun's centre when a clear sky falls to what a sensor with such a share needs, degrees; below the horizon negative. */
export const sunAt = (share: number): number => altitudeAt(neededLux(share));

/** `20:42` out of minutes after noon. */
export function clockText(minutesAfterNoon: number): string {
	const minutes = (Math.round(minutesAfterNoon) + 720 + 1440) % 1440;
	return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}
