/** What holds on any yard: seeded ones, 120 in `npm test`, 2,000 with LONG=1. The lamps are taken at their rated volts. */
import { describe, expect, it } from 'vitest';
import { rules } from '../shared/rules';
import { placeFixtures } from '../placement';
import { wallBand } from '../placement/wall-level';
import { makePlan } from '../plan';
import { makeSite } from '../site';
import { blankYard, examples, type Yard } from '../yard';
import { mirrored } from '../yard/mirror.testing';
import { randomYard } from '../yard/random.testing';
import { spillAim, wallAim } from './aims';
import { lightField } from './field';
import { LightGrid } from './light-grid';
import { planLight } from './plan-light';
import { sourceOf } from './sources';
import type { Receiver } from './types';

const seeds = Array.from({ length: process.env.LONG ? 2000 : 120 }, (_, i) => i + 1);
const lit = (yard: Yard) => {
	const site = makeSite(yard);
	const { fixtures } = placeFixtures(site, yard);
	return { site, fixtures, light: planLight(site, fixtures, { runs: [] }) };
};
function* numbersIn(value: unknown, path = ''): Generator<[string, number]> {
	if (typeof value === 'number') yield [path, value];
	else if (value && typeof value === 'object')
		for (const [key, item] of Object.entries(value)) yield* numbersIn(item, `${path}.${key}`);
}

describe('on any yard', () => {
	it('every level is a number from zero up, least ≤ average ≤ most, the plan’s share no more than the whole', () => {
		const wrong: string[] = [];
		let count = 0;
		for (const seed of seeds) {
			const { light, fixtures } = lit(randomYard(seed));
			for (const [path, value] of numbersIn(light)) if (!Number.isFinite(value)) wrong.push(`${seed}${path}: ${value}`);
			for (const { id, least, average, most, fromPlan, points } of light.receivers) {
				count++;
				const slack = 1e-9 * most;
				const inOrder = least >= 0 && least <= average + slack && average <= most + slack;
				const within = fromPlan.average <= average + slack && fromPlan.most <= most + slack;
				if (!inOrder || !within || points < 1) wrong.push(`yard ${seed}, ${id}`);
			}
			for (const { candela } of light.glare) if (!(candela > 0)) wrong.push(`yard ${seed}: a glare of ${candela}`);
			const { lumens, share, skyShare } = light.upward;
			const all = fixtures.reduce((sum, { lamp }) => sum + lamp.lumens, 0);
			if (lumens < 0 || lumens > all || share > 1 || skyShare > share + 1e-9) wrong.push(`yard ${seed}: upward`);
			const said = light.findings.map(({ about, code, message }) => `${code} ${about?.kind} ${about?.id} ${message}`);
			if (new Set(said).size < said.length) wrong.push(`yard ${seed}: a finding twice`);
			if (said.some((text) => /NaN|undefined|Infinity|null/.test(text))) wrong.push(`yard ${seed}: strange words`);
		}
		expect(wrong.slice(0, 20)).toEqual([]);
		expect(count).toBeGreaterThan(seeds.length * 6);
	}, 600_000);

	it('a yard in the mirror gets the same light', () => {
		const rows = (receivers: readonly Receiver[]) =>
			receivers
				.map(({ kind, average, least, most, points }) => ({ kind, points, levels: [average, least, most] }))
				.toSorted((a, b) => a.kind.localeCompare(b.kind) || a.points - b.points || a.levels[0]! - b.levels[0]!);
		const differ: number[] = [];
		for (const seed of seeds) {
			const yard = randomYard(seed);
			const [own, image] = [yard, mirrored(yard)].map(lit);
			// Where placement itself is not mirrored (lights between two equal choices), neither is the light.
			const stand = (one: typeof own) =>
				one!.fixtures
					.map(({ at }) => at.y.toFixed(6))
					.sort()
					.join();
			if (stand(own) !== stand(image)) continue;
			const [a, b] = [rows(own!.light.receivers), rows(image!.light.receivers)];
			const alike =
				a.length === b.length &&
				a.every(
					(row, i) =>
						row.points === b[i]!.points &&
						row.levels.every((lux, k) => Math.abs(lux - b[i]!.levels[k]!) <= 1e-6 + 1e-6 * lux)
				);
			if (!alike) differ.push(seed);
		}
		expect(differ).toEqual([]);
	}, 600_000);

	it('the map with one fixture moved equals the map made anew', () => {
		for (const seed of seeds.slice(0, Math.ceil(seeds.length / 4))) {
			const { site, fixtures } = lit(randomYard(seed));
			if (fixtures.length === 0) continue;
			const field = lightField(site, fixtures, []);
			const step = Math.max(site.bounds.maxX - site.bounds.minX, site.bounds.maxY - site.bounds.minY) / 40;
			const [grid, anew] = [0, 1].map(() => new LightGrid(field.shadows, site.bounds, step));
			const sources = [...field.sources];
			grid!.set(sources);
			const i = seed % fixtures.length;
			const { x, y } = fixtures[i]!.at;
			sources[i] = sourceOf({ ...fixtures[i]!, at: { x: x + 1.5, y: y - 1 } }, null);
			grid!.move(i, sources[i]);
			anew!.set(sources);
			let worst = 0;
			grid!.lux.forEach((lux, cell) => (worst = Math.max(worst, Math.abs(lux - anew!.lux[cell]!))));
			expect(worst, `yard ${seed}`).toBeLessThanOrEqual(1e-6);
		}
	}, 600_000);
});

describe('in the plan', () => {
	it.each(examples.map(({ id, yard }) => [id, yard] as const))('%s has its light', (_, yard) => {
		const { light, site, findings, fixtures } = makePlan(yard);
		const kinds = new Set(light.receivers.map(({ kind }) => kind));
		for (const kind of ['walk', 'boundary', 'neighbour-window', 'sensor'] as const) expect(kinds).toContain(kind);
		expect(light.receivers.filter(({ kind }) => kind === 'walk' || kind === 'drive')).toHaveLength(site.strips.length);
		expect(light.receivers.filter(({ kind }) => kind === 'wall')).toHaveLength(
			site.walls.filter((wall) => wall.light !== 'none').length
		);
		expect(light.upward.lumens).toBeGreaterThan(0);
		const ids = new Set(fixtures.map(({ id }) => id));
		expect(light.glare.filter(({ fixture }) => !ids.has(fixture))).toEqual([]);
		for (const finding of light.findings) expect(findings).toContain(finding);
	});
	it('a blank yard has none', () => {
		expect(makePlan(blankYard()).light).toMatchObject({ receivers: [], glare: [], findings: [] });
	});
});

describe('published levels', () => {
	it('a walk 5 lx and 5 to 1, a tread one footcandle (10.76391 lx, exact foot) in round figures', () => {
		// Municipal walkway tables using IES-type figures; the footcandle on stairs as building codes have it: seen second-hand.
		expect(rules['path.level'].figures).toEqual({ walk: 5, ratio: 5, tread: Math.round(10.763_91) });
	});
	it('light on windows late at night: EN 12193, table of obtrusive light, seen second-hand', () => {
		const high = (surroundings: 'rural' | 'suburb' | 'town') => spillAim({ surroundings }).high;
		expect([high('rural'), high('suburb'), high('town')]).toEqual([1, 2, 5]);
	});
	it('walls: the band that the lamps were chosen by', () => {
		for (const surroundings of ['rural', 'suburb', 'town'] as const)
			for (const finish of ['light', 'medium', 'dark'] as const)
				expect(wallAim({ surroundings }, { finish })).toMatchObject(wallBand(surroundings, finish));
	});
});
