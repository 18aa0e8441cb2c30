/** What casts shadows, case by case, and against triangles met by the Möller–Trumbore test (J. Graphics Tools 2(1), 1997). */
import { assert, integer, property, record } from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Vector } from '../photometry';
import { makeSite } from '../site';
import { examples } from '../yard';
import { fieldOf } from './field';
import { isBlocked, screenOf, shadowsOf, type Shadows } from './shadows';
import { fixtureOf, siteWith, wallOf } from './small.testing';
import { sourceOf } from './sources';

const blocked = (shadows: Shadows, p: Vector, s: Vector): boolean => isBlocked(shadows, p.x, p.y, p.z, s.x, s.y, s.z);
const at = (x: number, y: number, z: number): Vector => ({ x, y, z });
const square = [at(0, -6, 0), at(0, 0, 0), at(8, 0, 0), at(8, -6, 0)];
const house = siteWith({
	bounds: { minX: -5, minY: -10, maxX: 13, maxY: 6 },
	house: square,
	eaves: 3,
	walls: [wallOf(0, 8, 3, { of: 'house', peak: 5 })]
});

describe('case by case', () => {
	const shadows = shadowsOf(house);
	it('round a house corner: seen past it, not through it', () => {
		expect(blocked(shadows, at(9, -3, 1), at(9, 3, 1))).toBe(false);
		expect(blocked(shadows, at(9, -3, 1), at(4, 3, 1))).toBe(true);
		expect(blocked(shadows, at(-1, -3, 1), at(9, -3, 1))).toBe(true);
	});
	it('over a garden wall by its height', () => {
		const wall = shadowsOf(siteWith({ walls: [wallOf(0, 8, 2)] }));
		// From 1 m high 2 m off to a lamp 2 m beyond: the line crosses half-way, at (1 + z) ÷ 2.
		expect(blocked(wall, at(4, 2, 1), at(4, -2, 2.9))).toBe(true);
		expect(blocked(wall, at(4, 2, 1), at(4, -2, 3.1))).toBe(false);
		expect(blocked(wall, at(9, 2, 1), at(9, -2, 1))).toBe(false);
	});
	it('a gable shades up to its slope, highest over the middle', () => {
		const { screens } = shadows;
		expect(screens.map(({ peak }) => peak)).toContain(5);
		// A bare gable wall, so that nothing else of the house is in the way.
		const gable: Shadows = { screens: [screenOf({ x: 0, y: 0 }, { x: 8, y: 0 }, 3, 5)!], lids: [] };
		expect(blocked(gable, at(4, 1, 4.9), at(4, -1, 4.9))).toBe(true);
		expect(blocked(gable, at(4, 1, 5.1), at(4, -1, 5.1))).toBe(false);
		// A quarter along the slope stands at 4 m.
		expect(blocked(gable, at(2, 1, 4.1), at(2, -1, 4.1))).toBe(false);
		expect(blocked(gable, at(2, 1, 3.9), at(2, -1, 3.9))).toBe(true);
	});
	it('eaves stop what goes up close to a side, and leave a gable alone', () => {
		expect(blocked(shadows, at(8.3, -3, 4), at(8.3, -3, 0.2))).toBe(true);
		expect(blocked(shadows, at(8.7, -3, 4), at(8.7, -3, 0.2))).toBe(false);
		expect(blocked(shadows, at(4, 0.3, 4), at(4, 0.3, 0.2))).toBe(false);
	});
	it('under a roofed porch it is dark from above, under an open one not', () => {
		const porch = (sort: string) => ({
			id: 'porch',
			name: '',
			kind: 'porch' as const,
			polygon: [at(0, 0, 0), at(2, 0, 0), at(2, 2, 0), at(0, 2, 0)],
			centre: { x: 1, y: 1 },
			light: 'none' as const,
			sort,
			under: 2.4
		});
		const [roofed, open] = ['roofed', 'open'].map((sort) => shadowsOf(siteWith({ areas: [porch(sort)] })));
		expect(blocked(roofed!, at(1, 1, 0), at(1, 1, 5))).toBe(true);
		expect(blocked(roofed!, at(1, 1, 0), at(1, 1, 2.3))).toBe(false);
		expect(blocked(open!, at(1, 1, 0), at(1, 1, 5))).toBe(false);
	});
	it('a wall does not shade its own face, and does shade the face behind', () => {
		const site = siteWith({ walls: [wallOf(0, 8, 2)] });
		const lamp = fixtureOf({ body: 'wash', at: { x: 4, y: 1 }, height: 0.2, aim: at(4, 0, 1) });
		const field = fieldOf([sourceOf(lamp, null)], shadowsOf(site));
		expect(field.lux(at(4, 0, 1), at(0, 1, 0))).toBeGreaterThan(10);
		expect(field.lux(at(4, 0, 1), at(0, -1, 0))).toBe(0);
		expect(field.lux(at(4, -2, 0), at(0, 0, 1))).toBe(0);
	});
});

