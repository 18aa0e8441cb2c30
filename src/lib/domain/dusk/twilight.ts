import { rules } from '../shared/rules';

/** Geometric altitude of the sun's centre at sunset and sunrise: refraction 34′ and half the disc 16′, degrees. */
export const sunsetAltitude = -0.833;
export const civilAltitude = -6;
const nauticalAltitude = -12;

/** Rule sensor.dusk: clear-sky light on level ground against the sun's altitude. */
const curve = [
	{ altitude: sunsetAltitude, lux: rules['sensor.dusk'].figures.sunset },
	{ altitude: civilAltitude, lux: rules['sensor.dusk'].figures.civil },
	{ altitude: nauticalAltitude, lux: rules['sensor.dusk'].figures.nautical }
] as const;

/**
 * Altitude of the sun, degrees, at which a clear sky gives `lux` on level ground. Between the published points the
 * logarithm of the light goes straight with the altitude; beyond them the nearest stretch is carried on.
 */
export function altitudeAt(lux: number): number {
	const [high, low] = lux >= curve[1].lux ? [curve[0], curve[1]] : [curve[1], curve[2]];
	const share = Math.log(high.lux / lux) / Math.log(high.lux / low.lux);
	return high.altitude + share * (low.altitude - high.altitude);
}
const level = rules['sensor.level'].figures;
/** On at 16 lx; off at 48 lx, the geometric middle of 1.5 and 6 times that (rule sensor.level); its delay is left out. */
export const onLux = level.on;
export const offLux = level.on * Math.sqrt(level.offLow * level.offHigh);
export const onAltitude = altitudeAt(onLux);
export const offAltitude = altitudeAt(offLux);
