import { Coordinate, GeometryFactory } from 'jsts/org/locationtech/jts/geom.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import { expect, test } from 'vitest';
import { inPolygon } from '../../shared/geometry';
import { expectLesson } from '../lessons.testing';
import { gapOf, headDiameter, isStruck, litDrive, placeOf, sweptOf } from './drive';
import { setbackLesson } from './lesson';

test('the lesson is sound in both systems of units', () => expectLesson(setbackLesson));

const drive = { width: 3, length: 12, flare: 1 };
const lit = litDrive(drive, 'metres');

// JTS (as jsts) measures from a point to the arc drawn as a line: general geometry, not ours.
test('gaps are the distances that JTS finds to the arc, and lamps inside the ground it cuts are struck', () => {
	const factory = new GeometryFactory();
	const swept = sweptOf(lit, 1);
	const arc = factory.createLineString(swept.slice(1).map(({ x, y }) => new Coordinate(x, y)));
	let struck = 0;
	for (let out = 0.2; out < 1; out += 0.11)
		for (let back = 0.1; back < 1; back += 0.13) {
			const lamp = { out, back, head: headDiameter };
			const corner = placeOf(lit, { out: out - headDiameter / 2, back: back - headDiameter / 2 });
			const gap = gapOf(lamp, 1)!;
			const away = DistanceOp.distance(arc, factory.createPoint(new Coordinate(corner.x, corner.y)));
			// 24 chords stand in for the quarter circle: at most 1 − cos(1.875°) of the radius inside it.
			expect(Math.abs(Math.abs(gap) - away)).toBeLessThan(0.0006);
			expect(isStruck(lamp, 1)).toBe(gap < 0);
			if (Math.abs(gap) > 0.001) expect(inPolygon(corner, swept)).toBe(gap < 0);
			if (gap < 0) struck++;
		}
	expect(struck).toBeGreaterThan(3);
});
test('the ground that is cut is a square less a quarter of a disc', () => {
	// Area r² (1 − π/4), known since Archimedes measured the circle.
	const swept = sweptOf(lit, 2);
	const ring = [...swept, swept[0]!].map(({ x, y }) => new Coordinate(x, y));
	const area = new GeometryFactory().createPolygon(ring).getArea();
	expect(area).toBeCloseTo(4 * (1 - Math.PI / 4), 2);
});

test('the plan’s own pair stands on both sides, where no car reaches it', () => {
	for (const flare of [0.5, 1, 2, 3]) {
		const { lights, site, strip } = litDrive({ ...drive, flare }, 'metres');
		const pair = lights.filter(({ id }) => id.includes('mouth'));
		expect(pair).toHaveLength(2);
		const [left, right] = pair.map(({ at }) => at).toSorted((a, b) => a.x - b.x);
		expect(left!.x + right!.x).toBeCloseTo(strip.left[0]!.x + strip.right[0]!.x, 9);
		const lamp = { out: right!.x - strip.right[0]!.x, back: site.street - right!.y, head: headDiameter };
		expect(isStruck(lamp, flare)).toBe(false);
		// Common practice, no source: 6 in clear, a stake about 14 in back.
		expect(lamp.out - headDiameter / 2).toBeGreaterThanOrEqual(0.15);
		expect(lamp.out).toBeCloseTo(0.35, 9);
	}
});
test('A alone is struck by a car, B too by a van', () => {
	expect(setbackLesson.reveal('metres').right).toBe('A');
	expect(setbackLesson.reveal('feet').right).toBe('A');
	const struckAt = (radius: number) =>
		setbackLesson.at(radius, 'metres').figures.filter(({ text }) => text === 'struck').length;
	expect([0.5, 1, 1.5, 2].map(struckAt)).toEqual([0, 1, 2, 3]);
});
