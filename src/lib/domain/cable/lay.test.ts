import { describe, expect, it } from 'vitest';
import { evaluate } from '../shared/evaluate';
import { blankYard, type Yard } from '../yard';
import type { Site } from '../site';
import type { Fixture } from '../placement';
import { layCable } from './lay';
import { cableLength } from './laid';
import { areaOf, emptySite, fixtureOf, randomGround, stripOf, treeOf, withHouse } from './random.testing';
import type { Cabling } from './types';

const yard: Yard = blankYard();
const plugged = (site: Site, x: number): Site => ({
	...site,
	receptacle: { at: { x, y: 0 }, known: true, gfci: true, inUseCover: true }
});
const codes = (cabling: Cabling) => cabling.findings.map((finding) => finding.code);

describe('a small yard worked by hand', () => {
	const site = plugged(withHouse(emptySite(), 10, 8), 2);
	const fixtures = [
		fixtureOf('a', 'P1', { x: 1.6, y: 4.1 }),
		fixtureOf('b', 'P2', { x: 1.6, y: 8.1 }),
		fixtureOf('c', 'P3', { x: 4.6, y: 8.1 })
	];
	const cabling = layCable(site, fixtures, yard);
	it('hangs the transformer beside the receptacle, 0.1 m off the wall, 0.46 m up', () => {
		// 0.4 m beside the receptacle, on the side of the lights.
		expect(cabling.supply!.at).toEqual({ x: expect.closeTo(2.4, 9), y: 0.1 });
		expect(cabling.supply!.mountHeight).toBe(0.46);
		expect(cabling.supply!.suggested).toBe(true);
	});
	it('lays one run with slack at every end and the rise to the transformer', () => {
		expect(cabling.runs).toHaveLength(1);
		const lengths = cabling.runs[0]!.segments.map((segment) => segment.length);
		// Path √(0.8² + 4²) = 4.0792, 2 × 0.75 slack, 0.46 + 0.15 rise; then 4 and 3 m with 1.5 m slack each.
		expect(lengths).toEqual([6.19, 5.5, 4.5]);
	});
	it('gives volts that follow from the lengths by hand', () => {
		const [run] = cabling.runs;
		const [supply, ...lamps] = run!.nodes;
		let volts = supply!.volts!;
		let left = lamps.length * (2.5 / 0.8);
		lamps.forEach((node, k) => {
			const segment = run!.segments[k]!;
			expect(segment.ohms).toBeCloseTo((2 * segment.length * run!.ohmsPerKm) / 1000, 12);
			volts -= segment.amps! * segment.ohms;
			expect(node.volts!).toBeCloseTo(volts, 9);
			// 3.13 VA each, the cable's own losses too small to show here.
			expect(segment.amps!).toBeCloseTo(left / 12, 1);
			left -= 2.5 / 0.8;
		});
		expect(cabling.supply!.ratedVoltAmps).toBe(60);
		expect(cabling.findings.map(({ code, rank }) => [code, rank])).toEqual([['supply.room', 'note']]);
		// Three lamps of 3.125 VA and a little cable on 60 VA, of which 48 may be used.
		expect(cabling.findings[0]!.message).toContain('room for about 38 VA more');
	});
	it('shows working that comes out at the volts of its node', () => {
		for (const node of cabling.runs[0]!.nodes) {
			const { expression, inputs, value, decimals } = node.working!;
			const redone = evaluate(expression, Object.fromEntries(inputs.map((one) => [one.symbol, one.value])));
			expect(redone.toFixed(decimals)).toBe(value.toFixed(decimals));
			expect(redone.toFixed(decimals)).toBe(node.volts!.toFixed(decimals));
		}
	});
});

