/** The lesson of the row, and its light against the light stage and by hand. */
import { describe, expect, test } from 'vitest';
import { lightField } from '../../light';
import { fixtureOf, siteWith } from '../../light/small.testing';
import { expectLesson } from '../lessons.testing';
import { spacingLesson } from './lesson';
import { head, rowOf, stationsOf } from './row';

test('sound at every place of its lever', () => expectLesson(spacingLesson));
test('the engine finds the answer', () => {
	for (const units of ['metres', 'feet'] as const) expect(spacingLesson.reveal(units).right).toBe('quarter');
});
test('wider is darker midway, and less even', () => {
	const rows = [1.5, 1.8, 2.25, 3, 4.5].map((spacing) => rowOf(9, 1.2, spacing));
	for (const [i, row] of rows.slice(1).entries()) {
		expect(row.least.lux).toBeLessThan(rows[i]!.least.lux);
		expect(row.average).toBeLessThan(rows[i]!.average);
		expect(row.evenness!).toBeGreaterThan(rows[i]!.evenness!);
	}
});
describe('the light of the row', () => {
	// Analytic: a head of 220 lm, cos γ about straight down (120° beam, n = 1) cut off 80° from it, has I0 = Φ(n + 1) ÷ 2π(1 − cos²80°).
	// On the ground at distance d of a lamp h high: I0·(h/d)·(h/d)/d², times 0.9 · 0.9 maintained.
	test('midway between two lamps, by hand', () => {
		const { least } = rowOf(9, 1.2, 4.5);
		const centre = (220 * 2) / (2 * Math.PI * (1 - Math.cos((80 * Math.PI) / 180) ** 2));
		const square = 2.25 ** 2 + 0.85 ** 2 + 0.5 ** 2;
		expect(least.lux).toBeCloseTo(2 * 0.81 * centre * (0.5 ** 2 / square ** 2), 9);
		expect(head.lamp.lumens).toBe(220);
	});
	test('is the light stage’s own', () => {
		const row = rowOf(9, 1.2, 3);
		const lamps = row.lamps.map(({ x, y }) =>
			// Away from what a site has at its corner.
			fixtureOf({ body: 'path', at: { x: 500 + x, y: 500 + y }, height: head.lampHeight, lumens: head.lamp.lumens })
		);
		const field = lightField(siteWith({}), lamps, []);
		for (const { x, lux } of row.lux)
			expect(field.lux({ x: 500 + x, y: 500, z: 0 }, { x: 0, y: 0, z: 1 })).toBeCloseTo(lux, 2);
	});
});
// The classic fence: 100 ft with a post every 10 ft takes 11 posts.
test('a hundred feet by ten', () => expect(stationsOf(100, 10)).toHaveLength(11));
