/** Problems of the sensor: sound whatever is drawn, and what is known from outside. */
import { Body, Observer, SearchAltitude } from 'astronomy-engine';
import { describe, expect, test } from 'vitest';
import published from '../../dusk/sun.published.json';
import { expectSound, problemOf } from '../kinds.testing';
import { earlyKind } from './early';
import { hoursKind } from './hours';
import { sensorKinds } from './kinds';
import { eveningOf, skyAt, sunAt } from './sky';
import { spotKind } from './spot';

describe('sound', () => {
	for (const kind of sensorKinds) test(kind.id, () => expectSound(kind));
});
const answerOf = (problem: ReturnType<typeof hoursKind.pose>) =>
	problem?.answer.type === 'number' ? problem.answer.text : null;
describe('hours of a night', () => {
	// The Observatory's civil dusk of 2026-03-20 at Istanbul is 16:44 UTC; to midnight 7 h 16 min, by hand 7.27 h.
	test('from the Observatory’s dusk to midnight', () => {
		const { civilDusk } = published.usno.rows.find(({ place }) => place === 'Istanbul')!;
		expect(answerOf(hoursKind.pose({ on: civilDusk!, off: '00:00' }, 'metres'))).toBe('7.27');
	});
	test('within an evening, and past midnight', () => {
		expect(answerOf(hoursKind.pose({ on: '17:30', off: '23:00' }, 'feet'))).toBe('5.50');
		expect(answerOf(hoursKind.pose({ on: '17:20', off: '06:50' }, 'feet'))).toBe('13.50');
	});
	test('what is no night', () => {
		expect(hoursKind.pose({ on: '22:00', off: '21:00' }, 'metres')).toBe(null);
		expect(hoursKind.pose({ on: '25:00', off: '26:00' }, 'metres')).toBe(null);
	});
});
describe('minutes early, by another ephemeris', () => {
	// astronomy-engine (VSOP87) finds by itself when the sun's centre passes an altitude.
	const sunAtLatitude = (latitude: number, month: number) => (altitude: number) => {
		const noon = new Date(Date.UTC(2027, month - 1, 21, 12));
		return SearchAltitude(Body.Sun, new Observer(latitude, 0, 0), -1, noon, 1, altitude)!.date.getTime() / 60_000;
	};
	for (const [latitude, month, share] of [
		[50, 6, 0.1],
		[50, 12, 0.1],
		[40, 3, 0.2],
		[0, 9, 0.25]
	] as const)
		test(`${latitude}°, month ${month}, ${share} of the sky`, () => {
			const at = sunAtLatitude(latitude, month);
			const { early } = eveningOf(skyAt(latitude), share, month)!;
			expect(Math.abs(at(sunAt(1)) - at(sunAt(share)) - early)).toBeLessThan(0.2);
		});
	test('and the minutes of the table, from sunset with the sun at −50′', () => {
		const at = sunAtLatitude(50, 6);
		const problem = earlyKind.pose({ latitude: 50, month: 6, share: 0.1 }, 'metres')!;
		const after = (altitude: number): string => (at(altitude) - at(-50 / 60)).toFixed(0);
		const [, , open, shade] = problem.givens;
		expect([open!.text, shade!.text]).toEqual([after(sunAt(1)), after(sunAt(0.1))]);
		expect(problem.steps[0]!.line).toBe('16 ÷ 0.1');
	});
});
test('each letter is right at times', () => {
	const seen = new Set(
		Array.from({ length: 60 }, (_, n) => problemOf(spotKind, `spots ${n}`, 'metres').answer).map((answer) =>
			answer.type === 'choice' ? answer.right : -1
		)
	);
	expect([...seen].toSorted()).toEqual([0, 1, 2, 3]);
});
