/** From the hours of a year to those of a night: the year is the engine's, at a latitude. */
import { duskYear, placeOf } from '../../dusk';
import { hoursInWords } from '../../shared/day-words';
import { fixed } from '../../shared/show-working';
import { blankYard, type Hours } from '../../yard';
import type { ProblemKind } from '../types';
import { given, problemFrom, step } from './reckoned';

export interface HoursDrawn {
	/** Degrees north. */
	latitude: number;
	schedule: Hours;
}
const usual: readonly Hours[] = [
	...[3, 4, 5, 6].map((hours): Hours => ({ kind: 'after-dusk', hours })),
	...['22:00', '22:30', '23:00', '23:30'].map((clock): Hours => ({ kind: 'until', clock }))
];
const nightsIn = 365;
const sums = new Map<string, number>();
/** Hours of light in the planning year, by the sun's own time; kept, since a sheet asks often. */
function yearly(latitude: number, schedule: Hours): number {
	const key = `${latitude} ${hoursInWords(schedule)}`;
	const known = sums.get(key);
	if (known !== undefined) return known;
	const yard = blankYard();
	const place = placeOf({ ...yard, place: { location: { latitude, longitude: 0, timeZone: 'UTC' } } });
	const sum = duskYear(place, { schedule, season: null }).days.reduce((total, day) => total + day.hours, 0);
	sums.set(key, sum);
	return sum;
}
export const hoursKind: ProblemKind<HoursDrawn> = {
	id: 'energy.hours',
	lesson: 'energy',
	title: 'Hours saved on an average night',
	levels: ['solved', 'one', 'all'],
	draw: (random) => ({ latitude: random.whole(25, 55), schedule: random.one(usual) }),
	pose: ({ latitude, schedule }) => {
		const night = yearly(latitude, { kind: 'dusk-to-dawn' });
		const set = yearly(latitude, schedule);
		return problemFrom({
			kind: 'energy.hours',
			story: `At ${latitude}° north, lights that burn from dusk to dawn are on for ${fixed(night, 0)} hours in a year of ${nightsIn} nights. Set to be on ${schedule.kind === 'until' ? '' : 'for '}${hoursInWords(schedule)}, they are on for ${fixed(set, 0)} hours.`,
			ask: 'How many hours of light does that save on an average night? Give it to one decimal.',
			because: 'Nights are long in winter and short in summer: the average over the year is the total over the nights.',
			givens: [
				given('A', 'hours of a year, dusk to dawn', fixed(night, 0), 'h'),
				given('B', 'hours of a year as set', fixed(set, 0), 'h'),
				given('N', 'nights in a year', String(nightsIn), '')
			],
			rules: [
				step('D', 'hours saved in a year', 'A − B', 'h', 0, 'All hours less those that are left.'),
				step('a', 'hours saved on an average night', 'D ÷ N', 'h', 1, 'The total over the number of nights.')
			],
			engine: (night - set) / nightsIn
		});
	}
};
