import { describe, expect, test } from 'vitest';
import { fixtureModels } from '../shared/catalogue';
import { lampForWall, wallAim, wallBand } from './wall-level';

describe('wall.level', () => {
	// Municipal tables using IES-type figures, seen second-hand: dark surroundings 5 to 20 lx on a light finish, 5 to 30 on a
	// medium one; bright 10 to 50 and 10 to 60 (0.5 to 2 fc and so on).
	test.each([
		['rural', 'light', 5, 20],
		['suburb', 'medium', 5, 30],
		['town', 'light', 10, 50],
		['town', 'medium', 10, 60],
		['town', 'dark', 10, 60]
	] as const)('%s, %s finish', (surroundings, finish, low, high) => {
		expect(wallBand(surroundings, finish)).toEqual({ low, high });
	});
	test('a soft light is aimed lower than a bright one, both inside the band', () => {
		const band = wallBand('suburb', 'light');
		// Worked by hand: 5 × 4^(1/3) and 5 × 4^(2/3).
		expect(wallAim(band, 'soft')).toBeCloseTo(7.937, 3);
		expect(wallAim(band, 'bright')).toBeCloseTo(12.599, 3);
	});
	test('the lamp nearest to the aim by ratio is taken', () => {
		const washes = fixtureModels.filter(
			({ body, lamp }) => body === 'wash' && lamp.kind === 'led' && lamp.colourTemperature === 2700
		);
		expect(washes.map(({ lamp }) => lamp.lumens)).toEqual([70, 130, 220, 400, 760, 1050]);
		// 0.05 lx for each lumen: 3.5, 6.5, 11, 20, 38 and 53 lx.
		expect(lampForWall(washes, 0.05, 8).lamp.lumens).toBe(130);
		expect(lampForWall(washes, 0.05, 13).lamp.lumens).toBe(220);
		expect(lampForWall(washes, 0.05, 100).lamp.lumens).toBe(1050);
	});
});
