/** The sensor's lesson, and its evenings against the Observatory's tables. */
import { describe, expect, test } from 'vitest';
import published from '../../dusk/sun.published.json';
import { onLux } from '../../dusk';
import { expectLesson } from '../lessons.testing';
import { sensorLesson } from './lesson';
import { clockText, eveningsOf, neededLux, skyAt, sunAt } from './sky';

test('sound at every place of its lever', () => expectLesson(sensorLesson));
test('the engine finds the answer', () => {
	for (const units of ['metres', 'feet'] as const) expect(sensorLesson.reveal(units).right).toBe('some');
});
test('less sky is earlier, and June earlier than December', () => {
	let last = 0;
	for (const share of [0.5, 0.25, 0.1, 0.05, 0.02]) {
		const evenings = eveningsOf(skyAt(50), share);
		expect(evenings).toHaveLength(12);
		expect(evenings[11]!.early).toBeGreaterThan(last);
		expect(evenings[5]!.early).toBeGreaterThan(evenings[11]!.early);
		last = evenings[11]!.early;
	}
});
describe('evenings against the Observatory', () => {
	const minutesOf = (clock: string): number => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3));
	// A share of 16 lx ÷ 400 lx switches on at sunset, one of 16 ÷ 3.4 with the sun 6° below (AMS): the minutes between are civil dusk's.
	for (const { place, latitude, date, sunset, civilDusk } of published.usno.rows.filter((row) => row.civilDusk))
		test(`${place} ${date}, sunset to civil dusk`, () => {
			const month = Number(date.slice(5, 7));
			const at = (lux: number) => eveningsOf(skyAt(latitude), onLux / lux).find((one) => one.month === month)!.on;
			const told = minutesOf(civilDusk!) - minutesOf(sunset);
			// Both printed to the minute, and a day and a year from ours.
			expect(Math.abs(at(3.4) - at(400) - told)).toBeLessThan(1.2);
		});
});
// AMS Glossary of Meteorology, twilight: about 400 lx at sunset, 3.4 lx with the sun 6° below the horizon.
test('the sun at the levels of the glossary', () => {
	expect(sunAt(onLux / 400)).toBeCloseTo(-0.833, 6);
	expect(sunAt(onLux / 3.4)).toBeCloseTo(-6, 6);
	expect(neededLux(0.1)).toBeCloseTo(160, 9);
});
test('clocks', () => {
	expect(clockText(522.4)).toBe('20:42');
	expect(clockText(0)).toBe('12:00');
	expect(clockText(725.2)).toBe('00:05');
});
