import { crossing, solarNoon, type Crossing } from './crossing';
import { daysInYear, msPerDay, type Sun } from './ephemeris';
import { civilAltitude, offAltitude, onAltitude, sunsetAltitude } from './twilight';
import type { ClockZone } from './zone';

/** One night: from the solar noon of its date to the next. Instants in milliseconds since 1970. */
export interface Night {
	date: string;
	/** Local midnight at the beginning of `date`, reckoned as if clocks stood on UTC. */
	midnight: number;
	noon: number;
	nextNoon: number;
	sunset: Crossing;
	civilDusk: Crossing;
	civilDawn: Crossing;
	sunrise: Crossing;
	/** Sky light falls to the sensor's on level, rises to its off level. */
	dark: Crossing;
	light: Crossing;
}
/** The first 365 nights of the sun's year at a place; latitude and longitude in degrees, north and east positive. */
export function nightsOf(sun: Sun, latitude: number, longitude: number, zone: ClockZone): Night[] {
	const midnights = Array.from({ length: daysInYear + 1 }, (_, day) => Date.UTC(sun.year, 0, 1) + day * msPerDay);
	// Each noon from the one before: half a day off its zone, a place's noon nearest to the clock's could be one day's twice.
	const clockNoon = midnights[0]! + msPerDay / 2;
	const noons = [solarNoon(sun, clockNoon - zone.offsetAt(clockNoon), longitude)];
	while (noons.length < midnights.length) noons.push(solarNoon(sun, noons.at(-1)! + msPerDay, longitude));
	return midnights.slice(0, daysInYear).map((midnight, day) => {
		const noon = noons[day]!;
		const nextNoon = noons[day + 1]!;
		const evening = (altitude: number) => crossing(sun, noon, latitude, altitude, 'evening');
		const morning = (altitude: number) => crossing(sun, nextNoon, latitude, altitude, 'morning');
		return {
			date: new Date(midnight).toISOString().slice(0, 10),
			midnight,
			noon,
			nextNoon,
			sunset: evening(sunsetAltitude),
			civilDusk: evening(civilAltitude),
			civilDawn: morning(civilAltitude),
			sunrise: morning(sunsetAltitude),
			dark: evening(onAltitude),
			light: morning(offAltitude)
		};
	});
}
