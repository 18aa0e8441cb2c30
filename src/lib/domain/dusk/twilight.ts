import { rules } from '../shared/rules';

/** Geometric altitude of the sun's centre at sunset and sunrise: refraction 34′ and half the disc 16′, degrees. */
export const sunsetAltitude = -0.833;
export const civilAltitude = -6;
const nauticalAltitude = -12;

/**
 * Clear-sky light on level ground against the sun's altitude, highest first. Up to sunset rule sensor.dusk; above it, for spots so
 * deep in shade that they count daylight for dusk, points of the Explanatory Supplement's law (1992), from memory.
 */
const curve = [
	{ altitude: 90, lux: 129_000 },
	{ altitude: 20, lux: 27_300 },
	{ altitude: 5, lux: 4500 },
	{ altitude: sunsetAltitude, lux: rules['sensor.dusk'].figures.sunset },
	{ altitude: civilAltitude, lux: rules['sensor.dusk'].figures.civil },
	{ altitude: nauticalAltitude, lux: rules['sensor.dusk'].figures.nautical }
] as const;
type Point = (typeof curve)[number];

/** The stretch of the curve whose lower end is the first that `isBelow`; the lowest stretch where none is. */
function stretch(isBelow: (point: Point) => boolean): [high: Point, low: Point] {
	const found = curve.findIndex((point, i) => i > 0 && isBelow(point));
	const low = found < 0 ? curve.length - 1 : found;
	return [curve[low - 1]!, curve[low]!];
}
/**
 * Altitude of the sun, degrees, at which a clear sky gives `lux` on level ground. Between the points the logarithm of the
 * light goes straight with the altitude; beyond them the nearest stretch is carried on, so that light which no sun gives
 * is met above 90°.
 */
export function altitudeAt(lux: number): number {
	const [high, low] = stretch((point) => point.lux <= lux);
	const share = Math.log(high.lux / lux) / Math.log(high.lux / low.lux);
	return high.altitude + share * (low.altitude - high.altitude);
}
/** Clear-sky light on level ground, lux, with the sun at an altitude, degrees: `altitudeAt` turned round. */
export function skyLux(altitude: number): number {
	const [high, low] = stretch((point) => point.altitude <= altitude);
	const share = (high.altitude - altitude) / (high.altitude - low.altitude);
	return high.lux * (low.lux / high.lux) ** share;
}
const level = rules['sensor.level'].figures;
/** On at 16 lx; off at 48 lx, the geometric middle of 1.5 and 6 times that (rule sensor.level); its delay is left out. */
export const onLux = level.on;
export const offLux = level.on * Math.sqrt(level.offLow * level.offHigh);
/** The off level that lies nearest to the on level: a sensor marked so is the first to take lamps for day. */
export const nearestOffLux = level.on * level.offLow;
export const onAltitude = altitudeAt(onLux);
export const offAltitude = altitudeAt(offLux);
