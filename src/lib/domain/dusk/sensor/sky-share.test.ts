/**
 * The share of the sky against configuration factors of a small plane element: strips and overhangs without end (Hottel's crossed
 * strings), rectangles parallel and square to the element (Howell, A Catalog of Radiation Heat Transfer Configuration Factors, B-3
 * and B-4), a sphere (Howell, B-42). Formulae from memory, their limits checked here. Then against rays thrown evenly.
 */
import { describe, expect, it } from 'vitest';
import { makeSite } from '../../site';
import { screenOf, lidOf } from '../../light';
import { blankYard } from '../../yard';
import { randomYard } from '../../yard/random.testing';
import type { Crown, Obstacles } from './obstacles';
import { obstaclesOf } from './obstacles';
import { shareByRays } from './rays.testing';
import { coarsely, fairly, finely, skyShare, type Pane } from './sky-share';

const pane: Pane = { x: 0, y: 0, z: 1.5, nx: 0, ny: 1 };
const nothing: Obstacles = { takers: [{ kind: 'wall', id: 'one', name: 'one' }], screens: [], lids: [], crowns: [] };
/** A wall `distance` before the window from x to x, rising so far above it. */
const wall = (distance: number, from: number, to: number, above: number): Obstacles => ({
	...nothing,
	screens: [{ shape: screenOf({ x: from, y: distance }, { x: to, y: distance }, 1.5 + above, null)!, taker: 0 }]
});
/** A flat roof so far above the window from its wall out to a depth. */
const roof = (above: number, from: number, to: number, depth: number): Obstacles => ({
	...nothing,
	lids: [
		{
			shape: lidOf(
				[
					{ x: from, y: -1 },
					{ x: to, y: -1 },
					{ x: to, y: depth },
					{ x: from, y: depth }
				],
				1.5 + above
			),
			taker: 0
		}
	]
});
const crown = (over: Partial<Crown>): Obstacles => ({
	...nothing,
	crowns: [{ shape: { x: 0, y: 10, z: 6, radius: 2, half: 2, leafOn: 0, leafOff: 0.5, ...over }, taker: 0 }]
});
const taken = (obstacles: Obstacles): number => skyShare(obstacles, pane).taken[0]!;

/** B-3: to a rectangle a by b in a parallel plane at a distance, a corner of it on the normal. */
function parallel(a: number, b: number, distance: number): number {
	const [x, y] = [a / distance, b / distance];
	const part = (p: number, q: number): number => (p / Math.hypot(1, p)) * Math.atan(q / Math.hypot(1, p));
	return (part(x, y) + part(y, x)) / (2 * Math.PI);
}
/** B-4: to a rectangle square to the element's plane, which meets it `above` the element; `a` along that line, `depth` out. */
function square(a: number, depth: number, above: number): number {
	const far = Math.hypot(above, depth);
	return (Math.atan(a / above) - (above / far) * Math.atan(a / far)) / (2 * Math.PI);
}
/** Factor of an upright element to the sky in the open: half of what a level one sees. */
const open = 1 / 2;

describe('against configuration factors', () => {
	it('nothing in the way leaves all of it', () => {
		const { leafOn, leafOff } = skyShare(nothing, pane);
		expect(leafOn).toBeCloseTo(1, 12);
		expect(leafOff).toBeCloseTo(1, 12);
	});
	it.each([0.2, 1, 3, 20])('a wall without end 3 m off, %f m above it: 1 − sin of its elevation', (above) => {
		const share = skyShare(wall(3, -1e6, 1e6, above), pane).leafOn;
		expect(share).toBeCloseTo(1 - above / Math.hypot(3, above), 2);
	});
	it.each([0.1, 0.5, 1.5, 6])(
		'eaves without end, 0.6 m deep, %f m above it: the sine of the edge’s elevation',
		(above) => {
			const share = skyShare(roof(above, -1e6, 1e6, 0.6), pane).leafOn;
			expect(share).toBeCloseTo(above / Math.hypot(above, 0.6), 2);
		}
	);
	it.each([
		[3, -2, 5, 2],
		[1, 0.5, 4, 6],
		[8, -1, 1, 1]
	])('a wall %f m off from %f to %f, %f m above it', (distance, from, to, above) => {
		const corner = (x: number): number => Math.sign(x) * parallel(Math.abs(x), above, distance);
		expect(Math.abs(taken(wall(distance, from, to, above)) - (corner(to) - corner(from)) / open)).toBeLessThan(0.004);
	});
	it.each([
		[0.4, -2, 5, 0.6],
		[1.2, 0.5, 4, 1.5],
		[3, -1, 1, 4]
	])('a roof %f m above it from %f to %f, %f m deep', (above, from, to, depth) => {
		const corner = (x: number): number => Math.sign(x) * square(Math.abs(x), depth, above);
		expect(Math.abs(taken(roof(above, from, to, depth)) - (corner(to) - corner(from)) / open)).toBeLessThan(0.004);
	});
	it('the two rectangles grow into the strips without end', () => {
		expect((2 * parallel(1e7, 2, 3)) / open).toBeCloseTo(2 / Math.hypot(2, 3), 6);
		expect((2 * square(1e7, 0.6, 0.4)) / open).toBeCloseTo(1 - 0.4 / Math.hypot(0.4, 0.6), 6);
	});
	it.each([
		[0, 10, 6, 2],
		[4, 6, 5, 3],
		[-5, 5, 9, 2.5]
	])('a round crown at %f, %f, %f m, %f m in radius: (r/d)² cos θ', (x, y, z, radius) => {
		const d = Math.hypot(x, y, z - 1.5);
		const factor = (radius / d) ** 2 * (y / d);
		const { leafOn, leafOff } = skyShare(crown({ x, y, z, radius, half: radius }), pane);
		expect(Math.abs(1 - leafOn - factor / open)).toBeLessThan(0.004);
		// Half of it passes without leaves.
		expect(Math.abs(1 - leafOff - factor / open / 2)).toBeLessThan(0.002);
	});
	it('an upright window sees half of the sky that a level one sees, by rays', () => {
		expect(shareByRays(nothing, pane, 20_000).sky).toBeCloseTo(open, 3);
	});
	it('inside a crown all passes it once', () => {
		expect(skyShare(crown({ y: 0.5, z: 1.5 }), pane).leafOff).toBeCloseTo(0.5, 12);
	});
	it('eaves of a house, as the site has them: a box 10 m long, the edge 0.55 m before the window', () => {
		const yard = {
			...blankYard(),
			house: { sections: [{ id: 'front', width: 10 }], depth: 8, eaves: 3, openings: [], porches: [] }
		};
		const obstacles = obstaclesOf(makeSite(yard), yard);
		const under = { x: 3, y: 0.05, z: 2.6, nx: 0, ny: 1 };
		const share = skyShare(obstacles, under);
		const eaves = (square(3, 0.55, 0.4) + square(7, 0.55, 0.4)) / open;
		expect(Math.abs(share.leafOn - (1 - eaves))).toBeLessThan(0.004);
		expect(share.taken[obstacles.takers.findIndex(({ kind }) => kind === 'eaves')]).toBeCloseTo(1 - share.leafOn, 9);
	});
});

