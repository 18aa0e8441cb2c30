/** Numbers of the place, the hours and the price. */
import type { Plan } from '../../plan';
import { hoursSchema, placeSchema, powerSchema, type Hours, type Yard } from '../../yard';
import { listInput, numberInput, type Spot } from './input';
import { rangeOf } from './schema-range';
import type { YardInput } from './types';

/** Beyond the polar circles the sun does not set or rise every day: a slider stops short of them, a typed value need not. */
const tame = 65;
/** Degrees of longitude that a time zone spans, about. */
const zone = 15;

export function placeInputs(yard: Yard, { site, dusk }: Plan): YardInput[] {
	const spot: Spot = { yard, units: site.units, of: 'the place', about: 'place' };
	const { location, faces } = placeSchema.shape;
	const told = yard.place.location;
	const at = location.def.innerType.def.options[0].shape;
	const bearing = numberInput(
		{ ...spot, of: 'the house' },
		['place', 'faces'],
		'Which way its front faces, from north',
		{
			range: rangeOf(faces),
			unit: '°',
			taken: site.faces
		}
	);
	if (!told || told === 'unsure') return [bearing];
	const { latitude, longitude } = dusk;
	return [
		numberInput(spot, ['place', 'location', 'latitude'], 'Latitude, north of the equator', {
			range: rangeOf(at.latitude),
			unit: '°',
			taken: latitude,
			window: { least: -tame, most: tame }
		}),
		numberInput(spot, ['place', 'location', 'longitude'], 'Longitude, east of Greenwich', {
			range: rangeOf(at.longitude),
			unit: '°',
			taken: longitude,
			window: { least: Math.max(-180, longitude - zone), most: Math.min(180, longitude + zone) }
		}),
		bearing
	];
}

const day = 24 * 60;
const noon = 12 * 60;
/** Minutes since noon, so that a night runs upwards; a clock says `HH:MM`. */
export const sinceNoon = (clock: string): number => {
	const [hours = 0, minutes = 0] = clock.split(':').map(Number);
	return (hours * 60 + minutes - noon + day) % day;
};
export const clockAt = (minutes: number): string => {
	const all = (Math.round(minutes) + noon) % day;
	return `${String(Math.floor(all / 60)).padStart(2, '0')}:${String(all % 60).padStart(2, '0')}`;
};
/** Every quarter of an hour between two clock times. */
const quarters = (from: string, to: string): number[] => {
	const [first, last] = [sinceNoon(from), sinceNoon(to)];
	return Array.from({ length: (last - first) / 15 + 1 }, (_, k) => first + 15 * k);
};
const evenings = quarters('18:00', '03:00');
const mornings = quarters('03:00', '08:00');

const clockInput = (spot: Spot, key: string, label: string, clocks: readonly number[], clock: string): YardInput[] => {
	const path = ['power', 'hours', key];
	return listInput(spot, path, path.join('.'), label, clocks, sinceNoon(clock), clockAt, clockAt);
};
function scheduleInputs(spot: Spot, schedule: Hours): YardInput[] {
	switch (schedule.kind) {
		case 'after-dusk': {
			const [, after] = hoursSchema.def.options;
			const range = rangeOf(after.shape.hours);
			return [
				numberInput(spot, ['power', 'hours', 'hours'], 'Hours from dusk', { range, unit: 'h', taken: schedule.hours })
			];
		}
		case 'until':
			return clockInput(spot, 'clock', 'On until', evenings, schedule.clock);
		case 'split':
			return [
				...clockInput(spot, 'evening', 'On in the evening until', evenings, schedule.evening),
				...clockInput(spot, 'morning', 'On again in the morning from', mornings, schedule.morning)
			];
		case 'dusk-to-dawn':
			return [];
	}
}
/** How long the lights are on, and what a kilowatt-hour costs; only what was told. */
export function yearInputs(yard: Yard, { site }: Plan): YardInput[] {
	const { hours, price } = yard.power;
	const spot: Spot = { yard, units: site.units, of: 'the hours', about: 'year' };
	const schedule = hours && hours !== 'unsure' ? scheduleInputs(spot, hours) : [];
	if (!price || price === 'unsure') return schedule;
	const range = rangeOf(powerSchema.shape.price.def.innerType.def.options[0].shape.perKwh);
	return [
		...schedule,
		numberInput({ ...spot, of: 'power' }, ['power', 'price', 'perKwh'], 'Price of a kilowatt-hour', {
			range,
			unit: price.currency,
			taken: price.perKwh,
			window: { least: range.least, most: Math.min(range.most, Math.max(0.6, 2 * price.perKwh)) }
		})
	];
}
