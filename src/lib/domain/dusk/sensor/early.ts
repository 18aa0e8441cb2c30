import type { Yard } from '../../yard/schema';
import { crossing, solarNoon } from '../crossing';
import { msPerDay, planningSun, planningYear } from '../ephemeris';
import { placeOf } from '../place';
import { altitudeAt, onAltitude, onLux } from '../twilight';

/** Part of the sky's light that reaches a sensor under a canopy, a porch roof or eaves: from memory. */
export const shadedShare = 0.25;

/**
 * Minutes by which a sensor that gets only a part of the sky's light switches on before one in the open, least and most
 * over the 21st of each month (rule sensor.shade); null where no such day has a dusk.
 */
export function minutesEarly(yard: Yard, share = shadedShare): { least: number; most: number } | null {
	const place = placeOf(yard);
	const sun = planningSun();
	const shaded = altitudeAt(onLux / share);
	const early: number[] = [];
	for (let month = 0; month < 12; month += 1) {
		const clockNoon = Date.UTC(planningYear, month, 21) + msPerDay / 2;
		const noon = solarNoon(sun, clockNoon - place.zone.offsetAt(clockNoon), place.longitude);
		const inShade = crossing(sun, noon, place.latitude, shaded, 'evening');
		const inOpen = crossing(sun, noon, place.latitude, onAltitude, 'evening');
		if ('at' in inShade && 'at' in inOpen) early.push((inOpen.at - inShade.at) / 60_000);
	}
	return early.length > 0 ? { least: Math.min(...early), most: Math.max(...early) } : null;
}
