import { describe, expect, test } from 'vitest';
import { expectLesson } from '../lessons.testing';
import { energyLesson } from './lesson';
import { litBy, yearOf } from './yard';

describe('the lesson of energy', () => {
	test('is sound at every place of its lever', () => expectLesson(energyLesson));
	test('both plans light the same things', () => {
		expect(litBy('led').lights).toBe(litBy('halogen').lights);
		expect(litBy('led').lights).toBeGreaterThan(4);
	});
	// Energy is power times time: E = P × t, and the idle watts of a common year's 8760 hours.
	test('a year is watts times hours over the efficiency, and the idle hours', () => {
		for (const lamp of ['led', 'halogen'] as const) {
			const { watts, efficiency, idleWatts } = litBy(lamp).draw;
			const { hours, energy, cost } = yearOf(lamp, { kind: 'after-dusk', hours: 5 });
			// Five hours from dusk fit into every night at 41 degrees north.
			expect(hours.value).toBeCloseTo(5 * 365, 0);
			expect(energy.value).toBeCloseTo((5 * 365 * watts) / efficiency / 1000 + 8.76 * idleWatts, 0);
			expect(cost.value).toBeCloseTo(0.2 * energy.value, 2);
		}
	});
	test('what is right is what saves more', () => {
		const { right, workings } = energyLesson.reveal('metres');
		const [byLamp, byHours] = workings.map(({ value }) => value) as [number, number];
		expect(right).toBe(byLamp > byHours ? 'led' : 'eleven');
		const rest = (id: string) => (id === 'led' ? byLamp : byHours);
		expect(rest(right)).toBeGreaterThan(1.05 * rest(right === 'led' ? 'eleven' : 'led'));
	});
});
