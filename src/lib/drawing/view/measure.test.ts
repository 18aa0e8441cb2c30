/** Edge to edge against JSTS: outlines as they are, what reaches round its line as a distance less by that much. */
import { array, assert, integer, property, record, tuple } from 'fast-check';
import { Coordinate, GeometryFactory } from 'jsts/org/locationtech/jts/geom.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import { describe, expect, test } from 'vitest';
import type { DrawnThing, ThingKind } from '../things/types';
import { handleAt, thingAt } from './hit';
import { draggedGhost, measureDimensions, pointsBefore } from './marks';
import { endAt, endOn, measureOf } from './measure';
import type { Point } from './types';

const thing = (kind: ThingKind, over: Partial<DrawnThing>): DrawnThing => ({
	key: `${kind}/${over.id ?? 'a'}`,
	kind,
	id: 'a',
	label: null,
	kindWord: kind,
	name: kind,
	said: kind,
	at: null,
	line: null,
	closed: false,
	reach: 0,
	fromEdges: [],
	neighbours: [],
	handles: [],
	...over
});
const metres = integer({ min: -2000, max: 2000 }).map((cm) => cm / 100);
const point = record({ x: metres, y: metres });
const factory = new GeometryFactory();
const coordinate = ({ x, y }: Point) => new Coordinate(x, y);
const apart = (a: unknown, b: unknown): number => DistanceOp.distance(a, b) as number;
const runs = { numRuns: process.env.LONG ? 20_000 : 1_000, seed: 5 };

/** A ring round its middle, no side crossing another. */
const ring = tuple(point, array(integer({ min: 50, max: 900 }), { minLength: 3, maxLength: 9 })).map(
	([middle, radii]) =>
		radii.map((cm, k) => {
			const angle = (2 * Math.PI * k) / radii.length;
			return { x: middle.x + (cm / 100) * Math.cos(angle), y: middle.y + (cm / 100) * Math.sin(angle) };
		})
);
const line = tuple(point, point, point).map((points) => points.filter((p, k) => k === 0 || p.x !== points[k - 1]!.x));
const lineOf = (points: readonly Point[]) =>
	points.length > 1 ? factory.createLineString(points.map(coordinate)) : factory.createPoint(coordinate(points[0]!));
const ringOf = (points: readonly Point[]) => factory.createPolygon([...points, points[0]!].map(coordinate));
const reach = integer({ min: 0, max: 300 }).map((cm) => cm / 100);

describe('edge to edge, by JSTS', () => {
	test('between an outline and a walk', () =>
		assert(
			property(ring, line, reach, (bed, walk, half) => {
				const [a, b] = [thing('bed', { line: bed, closed: true }), thing('walk', { line: walk, reach: half })];
				const { nearest } = measureOf(endOn(a, bed[0]!), endOn(b, walk[0]!), 'metres');
				expect(nearest!.distance).toBeCloseTo(Math.max(0, apart(ringOf(bed), lineOf(walk)) - half), 9);
				const between = Math.hypot(nearest!.from.x - nearest!.to.x, nearest!.from.y - nearest!.to.y);
				if (nearest!.distance > 0) expect(between).toBeCloseTo(nearest!.distance, 9);
				expect(measureOf(endOn(b, walk[0]!), endOn(a, bed[0]!), 'metres').nearest!.distance).toBeCloseTo(
					nearest!.distance,
					9
				);
			}),
			runs
		));
	test('between two outlines, also one within the other', () =>
		assert(
			property(ring, ring, (a, b) => {
				const [from, to] = [a, b].map((points) => endOn(thing('bed', { line: points, closed: true }), points[0]!));
				expect(measureOf(from!, to!, 'feet').nearest!.distance).toBeCloseTo(apart(ringOf(a), ringOf(b)), 9);
			}),
			runs
		));
	test('between two crowns, and from a crown to a point', () =>
		assert(
			property(point, point, reach, reach, (a, b, r, s) => {
				const oak = thing('tree', { at: a, reach: r });
				const elm = thing('tree', { at: b, reach: s });
				const gap = (far: number) => Math.max(0, apart(lineOf([a]), lineOf([b])) - far);
				const both = measureOf(endOn(oak, a), endOn(elm, b), 'metres');
				if (both.nearest) expect(both.nearest.distance).toBeCloseTo(gap(r + s), 9);
				expect(measureOf(endOn(oak, a), endAt(b, 'a point'), 'metres').nearest?.distance ?? gap(0)).toBeCloseTo(
					gap(r),
					9
				);
			}),
			runs
		));
});

