/** What cannot be: handled, said, fast. */
import { describe, expect, it } from 'vitest';
import { makeSite } from '../site';
import { blankYard, yardSchema, type Yard, type YardTree } from '../yard';
import * as z from 'zod/mini';
import { placeFixtures } from './index';

const base: Yard = {
	...blankYard(),
	house: { sections: [{ id: 'front', width: 12, light: 'none' }], depth: 9, openings: [], porches: [] },
	lot: { street: 25, left: 20, right: 20 },
	trees: [],
	walks: [],
	drives: [],
	spots: { water: [] }
};
const tree = (more: Partial<YardTree> = {}): YardTree => ({
	id: 'oak',
	name: 'oak',
	at: { along: 4, out: 8 },
	spread: 4,
	height: 7,
	crownBase: 2,
	trunk: 0.2,
	form: 'round',
	ground: 'lawn',
	light: 'soft',
	seenFrom: 'street',
	...more
});
const plan = (yard: Yard) => {
	expect(z.safeParse(yardSchema, yard).success).toBe(true);
	const site = makeSite(yard);
	const placed = placeFixtures(site, yard);
	for (const f of placed.fixtures)
		expect([f.at.x, f.at.y, f.height, f.aim?.tilt ?? 0, f.aim?.bearing ?? 0].every(Number.isFinite)).toBe(true);
	return { ...placed, codes: [...site.findings, ...placed.findings].map((f) => f.code) };
};

describe('what cannot be', () => {
	it('a walk that crosses itself', () => {
		const line = [
			{ along: 2, out: 25 },
			{ along: 10, out: 12 },
			{ along: 2, out: 12 },
			{ along: 9, out: 24 },
			{ along: 5, out: 0 }
		];
		const { codes } = plan({ ...base, walks: [{ id: 'walk', name: 'walk', line, width: 1.2, lights: 'both' }] });
		expect(codes).toContain('site.walk-crosses-itself');
	});
	it('a drive narrower than a car, 1.8 m (from memory)', () => {
		const line = [
			{ along: 15, out: 25 },
			{ along: 15, out: 0 }
		];
		const drive = { id: 'drive', name: 'drive', line, width: 1.6, lights: 'both' as const };
		const { codes, fixtures } = plan({ ...base, drives: [drive] });
		expect(codes).toContain('site.drive-narrow');
		expect(fixtures.length).toBeGreaterThan(3);
	});
	it('a tree inside the house', () => {
		const { codes, fixtures } = plan({ ...base, trees: [tree({ at: { along: 6, out: -4 } })] });
		expect(fixtures).toEqual([]);
		expect(codes).toContain('site.tree-in-house');
		expect(codes).toContain('placement.no-room');
	});
	it('no canopy: the schema refuses 0, and the least it takes is lit', () => {
		expect(z.safeParse(yardSchema, { ...base, trees: [tree({ spread: 0 })] }).success).toBe(false);
		expect(plan({ ...base, trees: [tree({ spread: 0.3, height: 0.5, crownBase: 0 })] }).fixtures).toHaveLength(1);
	});
	it('two trees in one place share their lights', () => {
		const { codes, fixtures } = plan({ ...base, trees: [tree(), tree({ id: 'ash' })] });
		expect(fixtures.length).toBeLessThanOrEqual(3);
		expect(codes).toContain('site.trees-in-one-place');
	});
	it('a trunk thicker than its canopy is wide', () => {
		const { codes } = plan({ ...base, trees: [tree({ spread: 0.5, trunk: 3 })] });
		expect(codes).toContain('site.trunk-wider-than-canopy');
	});
});

describe('200 trees', () => {
	const trees = (apart: number) =>
		Array.from({ length: 200 }, (_, i) =>
			tree({ id: `tree-${i}`, at: { along: -18 + (i % 20) * apart, out: 3 + Math.floor(i / 20) * apart } })
		);
	it.each([2, 0.5, 0.05])('%s m apart: each is lit, shares a light, or is said; in the time of a frame', (apart) => {
		const yard = { ...base, trees: trees(apart) };
		const { fixtures, findings } = plan(yard);
		for (const { id } of yard.trees)
			expect(
				fixtures.some((f) => f.target.id === id) ||
					findings.some((f) => f.about?.id === id && f.code.startsWith('placement.'))
			).toBe(true);
		const site = makeSite(yard);
		const took = Array.from({ length: 5 }, () => {
			const from = performance.now();
			placeFixtures(site, yard);
			return performance.now() - from;
		});
		// A frame is 16 ms; ten of them, since the tests share the machine. The bench has the true figure.
		expect(Math.min(...took)).toBeLessThan(160);
	});
});