describe('what cannot be, or should not', () => {
	it('gives nothing for nothing, and says when there is nowhere to hang the transformer', () => {
		expect(layCable(emptySite(), [], yard)).toEqual({ supply: null, runs: [], findings: [], assumptions: [] });
		const nowhere = layCable(emptySite(), [fixtureOf('a', 'P1', { x: 0, y: 3 })], yard);
		expect(nowhere.supply).toBeNull();
		expect(codes(nowhere)).toEqual(['supply.nowhere']);
	});
	it('names what keeps cable from a fixture', () => {
		const site = {
			...plugged(withHouse(emptySite(), 10, 8), 2),
			areas: [
				areaOf('water', 'pond', [
					{ x: 12, y: 8 },
					{ x: 18, y: 8 },
					{ x: 18, y: 14 },
					{ x: 12, y: 14 }
				])
			]
		};
		const cabling = layCable(
			site,
			[fixtureOf('a', 'P1', { x: 15, y: 11 }), fixtureOf('b', 'P2', { x: 4, y: 5 })],
			yard
		);
		const stop = cabling.findings.find((finding) => finding.code === 'cable.unreachable')!;
		expect(stop.message).toContain('P1');
		expect(stop.message).toContain('the pond');
		expect(cabling.runs.flatMap((run) => run.nodes.map((node) => node.fixture))).toEqual([null, 'b']);
	});
	it('says what the spot and the receptacle lack', () => {
		const site = {
			...plugged(withHouse(emptySite(), 10, 8), 2),
			areas: [
				areaOf('water', 'pond', [
					{ x: 4, y: 2 },
					{ x: 6, y: 2 },
					{ x: 6, y: 4 },
					{ x: 4, y: 4 }
				])
			]
		};
		const spot = (along: number, height: number): Yard => ({
			...yard,
			power: { transformer: { at: { along, out: 0 }, on: 'wall', height } }
		});
		const fixtures = [fixtureOf('a', 'P1', { x: 1, y: 6 })];
		expect(codes(layCable(site, fixtures, spot(5, 0.2)))).toEqual(
			expect.arrayContaining(['supply.low', 'supply.cord', 'supply.water'])
		);
		const unsure: Site = {
			...site,
			receptacle: { at: { x: 0.5, y: 0 }, known: false, gfci: 'unsure', inUseCover: 'unsure' }
		};
		expect(codes(layCable(unsure, fixtures, yard))).toEqual(
			expect.arrayContaining(['supply.receptacle-unsure', 'supply.gfci-unsure', 'supply.cover-unsure'])
		);
		const none: Yard = { ...yard, power: { receptacle: 'none' } };
		const without = layCable({ ...site, receptacle: null }, fixtures, none);
		expect(without.findings.find((finding) => finding.code === 'supply.no-receptacle')).toMatchObject({ rank: 'stop' });
		expect(without.findings[0]!.message).toContain('licensed electrician');
		expect(without.supply).not.toBeNull();
	});
	it('keeps a suggested transformer out of openings and clear of water', () => {
		const house = withHouse(emptySite(), 10, 8);
		const site = plugged(
			{
				...house,
				walls: [
					{ ...house.walls[0]!, openings: [{ id: 'w', kind: 'window', start: 1, end: 3.5, sill: 0.9, head: 2.1 }] }
				]
			},
			3
		);
		const { supply, findings } = layCable(site, [fixtureOf('a', 'P1', { x: 1, y: 6 })], yard);
		expect(supply!.at.x).toBeGreaterThanOrEqual(3.8 - 1e-9);
		expect(supply!.at.x).toBeLessThanOrEqual(4.5);
		expect(findings.filter(({ rank }) => rank !== 'note')).toEqual([]);
	});
	it('notes roots, joints and bores, and keeps 3.05 m from water where there is room', () => {
		const walk = stripOf(
			'walk',
			'walk',
			[
				{ x: 5, y: 20 },
				{ x: 5, y: 0 }
			],
			1.2,
			[{ id: 'joint', at: 10, kind: 'joint' }]
		);
		const drive = stripOf(
			'drive',
			'drive',
			[
				{ x: 13, y: 20 },
				{ x: 13, y: -3 }
			],
			3
		);
		const site = {
			...plugged(withHouse(emptySite(), 10, 8), 2),
			strips: [walk, drive],
			trees: [treeOf('oak', { x: 3, y: 9 }, 0.4)]
		};
		const fixtures = [fixtureOf('a', 'P1', { x: 7, y: 10 }), fixtureOf('b', 'P2', { x: 15.5, y: 10 })];
		const cabling = layCable(site, fixtures, yard);
		expect(codes(cabling)).toEqual(
			expect.arrayContaining(['cable.joint-shallow', 'cable.bore-needed', 'cable.drive-depth', 'cable.roots'])
		);
		const pond = areaOf('water', 'pond', [
			{ x: 4, y: 6 },
			{ x: 6, y: 6 },
			{ x: 6, y: 8 },
			{ x: 4, y: 8 }
		]);
		const far = layCable(
			{ ...plugged(withHouse(emptySite(), 20, 8), 1), areas: [pond] },
			[fixtureOf('a', 'P1', { x: 5, y: 14 })],
			yard
		);
		expect(codes(far)).not.toContain('cable.near-water');
		const path = far.runs[0]!.segments[0]!.path;
		expect(path.length).toBeGreaterThan(2);
	});
	it('passes under a garden wall only when it must, and says so', () => {
		const base = plugged(withHouse(emptySite(), 10, 8), 2);
		const wall = (from: number, to: number) => ({
			...base.walls[0]!,
			id: 'stone',
			name: 'the stone wall',
			of: 'garden' as const,
			from: { x: from, y: 5 },
			to: { x: to, y: 5 }
		});
		const fixtures = [fixtureOf('a', 'P1', { x: 3, y: 9 })];
		const round = layCable({ ...base, walls: [...base.walls, wall(0, 8)] }, fixtures, yard);
		expect(codes(round)).not.toContain('cable.under-wall');
		const under = layCable({ ...base, walls: [...base.walls, wall(-15, 30)] }, fixtures, yard);
		expect(codes(under)).toContain('cable.under-wall');
		expect(under.runs).toHaveLength(1);
	});
});

