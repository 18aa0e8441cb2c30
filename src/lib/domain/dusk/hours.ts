import type { Hours } from '../yard/schema';
import { msPerDay } from './ephemeris';
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
/** Minutes from the midnight before a night's evening to a clock time in that night: times before noon belong to the next morning. */
export function nightMinutes(clock: string): number {
	const minutes = Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3, 5));
	return minutes < 720 ? minutes + 1440 : minutes;
}
/**
 * The instant of a clock time in the night of a date, which runs from noon to noon. A time that a change of clocks leaves out
 * is told by the clock as it was before; of one that comes twice the first is meant.
 */
export function clockInstant(clock: string, night: Night, zone: ClockZone): number {
	const local = night.midnight + nightMinutes(clock) * msPerMinute;
	const before = zone.offsetAt(local - msPerDay);
	const after = zone.offsetAt(local + msPerDay);
	if (before === after || zone.offsetAt(local - before) === before) return local - before;
	return zone.offsetAt(local - after) === after ? local - after : local - before;
}
const kept = (on: number, off: number): Lit[] => (off > on ? [{ on, off }] : []);

/**
 * The stretches of a night with the lights on, in their order. They come on when the sky is dark enough and never outlast
 * it. `until` a clock time that comes before dusk gives none; of a split night a half that would end before it begins is
 * left out, and halves that meet are one. A count of hours starts at dusk, or at noon where the sky is dark by then.
 */
export function litSpans(night: Night, hours: Hours, zone: ClockZone): Lit[] {
	const sky = darkness(night);
	return sky ? litWithin(sky, hours, night, zone) : [];
}
/** The same where it is known when the sky is dark. */
export function litWithin(sky: Lit, hours: Hours, night: Night, zone: ClockZone): Lit[] {
	switch (hours.kind) {
		case 'dusk-to-dawn':
			return [sky];
		case 'after-dusk':
			return kept(sky.on, Math.min(sky.off, sky.on + hours.hours * msPerHour));
		case 'until':
			return kept(sky.on, Math.min(sky.off, clockInstant(hours.clock, night, zone)));
		case 'split': {
			const evening = Math.min(sky.off, clockInstant(hours.evening, night, zone));
			const morning = Math.max(sky.on, clockInstant(hours.morning, night, zone));
			if (morning <= evening) return [sky];
			return [...kept(sky.on, evening), ...kept(morning, sky.off)];
		}
	}
}
/** Hours of light in stretches: elapsed, not read off the clock, so that a change of clocks in the night is told right. */
export const litHours = (spans: readonly Lit[]): number =>
	spans.reduce((sum, { on, off }) => sum + (off - on), 0) / msPerHour;
