import type { Point } from '../shared/geometry';
import type { Assumption, Finding } from '../shared/findings';
import type { Working } from '../shared/working';
import type { Hours, Season } from '../yard/schema';

/** What dusk needs to know of the supply (the cable stage's `Supply` fits it). */
export interface PowerPoint {
	at: Point;
	on: 'wall' | 'post';
	mountHeight: number;
	/** Catalogue id of the transformer. */
	model: string;
	/** Volt-amperes and watts taken on the low-voltage side, cable losses included. */
	loadVoltAmps: number;
	loadWatts: number;
}
/** A stretch of a night with the lights on, minutes after local midnight of the night's date. */
export interface LitSpan {
	on: number;
	off: number;
}
export interface DuskDay {
	/** ISO date. */
	date: string;
	/** Minutes after local midnight of `date`; dawn belongs to the next morning (may exceed 1440); null: does not happen. */
	sunset: number | null;
	dusk: number | null;
	dawn: number | null;
	sunrise: number | null;
	/** Lights first on / last off, minutes after local midnight of `date`; null when they stay off. */
	on: number | null;
	off: number | null;
	/** Stretches with the lights on, in their order; two where a split night has both halves. */
	spans: LitSpan[];
	hours: number;
}
/** A way to set the hours, beside the one chosen. */
export interface ScheduleFigures {
	id: string;
	/** In a few words: `5 hours from dusk`. */
	label: string;
	schedule: Hours;
	season: Season | null;
	chosen: boolean;
	hoursPerYear: number;
	/** kWh a year at the plug. */
	energy: number;
	cost: number;
	/** Hours of a year with light between 23:00 and dawn. */
	lateHours: number;
	/** Years until the lamps have burnt the hours they are rated for, at their solved volts, by kind; the soonest lamp of each. */
	lampYears: { kind: 'led' | 'halogen'; years: number }[];
}
/** How a spot for the sensor sees the sky and the lamps. */
export interface SensorView {
	/** Which way its window looks, level: degrees clockwise from north. */
	faces: number;
	/** Of the light that an even sky throws on such a window in the open, facing the same way, the part that gets here, 0 to 1. */
	sky: { leafOn: number; leafOff: number };
	/** What takes the rest, most first, from half a per cent up; shares of the open sky's light with leaves on. The yard is flat: the ground takes none yet. */
	taken: { kind: 'house' | 'eaves' | 'porch' | 'tree' | 'wall' | 'ground'; id: string; name: string; share: number }[];
	/**
	 * For the 21st of each month: minutes before a window in the open that it switches on, and after it that it switches off
	 * (below zero: the other way round); null where no such dusk or dawn happens.
	 */
	months: { month: number; leaves: boolean; early: number | null; late: number | null }[];
	night: SensorNight;
}
/**
 * A night minute by minute: what the sensor does by the light that falls on its window. It is the longest of the twelve nights of a
 * 21st that has a dusk and a dawn; the plan's own lamps are taken to burn all the while the sensor is on, whatever the timer.
 */
export interface SensorNight {
	date: string;
	/**
	 * steady: on once, off once, about when a window in the open would. shifted: the same, but early or late by more than rule
	 * sensor.shade lets pass. held-off: other lights keep it from switching on. hunting: it takes its own lamps for day, and blinks.
	 */
	verdict: 'steady' | 'shifted' | 'held-off' | 'hunting';
	/** Lux on its window by the plan's own lamps while they burn, and by lights that are there. */
	own: number;
	others: number;
	/**
	 * Lux from which it is taken to switch off in this night: the usual level, or the nearest that the standard allows where it
	 * blinks at that only, and so may or may not.
	 */
	offAt: number;
	/** Minutes after local midnight of `date`; the first forty of one that blinks. */
	switches: { at: number; on: boolean }[];
	/** Light on its window, enough points to draw it. */
	trace: { at: number; lux: number }[];
}
/** A spot that was weighed for the sensor. */
export interface SensorSpot {
	at: Point;
	height: number;
	on: 'wall' | 'post';
	faces: number;
	/** Metres of lead to the transformer. */
	lead: number;
	sky: SensorView['sky'];
	/** Most minutes early through the year. */
	early: number | null;
	own: number;
	others: number;
	verdict: SensorNight['verdict'];
	/** What speaks for it or against it, one sentence. */
	why: string;
}
export interface Dusk {
	year: number;
	timeZone: string;
	latitude: number;
	longitude: number;
	schedule: Hours;
	/** Other hours for a part of the year; null: the same all year. */
	season: Season | null;
	days: DuskDay[];
	hoursPerYear: number;
	/** Usual ways to set the hours, the chosen one among them. */
	schedules: ScheduleFigures[];
	/** kWh a year at the plug. */
	energy: number;
	/** Cost of a year, in `currency`. */
	cost: number;
	currency: string;
	perKwh: number;
	sensor: {
		at: Point;
		height: number;
		on: 'wall' | 'post';
		suggested: boolean;
		/** Why there. */
		reasons: { rule: string; because: string; source: string }[];
		view: SensorView;
	} | null;
	/** The best spots near the transformer, best first; where the person told a spot, the plan's own is among them. */
	sensorSpots: SensorSpot[];
	working: { hours: Working; energy: Working; cost: Working };
	findings: Finding[];
	assumptions: Assumption[];
}
