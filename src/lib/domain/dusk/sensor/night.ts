/** What a sensor does through a night, minute by minute. */
import { rules } from '../../shared/rules';
import { nearestOffLux, offLux, onLux, skyLux, sunsetAltitude } from '../twilight';
import type { SensorNight } from '../types';
import { spanOf, type Months } from './months';
import type { OpenNight } from './place-sky';

/** What falls on a window: its share of the sky (0 to 1), and lux of the plan's own lamps while they burn and of lights that are there. */
export interface Falling {
	share: number;
	own: number;
	others: number;
}
export interface Course {
	/** 1 for each minute with the lights on. */
	lit: Uint8Array;
	switches: { minute: number; on: boolean }[];
}
/** Lights that are there are taken to burn from sunset to sunrise: from memory. */
const othersFrom = skyLux(sunsetAltitude);
/** Switches told of a night; one that blinks has hundreds. */
const mostSwitches = 40;
const points = 100;
/** Minutes shown before sunset and after sunrise. */
const around = 45;

const luxAt = (sky: number, { share, own, others }: Falling, lit: number): number =>
	sky * share + (sky <= othersFrom ? others : 0) + (lit ? own : 0);

/**
 * The night from noon to noon (rule sensor.level): on when the light on the window has been at or under the on level for as long
 * as the delay, off when it has been at or over `offAt` for as long. Own lamps burn all the while the sensor is on: a timer may be
 * set otherwise next year.
 */
function courseOf(sky: OpenNight, falling: Falling, offAt: number): Course {
	const { delay } = rules['sensor.level'].figures;
	const length = sky.lux.length;
	const course: Course = { lit: new Uint8Array(length), switches: [] };
	let lit = luxAt(sky.lux[0]!, falling, 0) <= onLux ? 1 : 0;
	let waited = 0;
	for (let minute = 0; minute < length; minute++) {
		const lux = luxAt(sky.lux[minute]!, falling, lit);
		waited = (lit ? lux >= offAt : lux <= onLux) ? waited + 1 : 0;
		if (waited > delay) {
			lit = 1 - lit;
			waited = 0;
			course.switches.push({ minute, on: lit === 1 });
		}
		course.lit[minute] = lit;
	}
	return course;
}
const first = ({ switches }: Course): number => switches.find(({ on }) => on)?.minute ?? 0;
const last = ({ switches, lit }: Course): number => switches.findLast(({ on }) => !on)?.minute ?? lit.length;

/** Of a night what decides: how it ends, the off level at which it is shown, and what happens at that. */
export interface Judged {
	verdict: SensorNight['verdict'];
	offAt: number;
	course: Course;
}
const openCourses = new WeakMap<OpenNight, Course>();
/** What a window in the open does, one course for all spots of a place. */
function openCourse(sky: OpenNight): Course {
	const known = openCourses.get(sky);
	if (known) return known;
	const course = courseOf(sky, { share: 1, own: 0, others: 0 }, offLux);
	openCourses.set(sky, course);
	return course;
}
function isShifted(course: Course, open: Course, months: Months): boolean {
	const letPass = rules['sensor.shade'].figures.early;
	const most = Math.max(spanOf(months, 'early')?.most ?? 0, spanOf(months, 'late')?.most ?? 0);
	const tonight = Math.max(Math.abs(first(course) - first(open)), Math.abs(last(course) - last(open)));
	return Math.max(most, tonight) > letPass;
}
/** Held off: the middle of the night finds the lights off, and would in the open find them on. Short of the on level nothing holds them. */
const isHeldOff = (sky: OpenNight, falling: Falling, offAt: number): boolean => {
	const middle = sky.lux.length >> 1;
	if (falling.others <= onLux || openCourse(sky).lit[middle] === 0) return false;
	return courseOf(sky, { ...falling, own: 0 }, offAt).lit[middle] === 0;
};
/** It switches more often with its own lamps than without. Lamps that lift it from the on level to no off level cannot do that. */
const blinks = (sky: OpenNight, falling: Falling, offAt: number): boolean =>
	falling.own > nearestOffLux - onLux &&
	courseOf(sky, falling, offAt).switches.length > courseOf(sky, { ...falling, own: 0 }, offAt).switches.length;

/** Judged at the nearest off level that the standard allows, and shown at the usual one where lamps defeat it at that too. */
export function judgeNight(sky: OpenNight, falling: Falling, months: Months): Judged {
	for (const [verdict, isSo] of [
		['held-off', isHeldOff],
		['hunting', blinks]
	] as const) {
		if (!isSo(sky, falling, nearestOffLux)) continue;
		const offAt = isSo(sky, falling, offLux) ? offLux : nearestOffLux;
		return { verdict, offAt, course: courseOf(sky, falling, offAt) };
	}
	const course = courseOf(sky, falling, offLux);
	return { verdict: isShifted(course, openCourse(sky), months) ? 'shifted' : 'steady', offAt: offLux, course };
}
/** The night as it is shown. */
export const shownNight = (sky: OpenNight, falling: Falling, { verdict, offAt, course }: Judged): SensorNight => ({
	date: sky.date,
	verdict,
	own: falling.own,
	others: falling.others,
	offAt,
	switches: course.switches.slice(0, mostSwitches).map(({ minute, on }) => ({ at: Math.round(sky.clock(minute)), on })),
	trace: traceOf(sky, falling, course)
});
/** From before sunset to after sunrise at equal steps, and either side of each switch that is told. */
function traceOf(sky: OpenNight, falling: Falling, { lit, switches }: Course): SensorNight['trace'] {
	const dark = (lux: number): boolean => lux <= othersFrom;
	const end = sky.lux.length - 1;
	const from = Math.max(0, sky.lux.findIndex(dark) - around);
	const to = Math.min(end, sky.lux.findLastIndex(dark) + around);
	const step = Math.max(1, Math.ceil((to - from) / points));
	const minutes = new Set<number>([to]);
	for (let minute = from; minute < to; minute += step) minutes.add(minute);
	for (const { minute } of switches.slice(0, mostSwitches)) minutes.add(Math.max(0, minute - 1)).add(minute);
	return [...minutes]
		.filter((minute) => minute >= 0)
		.sort((a, b) => a - b)
		.map((minute) => ({
			at: Math.round(sky.clock(minute)),
			lux: Number(luxAt(sky.lux[minute]!, falling, lit[minute]!).toPrecision(4))
		}));
}
