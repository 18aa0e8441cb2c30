import { describe, expect, it } from 'vitest';
import type { Point } from '../shared/geometry';
import { layingCosts } from './costs';
import { makeGround } from './ground';
import { obstaclesOf, type Obstacle } from './obstacles';
import { findRoutes } from './paths';
import { areaOf, emptySite, generator, randomGround, stripOf, treeOf, withHouse } from './random.testing';
import { gap } from './grid.testing';
import { byLength } from './visibility.testing';

/** Shortest way over a fine grid, each step checked by `gap`: never shorter than the true one. */
function overGrid(obstacles: Obstacle[], from: Point, to: Point, size: number, cell: number): number {
	const n = Math.round(size / cell) + 1;
	const at = (k: number): Point => ({ x: (k % n) * cell, y: Math.floor(k / n) * cell });
	const open = (a: Point, b: Point) => obstacles.every((o) => gap(o, a, b) >= o.clearance - 1e-6);
	const steps: [number, number][] = [];
	for (let dx = -3; dx <= 3; dx++)
		for (let dy = -3; dy <= 3; dy++) if ((dx || dy) && Math.abs(gcd(dx, dy)) === 1) steps.push([dx, dy]);
	const index = (p: Point) => Math.round(p.y / cell) * n + Math.round(p.x / cell);
	const reach = new Float64Array(n * n).fill(Infinity);
	const buckets: number[][] = [];
	const put = (k: number, d: number) => (buckets[Math.floor(d / cell)] ??= []).push(k);
	reach[index(from)] = 0;
	put(index(from), 0);
	for (let b = 0; b < buckets.length; b++) {
		for (let i = 0; i < (buckets[b]?.length ?? 0); i++) {
			const k = buckets[b]![i]!;
			if (Math.floor(reach[k]! / cell) !== b) continue;
			for (const [dx, dy] of steps) {
				const x = (k % n) + dx;
				const y = Math.floor(k / n) + dy;
				if (x < 0 || y < 0 || x >= n || y >= n) continue;
				const next = y * n + x;
				const d = reach[k]! + Math.hypot(dx, dy) * cell;
				if (d >= reach[next]! - 1e-12 || !open(at(k), at(next))) continue;
				reach[next] = d;
				put(next, d);
			}
		}
	}
	return reach[index(to)]!;
}
const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