describe('choices', () => {
	const site = plugged(withHouse(emptySite(), 10, 8), 2);
	const row = (count: number, model?: string): Fixture[] =>
		Array.from({ length: count }, (_, i) =>
			fixtureOf(`f-${i}`, `P${i + 1}`, { x: 2 + 0.01 * i, y: 3 + i * 1.2 }, model)
		);
	it('takes the owned transformer when it is enough, and says so when it is not', () => {
		const owning = (voltAmps: number): Yard => ({ ...yard, power: { owned: { transformerVoltAmps: voltAmps } } });
		const enough = layCable(site, row(6), owning(45));
		expect(enough.supply!.ratedVoltAmps).toBe(45);
		expect(codes(enough)).not.toContain('cable.owned-transformer');
		const small = layCable(site, row(12), owning(40));
		expect(small.supply!.ratedVoltAmps).toBeGreaterThan(40);
		expect(codes(small)).toContain('cable.owned-transformer');
	});
	it('says what becomes of cable in hand of another size than the plan takes', () => {
		const owning = (owned: NonNullable<Yard['power']['owned']>): Yard => ({ ...yard, power: { owned } });
		const plan = layCable(site, row(3), yard);
		const { size } = plan.runs[0]!.cable;
		const other = size === 10 ? 12 : 10;
		const unused = layCable(site, row(3), owning({ cableSize: other, cableLength: 30.48 }));
		expect(unused.findings.find((finding) => finding.code === 'cable.owned-cable')).toMatchObject({
			rank: 'note',
			message: `Your 100 ft of ${other} AWG is not used: this plan takes ${size} AWG.`
		});
		expect(codes(layCable(site, row(3), owning({ cableSize: size, cableLength: 30.48 })))).not.toContain(
			'cable.owned-cable'
		);
		expect(codes(layCable(site, row(3), owning({ cableLength: 30.48 })))).not.toContain('cable.owned-cable');
	});
	it('keeps halogen and LED lamps on separate runs', () => {
		const mixed = [
			...row(4),
			...row(4, 'path-halogen-10w-warm').map((one, i) => ({
				...one,
				id: `h-${i}`,
				at: { x: one.at.x + 1, y: one.at.y }
			}))
		];
		const cabling = layCable(site, mixed, yard);
		for (const run of cabling.runs) {
			const kinds = new Set(
				run.nodes.flatMap((node) => mixed.filter((one) => one.id === node.fixture).map((one) => one.lamp.kind))
			);
			expect(kinds.size).toBe(1);
		}
	});
	it('takes cable sizes as sold here, by units or by choice', () => {
		expect(layCable(site, row(3), yard).runs[0]!.cable.system).toBe('awg');
		expect(layCable({ ...site, units: 'metres' }, row(3), yard).runs[0]!.cable.system).toBe('mm2');
		expect(layCable(site, row(3), { ...yard, power: { cable: 'mm2' } }).runs[0]!.cable.system).toBe('mm2');
	});
});

