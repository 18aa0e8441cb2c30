import { describe, expect, it } from 'vitest';
import { hourOf, results } from './ways';

describe('hourOf', () => {
	it('goes from early afternoon to deep night and never back', () => {
		const asked = ['place', 'house', 'trees', 'walks', 'drive', 'spots', 'power'].map((chapter) =>
			hourOf('/ask/[chapter]/[question]', chapter)
		);
		const answered = results.map(({ id }) => hourOf(`/${id}`, undefined));
		const hours = [...asked, ...answered];
		expect(hours[0]).toBe(0);
		expect(hours.at(-1)).toBe(1);
		expect(hours.toSorted((a, b) => a - b)).toEqual(hours);
	});
	it('is afternoon on pages outside the way', () => {
		expect(hourOf('/', undefined)).toBe(0);
		expect(hourOf('/help', undefined)).toBe(0);
		expect(hourOf(null, undefined)).toBe(0);
	});
});
