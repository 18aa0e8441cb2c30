/** Cable and paving that is no walk and no drive: round it, out from it, or said. Worked by hand; metres. */
import { describe, expect, it } from 'vitest';
import { inPolygon, type Point } from '../shared/geometry';
import type { Site } from '../site';
import type { Yard } from '../yard';
import { blankYard } from '../yard';
import { makeGround } from './ground';
import { layCable } from './lay';
import { obstaclesOf } from './obstacles';
import { findRoutes } from './paths';
import { areaOf, emptySite, fixtureOf, stripOf, withHouse } from './random.testing';
import { byLength } from './visibility.testing';

const ring = (...corners: [number, number][]): Point[] => corners.map(([x, y]) => ({ x, y }));
const withPatio = (site: Site, ...corners: [number, number][]): Site => ({
	...site,
	areas: [areaOf('paved', 'patio', ring(...corners))]
});
const plugged = (site: Site, x: number): Site => ({
	...site,
	receptacle: { at: { x, y: 0 }, known: true, gfci: true, inUseCover: true }
});
const hangs = (along: number): Yard => ({
	...blankYard(),
	power: { cable: 'mm2', transformer: { at: { along, out: 0 }, on: 'wall', height: 0.5 } }
});
function between(site: Site, from: Point, to: Point) {
	const ground = makeGround(obstaclesOf(site, true));
	return findRoutes(site, ground, [ground.terminal(from), ground.terminal(to)], byLength).route(0, 1);
}

describe('round a patio', () => {
	it('by its corners, 0.1 clear', () => {
		const site = withPatio(emptySite(), [4, 4], [6, 4], [6, 6], [4, 6]);
		const route = between(site, { x: 0, y: 5 }, { x: 10, y: 5 })!;
		expect(route.length).toBeCloseTo(2 * Math.hypot(3.9, 1.1) + 2.2, 6);
		expect(route.crossings).toEqual([]);
	});
	it('out of the arms of a U', () => {
		// Open at the left.
		const site = withPatio(emptySite(), [4, 3], [8, 3], [8, 7], [4, 7], [4, 6], [7, 6], [7, 4], [4, 4]);
		const route = between(site, { x: 5, y: 5 }, { x: 10, y: 5 })!;
		// From (5, 5) to the corner (3.9, 5.9) of an arm, up its end to (3.9, 7.1), along it to (8.1, 7.1), then straight.
		const byHand = Math.hypot(1.1, 0.9) + 1.2 + 4.2 + Math.hypot(1.9, 2.1);
		expect(route.length).toBeCloseTo(byHand, 6);
	});
});

describe('at the transformer', () => {
	const lamps = [fixtureOf('a', 'P1', { x: 5, y: 9 })];
	it('crosses the edge of a patio no wider than 2 m at the wall', () => {
		const site = plugged(withPatio(withHouse(emptySite(), 10, 8), [-1, 0], [11, 0], [11, 1.5], [-1, 1.5]), 5);
		const { runs, findings } = layCable(site, lamps, hangs(5));
		expect(findings.filter(({ rank }) => rank === 'stop')).toEqual([]);
		expect(runs.flatMap(({ nodes }) => nodes.map(({ fixture }) => fixture))).toEqual([null, 'a']);
	});
	it('says so where a wide one leaves it no way into open ground', () => {
		const site = plugged(withPatio(withHouse(emptySite(), 10, 8), [-6, 0], [16, 0], [16, 5], [-6, 5]), 5);
		const stop = layCable(site, lamps, hangs(5)).findings.find(({ code }) => code === 'cable.unreachable')!;
		expect(stop.rank).toBe('stop');
		expect(stop.message).toContain('P1');
		expect(stop.message).toContain('the patio');
	});
	it('suggested, it hangs where there is a way out', () => {
		const site = plugged(withPatio(withHouse(emptySite(), 10, 8), [2, 0], [16, 0], [16, 5], [2, 5]), 2.5);
		const { supply, runs } = layCable(site, lamps, { ...blankYard(), power: { cable: 'mm2' } });
		expect(supply!.at.x).toBeLessThan(2);
		expect(runs.flatMap(({ nodes }) => nodes.map(({ fixture }) => fixture))).toContain('a');
	});
});

describe('at the lamp', () => {
	it('in a yard that paving closes in, it is said', () => {
		// A ring with a slit of a millimetre, 2 m wide, round (5, 9).
		const site = plugged(
			withPatio(
				withHouse(emptySite(), 10, 8),
				[2, 6],
				[8, 6],
				[8, 12],
				[2, 12],
				[2, 9.001],
				[4, 9.001],
				[4, 10],
				[6, 10],
				[6, 8],
				[4, 8],
				[4, 9],
				[2, 9]
			),
			1
		);
		expect(inPolygon({ x: 5, y: 9 }, site.areas[0]!.polygon)).toBe(false);
		const { findings } = layCable(
			site,
			[fixtureOf('a', 'P1', { x: 5, y: 9 }), fixtureOf('b', 'P2', { x: 1, y: 3 })],
			hangs(1)
		);
		const stop = findings.find(({ code }) => code === 'cable.unreachable')!;
		expect(stop.message).toContain('P1');
		expect(stop.message).not.toContain('P2');
		expect(stop.message).toContain('the patio');
	});
});

describe('a drive with an apron', () => {
	const drive = stripOf('drive', 'drive', ring([13, 20], [13, -14]), 3, [
		{ id: 'free', at: 8, kind: 'sleeve' },
		{ id: 'in-apron', at: 17, kind: 'sleeve' }
	]);
	const apron = areaOf('paved', 'apron', ring([11, -8], [16, -8], [16, 6], [11, 6]));
	it('is crossed by the sleeve that ends in open ground, not by the one under the apron', () => {
		const site = plugged({ ...withHouse(emptySite(), 10, 8), strips: [drive], areas: [apron] }, 9);
		const { runs } = layCable(site, [fixtureOf('a', 'D1', { x: 17, y: 3 })], hangs(9));
		const crossings = runs.flatMap(({ segments }) => segments.flatMap((segment) => segment.crossings));
		expect(crossings.map(({ crossing }) => crossing)).toEqual(['free']);
	});
	it('posts beside its edge are gone round', () => {
		const posted = { ...drive, posts: 10 };
		const site: Site = { ...emptySite(), strips: [posted] };
		const route = between(site, { x: 11.3, y: 15 }, { x: 11.3, y: 5 })!;
		// The post takes x from 11.1 to 11.5, y from 9.8 to 10.2; at 0.15 clear its corners lie at 10.95, 9.65 and 10.35.
		expect(route.length).toBeCloseTo(Math.hypot(0.35, 4.65) + 0.7 + Math.hypot(0.35, 4.65), 6);
	});
});
