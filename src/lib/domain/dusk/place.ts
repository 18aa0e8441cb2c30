import type { Assumption, Finding } from '../shared/findings';
import type { Yard } from '../yard/schema';
import { planningYear } from './ephemeris';
import { clockZone, zoneByLongitude, type ClockZone } from './zone';

export interface Place {
	latitude: number;
	longitude: number;
	zone: ClockZone;
	findings: Finding[];
	assumptions: Assumption[];
}
/** Taken when nobody said where: middle latitudes, on the meridian whose clocks keep the sun's own time. */
const assumed = { latitude: 40, longitude: 0, timeZone: 'UTC' } as const;
/** Clock noon further than this from the sun's noon, degrees of longitude, means that zone and place do not belong together. */
const farthestFromZone = 60;
const about = { kind: 'place', id: 'location' };

function unknownPlace(): Place {
	return {
		latitude: assumed.latitude,
		longitude: assumed.longitude,
		zone: zoneByLongitude(assumed.longitude),
		findings: [
			{
				code: 'dusk.place-unknown',
				rank: 'note',
				message:
					'Where the yard lies is not known yet, so dusk is reckoned for 40° north without summer time. Say where it lies to get your own hours.',
				about,
				rule: 'sensor.dusk'
			}
		],
		assumptions: [
			{
				path: 'place.location',
				message: 'Dusk is reckoned for latitude 40° north by the sun’s own time, without summer time.',
				about
			}
		]
	};
}
/** Where on earth, and by which clock: as answered, or what stands in for it, said. */
export function placeOf(yard: Yard): Place {
	const told = yard.place.location;
	if (!told || told === 'unsure') return unknownPlace();
	const { latitude, longitude, timeZone } = told;
	const zone = clockZone(timeZone);
	if (!zone) {
		const guess = zoneByLongitude(longitude);
		return {
			latitude,
			longitude,
			zone: guess,
			findings: [
				{
					code: 'dusk.zone-unknown',
					rank: 'look',
					message: `The time zone “${timeZone}” is not a name this device knows. Times are shown for ${guess.name} without summer time; choose a zone such as America/Chicago.`,
					about,
					rule: null
				}
			],
			assumptions: [
				{
					path: 'place.location.timeZone',
					message: `Clock times are for ${guess.name}, from the longitude, without summer time.`,
					about
				}
			]
		};
	}
	const clockLongitude = zone.offsetAt(Date.UTC(planningYear, 0, 1)) / 240_000;
	const apart = Math.abs(((clockLongitude - longitude + 540) % 360) - 180);
	const findings: Finding[] =
		apart > farthestFromZone
			? [
					{
						code: 'dusk.zone-mismatch',
						rank: 'look',
						message: `Clocks in ${timeZone} stand ${Math.round(apart / 15)} hours from the sun at longitude ${longitude}°. Check the place and the time zone: one of the two may belong somewhere else.`,
						about,
						rule: null
					}
				]
			: [];
	return { latitude, longitude, zone, findings, assumptions: [] };
}