describe('shortest ways', () => {
	it('agrees with a fine grid on seeded obstacles', () => {
		const rounds = process.env.LONG ? 60 : 8;
		let compared = 0;
		for (let seed = 1; seed <= rounds; seed++) {
			const random = generator(seed * 977);
			const spot = (): Point => ({ x: Math.round(random() * 40) / 5, y: Math.round(random() * 40) / 5 });
			const site = {
				...emptySite(),
				street: 8,
				leftBoundary: 0,
				rightBoundary: 8,
				trees: Array.from({ length: 3 }, (_, i) => treeOf(`t${i}`, spot(), 0.3 + random())),
				areas: Array.from({ length: 3 }, (_, i) => {
					const p = spot();
					const [w, h, skew] = [0.5 + random() * 2, 0.5 + random() * 2, random()];
					const ring = [
						p,
						{ x: p.x + w, y: p.y + skew },
						{ x: p.x + w, y: p.y + h + skew },
						{ x: p.x + w * skew, y: p.y + h * 0.6 }
					];
					return areaOf('seating', `a${i}`, ring);
				})
			};
			const ground = makeGround(obstaclesOf(site, true));
			const ends = Array.from({ length: 12 }, spot).filter((p) => p.y > 0.2 && ground.free(p, -1));
			for (let i = 0; i + 1 < ends.length && i < 2; i += 2) {
				const [from, to] = [ends[i]!, ends[i + 1]!];
				const { costs } = findRoutes(site, ground, [ground.terminal(from), ground.terminal(to)], byLength);
				const grid = overGrid(ground.obstacles, from, to, 8, 0.2);
				if (grid === Infinity || from === to) continue;
				compared++;
				expect(costs[1]!).toBeLessThanOrEqual(grid + 1e-6);
				// Steps of up to three cells overstate a length by at most 1.4 %; gaps narrower than a cell by more.
				expect(grid).toBeLessThan(costs[1]! * 1.03 + 0.5);
			}
		}
		expect(compared).toBeGreaterThan(rounds / 2);
	});

	it('goes round a square by its corners: worked by hand', () => {
		const site = {
			...emptySite(),
			areas: [
				areaOf('seating', 's', [
					{ x: 4, y: 4 },
					{ x: 6, y: 4 },
					{ x: 6, y: 6 },
					{ x: 4, y: 6 }
				])
			]
		};
		const ground = makeGround(obstaclesOf(site, true));
		const routes = findRoutes(
			site,
			ground,
			[
				{ x: 0, y: 5 },
				{ x: 10, y: 5 }
			].map((p) => ground.terminal(p)),
			byLength
		);
		// Corner at its clearance of 0.1: (3.9, 3.9) or (3.9, 6.1), then 2.2 straight on.
		expect(routes.route(0, 1)!.length).toBeCloseTo(2 * Math.hypot(3.9, 1.1) + 2.2, 6);
	});

	it('goes round a corner of the house from within its clearance', () => {
		const site = withHouse(emptySite(), 10, 8);
		const ground = makeGround(obstaclesOf(site, true));
		const ends = [
			{ x: 10.1, y: -1 },
			{ x: 9, y: 0.05 }
		].map((p) => ground.terminal(p));
		const routes = findRoutes(site, ground, ends, byLength);
		// By the corner at its clearance of 0.15: (10.15, 0.15).
		expect(routes.route(0, 1)!.length).toBeCloseTo(Math.hypot(0.05, 1.15) + Math.hypot(1.15, 0.1), 6);
	});

	it('takes a sleeve rather than a bore, and goes round the house end where the lot allows', () => {
		const walk = stripOf(
			'walk',
			'walk',
			[
				{ x: 5, y: 20 },
				{ x: 5, y: 0 }
			],
			1.2,
			[{ id: 'sleeve', at: 4, kind: 'sleeve' }]
		);
		const site = { ...withHouse(emptySite(), 10, 6), strips: [walk] };
		const ground = makeGround(obstaclesOf(site, true));
		const terminals = [
			{ x: 3, y: 14 },
			{ x: 7, y: 14 }
		].map((p) => ground.terminal(p));
		const route = findRoutes(site, ground, terminals, layingCosts).route(0, 1)!;
		expect(route.crossings).toEqual([
			{ strip: 'walk', crossing: 'sleeve', kind: 'sleeve', length: expect.closeTo(1.4, 6) }
		]);
		const bored = findRoutes({ ...site, strips: [{ ...walk, crossings: [] }] }, ground, terminals, layingCosts).route(
			0,
			1
		)!;
		expect(bored.crossings).toMatchObject([{ crossing: null, kind: 'bore' }]);
		const short = stripOf(
			'walk',
			'walk',
			[
				{ x: 5, y: 20 },
				{ x: 5, y: 12 }
			],
			1.2
		);
		const open = { ...site, strips: [short] };
		const round = makeGround(obstaclesOf(open, true));
		const way = findRoutes(
			open,
			round,
			terminals.map((t) => round.terminal(t.at)),
			layingCosts
		).route(0, 1)!;
		expect(way.crossings).toEqual([]);
		expect(way.length).toBeCloseTo(2 * Math.hypot(1.3, 2.1) + 1.4, 6);
	});
});

describe('ways never go through things', { timeout: 600_000 }, () => {
	const rounds = process.env.LONG ? 10_000 : 300;
	it(`keeps out of house, water and trunks and crosses paving only at crossings on ${rounds} seeded grounds`, () => {
		let reached = 0;
		let asked = 0;
		for (let seed = 1; seed <= rounds; seed++) {
			const { site, fixtures } = randomGround(seed, 6);
			const ground = makeGround(obstaclesOf(site, true));
			const terminals = fixtures.map((fixture) => ground.terminal(fixture.at));
			const routes = findRoutes(site, ground, terminals, layingCosts);
			for (let i = 0; i < terminals.length; i++) {
				for (let j = i + 1; j < terminals.length; j++) {
					if (terminals[i]!.within || terminals[j]!.within) continue;
					asked++;
					const route = routes.route(i, j);
					if (!route) continue;
					reached++;
					let crossed = 0;
					for (let k = 1; k < route.path.length; k++) {
						const [a, b] = [route.path[k - 1]!, route.path[k]!];
						// The stub from a fixture in an edge to open ground is not trench.
						if (a === terminals[i]!.at && a !== terminals[i]!.ground) continue;
						if (b === terminals[j]!.at && b !== terminals[j]!.ground) continue;
						const hit = ground.obstacles.filter((o) => gap(o, a, b) < 1e-9);
						if (hit.length === 0) continue;
						const crossing = route.crossings[crossed++];
						if (
							hit.length !== 1 ||
							hit[0]!.id !== crossing?.strip ||
							Math.abs(Math.hypot(a.x - b.x, a.y - b.y) - crossing.length) > 1e-6
						)
							throw new Error(`seed ${seed}: ${hit.map((o) => o.id).join()} cut from ${JSON.stringify([a, b])}`);
					}
					expect(crossed).toBe(route.crossings.length);
				}
			}
		}
		expect(reached / asked).toBeGreaterThan(0.95);
	});
});
