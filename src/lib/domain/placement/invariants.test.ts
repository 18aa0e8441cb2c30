/** What holds on any yard, checked on seeded ones with geometry of its own: 500 in `npm test`, 10,000 with LONG=1 (half of them in the mirror, a fifth in both units). */
import { describe, expect, it } from 'vitest';
import { distance } from '../shared/geometry';
import type { Finding } from '../shared/findings';
import { makeSite } from '../site';
import { blankYard, examples, yardSchema, type Yard } from '../yard';
import { awkwardYard } from './awkward.testing';
import { faults } from './faults.testing';
import { mirrored } from './mirror.testing';
import { placeFixtures, type Fixture } from './index';
import { upstairsFaults } from './upstairs.testing';

const seeds = Array.from({ length: process.env.LONG ? 10_000 : 500 }, (_, i) => i + 1);
const planned = (yard: Yard) => {
	const site = makeSite(yard);
	return { site, ...placeFixtures(site, yard) };
};

describe('on any yard', () => {
	it('nothing stands where it must not, spacing and setback are kept or said, what is asked is lit or said', () => {
		const wrong: string[] = [];
		let count = 0;
		let upstairs = [0, 0, 0];
		for (const seed of seeds) {
			const { site, fixtures, findings } = planned(awkwardYard(seed));
			count += fixtures.length;
			const up = upstairsFaults(site, fixtures, findings);
			upstairs = upstairs.map((sum, i) => sum + [up.under, up.beside, up.gable][i]!);
			wrong.push(...[...faults(site, fixtures, findings), ...up.wrong].map((text) => `yard ${seed}: ${text}`));
		}
		expect(wrong.slice(0, 20)).toEqual([]);
		expect(count).toBeGreaterThan(seeds.length * 8);
		// Lights under upper windows, beside porches and up into gables are met often enough to speak of.
		expect(Math.min(...upstairs)).toBeGreaterThan(seeds.length / 50);
	}, 600_000);

	it('the same answers give the same plan; feet and metres differ in words only', () => {
		const bare = (fixtures: readonly Fixture[]) =>
			fixtures.map((f) => ({ ...f, reasons: f.reasons.map(({ rule, value, unit }) => ({ rule, value, unit })) }));
		// As text: a deep comparison of a few hundred plans takes longer than making them.
		const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
		const differ: string[] = [];
		for (const seed of seeds.slice(0, seeds.length / 5)) {
			const yard = awkwardYard(seed);
			const inUnits = (units: 'feet' | 'metres') => planned({ ...yard, place: { ...yard.place, units } });
			const feet = inUnits('feet');
			if (!same(inUnits('feet').fixtures, feet.fixtures)) differ.push(`yard ${seed}, again`);
			const metres = inUnits('metres');
			const said = (list: readonly Finding[]) => list.map(({ code, about }) => ({ code, about }));
			if (!same(bare(metres.fixtures), bare(feet.fixtures))) differ.push(`yard ${seed}, in metres`);
			if (!same(said(metres.findings), said(feet.findings))) differ.push(`yard ${seed}, findings in metres`);
		}
		expect(differ).toEqual([]);
	}, 600_000);

	it('a yard in the mirror is lit in the mirror', () => {
		const half = seeds.slice(0, seeds.length / 2);
		const differ: number[] = [];
		for (const seed of half) {
			const yard = awkwardYard(seed);
			const width = (yard.house.sections ?? []).reduce((sum, part) => sum + part.width, 0);
			const own = planned(yard).fixtures;
			const image = planned(mirrored(yard)).fixtures.map((f) => ({ ...f, at: { x: width - f.at.x, y: f.at.y } }));
			const within = (list: readonly Fixture[], f: Fixture): boolean =>
				list.some((g) => g.technique === f.technique && distance(g.at, f.at) < 1e-6);
			if (own.length !== image.length || !own.every((f) => within(image, f))) differ.push(seed);
		}
		// What lies exactly in the middle, or between two equal choices, has no handedness to follow: one yard in a thousand.
		expect(differ.length).toBeLessThanOrEqual(half.length / 1000);
	}, 600_000);

	it('the yards made harder are yards', () => {
		for (const seed of seeds.slice(0, 200))
			expect(yardSchema.safeParse(awkwardYard(seed)).success, `yard ${seed}`).toBe(true);
	});

	it('a blank yard has no fixture and no complaint', () => {
		expect(planned(blankYard())).toMatchObject({ fixtures: [], findings: [], assumptions: [] });
	});

	it('the demo yards are lit without a fault', () => {
		for (const { id, yard } of examples) {
			expect(yardSchema.safeParse(yard).success).toBe(true);
			const { site, fixtures, findings } = planned(yard);
			expect(faults(site, fixtures, findings), id).toEqual([]);
			expect(fixtures.length).toBeGreaterThan(5);
			expect(findings.filter((f) => f.rank === 'stop')).toEqual([]);
		}
	});
});
