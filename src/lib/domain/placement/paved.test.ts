/** Patios, aprons and places to park, worked by hand. All metres. */
import { describe, expect, it } from 'vitest';
import { distanceToPolygon } from '../shared/geometry';
import { tradeFigures } from '../shared/settings';
import { makeSite } from '../site';
import { blankYard, type Yard, type YardDrive, type YardWalk } from '../yard';
import { survey } from './conflicts';
import { firstsOf } from './firsts';
import { placeFixtures } from './index';
import { pavedStretches } from './paved-spans';

const box = (x0: number, y0: number, x1: number, y1: number) => [
	{ along: x0, out: y0 },
	{ along: x1, out: y0 },
	{ along: x1, out: y1 },
	{ along: x0, out: y1 }
];
const paved = (outline: ReturnType<typeof box>, cars = false) => ({
	id: 'paved',
	name: 'patio',
	outline,
	cars
});
const straight = (along: number) => [
	{ along, out: 20 },
	{ along, out: 0 }
];
const yardOf = (spots: Yard['spots'], more: { walk?: Partial<YardWalk>; drive?: Partial<YardDrive> }): Yard => ({
	...blankYard(),
	place: { units: 'metres' },
	house: { sections: [{ id: 'front', width: 12, light: 'none' }], openings: [], porches: [] },
	lot: { street: 20, left: 30, right: 30 },
	trees: [],
	walks: more.walk ? [{ id: 'walk', name: 'walk', width: 1.2, lights: 'left', line: straight(6), ...more.walk }] : [],
	drives: more.drive
		? [{ id: 'drive', name: 'drive', width: 3, lights: 'both', line: straight(16), ...more.drive }]
		: [],
	spots
});
const plan = (yard: Yard) => {
	const site = makeSite(yard);
	return { site, ...placeFixtures(site, yard) };
};

describe('the ground of a paved area', () => {
	it.each([
		[false, 'paved', 0.05],
		[true, 'cars', 0.15]
	] as const)('cars %s: %s, %s m clear', (cars, cause, clear) => {
		const yard = yardOf({ paved: [paved(box(0, 4, 5, 8), cars)] }, {});
		const ground = survey(makeSite(yard), tradeFigures.figures);
		expect(ground.blocked({ x: 2, y: 6 }, 0.1, 'path')).toBe(cause);
		expect(ground.blocked({ x: 5 + 0.1 + clear - 0.005, y: 6 }, 0.1, 'path')).toBe(cause);
		expect(ground.blocked({ x: 5 + 0.1 + clear + 0.005, y: 6 }, 0.1, 'path')).toBe(null);
		expect(ground.blocked({ x: 2, y: 6 }, 0.1, 'mounted')).toBe(cause);
	});
});

describe('set by hand on paving', () => {
	it.each([
		[false, 'stands in paving'],
		[true, 'stands where cars drive']
	] as const)('cars %s: said, and left there', (cars, words) => {
		const yard = yardOf({ paved: [paved(box(0, 4, 5, 8), cars)] }, {});
		const added = [{ id: 'mine', technique: 'path' as const, at: { along: 2, out: 6 } }];
		const { fixtures, findings } = plan({ ...yard, fixtures: { added } });
		expect(fixtures).toHaveLength(1);
		expect(findings.some(({ message }) => message.includes(words))).toBe(true);
	});
});

describe('a walk and a patio', () => {
	const crossed = { paved: [paved(box(4, 8, 9, 12))] };
	it('is cut where it runs over it: between 8 and 12 m', () => {
		const { site, fixtures, findings } = plan(yardOf(crossed, { walk: { lights: 'both' } }));
		expect(pavedStretches(site, site.strips[0]!)).toEqual([
			{ start: expect.closeTo(8, 9), end: expect.closeTo(12, 9) }
		]);
		expect(fixtures.length).toBeGreaterThan(7);
		for (const f of fixtures)
			expect(distanceToPolygon(f.at, site.areas[0]!.polygon) - 0.1).toBeGreaterThanOrEqual(0.05);
		expect(fixtures.some((f) => f.reasons[0]!.because.includes('where it leaves other paving'))).toBe(true);
		// Nothing is asked for on the patio itself, so nothing is missed there.
		expect(findings).toEqual([]);
	});
	it('begins where it leaves an apron', () => {
		const { site, fixtures } = plan(yardOf({ paved: [paved(box(0, 14, 12, 21), true)] }, { walk: {} }));
		expect(firstsOf(site.strips[0]!, 3, pavedStretches(site, site.strips[0]!))[0]).toMatchObject({
			at: 6.5,
			first: 'entry'
		});
		expect(fixtures[0]!.at.y).toBeCloseTo(13.5, 9);
	});
	it('that touches a corner only is a walk all the same', () => {
		const { site } = plan(yardOf({ paved: [paved(box(6, 8, 9, 8.2))] }, { walk: {} }));
		expect(pavedStretches(site, site.strips[0]!)).toEqual([]);
	});
	it('wholly within it gets no light, and it is said', () => {
		const { fixtures, findings } = plan(yardOf({ paved: [paved(box(0, -1, 12, 21))] }, { walk: {} }));
		expect(fixtures).toEqual([]);
		const said = findings.find((f) => f.code === 'placement.no-room')!;
		expect(said.about).toEqual({ kind: 'walk', id: 'walk' });
		expect(said.message).toContain('the ground there is paved');
		expect(said.message).toContain('No light stands along it at all');
	});
	it('beside its edge leaves no room on that side: the other takes the light, or it is said', () => {
		const spots = { paved: [paved(box(3, 2, 5.4, 18))] };
		const either = plan(yardOf(spots, { walk: { lights: 'either' } })).fixtures;
		expect(either.length).toBeGreaterThan(4);
		expect(either.filter((f) => f.at.y > 2.2 && f.at.y < 17.8).every((f) => f.at.x > 6)).toBe(true);
		const left = plan(yardOf(spots, { walk: { lights: 'left' } }));
		expect(left.findings.some((f) => f.message.includes('the ground there is paved'))).toBe(true);
	});
});