test('the words: straight, along, out, edge to edge, in the units of the yard', () => {
	const oak = thing('tree', { name: 'Oak', at: { x: 0, y: 0 }, reach: 0.6096 });
	const end = endAt({ x: 0.9144, y: 1.2192 }, 'a corner of Front walk');
	// 3, 4, 5 ft, less 2 ft of crown.
	expect(measureOf(endOn(oak, oak.at!), end, 'feet').words).toBe(
		'From Oak to a corner of Front walk: 5 ft straight; 3 ft along the front, 4 ft out. Edge to edge 3 ft.'
	);
	expect(measureOf(endAt({ x: 0, y: 0 }, 'the first point'), end, 'metres').words).toBe(
		'From the first point to a corner of Front walk: 1.52 m straight; 914 mm along the front, 1.22 m out.'
	);
	expect(measureOf(endOn(oak, oak.at!), endAt({ x: 0.1, y: 0 }, 'the second point'), 'metres').words).toMatch(
		/They touch or lie on one another\.$/
	);
	const marks = measureDimensions(measureOf(endOn(oak, oak.at!), end, 'feet'), 'feet', 0.02);
	expect(marks.map(({ text }) => text)).toEqual(['5 ft', '3 ft']);
});

describe('what a tap means', () => {
	const light = thing('fixture', { id: 'p1', at: { x: 5, y: 5 } });
	const oak = thing('tree', { id: 'oak', at: { x: 5.4, y: 5 }, reach: 3 });
	const bed = thing('bed', {
		id: 'bed',
		closed: true,
		line: [
			{ x: 0, y: 0 },
			{ x: 20, y: 0 },
			{ x: 20, y: 10 },
			{ x: 0, y: 10 }
		]
	});
	const seat = thing('seating', {
		id: 'seat',
		closed: true,
		line: [
			{ x: 12, y: 2 },
			{ x: 15, y: 2 },
			{ x: 15, y: 5 },
			{ x: 12, y: 5 }
		]
	});
	const run = thing('run', {
		id: 'r',
		line: [
			{ x: 10, y: 8 },
			{ x: 19, y: 8 }
		]
	});
	const all = [bed, seat, run, oak, light];
	const named = (x: number, y: number) => thingAt(all, { x, y }, 0.5)?.key ?? null;
	test.each([
		[4.9, 5, 'fixture/p1'],
		[5.35, 5, 'tree/oak'],
		[7, 6, 'tree/oak'],
		[13, 3, 'seating/seat'],
		[17, 8.2, 'run/r'],
		[17, 3, 'bed/bed'],
		[20.4, 9, 'bed/bed'],
		[22, 9, null]
	])('at %d, %d: %s', (x, y, key) => expect(named(x, y)).toBe(key));

	const corners = bed.line!.map((at, index) => ({ index, at, words: `Corner ${index + 1}` }));
	const inHand = { ...bed, handles: corners };
	test('a handle is the nearest within reach', () => {
		expect(handleAt(inHand, { x: 19.8, y: 0.1 }, 0.5)).toBe(1);
		expect(handleAt(inHand, { x: 10, y: 5 }, 0.5)).toBeNull();
	});
	test('dragged: one corner, or all of it; right angles are taken from the two before', () => {
		expect(draggedGhost(inHand, 1, { x: 25, y: 1 }).line).toEqual(
			bed.line!.map((p, k) => (k === 1 ? { x: 25, y: 1 } : p))
		);
		expect(draggedGhost(inHand, null, { x: 1, y: 1 }).line).toEqual(
			bed.line!.map(({ x, y }) => ({ x: x + 1, y: y + 1 }))
		);
		expect(pointsBefore(inHand, 1).slice(-2)).toEqual([bed.line![3], bed.line![0]]);
	});
});
