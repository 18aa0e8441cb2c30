import { msPerDay, type Sun } from './ephemeris';

const radian = Math.PI / 180;
const msPerDegree = msPerDay / 360;

/** The instant nearest to `ms` at which the sun is highest at a longitude (degrees east), milliseconds since 1970. */
export function solarNoon(sun: Sun, ms: number, longitude: number): number {
	let at = ms;
	// The hour angle grows by 1° in 4 minutes to within 30 s a day: two steps leave milliseconds.
	for (let step = 0; step < 2; step += 1) at -= sun.hourAngleAt(at, longitude) * msPerDegree;
	return at;
}
/** An instant (milliseconds since 1970), or the side of the level on which the sun stays through that half day. */
export type Crossing = { at: number } | { stays: 'above' | 'below' };

/** Cosine of the hour angle at which the sun's centre has an altitude: the spherical triangle pole, zenith, sun. */
function cosHourAngle(declination: number, latitude: number, altitude: number): number {
	const up = Math.sin(altitude * radian) - Math.sin(latitude * radian) * Math.sin(declination * radian);
	const across = Math.cos(latitude * radian) * Math.cos(declination * radian);
	// At the pole itself the sun keeps its altitude all day: a sign is all that is left.
	return Math.abs(across) < 1e-9 ? Math.sign(up) * Infinity : up / across;
}
/**
 * When the sun passes an altitude (geometric, of its centre, degrees) in the half day before ('morning') or after
 * ('evening') a solar noon. Latitude in degrees.
 */
export function crossing(
	sun: Sun,
	noon: number,
	latitude: number,
	altitude: number,
	side: 'morning' | 'evening'
): Crossing {
	const sign = side === 'evening' ? 1 : -1;
	const excessAtNoon = sun.excessAt(noon);
	let at = noon;
	let cos = 0;
	// Each step takes the declination of the last estimate; it moves by 0.4° a day at most, so each gains two digits.
	for (let step = 0; step < 6; step += 1) {
		cos = cosHourAngle(sun.declinationAt(at), latitude, altitude);
		const hourAngle = sign * (Math.acos(Math.min(1, Math.max(-1, cos))) / radian);
		// The clock gains on the sun by the change of the equation of time since noon.
		const next = noon + (hourAngle - sun.excessAt(at) + excessAtNoon) * msPerDegree;
		const moved = Math.abs(next - at);
		at = next;
		if (moved < 1000) break;
	}
	if (cos > 1) return { stays: 'below' };
	return cos < -1 ? { stays: 'above' } : { at };
}
export const instantOf = (found: Crossing): number | null => ('at' in found ? found.at : null);