describe('a drive and its apron', () => {
	it('the last lights stand where the apron begins, clear of it', () => {
		const yard = yardOf({ paved: [paved(box(13, -1, 19, 7), true)] }, { drive: { pattern: 'paired' } });
		const { site, fixtures, findings } = plan(yard);
		expect(Math.min(...fixtures.map((f) => f.at.y))).toBeCloseTo(7.3, 9);
		for (const f of fixtures)
			expect(distanceToPolygon(f.at, site.areas[0]!.polygon) - 0.075).toBeGreaterThanOrEqual(0.15 - 1e-9);
		expect(findings).toEqual([]);
	});
	it('a parking bay along one edge: that edge is marked before and after it, the other throughout', () => {
		const yard = yardOf({ paved: [paved(box(10, 5, 14.6, 12), true)] }, { drive: { pattern: 'paired' } });
		const { fixtures, findings } = plan(yard);
		const inBay = fixtures.filter((f) => f.at.y > 4.8 && f.at.y < 12.2);
		expect(inBay.length).toBeGreaterThan(0);
		expect(inBay.every((f) => f.at.x > 16)).toBe(true);
		expect(findings.some((f) => f.rank === 'note' && f.message.includes('cars use the paving there'))).toBe(true);
	});
});

describe('what else cannot be lit because of paving', () => {
	it('a seat on a patio not much larger than it: the light stands beyond the paving, and says so', () => {
		const seat = { id: 'seat', name: 'bench', at: { along: 9, out: 3 }, across: 2, light: 'soft' as const };
		const yard = yardOf({ paved: [paved(box(6.5, 0.5, 11.5, 5.2))], seating: [seat] }, {});
		const { site, fixtures, findings } = plan(yard);
		const [lamp, ...rest] = fixtures;
		expect(rest).toEqual([]);
		expect(lamp!.reasons.map(({ because }) => because).join(' ')).toContain('the ground there is paved');
		const [bench, patio] = ['seating', 'paved'].map((kind) => site.areas.find((area) => area.kind === kind)!);
		// A head 0.2 m wide, 50 mm clear of the paving; by hand, 150 lm as new: 49.23 × 0.25 ÷ (0.25 + a²)² = 0.5 lx at a = 2.17 m.
		expect(distanceToPolygon(lamp!.at, patio!.polygon)).toBeGreaterThanOrEqual(0.15 - 1e-6);
		expect(distanceToPolygon(lamp!.at, bench!.polygon)).toBeLessThan(2.17);
		expect(findings).toEqual([]);
	});
	it('a tree in a patio, a wall behind one, a seat on one: said in words', () => {
		const yard = yardOf(
			{
				paved: [paved(box(0, 0, 12, 6))],
				seating: [{ id: 'seat', name: 'bench', at: { along: 9, out: 3 }, across: 2, light: 'soft' }]
			},
			{}
		);
		const oak = {
			id: 'oak',
			name: 'oak',
			at: { along: 3, out: 3 },
			spread: 3,
			height: 6,
			crownBase: 2,
			trunk: 0.2,
			light: 'soft' as const
		};
		const house = { ...yard.house, sections: [{ id: 'front', width: 12, light: 'soft' as const }] };
		const { fixtures, findings } = plan({ ...yard, house, trees: [oak] });
		expect(fixtures).toEqual([]);
		const about = (kind: string) => findings.find((f) => f.about?.kind === kind)?.message;
		expect(about('tree')).toContain('the ground there is paved');
		expect(about('wall')).toContain('the ground there is paved');
		expect(about('seating')).toContain('the ground there is paved');
	});
});
