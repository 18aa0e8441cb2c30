import { expect, it } from 'vitest';
import { planningYear } from './ephemeris';
import { clockZone, zoneByLongitude } from './zone';

/** Offset as Intl's own long name gives it, minutes. */
function offsetsByName(timeZone: string): (ms: number) => number {
	const format = new Intl.DateTimeFormat('en-US', { timeZone, timeZoneName: 'longOffset' });
	return (ms) => {
		const name = format.formatToParts(ms).find((part) => part.type === 'timeZoneName')!.value;
		const [, sign, hours, minutes] = /GMT(?:([+-])(\d\d):(\d\d))?/.exec(name)!;
		return sign ? (sign === '-' ? -1 : 1) * (Number(hours) * 60 + Number(minutes)) : 0;
	};
}
const zones = [
	'America/New_York',
	'Europe/Stockholm',
	'Africa/Casablanca',
	'Australia/Lord_Howe',
	'Asia/Kathmandu',
	'Pacific/Chatham',
	'Pacific/Apia',
	'America/St_Johns',
	'UTC'
];

it('knows the offset every six hours of zones with odd steps, half-hour summers and a month’s pause', () => {
	for (const name of zones) {
		const zone = clockZone(name)!;
		const byName = offsetsByName(name);
		const wrong: string[] = [];
		for (let ms = Date.UTC(planningYear, 0, 1); ms < Date.UTC(planningYear + 1, 0, 2); ms += 6 * 3_600_000) {
			if (zone.offsetAt(ms) / 60_000 !== byName(ms)) wrong.push(new Date(ms).toISOString());
		}
		expect(wrong, name).toEqual([]);
	}
});
it('puts New York’s changes of 2027 at 14 March 07:00 and 7 November 06:00 UTC', () => {
	const zone = clockZone('America/New_York')!;
	for (const [utc, before, after] of [
		['2027-03-14T07:00Z', -5, -4],
		['2027-11-07T06:00Z', -4, -5]
	] as const) {
		expect(zone.offsetAt(Date.parse(utc) - 1000)).toBe(before * 3_600_000);
		expect(zone.offsetAt(Date.parse(utc))).toBe(after * 3_600_000);
	}
});
it('says that a zone does not exist', () => {
	expect(clockZone('Atlantis/Sunken')).toBeNull();
	expect(clockZone('')).toBeNull();
});
it('guesses whole hours by longitude', () => {
	expect(zoneByLongitude(-74)).toMatchObject({ name: 'UTC−5' });
	expect(zoneByLongitude(7)).toMatchObject({ name: 'UTC' });
	expect(zoneByLongitude(174).offsetAt(0)).toBe(12 * 3_600_000);
});
