import { describe, expect, it } from 'vitest';
import type { Point } from '../shared/geometry';
import { makeGround } from './ground';
import { obstaclesOf } from './obstacles';
import { findRoutes } from './paths';
import { areaOf, emptySite, generator, treeOf, withHouse } from './random.testing';
import { byLength, shortestByJsts, tooNear } from './visibility.testing';

/** A house, trunks, and areas of odd shape, corners turned in and sharp ones among them. */
function strewn(seed: number) {
	const random = generator(seed * 7919);
	const between = (low: number, high: number) => low + (high - low) * random();
	const spot = (): Point => ({ x: between(-2, 14), y: between(0.3, 12) });
	const areas = Array.from({ length: 3 + Math.floor(random() * 4) }, (_, i) => {
		const middle = spot();
		const corners = 3 + Math.floor(random() * 5);
		const ring = Array.from({ length: corners }, (__, k) => {
			const angle = (2 * Math.PI * (k + 0.6 * random())) / corners;
			const reach = between(0.3, 2.2);
			return { x: middle.x + reach * Math.cos(angle), y: middle.y + reach * Math.sin(angle) };
		});
		return areaOf((['seating', 'paved', 'water'] as const)[i % 3]!, `area-${i}`, ring);
	});
	const trees = Array.from({ length: Math.floor(random() * 6) }, (_, i) =>
		treeOf(`tree-${i}`, spot(), between(0.1, 1.2))
	);
	const site = {
		...withHouse(emptySite(), between(6, 12), 6),
		street: 40,
		leftBoundary: -40,
		rightBoundary: 60,
		areas,
		trees
	};
	const obstacles = obstaclesOf(site, true);
	const ground = makeGround(obstacles);
	const ends = Array.from({ length: 40 }, spot).filter((p) => ground.free(p, -1));
	return { site, obstacles, from: ends[0]!, to: ends.at(-1)! };
}

/** Metres that a gap must have to spare beyond the clearances for a way through it to be asked for. */
const toSpare = 0.02;
/** Corners at their clearance stand a little off the arc that a tight cable would take. */
const cutCorners = 1.025;

describe('shortest ways against JSTS', { timeout: 3_600_000 }, () => {
	const rounds = process.env.LONG ? 1000 : 100;
	it(`keep clear, and are as short as can be but for cut corners, on ${rounds} seeded sets of obstacles`, () => {
		let tight = 0;
		let bent = 0;
		for (let seed = 1; seed <= rounds; seed++) {
			const { site, obstacles, from, to } = strewn(seed);
			const routeIn = (isFine: boolean) => {
				const ground = makeGround(obstacles, isFine);
				return findRoutes(site, ground, [ground.terminal(from), ground.terminal(to)], byLength).route(0, 1);
			};
			const route = routeIn(false) ?? routeIn(true);
			const least = shortestByJsts(obstacles, from, to);
			const length = route?.length ?? Infinity;
			expect(length, `seed ${seed}`).toBeGreaterThan(least - 1e-4);
			if (route) expect(tooNear(route.path, obstacles), `seed ${seed}`).toBeLessThan(1e-6);
			if (route && route.path.length > 2) bent++;
			if (length <= cutCorners * least) continue;
			tight++;
			const wider = obstacles.map((o) => ({ ...o, clearance: o.clearance + toSpare }));
			expect(length, `seed ${seed}`).toBeLessThanOrEqual(cutCorners * shortestByJsts(wider, from, to));
		}
		expect(tight).toBeLessThanOrEqual(rounds / 200);
		expect(bent).toBeGreaterThan(rounds / 4);
	});
});
