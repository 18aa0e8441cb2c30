/** Snapping against JSTS, a port of the JTS Topology Suite: which edge is nearest and how far off its nearest point lies. */
import { array, assert, constantFrom, integer, property, record } from 'fast-check';
import { Coordinate, GeometryFactory } from 'jsts/org/locationtech/jts/geom.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import { describe, expect, test } from 'vitest';
import { makePlan } from '../../domain/plan';
import { readLength } from '../../domain/shared/read-length';
import { formatLengthFinely } from '../../domain/shared/units';
import { examples } from '../../domain/yard/examples';
import { snapped, snapWords, unsnapped } from './snap';
import { snapSources, type SnapSources } from './snap-sources';
import { kept } from './step';
import type { Point, SnapWish } from './types';

const plans = examples.map(({ yard }) => makePlan(yard));
const all = plans.map(snapSources);
const factory = new GeometryFactory();
const coordinate = ({ x, y }: Point) => new Coordinate(x, y);
const pointOf = (p: Point) => factory.createPoint(coordinate(p));
const lineOf = (a: Point, b: Point) => factory.createLineString([coordinate(a), coordinate(b)]);
const apart = (a: unknown, b: unknown): number => DistanceOp.distance(a, b) as number;

const runs = { numRuns: process.env.LONG ? 50_000 : 2_000, seed: 11 };
/** Evenly spread, which `double` is not. */
const share = integer({ min: 0, max: 1_000_000 }).map((n) => n / 1e6);
const wishOf = (more: Partial<SnapWish> = {}): SnapWish => ({ reach: 12, before: [], except: null, on: true, ...more });
const aCase = record({
	sources: constantFrom(...all),
	scale: constantFrom(6, 18, 40, 120, 400),
	x: share,
	y: share,
	/** Near an edge, so that there is something to be drawn to: which, where on it, how far off. */
	edge: share,
	on: share,
	off: share.map((n) => (n - 0.5) * 3.2)
}).map(({ sources, scale, x, y, edge, on, off }) => {
	const { bounds } = sources;
	const one = sources.edges[Math.floor(edge * sources.edges.length * 0.9999)];
	const loose = { x: bounds.minX + x * (bounds.maxX - bounds.minX), y: bounds.minY + y * (bounds.maxY - bounds.minY) };
	if (!one || x < 0.3) return { sources, scale, p: loose };
	const by = (off * 12) / scale;
	return {
		sources,
		scale,
		p: {
			x: one.from.x + on * (one.to.x - one.from.x) + by * Math.cos(y * 7),
			y: one.from.y + on * (one.to.y - one.from.y) + by * Math.sin(y * 7)
		}
	};
});
/** What JTS finds nearest: of the corners, and of the edges. */
function nearest({ corners, edges }: SnapSources, p: Point) {
	const at = pointOf(p);
	return {
		corner: Math.min(Infinity, ...corners.map((corner) => apart(pointOf(corner.at), at))),
		edge: Math.min(Infinity, ...edges.map(({ from, to }) => apart(lineOf(from, to), at)))
	};
}
const rounding = 1e-4;

