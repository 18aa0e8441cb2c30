/**
 * Cables bent by hand over the ground. Lengths, what they meet and how near they come are held against JSTS (a port of the JTS
 * Topology Suite), which shares no code with the plan.
 */
import { Coordinate, GeometryFactory } from 'jsts/org/locationtech/jts/geom.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import { describe, expect, it } from 'vitest';
import { circle, rectangle, type Point } from '../shared/geometry';
import type { Site } from '../site';
import { Bends, isBlocked, type Blocked, type DrawnWay } from './drawn-way';
import { makeGround } from './ground';
import { obstaclesOf, type Obstacle } from './obstacles';
import { areaOf, emptySite, generator, randomGround, stripOf, treeOf, withHouse } from './random.testing';

const factory = new GeometryFactory();
const coordinate = ({ x, y }: Point) => new Coordinate(x, y);
const lineOf = (path: readonly Point[]) => factory.createLineString(path.map(coordinate));
const ringOf = (ring: readonly Point[]) =>
	ring.length > 2 ? factory.createPolygon([...ring, ring[0]!].map(coordinate)) : lineOf(ring);
/** Metres from a path to what an obstacle covers. */
const away = (path: readonly Point[], { round, ring }: Obstacle): number =>
	round
		? Math.max(0, DistanceOp.distance(lineOf(path), factory.createPoint(coordinate(round.at))) - round.radius)
		: DistanceOp.distance(lineOf(path), ringOf(ring));
const isPaving = ({ kind }: Obstacle) => kind === 'walk' || kind === 'drive';
const isSolid = (o: Obstacle) => !isPaving(o) && o.kind !== 'wall';

/** Bends between places in the open: the first is terminal 0, the others 1, 2, … */
function bendsOn(site: Site, at: readonly Point[]) {
	const ground = makeGround(obstaclesOf(site, true));
	const terminals = at.map((p) => ground.terminal(p));
	return { ground, terminals, way: new Bends(site, ground, terminals).way };
}
const laid = (bent: DrawnWay | Blocked): DrawnWay => {
	if (isBlocked(bent)) throw new Error(`blocked: ${JSON.stringify(bent)}`);
	return bent;
};
const blocked = (bent: DrawnWay | Blocked): Blocked => {
	if (!isBlocked(bent)) throw new Error('not blocked');
	return bent;
};

const house = withHouse(emptySite(), 10, 8);
const [left, right] = [
	{ x: -4, y: 6 },
	{ x: 14, y: 6 }
];

describe('a cable bent in the open', () => {
	const { way } = bendsOn(house, [left, right]);
	it('runs straight from bend to bend, and is as long as its pieces', () => {
		const via = [
			{ x: 0, y: 10 },
			{ x: 6, y: 3 },
			{ x: 9, y: 8 }
		];
		const { route, close, under } = laid(way(0, 1, via));
		expect(route.path).toEqual([left, ...via, right]);
		expect(route.length).toBeCloseTo(lineOf([left, ...via, right]).getLength(), 9);
		expect([route.crossings, close, under]).toEqual([[], [], []]);
	});
	it('is the same backwards', () => {
		const via = [
			{ x: 0, y: 10 },
			{ x: 6, y: 3 }
		];
		expect(laid(way(1, 0, via.toReversed())).route.path).toEqual(laid(way(0, 1, via)).route.path.toReversed());
	});
	it('takes bends on one spot, and on its ends, for what they are', () => {
		const p = { x: 5, y: 9 };
		expect(laid(way(0, 1, [left, p, p, right])).route.path).toEqual([left, p, right]);
	});
});

