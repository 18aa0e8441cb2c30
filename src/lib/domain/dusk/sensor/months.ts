import { crossing } from '../crossing';
import { planningSun } from '../ephemeris';
import { altitudeAt, offLux, onLux } from '../twilight';
import type { SensorView } from '../types';
import type { OpenDay, PlaceSky } from './place-sky';

export type Months = SensorView['months'];
const msPerMinute = 60_000;
/** To a tenth; adding zero turns the negative zero, which JSON has not, into zero. */
const rounded = (minutes: number): number => Math.round(minutes * 10) / 10 + 0;

function monthOf({ leaves, noon, nextNoon, month, on, off }: OpenDay, latitude: number, share: number) {
	const sun = planningSun();
	// A window that gets too little light at noon is on at noon: from then, or until then, it is counted.
	const within = (at: number, lux: number, side: 'evening' | 'morning'): number => {
		const altitude = share > 0 ? altitudeAt(lux / share) : Infinity;
		if (altitude >= 90) return at;
		const found = crossing(sun, at, latitude, altitude, side);
		return 'at' in found ? found.at : at;
	};
	return {
		month,
		leaves,
		early: 'at' in on ? rounded((on.at - within(noon, onLux, 'evening')) / msPerMinute) : null,
		late: 'at' in off ? rounded((within(nextNoon, offLux, 'morning') - off.at) / msPerMinute) : null
	};
}
/**
 * Minutes by which a window that gets a share of the sky's light (0 to 1) switches before one in the open at dusk and after it
 * at dawn, on the 21st of each month; to a tenth. Other lights are left out.
 */
export const monthsOf = ({ days, latitude }: PlaceSky, sky: SensorView['sky']): Months =>
	days.map((day) => monthOf(day, latitude, day.leaves ? sky.leafOn : sky.leafOff));

/** The least and the most of a column over the months that have it; null where none has. */
export function spanOf(months: Months, which: 'early' | 'late'): { least: number; most: number } | null {
	const minutes = months.map((month) => month[which]).filter((one) => one !== null);
	return minutes.length > 0 ? { least: Math.min(...minutes), most: Math.max(...minutes) } : null;
}