describe('on seeded grounds', { timeout: 900_000 }, () => {
	const rounds = process.env.LONG ? 600 : 40;
	/** The same ground seen in a mirror along the front. */
	const mirrored = (site: Site, fixtures: Fixture[]): [Site, Fixture[]] => {
		const flip = <T extends { x: number; y: number }>(p: T): T => ({ ...p, x: -p.x });
		return [
			{
				...site,
				house: site.house.map(flip),
				walls: site.walls.map((wall) => ({ ...wall, from: flip(wall.to), to: flip(wall.from) })),
				trees: site.trees.map((tree) => ({ ...tree, at: flip(tree.at) })),
				strips: site.strips.map((strip) => ({
					...strip,
					centre: strip.centre.map(flip),
					left: strip.right.map(flip),
					right: strip.left.map(flip),
					polygon: strip.polygon.map(flip),
					crossings: strip.crossings.map((c) => ({ ...c, left: flip(c.right), right: flip(c.left) }))
				})),
				areas: site.areas.map((area) => ({ ...area, polygon: area.polygon.map(flip), centre: flip(area.centre) })),
				receptacle: site.receptacle && { ...site.receptacle, at: flip(site.receptacle.at) },
				leftBoundary: -site.rightBoundary,
				rightBoundary: -site.leftBoundary
			},
			fixtures.map((fixture) => ({ ...fixture, at: flip(fixture.at) }))
		];
	};
	it(`conserves length, feeds every fixture once or says why not, on ${rounds} of them`, () => {
		for (let seed = 1; seed <= rounds; seed++) {
			const { site, fixtures } = randomGround(seed, 14);
			const cabling = layCable(site, fixtures, yard);
			const fed = cabling.runs.flatMap((run) =>
				run.nodes.flatMap((node) => (node.fixture === null ? [] : [node.fixture]))
			);
			expect(new Set(fed).size).toBe(fed.length);
			const stop = cabling.findings
				.filter((finding) => finding.code === 'cable.unreachable')
				.map((finding) => finding.message)
				.join();
			for (const fixture of fixtures)
				expect(fed.includes(fixture.id) || new RegExp(`\\b${fixture.label}\\b`).test(stop)).toBe(true);
			for (const run of cabling.runs) {
				expect(run.segments).toHaveLength(run.nodes.length - 1);
				run.segments.forEach((segment, k) => {
					expect(segment.to).toBe(run.nodes[k + 1]!.id);
					let path = 0;
					segment.path.forEach(
						(p, i) => (path += i === 0 ? 0 : Math.hypot(p.x - segment.path[i - 1]!.x, p.y - segment.path[i - 1]!.y))
					);
					expect(segment.length).toBe(cableLength(path, segment.from === 'supply', cabling.supply!.mountHeight));
					expect(segment.path[0]).toEqual(run.nodes.find((node) => node.id === segment.from)!.at);
					expect(segment.path.at(-1)).toEqual(run.nodes[k + 1]!.at);
				});
			}
			expect(JSON.stringify(cabling)).not.toMatch(/NaN|undefined/);
			expect(layCable(site, fixtures, yard)).toEqual(cabling);
		}
	});
	it('gives a mirrored yard the mirrored plan', () => {
		const metres = (cabling: Cabling) =>
			cabling.runs.flatMap((run) => run.segments).reduce((sum, one) => sum + one.length, 0);
		for (let seed = 1; seed <= rounds; seed++) {
			const { site, fixtures } = randomGround(seed, 14);
			const there = layCable(site, fixtures, yard);
			const back = layCable(...mirrored(site, fixtures), yard);
			expect(back.supply?.at.x ?? 0).toBeCloseTo(-(there.supply?.at.x ?? 0), 6);
			expect(metres(back)).toBeCloseTo(metres(there), 6);
		}
	});
});