describe('against JSTS, on the examples', () => {
	test(`nearest corners and edges, ${runs.numRuns} cases`, { timeout: 600_000 }, () => {
		const seen = { corner: 0, edge: 0, line: 0, step: 0 };
		assert(
			property(aCase, ({ sources, scale, p }) => {
				const found = snapped(p, sources, wishOf(), scale);
				const reach = 12 / scale;
				const theirs = nearest(sources, p);
				const first = found.to[0]?.kind;
				const off = Math.hypot(found.at.x - p.x, found.at.y - p.y);
				// Within a hair of the reach either answer is right.
				if (Math.abs(theirs.corner - reach) < 1e-9 || Math.abs(theirs.edge - reach) < 1e-9) return;
				if (theirs.corner < reach) {
					seen.corner += 1;
					expect(first).toBe('corner');
					expect(Math.abs(off - theirs.corner)).toBeLessThanOrEqual(rounding);
				} else if (theirs.edge < reach) {
					seen.edge += 1;
					expect(first).toBe('edge');
					// The point lies on an edge, and not nearer than the nearest there is.
					const here = pointOf(found.at);
					expect(Math.min(...sources.edges.map(({ from, to }) => apart(lineOf(from, to), here)))).toBeLessThan(
						rounding
					);
					expect(off).toBeGreaterThanOrEqual(theirs.edge - rounding);
					if (found.to.length === 1) expect(Math.abs(off - theirs.edge)).toBeLessThanOrEqual(rounding);
				} else {
					expect(['line', 'step']).toContain(first);
					seen[first === 'line' ? 'line' : 'step'] += 1;
				}
			}),
			runs
		);
		for (const count of Object.values(seen)) expect(count).toBeGreaterThan(runs.numRuns / 40);
	});

	test('never further off than the reach on the screen, whatever the zoom; but for a step, which is half a step off', () =>
		assert(
			property(aCase, array(record({ x: share, y: share }), { maxLength: 3 }), ({ sources, scale, p }, line) => {
				const before = line.map(({ x, y }) => ({ x: p.x + (x - 0.5) * 4, y: p.y + (y - 0.5) * 4 }));
				const found = snapped(p, sources, wishOf({ before }), scale);
				const px = Math.hypot(found.at.x - p.x, found.at.y - p.y) * scale;
				// At the closest an inch is longer on the screen than the reach of a step wants.
				expect(px).toBeLessThanOrEqual(Math.max(12, (0.0254 / Math.SQRT2) * scale) + 0.1);
				expect(snapped(p, sources, wishOf({ before }), scale)).toEqual(found);
				expect([kept(found.at.x), kept(found.at.y)]).toEqual([found.at.x, found.at.y]);
			}),
			{ ...runs, numRuns: Math.min(runs.numRuns, 10_000) }
		));
});

/** A yard with one thing and one wall: figures that can be checked by eye. */
const bare = (over: Partial<SnapSources> = {}): SnapSources => ({
	units: 'metres',
	corners: [],
	edges: [],
	byX: [],
	byY: [],
	bounds: { minX: 0, minY: 0, maxX: 20, maxY: 20 },
	...over
});
const edge = (from: Point, to: Point, words: string, key: string | null = null) => ({
	from,
	to,
	words,
	key,
	box: {
		minX: Math.min(from.x, to.x),
		minY: Math.min(from.y, to.y),
		maxX: Math.max(from.x, to.x),
		maxY: Math.max(from.y, to.y)
	}
});
const oak = { at: { x: 5.03, y: 4.07 }, name: 'Oak', key: 'tree/oak' };
const standing = (...list: (typeof oak)[]) => ({
	byX: list.toSorted((a, b) => a.at.x - b.at.x),
	byY: list.toSorted((a, b) => a.at.y - b.at.y)
});

describe('what goes before what', () => {
	const wall = edge({ x: 0, y: 10 }, { x: 20, y: 10 }, 'the edge of Walk', 'walk/a');
	const sources = bare({
		corners: [{ at: { x: 6, y: 10 }, words: 'a corner of Walk', key: 'walk/a' }],
		edges: [wall],
		...standing(oak)
	});
	const at = (x: number, y: number, more: Partial<SnapWish> = {}) => snapped({ x, y }, sources, wishOf(more), 40);

	test('a corner before a nearer edge', () => {
		expect(at(6.2, 10.01)).toEqual({ at: { x: 6, y: 10 }, to: [{ kind: 'corner', words: 'a corner of Walk' }] });
	});
	test('an edge and a line that cross within reach: their crossing, both said', () => {
		const found = at(5.1, 10.2);
		expect(found.at).toEqual({ x: 5.03, y: 10 });
		expect(snapWords(found)).toBe('the edge of Walk, in line with Oak');
	});
	test('an edge alone leaves the length along it to a round one', () => {
		const found = at(12.13, 10.1);
		expect(found.at).toEqual({ x: 12.1, y: 10 });
		expect(found.to.map(({ kind }) => kind)).toEqual(['edge', 'step']);
	});
	test('a line before a right angle that is nearer', () => {
		const found = at(5.1, 16.02, { before: [{ x: 1, y: 16 }] });
		expect(found.to.map(({ kind }) => kind)).toEqual(['line', 'square']);
		expect(found.at).toEqual({ x: 5.03, y: 16 });
	});
	test('two lines of one thing meet where it stands, said once', () => {
		const found = at(5.1, 4.1);
		expect(found.at).toEqual({ x: 5.03, y: 4.07 });
		expect(snapWords(found)).toBe('in line with Oak');
	});
	test('square to the last stretch and straight on, to a round length from the last point', () => {
		const before = [
			{ x: 10, y: 14 },
			{ x: 13, y: 18 }
		];
		// A stretch of 3, 4, 5: square to it is (−4, 3) and straight on (3, 4), so that 2.5 m come to (−2, 1.5) and (1.5, 2).
		const square = at(11.05, 19.52, { before });
		expect(square).toMatchObject({
			at: { x: 11, y: 19.5 },
			to: [{ words: 'square to the last stretch' }, { kind: 'step' }]
		});
		expect(at(14.55, 19.95, { before })).toMatchObject({
			at: { x: 14.5, y: 20 },
			to: [{ words: 'straight on from the last stretch' }, { kind: 'step' }]
		});
	});
	test('nothing of itself, and nothing at all when it is off: only the step', () => {
		expect(at(6.2, 10.01, { except: 'walk/a' }).at).toEqual({ x: 6.2, y: 10 });
		expect(at(6.21, 10.14, { on: false })).toEqual({
			at: { x: 6.2, y: 10.1 },
			to: [{ kind: 'step', words: 'every 0.1 m' }]
		});
		expect(unsnapped({ x: 1 / 3, y: 0 })).toEqual({ at: { x: 0.3333, y: 0 }, to: [] });
	});
	test('of edges as far off the one that comes first on the drawing', () => {
		const twice = bare({ edges: [edge(wall.from, wall.to, 'first'), edge(wall.from, wall.to, 'second')] });
		expect(snapped({ x: 3, y: 10.1 }, twice, wishOf(), 40).to[0]?.words).toBe('first');
	});
});