describe('what is in the way', () => {
	it('is the house, where the cable runs into it', () => {
		const { way } = bendsOn(house, [left, right]);
		expect(blocked(way(0, 1, [{ x: 5, y: -2 }]))).toEqual({
			why: 'through',
			name: 'the house',
			// From (−4, 6) to (5, −2) the front, y = 0, is met at x = −4 + 9 × 6 ÷ 8.
			at: { x: expect.closeTo(2.75, 9), y: expect.closeTo(0, 9) }
		});
	});
	it('is water, a trunk, or paving that is no walk', () => {
		const site: Site = {
			...house,
			trees: [treeOf('oak', { x: 5, y: 6 }, 0.6)],
			areas: [
				areaOf('water', 'pond', [...circle({ x: 0, y: 12 }, 1.5)]),
				areaOf('paved', 'patio', [...rectangle({ x: 8, y: 9 }, { x: 11, y: 12 })])
			]
		};
		const { way } = bendsOn(site, [left, right]);
		const trunk = blocked(way(0, 1, [{ x: 12, y: 6 }]));
		expect(trunk).toMatchObject({ why: 'through', name: 'the oak', at: { x: expect.closeTo(4.7, 6), y: 6 } });
		expect(blocked(way(0, 1, [{ x: 0, y: 12 }])).name).toBe('the pond');
		expect(blocked(way(0, 1, [{ x: 5, y: 10 }, { x: 13, y: 10 }])).name).toBe('the patio'); // prettier-ignore
	});
	it('is the edge of the lot', () => {
		const { way } = bendsOn(house, [left, right]);
		expect(blocked(way(0, 1, [{ x: 5, y: 20.5 }]))).toMatchObject({ why: 'lot', name: 'the street' });
		expect(blocked(way(0, 1, [{ x: -16, y: 5 }]))).toMatchObject({ why: 'lot', name: 'the boundary' });
	});
	it('is too near where it comes closer than the plan keeps, and says how near', () => {
		const { way } = bendsOn(house, [left, right]);
		const { close } = laid(way(0, 1, [{ x: -1, y: 0.05 }, { x: 11, y: 0.05 }])); // prettier-ignore
		expect(close).toEqual([
			{ name: 'the house', distance: expect.closeTo(0.05, 9), keeps: 0.15, at: expect.anything() }
		]);
	});
});

describe('under a walk', () => {
	const walk = (crossings: Parameters<typeof stripOf>[4] = []) =>
		stripOf('walk', 'walk', [{ x: 5, y: 20 }, { x: 5, y: 0 }], 1.2, crossings); // prettier-ignore
	const through = (site: Site, via: Point[]) => bendsOn(site, [left, right]).way(0, 1, via);
	const above = { x: 2, y: 12 };

	it('it is bored from a clearance before one edge to a clearance beyond the other', () => {
		const { route } = laid(through({ ...house, strips: [walk()] }, [above, { x: 8, y: 12 }]));
		expect(route.crossings).toEqual([{ strip: 'walk', crossing: null, kind: 'bore', length: expect.closeTo(1.4, 9) }]);
		expect(route.path).toContainEqual({ x: expect.closeTo(4.3, 9), y: 12 });
		expect(route.length).toBeCloseTo(lineOf([left, above, { x: 8, y: 12 }, right]).getLength(), 9);
	});
	it('it takes a declared crossing that it passes within 300 mm of, and goes through both its ends', () => {
		const sleeve = { id: 'sleeve', at: 8.2, kind: 'sleeve' as const };
		const { route } = laid(through({ ...house, strips: [walk([sleeve])] }, [above, { x: 8, y: 12 }]));
		expect(route.crossings).toEqual([
			{ strip: 'walk', crossing: 'sleeve', kind: 'sleeve', length: expect.closeTo(1.4, 9) }
		]);
		for (const x of [4.3, 5.7])
			expect(route.path).toContainEqual({ x: expect.closeTo(x, 9), y: expect.closeTo(11.8, 9) });
	});
	it('it does not take one further off, or one that it only passes one end of', () => {
		const far = { id: 'far', at: 8.4, kind: 'sleeve' as const };
		expect(laid(through({ ...house, strips: [walk([far])] }, [above, { x: 8, y: 12 }])).route.crossings).toEqual([
			expect.objectContaining({ crossing: null })
		]);
		const askew = { id: 'askew', at: 8, kind: 'sleeve' as const };
		expect(laid(through({ ...house, strips: [walk([askew])] }, [above, { x: 8, y: 9 }])).route.crossings).toEqual([
			expect.objectContaining({ crossing: null, kind: 'bore' })
		]);
	});
	it('it cannot bend, or pass under steps', () => {
		expect(blocked(through({ ...house, strips: [walk()] }, [{ x: 5.2, y: 12 }]))).toMatchObject({ why: 'bend' });
		const stepped = { ...walk(), steps: [{ id: 'flight', start: 7, end: 9, treads: 4 }] };
		expect(blocked(through({ ...house, strips: [stepped] }, [above, { x: 8, y: 12 }]))).toMatchObject({
			why: 'steps',
			name: 'the walk'
		});
	});
	it('two walks that overlap are bored one after the other, none of it twice', () => {
		const other = stripOf('drive', 'drive', [{ x: 6, y: 20 }, { x: 6, y: 0 }], 2, []); // prettier-ignore
		const { route } = laid(through({ ...house, strips: [walk(), other] }, [above, { x: 9, y: 12 }]));
		expect(route.crossings.map(({ strip }) => strip)).toEqual(['walk', 'drive']);
		const bored = route.crossings.reduce((sum, { length }) => sum + length, 0);
		// From 4.4 to 7, and a clearance at either end.
		expect(bored).toBeCloseTo(2.8, 9);
	});
});