describe('in yards at random', () => {
	/** Windows here and there, in and about the yard. */
	const spots = (seed: number): Pane[] =>
		[0, 1, 2].map((i) => {
			const turn = ((seed * 7 + i * 3) % 16) * (Math.PI / 8);
			return {
				x: ((seed * 3 + i * 5) % 14) - 2,
				y: ((seed + i * 4) % 9) - 1,
				z: 0.4 + i,
				nx: Math.sin(turn),
				ny: Math.cos(turn)
			};
		});
	const seeds = Array.from({ length: process.env['LONG'] ? 1000 : 100 }, (_, i) => i + 1);
	const yards = seeds.map((seed) => {
		const yard = randomYard(seed);
		return { seed, obstacles: obstaclesOf(makeSite(yard), yard) };
	});
	it('evenly thrown rays find the same share within 0.01 + their own scatter', () => {
		for (const { seed, obstacles } of yards.slice(0, process.env['LONG'] ? 300 : 30))
			for (const spot of spots(seed)) {
				const share = skyShare(obstacles, spot);
				const thrown = shareByRays(obstacles, spot, 6000);
				expect(Math.abs(share.leafOn - thrown.leafOn), `yard ${seed}`).toBeLessThan(0.018);
				expect(Math.abs(share.leafOff - thrown.leafOff), `yard ${seed}`).toBeLessThan(0.018);
			}
	});
	it('360 ways of looking are within 0.01 of 5,000, 120 within 0.02 and 36 within 0.05', () => {
		for (const { seed, obstacles } of yards.slice(0, 60)) {
			const spot = spots(seed)[0]!;
			const exact = skyShare(obstacles, spot, 5000).leafOn;
			for (const [rays, error] of [
				[finely, 0.01],
				[fairly, 0.02],
				[coarsely, 0.05]
			] as const)
				expect(Math.abs(skyShare(obstacles, spot, rays).leafOn - exact), `yard ${seed}`).toBeLessThan(error);
		}
	});
	it('shares lie from 0 to 1, bare crowns let no less through, and what is taken makes up the rest', () => {
		for (const { seed, obstacles } of yards)
			for (const spot of spots(seed)) {
				const { leafOn, leafOff, taken: parts } = skyShare(obstacles, spot);
				expect(leafOn, `yard ${seed}`).toBeGreaterThanOrEqual(0);
				expect(leafOff, `yard ${seed}`).toBeLessThanOrEqual(1);
				expect(leafOff, `yard ${seed}`).toBeGreaterThanOrEqual(leafOn);
				expect(parts.every((part) => part >= 0)).toBe(true);
				expect(parts.reduce((sum, part) => sum + part, leafOn)).toBeCloseTo(1, 9);
			}
	});
	it('without one of its obstacles a window gets no less', () => {
		for (const { seed, obstacles } of yards) {
			const spot = spots(seed)[1]!;
			const { leafOn } = skyShare(obstacles, spot, coarsely);
			for (const kind of ['screens', 'lids', 'crowns'] as const)
				for (let i = 0; i < obstacles[kind].length; i++) {
					const less = { ...obstacles, [kind]: obstacles[kind].filter((_, j) => j !== i) };
					expect(skyShare(less, spot, coarsely).leafOn, `yard ${seed}`).toBeGreaterThanOrEqual(leafOn - 1e-12);
				}
		}
	});
});
