import type { Assumption } from '../shared/findings';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import type { Hours, Yard } from '../yard/schema';
import { costWorking, drawOf, energyWorking, hoursWorking, priceOf } from './energy';
import { planningYear } from './ephemeris';
import { lifeAssumptions, soonestLives } from './lamp-years';
import { nightFindings } from './night-findings';
import { placeOf } from './place';
import { compareSchedules } from './schedules';
import { sensorOf } from './sensor';
import type { Runs } from './sensor/lamplight';
import { offLux, onLux } from './twilight';
import type { Dusk, PowerPoint } from './types';
import { duskYear } from './year';

/** Taken when the hours are not settled: the evening, and dark for the rest of the night (rule hours.choice). */
export const assumedHours: Hours = { kind: 'after-dusk', hours: 5 };

function hoursOf(yard: Yard): { schedule: Hours; assumptions: Assumption[] } {
	const told = yard.power.hours;
	if (told && told !== 'unsure') return { schedule: told, assumptions: [] };
	const message =
		'The lights are taken to stay on for 5 hours from dusk: less is kinder to neighbours, night life and the bill.';
	return { schedule: assumedHours, assumptions: [{ path: 'power.hours', message, about: null }] };
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
	const season = yard.power.season ?? null;
	const year = duskYear(place, { schedule, season });
	const { nights, spans, days } = year;
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
		season,
		days,
		hoursPerYear: hours.value,
		schedules: compareSchedules(year, draw, price, soonestLives(fixtures, runs)),
		energy: energy.value,
		cost: cost.value,
		currency: price.currency,
		perKwh: price.perKwh,
		sensor: sensor.sensor,
		sensorSpots: sensor.spots,
		working: { hours, energy, cost },
		findings: [...place.findings, ...nightFindings(nights, spans, { schedule, season }), ...sensor.findings],
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
			...lifeAssumptions(fixtures),
			...sensor.assumptions
		]
	};
}
