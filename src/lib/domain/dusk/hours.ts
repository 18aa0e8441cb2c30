import type { Hours } from '../yard/schema';
import type { Night } from './nights';
import type { ClockZone } from './zone';

const msPerHour = 3_600_000;
const msPerMinute = 60_000;

/** Lights on and off, milliseconds since 1970. */
export interface Lit {
	on: number;
	off: number;
}
/**
 * When the sky is dark enough for the sensor. A sky that stays dark from before noon counts from noon to noon; one that
 * is dark at one end of a night only (the first and last nights of a polar summer) meets the other at its middle.
 */
export function darkness(night: Night): Lit | null {
	const { dark, light, noon, nextNoon } = night;
	const middle = (noon + nextNoon) / 2;
	const start = 'at' in dark ? dark.at : dark.stays === 'below' ? noon : null;
	const finish = 'at' in light ? light.at : light.stays === 'below' ? nextNoon : null;
	if (start === null && finish === null) return null;
	const lit = { on: start ?? middle, off: finish ?? middle };
	return lit.off > lit.on ? lit : null;
}
/** The instant of a clock time on the evening of a date: times before noon belong to the next morning. */
function clockInstant(clock: string, night: Night, zone: ClockZone): number {
	const [hours = 0, minutes = 0] = clock.split(':').map(Number);
	const local = night.midnight + ((hours < 12 ? hours + 24 : hours) * 60 + minutes) * msPerMinute;
	// Twice, since the offset belongs to the instant sought; a clock time that a change of clocks skips moves by that hour.
	const guess = local - zone.offsetAt(local);
	return local - zone.offsetAt(guess);
}
/**
 * Lights on and off for a night. They come on when the sky is dark enough and never outlast it; `until` a clock time
 * that comes before dusk gives no light that night. A count of hours starts at dusk, or at noon where the sky is dark by then.
 */
export function litHours(night: Night, schedule: Hours, zone: ClockZone): Lit | null {
	const sky = darkness(night);
	if (!sky || schedule.kind === 'dusk-to-dawn') return sky;
	const wanted =
		schedule.kind === 'after-dusk' ? sky.on + schedule.hours * msPerHour : clockInstant(schedule.clock, night, zone);
	const off = Math.min(sky.off, wanted);
	return off > sky.on ? { on: sky.on, off } : null;
}
