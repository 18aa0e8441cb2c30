import { expect, test } from 'vitest';
import { beamPoints } from './side';
import { boundsOf, most, viewOf, widthOf, within } from './view';

test('a box of the yard fills the picture one way and does not pass it the other', () => {
	for (const [w, h] of [
		[10, 2],
		[3, 9],
		[6, 4.2]
	] as const) {
		const view = viewOf({ minX: -1, minY: 2, maxX: w - 1, maxY: h + 2 });
		expect(view.width).toBeLessThanOrEqual(most.width + 1e-9);
		expect(view.height).toBeLessThanOrEqual(most.height + 1e-9);
		expect(Math.max(view.width / most.width, view.height / most.height)).toBeCloseTo(1, 12);
		expect(view.at({ x: -1, y: 2 })).toEqual({ x: 0, y: 0 });
		expect(view.at({ x: w - 1, y: h + 2 }).x).toBeCloseTo(view.width, 9);
		expect(view.width / view.height).toBeCloseTo(w / h, 9);
	}
});
test('bounds hold all points, numbers are kept between two, wide letters are wider', () => {
	expect(
		boundsOf(
			[
				{ x: 1, y: 5 },
				{ x: -2, y: 3 }
			],
			1
		)
	).toEqual({ minX: -3, minY: 2, maxX: 2, maxY: 6 });
	expect([within(0, -1, 4), within(0, 2, 4), within(0, 9, 4), within(6, 1, 4)]).toEqual([0, 2, 4, 5]);
	expect(widthOf('mm')).toBeGreaterThan(widthOf('il'));
});
test('a beam is drawn by its own angle: edges and axis meet the lit height where the tangent says', () => {
	const lamp = { x: -1, z: 0, lean: 45, beamAngle: 30 };
	// tan 30° = 1/√3, tan 45° = 1, tan 60° = √3 (any table of tangents).
	const lit = { from: { x: -1 + 3 / Math.sqrt(3), z: 3 }, to: { x: -1 + 3 * Math.sqrt(3), z: 3 } };
	const [to, at, from, axis] = beamPoints(lamp, lit);
	expect([to, at, from]).toEqual([lit.to, { x: -1, z: 0 }, lit.from]);
	expect(axis!.x).toBeCloseTo(2, 12);
	// The same angles without a lit height.
	const [right, , left] = beamPoints(lamp, null);
	const slope = (p: { x: number; z: number }) => (Math.atan2(p.x - lamp.x, p.z - lamp.z) * 180) / Math.PI;
	expect(slope(right!)).toBeCloseTo(60, 9);
	expect(slope(left!)).toBeCloseTo(30, 9);
});
test('onto a wall the axis ends on the wall', () => {
	const [, , , axis] = beamPoints(
		{ x: -2, z: 0, lean: 45, beamAngle: 20 },
		{ from: { x: 0, z: 1 }, to: { x: 0, z: 3 } }
	);
	expect(axis!.x).toBe(0);
	expect(axis!.z).toBeCloseTo(2, 12);
});
