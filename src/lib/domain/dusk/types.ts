import type { Point } from '../shared/geometry';
import type { Assumption, Finding } from '../shared/findings';
import type { Working } from '../shared/working';
import type { Hours } from '../yard/schema';

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
export interface DuskDay {
	/** ISO date. */
	date: string;
	/** Minutes after local midnight of `date`; dawn belongs to the next morning (may exceed 1440); null: does not happen. */
	sunset: number | null;
	dusk: number | null;
	dawn: number | null;
	sunrise: number | null;
	/** Lights on / off, minutes after local midnight of `date`; null when they stay off. */
	on: number | null;
	off: number | null;
	hours: number;
}
export interface Dusk {
	year: number;
	timeZone: string;
	latitude: number;
	longitude: number;
	schedule: Hours;
	days: DuskDay[];
	hoursPerYear: number;
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
	} | null;
	working: { hours: Working; energy: Working; cost: Working };
	findings: Finding[];
	assumptions: Assumption[];
}
