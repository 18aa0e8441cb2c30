/** What is said of crossings that cannot be used, lights on one spot, walls without a gap, cable along the edge of a bed. */
import { describe, expect, it } from 'vitest';
import type { Point } from '../shared/geometry';
import { makeSite, type Site } from '../site';
import { blankYard, examples, type Yard } from '../yard';
import { layCable } from './lay';
import { areaOf, emptySite, fixtureOf, stripOf, withHouse } from './random.testing';

const box = (x: number, y: number, w: number, h: number): Point[] => [
	{ x, y },
	{ x: x + w, y },
	{ x: x + w, y: y + h },
	{ x, y: y + h }
];
const plugged = (site: Site, x: number): Site => ({
	...site,
	units: 'metres',
	receptacle: { at: { x, y: 0 }, known: true, gfci: true, inUseCover: true }
});
const house = () => plugged(withHouse(emptySite(), 10, 8), 2);
const said = (site: Site, lights: ReturnType<typeof fixtureOf>[], code: string, yard: Yard = blankYard()) =>
	layCable(site, lights, yard).findings.filter((finding) => finding.code === code);
const walkAt = (x: number, crossings: Parameters<typeof stripOf>[4] = []) =>
	stripOf(
		'walk',
		'walk',
		[
			{ x, y: 20 },
			{ x, y: 0 }
		],
		1.2,
		crossings
	);

describe('a crossing that cannot be used', () => {
	it('is named with its place and what it comes out in', () => {
		const site = {
			...house(),
			strips: [walkAt(5, [{ id: 'in-patio', at: 15, kind: 'sleeve' }])],
			areas: [areaOf('paved', 'patio', box(5.6, 3, 4, 4))]
		};
		const found = said(site, [fixtureOf('a', 'P1', { x: 8, y: 12 })], 'cable.crossing-unused');
		expect(found).toHaveLength(1);
		expect(found[0]).toMatchObject({ rank: 'look', about: { kind: 'walk', id: 'walk' } });
		expect(found[0]!.message).toContain('sleeve told at 15.00 m along the walk');
		expect(found[0]!.message).toContain('the patio');
	});
	it('told beyond the end of its walk is not there to be used, and is said by the survey', () => {
		const { yard } = examples.find(({ id }) => id === 'suburban')!;
		const walk = yard.walks![0]!;
		const told: Yard = { ...yard, walks: [{ ...walk, crossings: [{ id: 'far', at: 400, kind: 'joint' }] }] };
		const site = makeSite(told);
		expect(site.strips.find(({ id }) => id === walk.id)!.crossings).toEqual([]);
		const finding = site.findings.find(({ code }) => code === 'site.crossing-beyond-end')!;
		expect(finding.rank).toBe('look');
		expect(finding.message).toMatch(/^An expansion joint is told at .+ It is not used/);
	});
});

describe('lights on one spot', () => {
	it('are fed, with slack only between them, and are named', () => {
		const lights = [
			fixtureOf('a', 'P1', { x: 3, y: 5 }),
			fixtureOf('b', 'P2', { x: 3, y: 5 }),
			fixtureOf('c', 'P3', { x: 5, y: 5 })
		];
		const { runs } = layCable(house(), lights, blankYard());
		expect(runs.flatMap(({ nodes }) => nodes.flatMap(({ fixture }) => fixture ?? [])).toSorted()).toEqual([
			'a',
			'b',
			'c'
		]);
		// Twice 0.75 of slack (rule cable.slack).
		expect(runs.flatMap(({ segments }) => segments.map(({ length }) => length))).toContain(1.5);
		const found = said(house(), lights, 'cable.same-spot');
		expect(found.map(({ rank }) => rank)).toEqual(['look']);
		expect(found[0]!.message).toMatch(/^P1 and P2 stand on one spot/);
	});
});

describe('a light that is walled in', () => {
	it('is said with what blocks', () => {
		const pond = areaOf('water', 'pond', [
			...box(2, 6, 6, 6),
			{ x: 2, y: 9 },
			{ x: 4, y: 9 },
			{ x: 4, y: 10.5 },
			{ x: 6.5, y: 10.5 },
			{ x: 6.5, y: 7.5 },
			{ x: 4, y: 7.5 },
			{ x: 4, y: 8.99 },
			{ x: 2, y: 8.99 }
		]);
		const stop = said({ ...house(), areas: [pond] }, [fixtureOf('a', 'P1', { x: 5.2, y: 9 })], 'cable.unreachable');
		expect(stop).toHaveLength(1);
		expect(stop[0]!.message).toContain('P1');
		expect(stop[0]!.message).toContain('the pond');
	});
});

describe('cable along the edge of a bed', () => {
	const site = { ...house(), areas: [areaOf('bed', 'long bed', box(-2, 0, 14, 1.8))] };
	const lights = [fixtureOf('a', 'B1', { x: -1.5, y: 1.6 }), fixtureOf('b', 'B2', { x: 11.5, y: 1.6 })];
	it('is noted with its length, the cover counted, and what must allow less', () => {
		const found = said(site, lights, 'cable.sod-edge');
		expect(found).toHaveLength(1);
		expect(found[0]).toMatchObject({ rank: 'note', about: { kind: 'bed', id: 'long bed' }, rule: 'cable.depth' });
		expect(found[0]!.message).toMatch(/run 1 for \d+\.\d\d m/);
		expect(found[0]!.message).toContain('150 mm');
	});
	it('is not noted where the figures lead it elsewhere', () => {
		const own: Yard = {
			...blankYard(),
			rules: { 'ground.dig/lawnEdge': 1, 'ground.dig/edge': 0.5, 'ground.dig/bed': 0.5 }
		};
		expect(said(site, lights, 'cable.sod-edge', own)).toEqual([]);
	});
});

describe('routes follow the figures that are set', () => {
	const site = {
		...house(),
		strips: [
			{
				...walkAt(5),
				centre: [
					{ x: 5, y: 12 },
					{ x: 5, y: 0 }
				]
			}
		]
	};
	const short = {
		...site,
		strips: [
			stripOf(
				'walk',
				'walk',
				[
					{ x: 5, y: 9 },
					{ x: 5, y: 0 }
				],
				1.2
			)
		]
	};
	const crossings = (rules?: Record<string, number>) =>
		layCable(short, [fixtureOf('a', 'P1', { x: 7, y: 4 })], { ...blankYard(), ...(rules && { rules }) }).runs.flatMap(
			({ segments }) => segments.flatMap((segment) => segment.crossings)
		);
	it('a bore not told is made where it is easy, and gone round where it is not', () => {
		expect(crossings({ 'ground.cross/undeclared': 1, 'ground.cross/bored': 1 })).toHaveLength(1);
		expect(crossings({ 'ground.cross/undeclared': 60 })).toEqual([]);
	});
});
