import type { Assumption } from '../shared/findings';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import type { Hours, Yard } from '../yard/schema';
import { instantOf } from './crossing';
import { costWorking, drawOf, energyWorking, hoursWorking, priceOf, rounded } from './energy';
import { planningSun, planningYear } from './ephemeris';
import { litHours, type Lit } from './hours';
import { nightFindings } from './night-findings';
import { nightsOf, type Night } from './nights';
import { placeOf, type Place } from './place';
import { sensorOf } from './sensor';
import type { Runs } from './sensor/lamplight';
import { offLux, onLux } from './twilight';
import type { Dusk, DuskDay, PowerPoint } from './types';
import type { ClockZone } from './zone';

/** Taken when the hours are not settled: the evening, and dark for the rest of the night (rule hours.choice). */
export const assumedHours: Hours = { kind: 'after-dusk', hours: 5 };

function hoursOf(yard: Yard): { schedule: Hours; assumptions: Assumption[] } {
	const told = yard.power.hours;
	if (told && told !== 'unsure') return { schedule: told, assumptions: [] };
	const message =
		'The lights are taken to stay on for 5 hours from dusk: less is kinder to neighbours, night life and the bill.';
	return { schedule: assumedHours, assumptions: [{ path: 'power.hours', message, about: null }] };
}
/** Minutes of the local clock since midnight of the night's date, to a hundredth. */
const clockMinutes = (ms: number | null, night: Night, zone: ClockZone): number | null =>
	ms === null ? null : rounded((ms + zone.offsetAt(ms) - night.midnight) / 60_000, 2);

function dayOf(night: Night, lit: Lit | null, zone: ClockZone): DuskDay {
	const clock = (ms: number | null): number | null => clockMinutes(ms, night, zone);
	return {
		date: night.date,
		sunset: clock(instantOf(night.sunset)),
		dusk: clock(instantOf(night.civilDusk)),
		dawn: clock(instantOf(night.civilDawn)),
		sunrise: clock(instantOf(night.sunrise)),
		on: clock(lit?.on ?? null),
		off: clock(lit?.off ?? null),
		// Elapsed, not read off the clock: on the night clocks change the two differ by that hour.
		hours: lit ? rounded((lit.off - lit.on) / 3_600_000, 4) : 0
	};
}
/** A year of nights at a place, and when the lights are on by a schedule. */
interface Calendar {
	place: Place;
	nights: Night[];
	schedule: Hours;
	lit: (Lit | null)[];
	days: DuskDay[];
}
const isSamePlace = (a: Place, b: Place): boolean =>
	a.latitude === b.latitude && a.longitude === b.longitude && a.zone === b.zone;
const isSameSchedule = (a: Hours, b: Hours): boolean =>
	a.kind === b.kind &&
	(a.kind !== 'after-dusk' || a.hours === (b as typeof a).hours) &&
	(a.kind !== 'until' || a.clock === (b as typeof a).clock);

/** The last one asked for: nearly every change to a yard leaves place and hours as they are. */
let last: Calendar | null = null;
function calendarOf(place: Place, schedule: Hours): Calendar {
	const known = last && isSamePlace(last.place, place) ? last : null;
	if (known && isSameSchedule(known.schedule, schedule)) return known;
	const { latitude, longitude, zone } = place;
	const nights = known?.nights ?? nightsOf(planningSun(), latitude, longitude, zone);
	const lit = nights.map((night) => litHours(night, schedule, zone));
	const days = nights.map((night, i) => dayOf(night, lit[i] ?? null, zone));
	return (last = { place, nights, schedule, lit, days });
}
/**
 * Sun, hours, energy and the place of the sensor. Times are minutes of the local clock; energy is kWh at the plug.
 * `runs`: what the circuit gives each lamp, for the light on the sensor; lamps of no run are taken at their rated volts.
 * Total: an absent answer is assumed and said, a place without dusk has nights without light and a finding.
 */
export function planDusk(
	site: Site,
	fixtures: readonly Fixture[],
	supply: PowerPoint | null,
	yard: Yard,
	runs: Runs = []
): Dusk {
	const place = placeOf(yard);
	const { schedule, assumptions } = hoursOf(yard);
	const { nights, lit, days } = calendarOf(place, schedule);
	const draw = drawOf(fixtures, supply);
	const price = priceOf(yard);
	const hours = hoursWorking(days);
	const energy = energyWorking(hours, draw);
	const cost = costWorking(energy, price);
	const sensor = sensorOf(site, fixtures, supply, yard, runs);
	return {
		year: planningYear,
		timeZone: place.zone.name,
		latitude: place.latitude,
		longitude: place.longitude,
		schedule,
		days,
		hoursPerYear: hours.value,
		energy: energy.value,
		cost: cost.value,
		currency: price.currency,
		perKwh: price.perKwh,
		sensor: sensor.sensor,
		working: { hours, energy, cost },
		findings: [...place.findings, ...nightFindings(nights, lit, schedule), ...sensor.findings],
		assumptions: [
			...place.assumptions,
			...assumptions,
			{
				path: 'power.sensor',
				message: `The sensor is taken to switch on at ${onLux} lx and off at ${offLux} lx under a clear sky; clouds bring dusk forward.`,
				about: null
			},
			...draw.assumptions,
			...price.assumptions,
			...sensor.assumptions
		]
	};
}