/** The same ground seen in a mirror along the front, as far as cables meet it. */
function mirrored(site: Site): Site {
	const flip = ({ x, y }: Point): Point => ({ x: -x, y });
	return {
		...site,
		house: site.house.map(flip),
		trees: site.trees.map((tree) => ({ ...tree, at: flip(tree.at) })),
		areas: site.areas.map((area) => ({ ...area, polygon: area.polygon.map(flip) })),
		strips: site.strips.map((strip) => ({
			...strip,
			centre: strip.centre.map(flip),
			polygon: strip.polygon.map(flip),
			crossings: strip.crossings.map((c) => ({ ...c, left: flip(c.right), right: flip(c.left) }))
		})),
		leftBoundary: -site.rightBoundary,
		rightBoundary: -site.leftBoundary
	};
}

describe('on random ground', { timeout: 600_000 }, () => {
	const rounds = process.env.LONG ? 3000 : 300;
	it(`lies clear of all that is solid, or is stopped by it, as JSTS measures, on ${rounds} of them`, () => {
		const seen = { laid: 0, through: 0, bend: 0, lot: 0, steps: 0, bored: 0, declared: 0, close: 0 };
		for (let seed = 1; seed <= rounds; seed++) {
			const { site, fixtures } = randomGround(seed, 2);
			const random = generator(seed * 7 + 1);
			const anywhere = (): Point => ({ x: -9 + 32 * random(), y: -1 + (site.street + 1.5) * random() });
			const { ground, terminals, way } = bendsOn(
				site,
				fixtures.map(({ at }) => at)
			);
			if (terminals.some(({ within }) => within)) continue;
			const via = Array.from({ length: 1 + Math.floor(3 * random()) }, anywhere);
			const straight = [terminals[0]!.ground, ...via, terminals[1]!.ground];
			const bent = way(0, 1, via);
			const solid = ground.obstacles.filter(isSolid);
			if (isBlocked(bent)) {
				seen[bent.why]++;
				const named = ground.obstacles.filter(({ name }) => name === bent.name);
				// Never a false alarm: what is named is met, or holds a bend, or lies beyond the lot.
				if (bent.why === 'through')
					expect(Math.min(...named.map((o) => away(straight, o))), `seed ${seed}`).toBeLessThan(0.01);
				if (bent.why === 'bend') expect(Math.min(...named.map((o) => away([bent.at, bent.at], o)))).toBeLessThan(1e-6);
				if (bent.why === 'lot')
					expect(via.some(({ x, y }) => y > site.street || x < site.leftBoundary || x > site.rightBoundary)).toBe(true);
				continue;
			}
			seen.laid++;
			const { route, close } = bent;
			// Without the ends that lead a light out of what it stands in.
			const from = route.path.findIndex(({ x, y }) => x === straight[0]!.x && y === straight[0]!.y);
			const to = route.path.findLastIndex(({ x, y }) => x === straight.at(-1)!.x && y === straight.at(-1)!.y);
			const path = route.path.slice(from, to + 1);
			for (const o of solid) {
				const metres = away(path, o);
				expect(metres, `seed ${seed} ${o.name}`).toBeGreaterThan(0);
				const said = close.find(({ name }) => name === o.name);
				if (said) expect(metres).toBeLessThanOrEqual(said.distance + 1e-6);
				const stands = terminals.map(({ stand }) => stand[ground.obstacles.indexOf(o)]!);
				if (metres < Math.min(o.clearance, ...stands) - 1e-6) expect(said, `seed ${seed} ${o.name}`).toBeDefined();
			}
			seen.close += close.length;
			if (route.crossings.every(({ crossing }) => crossing === null))
				expect(lineOf(path).getLength(), `seed ${seed}`).toBeCloseTo(lineOf(straight).getLength(), 6);
			// Each metre under paving is in a crossing, and little besides.
			const paving = ground.obstacles.filter(isPaving).map(({ ring }) => ringOf(ring));
			const cover = OverlayOp.union(paving[0], paving[1]);
			// Leg by leg: a cable may come back through the sleeve that it went by.
			const inside = path.slice(1).reduce((sum, p, k) => {
				const leg = lineOf([path[k]!, p]);
				return sum + (OverlayOp.intersection(leg, cover).getLength() as number);
			}, 0);
			const crossed = route.crossings.reduce((sum, { length }) => sum + length, 0);
			expect(crossed, `seed ${seed}`).toBeGreaterThan(inside - 1e-6);
			expect(crossed, `seed ${seed}`).toBeLessThan(inside + 0.45 * route.crossings.length + 1e-6);
			for (const { crossing, length } of route.crossings) {
				seen[crossing === null ? 'bored' : 'declared']++;
				const legs = route.path.slice(1).map((p, k) => Math.hypot(p.x - route.path[k]!.x, p.y - route.path[k]!.y));
				expect(legs.some((leg) => Math.abs(leg - length) < 1e-9)).toBe(true);
			}
		}
		for (const which of ['laid', 'through', 'bend', 'lot', 'bored', 'close'] as const)
			expect(seen[which], which).toBeGreaterThan(rounds / 60);
	});
	it(`is mirrored with its ground, on ${rounds} of them`, () => {
		const flip = ({ x, y }: Point): Point => ({ x: -x, y });
		const told = (bent: DrawnWay | Blocked) =>
			isBlocked(bent)
				? [bent.why, bent.name, -bent.at.x, bent.at.y]
				: [
						bent.route.length,
						...bent.route.crossings.map(({ length }) => length),
						...bent.close.map((one) => one.distance)
					];
		const numbers = (list: (string | number)[]) =>
			list.map((one) => (typeof one === 'number' ? one.toFixed(5).replace('-0.00000', '0.00000') : one));
		for (let seed = 1; seed <= rounds; seed++) {
			const { site, fixtures } = randomGround(seed, 2);
			const random = generator(seed * 5 + 2);
			const via = [0, 1].map((): Point => ({ x: -9 + 32 * random(), y: site.street * random() }));
			const at = fixtures.map((one) => one.at);
			const here = told(bendsOn(site, at).way(0, 1, via));
			const there = bendsOn(mirrored(site), at.map(flip)).way(0, 1, via.map(flip));
			const back = isBlocked(there) ? { ...there, at: flip(there.at) } : there;
			expect(numbers(told(back)), `seed ${seed}`).toEqual(numbers(here));
		}
	});
});