/** Whether the segment p–s meets the triangle a, b, c. */
function meets(p: Vector, s: Vector, [a, b, c]: readonly [Vector, Vector, Vector]): boolean {
	const less = (q: Vector, r: Vector) => at(q.x - r.x, q.y - r.y, q.z - r.z);
	const cross = (q: Vector, r: Vector) => at(q.y * r.z - q.z * r.y, q.z * r.x - q.x * r.z, q.x * r.y - q.y * r.x);
	const dot = (q: Vector, r: Vector) => q.x * r.x + q.y * r.y + q.z * r.z;
	const [way, ab, ac] = [less(s, p), less(b, a), less(c, a)];
	const normal = cross(way, ac);
	const det = dot(ab, normal);
	if (Math.abs(det) < 1e-12) return false;
	const from = less(p, a);
	const u = dot(from, normal) / det;
	const q = cross(from, ab);
	const v = dot(way, q) / det;
	const t = dot(ac, q) / det;
	return u >= 0 && v >= 0 && u + v <= 1 && t > 0 && t < 1;
}

describe('against triangles', () => {
	const sites = [...examples.map(({ yard }) => makeSite(yard)), house];
	it.each(sites.map((site, i) => [examples[i]?.id ?? 'a house with a gable', site] as const))('%s', (_, site) => {
		const shadows = shadowsOf(site);
		const triangles = [
			...shadows.screens.flatMap(({ ax, ay, dx, dy, height, peak }) => {
				const [a, b] = [at(ax, ay, -1), at(ax + dx, ay + dy, -1)];
				const up = (p: Vector, z: number) => ({ ...p, z });
				const top = up(at(ax + dx / 2, ay + dy / 2, 0), peak);
				return [
					[a, b, up(b, height)],
					[a, up(b, height), up(a, height)],
					[up(a, height), up(b, height), top]
				] as [Vector, Vector, Vector][];
			}),
			// Convex lids as fans; others are cut by JSTS-checked `inPolygon`, here left to the cases above.
			...shadows.lids
				.filter(({ ring }) => ring.length === 4)
				.flatMap(({ ring, z }) => {
					const [a, b, c, d] = ring.map((p) => at(p.x, p.y, z)) as [Vector, Vector, Vector, Vector];
					return [
						[a, b, c],
						[a, c, d]
					] as [Vector, Vector, Vector][];
				})
		];
		const flat: Shadows = { screens: shadows.screens, lids: shadows.lids.filter(({ ring }) => ring.length === 4) };
		const { bounds } = site;
		// Whole millimetres and a bit: a point exactly in the plane of a wall is a matter of taste.
		const metres = (min: number, max: number) =>
			integer({ min: Math.ceil(min * 1000), max: Math.floor(max * 1000) }).map((mm) => mm / 1000 + 0.000_37);
		const place = record({ x: metres(bounds.minX, bounds.maxX), y: metres(bounds.minY, bounds.maxY), z: metres(0, 7) });
		let hidden = 0;
		assert(
			property(place, place, (p, s) => {
				const theirs = triangles.some((triangle) => meets(p, s, triangle));
				if (theirs) hidden++;
				expect(blocked(flat, p, s)).toBe(theirs);
			}),
			{ numRuns: process.env.LONG ? 20_000 : 2_000, seed: 5 }
		);
		expect(hidden).toBeGreaterThan(20);
	});
});
