import { describe, expect, test } from 'vitest';
import type { ScheduleFigures, SensorSpot } from '$lib/domain/dusk';
import { makePlan } from '$lib/domain/plan';
import { examples, yardSchema } from '$lib/domain/yard';
import { writeAnswer } from '$lib/flow';
import { differenceWords, hoursTaken, isHungAt, lampWords, sensorHung } from './words';

const yard = examples[0]!.yard;
const chosen = { cost: 24.5, lateHours: 900 };
describe('differences', () => {
	test.each([
		[15.3, 290, 'Saves $9.20 a year, 610 hours less light after 23:00.'],
		[26, 901, 'Costs $1.50 more a year, 1 hour more light after 23:00.'],
		[24.5, 900, 'Costs the same, as much light after 23:00.'],
		[24.504, 2400, 'Costs the same, 1,500 hours more light after 23:00.']
	])('%f and %f', (cost, lateHours, words) => expect(differenceWords({ cost, lateHours }, chosen, 'USD')).toBe(words));
	test('lamps', () => {
		expect(
			lampWords([
				{ kind: 'led', years: 13.7 },
				{ kind: 'halogen', years: 1.24 }
			])
		).toBe('LED 14 years, halogen 1.2 years');
		expect(lampWords([{ kind: 'led', years: 1 }])).toBe('LED 1.0 year');
		expect(lampWords([])).toBe('');
	});
});
const written = (changes: { path: string; value: unknown }[]) =>
	changes.reduce((made, { path, value }) => writeAnswer(made, path, null, undefined, value ?? undefined), yard);

describe('hours taken', () => {
	const { schedules } = makePlan(yard).dusk;
	test.each(schedules.map((one) => [one.id, one] as const))('%s gives the figures it promised', (_, one) => {
		const next = written(hoursTaken(one).changes);
		expect(yardSchema.safeParse(next).success).toBe(true);
		const { dusk } = makePlan(next);
		const now = dusk.schedules.find((other) => other.chosen)!;
		const figures = ({ hoursPerYear, energy, cost, lateHours }: ScheduleFigures) => [
			hoursPerYear,
			energy,
			cost,
			lateHours
		];
		expect(figures(now)).toEqual(figures(one));
		expect(dusk.hoursPerYear).toBe(one.hoursPerYear);
	});
});
describe('the sensor hung', () => {
	const { sensor, sensorSpots } = makePlan(yard).dusk;
	test('at a spot, the plan has it there, facing so, and says the same of it', () => {
		expect(sensorSpots.length).toBeGreaterThan(1);
		sensorSpots.forEach((spot, index) => {
			const next = written(sensorHung(spot, index + 1).changes);
			expect(yardSchema.safeParse(next).success).toBe(true);
			const { dusk } = makePlan(next);
			expect(dusk.sensor!.suggested).toBe(false);
			expect(isHungAt(spot, dusk.sensor)).toBe(true);
			expect(dusk.sensor!.view.night.verdict).toBe(spot.verdict);
			expect(dusk.sensor!.view.sky.leafOn).toBeCloseTo(spot.sky.leafOn, 2);
		});
	});
	test('the one it hangs at is known among the spots', () =>
		expect(sensorSpots.filter((spot) => isHungAt(spot, sensor))).toHaveLength(1));
	test('a bearing over 360 or below zero is written as the answer takes it', () => {
		const spot = { ...(sensorSpots[0] as SensorSpot), faces: -15 };
		expect(sensorHung(spot, 1).changes[0]!.value).toMatchObject({ faces: 345 });
	});
});
