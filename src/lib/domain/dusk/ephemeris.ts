import { getPosition } from 'suncalc';

/**
 * The year the plan is reckoned for: fixed, because the domain reads no clock. Sunsets of one date move by under two
 * minutes from one year to another at middle latitudes; 2027 is a common year of 365 days.
 */
export const planningYear = 2027;
export const daysInYear = 365;
export const msPerDay = 86_400_000;
/** Days of samples kept before and after the year: a local date's night reaches up to two days beyond UTC's year. */
const margin = 4;
const size = 366 + 2 * margin + 1;

/** Degrees, wrapped to −180 … 180. */
export const wrapped = (degrees: number): number => degrees - 360 * Math.round(degrees / 360);

/** The sun through one year. Instants in milliseconds since 1970, angles in degrees. */
export interface Sun {
	year: number;
	/** Apparent declination. */
	declinationAt(ms: number): number;
	/** Equation of time as an angle: hour angle at Greenwich less that of a mean sun which passes south at 12:00 UTC. */
	excessAt(ms: number): number;
	/** Hour angle at a longitude (east positive), −180 … 180: 0 = highest, growing westwards with time. */
	hourAngleAt(ms: number, longitude: number): number;
}
/** A parabola through the three nearest daily samples: within 0.0001° of the sun, a tenth of a second of clock. */
function interpolated(values: Float64Array, days: number): number {
	const nearest = Math.min(Math.max(Math.floor(days + 0.5), 1), values.length - 2);
	const [before, at, after] = [values[nearest - 1]!, values[nearest]!, values[nearest + 1]!];
	const t = days - nearest;
	return at + (t * (after - before)) / 2 + (t * t * (before - 2 * at + after)) / 2;
}
/**
 * Declination and hour angle out of suncalc's azimuths, which refraction does not touch. Seen from the pole the azimuth
 * is the hour angle + 180°. Seen from the equator with the hour angle at 90°, tan(azimuth − 180°) = 1 ÷ −tan δ, so that
 * δ = azimuth − 270°.
 */
export function makeSun(year: number): Sun {
	const firstNoon = Date.UTC(year, 0, 1 - margin, 12);
	const declination = new Float64Array(size);
	const excess = new Float64Array(size);
	for (let day = 0; day < size; day += 1) {
		const date = new Date(firstNoon + day * msPerDay);
		const atNoon = wrapped(getPosition(date, 90, 0).azimuth - 180);
		excess[day] = atNoon;
		declination[day] = getPosition(date, 0, wrapped(90 - atNoon)).azimuth - 270;
	}
	const excessAt = (ms: number): number => interpolated(excess, (ms - firstNoon) / msPerDay);
	return {
		year,
		declinationAt: (ms) => interpolated(declination, (ms - firstNoon) / msPerDay),
		excessAt,
		hourAngleAt: (ms, longitude) => wrapped((360 * (ms - firstNoon)) / msPerDay + excessAt(ms) + longitude)
	};
}
let planning: Sun | null = null;
/** The sun of the planning year: a constant, the same for every place, computed once. */
export const planningSun = (): Sun => (planning ??= makeSun(planningYear));
