/** Ground of several costs: worked by hand, and by the law of refraction. Metres; costs in metres of open ground. */
import { describe, expect, it } from 'vitest';
import type { Point } from '../shared/geometry';
import type { Site } from '../site';
import { layingCosts, type LayingCosts } from './costs';
import { makeGround } from './ground';
import { bedsOf } from './lawn-edges';
import { obstaclesOf, waterRings } from './obstacles';
import { findRoutes } from './paths';
import { areaOf, emptySite, generator, treeOf, withHouse } from './random.testing';
import { surfaceOf } from './surface';

const at = (x: number, y: number): Point => ({ x, y });
const ring = (...corners: [number, number][]): Point[] => corners.map(([x, y]) => at(x, y));
const box = (x: number, y: number, w: number, h: number): Point[] =>
	ring([x, y], [x + w, y], [x + w, y + h], [x, y + h]);
const { lawnEdge, alongEdge, inBed, amongRoots, nearWater } = layingCosts;

const costIn = (site: Site, costs: LayingCosts = layingCosts) => {
	const obstacles = obstaclesOf(site, true);
	const roots = site.trees.map((tree) => ({ at: tree.at, radius: tree.rootRadius }));
	return surfaceOf({ obstacles, beds: bedsOf(site, obstacles), roots, waters: waterRings(obstacles) }, costs);
};
const routeIn = (site: Site, from: Point, to: Point, costs: LayingCosts = layingCosts) => {
	const ground = makeGround(obstaclesOf(site, true));
	return findRoutes(site, ground, [ground.terminal(from), ground.terminal(to)], costs).route(0, 1)!;
};

describe('a straight line costs', () => {
	it('what its parts cost in a bed, a root zone and the open', () => {
		const site = {
			...emptySite(),
			areas: [areaOf('bed', 'bed', box(2, 0, 3, 10))],
			trees: [treeOf('oak', at(10, 5), 0.25)]
		};
		// 2 open, 3 in the bed, 2 open, 6 among roots (radius 12 × 0.25), 1 open.
		expect(costIn(site)(at(0, 5), at(14, 5))).toBeCloseTo(2 + 3 * inBed + 2 + 6 * amongRoots + 1, 9);
		// A chord 1.8 off the middle of the zone is 2 × √(3² − 1.8²) = 4.8 long.
		expect(costIn(site)(at(6, 6.8), at(14, 6.8))).toBeCloseTo(3.2 + 4.8 * amongRoots, 9);
	});
	it('less along the edge of a bed against lawn, unless roots are there', () => {
		const bed = areaOf('bed', 'bed', box(0, 0, 10, 2));
		expect(costIn({ ...emptySite(), areas: [bed] })(at(0, 2), at(10, 2))).toBeCloseTo(10 * lawnEdge, 6);
		expect(costIn({ ...emptySite(), areas: [bed] })(at(0, 2.1), at(10, 2.1))).toBeCloseTo(10 * lawnEdge, 6);
		expect(costIn({ ...emptySite(), areas: [bed] })(at(0, 2.2), at(10, 2.2))).toBeCloseTo(10, 6);
		// Straight through: 2 in the bed, nothing along its edges.
		expect(costIn({ ...emptySite(), areas: [bed] })(at(5, -1), at(5, 3))).toBeCloseTo(2 + 2 * inBed, 6);
		const rooted = { ...emptySite(), areas: [bed], trees: [treeOf('oak', at(5, 2), 0.25)] };
		expect(costIn(rooted)(at(0, 2), at(10, 2))).toBeCloseTo(4 * lawnEdge + 6 * amongRoots, 6);
	});
	it('less along a wall, as far as the wall goes', () => {
		const site = withHouse(emptySite(), 10, 6);
		// From 3 before the corner, 0.15 of it within the clearance that a corner stands off, to half way along.
		expect(costIn(site)(at(-3, 0.5), at(5, 0.5))).toBeCloseTo(2.85 + 5.15 * alongEdge, 6);
		expect(costIn(site)(at(5, 0.2), at(5, 8))).toBeCloseTo(7.8, 9);
	});
	it('more near water', () => {
		const site = { ...emptySite(), areas: [areaOf('water', 'pond', box(5, 5, 2, 2))] };
		expect(costIn(site)(at(0, 9), at(12, 9))).toBeCloseTo(12 + (2 + 2 * 3.05) * nearWater, 6);
	});
});