describe('round lengths', () => {
	test.each([
		['feet', 10, 'every 1 ft'],
		['feet', 60, 'every 6 in'],
		['feet', 300, 'every 1 in'],
		['metres', 20, 'every 0.5 m'],
		['metres', 60, 'every 0.1 m'],
		['metres', 300, 'every 10 mm']
	] as const)('in %s at %i px to a metre: %s', (units, scale, words) => {
		expect(snapped({ x: 3.3, y: 4.4 }, bare({ units }), wishOf(), scale).to).toEqual([{ kind: 'step', words }]);
	});
	test('a step is to the last digit what the same length typed gives', () =>
		assert(
			property(
				constantFrom('feet' as const, 'metres' as const),
				constantFrom(10, 60, 300),
				integer({ min: -400_000, max: 400_000 }),
				(units, scale, tenths) => {
					const x = tenths / 1e4;
					const found = snapped({ x, y: 0 }, bare({ units }), wishOf(), scale).at.x;
					const typed = readLength(formatLengthFinely(found, units), units, { min: -500, max: 500, signed: true });
					expect(typed).toMatchObject({ ok: true });
					if (typed.ok) expect(kept(typed.metres)).toBe(found);
				}
			),
			{ numRuns: runs.numRuns, seed: 5 }
		));
	// A foot is 0.3048 m exactly: International yard and pound agreement, 1959.
	test('19 ft are 5.7912 m', () => {
		expect(snapped({ x: 5.75, y: 0 }, bare({ units: 'feet' }), wishOf(), 10).at.x).toBe(5.7912);
	});
});

test('one call on a yard of 100 lights takes well under a millisecond', () => {
	const rural = plans.at(-1)!;
	const place = (k: number) => ({ x: (k % 10) * 2.13 + 0.07, y: Math.floor(k / 10) * 1.91 + 0.05 });
	const fixtures = Array.from({ length: 100 }, (_, k) => ({
		...rural.fixtures[0]!,
		id: `walk/p-${k}`,
		label: `P${k}`,
		at: place(k)
	}));
	const sources = snapSources({ ...rural, fixtures });
	expect(sources.byX.length).toBeGreaterThanOrEqual(100);
	const calls = 4000;
	const start = performance.now();
	for (let k = 0; k < calls; k += 1)
		snapped(
			{ x: (k % 97) * 0.23, y: (k % 61) * 0.31 },
			sources,
			wishOf({
				before: [
					{ x: 1, y: 1 },
					{ x: 4, y: 5 }
				]
			}),
			20
		);
	const each = (performance.now() - start) / calls;
	expect(each).toBeLessThan(0.5);
});
