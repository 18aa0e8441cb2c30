import { describe, expect, test } from 'vitest';
import { makePlan } from '../../domain/plan';
import { examples } from '../../domain/yard';
import { footcandleWords, lightWords, luxPerFootcandle, luxWords } from './bands';
import { placeWords, surfaceWords } from './place';

describe('light in words', () => {
	// 1 fc = 10.763 91 lx: IES, The Lighting Handbook, conversion factors; the foot is 0.3048 m exactly.
	test('a footcandle', () => expect(luxPerFootcandle).toBeCloseTo(10.76391, 5));
	test.each([
		[3.2, '3.2 lx', '0.30 fc'],
		[10.76391, '11 lx', '1.0 fc'],
		[107.6391, '108 lx', '10 fc'],
		[0.1, '0.10 lx', '0.009 fc'],
		[0.04, '0.04 lx', '0.004 fc'],
		[9.97, '10 lx', '0.93 fc'],
		[0.001, 'under 0.01 lx', 'under 0.001 fc'],
		[0, 'under 0.01 lx', 'under 0.001 fc'],
		[NaN, 'not known', 'not known']
	])('%f', (lux, inLux, inFootcandles) => {
		expect(luxWords(lux)).toBe(inLux);
		expect(footcandleWords(lux)).toBe(inFootcandles);
	});
	test('together', () => {
		expect(lightWords(3.2)).toBe('3.2 lx (0.30 fc)');
		expect(lightWords(0)).toBe('no light to speak of');
	});
});

describe.each(examples.map(({ id, yard }) => [id, makePlan(yard)] as const))('places of %s', (_, plan) => {
	const { site } = plan;
	test('the middle of each walk and drive is on something', () => {
		for (const { centre } of site.strips)
			expect(surfaceWords(plan, centre[Math.floor(centre.length / 2)]!)).toMatch(/^(on|in) the /);
	});
	test('beyond the lot and under the roof', () => {
		expect(surfaceWords(plan, { x: site.house[0]!.x + 2, y: site.street + 1 })).toBe('in the street');
		expect(surfaceWords(plan, { x: 2, y: -2 })).toBe('in the house');
	});
	test('how far from the nearest light', () => {
		const { at, label } = plan.fixtures[0]!;
		expect(placeWords(plan, at, 'metres')).toContain(`at ${label}`);
		const away = placeWords({ ...plan, fixtures: [plan.fixtures[0]!] }, { x: at.x, y: at.y + 1.2 }, 'metres');
		expect(away).toMatch(new RegExp(`, 1\\.20 m from ${label}$`));
	});
});
