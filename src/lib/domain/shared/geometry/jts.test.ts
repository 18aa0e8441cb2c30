/**
 * Distances, areas and offsets against JSTS, a port of the JTS Topology Suite, which shares nothing with this geometry.
 * Shapes by lot (fast-check, one seed), of the sizes that a yard has.
 */
import { array, assert, double, integer, pre, property, record, tuple } from 'fast-check';
import { Coordinate, GeometryFactory } from 'jsts/org/locationtech/jts/geom.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import RelateOp from 'jsts/org/locationtech/jts/operation/relate/RelateOp.js';
import IsValidOp from 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js';
import { describe, expect, test } from 'vitest';
import { distanceToPolygon, offsetLine, polygonArea, polygonGap, segmentDistance } from '../geometry';
import type { Line, Point, Polygon } from './types';

const runs = { numRuns: process.env.LONG ? 20_000 : 1_500, seed: 4 };
const factory = new GeometryFactory();
const coordinate = ({ x, y }: Point) => new Coordinate(x, y);
const lineOf = (line: Line) => factory.createLineString(line.map(coordinate));
const ringOf = (ring: Polygon) => factory.createPolygon([...ring, ring[0]!].map(coordinate));
const pointOf = (p: Point) => factory.createPoint(coordinate(p));
const apart = (a: unknown, b: unknown): number => DistanceOp.distance(a, b) as number;

const metres = (least: number, most: number) => double({ min: least, max: most, noNaN: true });
/** To the millimetre: theirs takes lengths of 5e-324 for no number. */
const place = integer({ min: -40_000, max: 40_000 }).map((millimetres) => millimetres / 1000);
const point = record({ x: place, y: place });
/** A ring round its middle, no side crossing another, often with corners turned in. */
const ring = tuple(point, array(metres(0.5, 12), { minLength: 3, maxLength: 14 })).map(([middle, radii]): Polygon =>
	radii.map((radius, k) => {
		const angle = (2 * Math.PI * k) / radii.length;
		return { x: middle.x + radius * Math.cos(angle), y: middle.y + radius * Math.sin(angle) };
	})
);
/** A walk: legs of 3 m and more, bends of up to 60°. */
const walk = tuple(
	point,
	metres(0, 2 * Math.PI),
	array(tuple(metres(3, 15), metres(-Math.PI / 3, Math.PI / 3)), { minLength: 1, maxLength: 6 })
).map(([start, heading, legs]): Line => {
	const line = [start];
	let angle = heading;
	for (const [length, turn] of legs) {
		const from = line.at(-1)!;
		line.push({ x: from.x + length * Math.cos(angle), y: from.y + length * Math.sin(angle) });
		angle += turn;
	}
	return line;
});

describe('against JSTS', () => {
	test('distance of a point to a polygon, below zero inside', () => {
		assert(
			property(ring, point, (polygon, p) => {
				const theirs = ringOf(polygon);
				const inside = RelateOp.contains(theirs, pointOf(p)) as boolean;
				const edge = apart(theirs.getExteriorRing(), pointOf(p));
				expect(distanceToPolygon(p, polygon)).toBeCloseTo(inside ? -edge : edge, 9);
			}),
			runs
		);
	});
	test('area of a polygon, and the gap between two', () => {
		assert(
			property(ring, ring, (a, b) => {
				expect(polygonArea(a)).toBeCloseTo(ringOf(a).getArea() as number, 9);
				expect(polygonGap(a, b)).toBeCloseTo(apart(ringOf(a), ringOf(b)), 9);
			}),
			runs
		);
	});
	test('distance of two segments', () => {
		assert(
			property(point, point, point, point, (a, b, c, d) => {
				pre((a.x !== b.x || a.y !== b.y) && (c.x !== d.x || c.y !== d.y));
				expect(segmentDistance(a, b, c, d)).toBeCloseTo(apart(lineOf([a, b]), lineOf([c, d])), 9);
			}),
			runs
		);
	});
	test('a walk widened to both sides is their mitred buffer with flat ends', () => {
		assert(
			property(walk, metres(0.3, 1.5), (line, half) => {
				const own = [...offsetLine(line, -half), ...offsetLine(line, half).toReversed()];
				const like = new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5);
				// By default they straighten near-straight bends first; corners within a thousandth of the width are joined still.
				like.setSimplifyFactor(0);
				const theirs = BufferOp.bufferOp(lineOf(line), half, like);
				// A walk that comes round to itself is one shape to them and twice over to us.
				pre(IsValidOp.isValid(ringOf(own)) as boolean);
				expect(polygonArea(own)).toBeCloseTo(theirs.getArea() as number, 4);
				for (const p of own) expect(apart(theirs.getExteriorRing(), pointOf(p))).toBeLessThan(1e-5);
			}),
			runs
		);
	});
});