describe('the edge of a bed', () => {
	it('is lawn edge but for house, paving and the next bed', () => {
		const site = {
			...withHouse(emptySite(), 10, 6),
			areas: [
				areaOf('bed', 'a', box(0, 0, 4, 2)),
				areaOf('bed', 'b', box(4, 0, 3, 2)),
				areaOf('paved', 'patio', box(7.05, 0.2, 2, 3))
			]
		};
		const sides = bedsOf(site, obstaclesOf(site, true)).map(({ edges }) =>
			edges.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0)
		);
		// Of a its left side and front, of b its front only.
		expect(sides[0]).toBeCloseTo(6, 9);
		expect(sides[1]).toBeCloseTo(3, 9);
	});
	it('is joined where the law of refraction says, to within a place', () => {
		// Snell: along an edge of ratio r the least cost over a length d and a height h at each end is r·d + 2·h·√(1 − r²).
		const long = { ...emptySite(), leftBoundary: -50, rightBoundary: 50 };
		const site = { ...long, areas: [areaOf('bed', 'bed', box(-20, 2, 40, 3))] };
		for (const height of [0.3, 0.7, 1.5]) {
			const route = routeIn(site, at(-12.3, 2 - height), at(9.1, 2 - height));
			const least = lawnEdge * 21.4 + 2 * height * Math.sqrt(1 - lawnEdge ** 2);
			expect(route.cost).toBeGreaterThan(least - 1e-6);
			expect(route.cost).toBeLessThan(least + 0.25);
		}
		// Too far off for the edge to pay: 21.4 straight against 0.7 × 21.4 + 2 × 5 × 0.714.
		expect(routeIn(site, at(-12.3, -3), at(9.1, -3)).cost).toBeCloseTo(21.4, 6);
	});
});

describe('roots', () => {
	const site = { ...emptySite(), trees: [treeOf('oak', at(5, 5), 0.25)] };
	it('are gone round where that is less work than through', () => {
		const dear = routeIn(site, at(0, 5.2), at(10, 5.2), { ...layingCosts, amongRoots: 6 });
		for (const p of dear.path) expect(Math.hypot(p.x - 5, p.y - 5)).toBeGreaterThan(3 - 1e-6);
		// By eight corners 3 / cos 22.5° off, against tangents and arc: at most 1/cos 22.5° = 8.2 % more.
		const [u, v] = [Math.acos(3 / Math.hypot(5, 0.2)), Math.atan2(0.2, 5)];
		const taut = 2 * Math.sqrt(25 + 0.04 - 9) + 3 * (Math.PI - 2 * v - 2 * u);
		expect(dear.cost).toBeGreaterThan(taut - 1e-6);
		expect(dear.cost).toBeLessThan(taut * 1.0824);
	});
	it('at the cost of open ground are no reason to go round', () => {
		const free = routeIn(site, at(0, 5.3), at(10, 5.3), { ...layingCosts, amongRoots: 1 });
		const bare = routeIn({ ...site, trees: [] }, at(0, 5.3), at(10, 5.3));
		expect(free.cost).toBeLessThanOrEqual(bare.cost + 1e-9 + 0.02);
	});
	it('do not keep cable from a light among them', () => {
		const route = routeIn(site, at(0, 5), at(4, 5));
		expect(route.cost).toBeCloseTo(2 + 2 * amongRoots, 6);
	});
});

describe('ways over weighted ground', () => {
	it('cost the same in a mirror', () => {
		for (let seed = 1; seed <= 60; seed++) {
			const random = generator(seed * 131);
			const between = (low: number, high: number) => low + (high - low) * random();
			const spot = () => at(between(0, 12), between(1, 12));
			const site: Site = {
				...emptySite(),
				street: 14,
				leftBoundary: -1,
				rightBoundary: 13,
				trees: [treeOf('a', spot(), between(0.1, 0.3)), treeOf('b', spot(), between(0.1, 0.3))],
				areas: [
					areaOf('bed', 'bed', box(between(0, 8), between(1, 8), between(2, 6), between(1, 3))),
					areaOf('paved', 'patio', box(between(0, 8), between(1, 8), between(1, 3), between(1, 3)))
				]
			};
			const flip = (p: Point) => at(-p.x, p.y);
			const mirrored: Site = {
				...site,
				leftBoundary: -13,
				rightBoundary: 1,
				trees: site.trees.map((tree) => ({ ...tree, at: flip(tree.at) })),
				areas: site.areas.map((area) => ({ ...area, polygon: area.polygon.map(flip) }))
			};
			const [from, to] = [spot(), spot()];
			const there = routeIn(site, from, to) as { cost: number } | null;
			const back = routeIn(mirrored, flip(from), flip(to)) as { cost: number } | null;
			expect(back?.cost ?? -1, `seed ${seed}`).toBeCloseTo(there?.cost ?? -1, 6);
		}
	});
});
