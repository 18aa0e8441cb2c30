import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { signedArea } from '../../domain/shared/geometry';
import { linesOf, ringsAt, type Grid } from './contours';

/** Even-odd rule by a ray to the right: how often the rings wind round a point, apart from the code under test. */
function inside(x: number, y: number, rings: ReturnType<typeof ringsAt>): boolean {
	let odd = false;
	for (const { points } of rings)
		points.forEach((a, index) => {
			const b = points[(index + 1) % points.length]!;
			if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) odd = !odd;
		});
	return odd;
}
const gridOf = (columns: number, rows: number, step: number, at: (x: number, y: number) => number): Grid => {
	const [x0, y0] = [(-(columns - 1) * step) / 2, (-(rows - 1) * step) / 2];
	const values = Array.from({ length: columns * rows }, (_, n) =>
		at(x0 + (n % columns) * step, y0 + Math.floor(n / columns) * step)
	);
	return { x: x0, y: y0, step, columns, rows, values };
};
/** Inverse square and cosine under a lamp that throws the same everywhere: E = I·h/(h² + r²)^1.5, so E falls to a level at r = √((I·h/E)^⅔ − h²). */
const [candela, height] = [30, 0.6];
const lamp = (x: number, y: number) => (candela * height) / (height ** 2 + x ** 2 + y ** 2) ** 1.5;
const radiusAt = (lux: number) => Math.sqrt(((candela * height) / lux) ** (2 / 3) - height ** 2);

describe('under one lamp', () => {
	const grid = gridOf(161, 161, 0.05, lamp);
	test.each([1, 2, 5, 10, 20])('the line of %f lx is a circle of the radius that the inverse square gives', (lux) => {
		const rings = ringsAt(grid, lux);
		expect(rings).toHaveLength(1);
		for (const { x, y } of rings[0]!.points) expect(Math.abs(Math.hypot(x, y) - radiusAt(lux))).toBeLessThan(0.005);
		expect(Math.abs(signedArea(rings[0]!.points))).toBeCloseTo(Math.PI * radiusAt(lux) ** 2, 1);
	});
	test('a hole runs against its outer ring', () => {
		const rings = ringsAt(
			gridOf(81, 81, 0.1, (x, y) => -Math.abs(Math.hypot(x, y) - 2)),
			-0.5
		);
		const areas = rings.map(({ points }) => signedArea(points)).toSorted((a, b) => Math.abs(a) - Math.abs(b));
		expect(areas).toHaveLength(2);
		expect(Math.sign(areas[0]!)).toBe(-Math.sign(areas[1]!));
		expect(Math.abs(areas[0]!)).toBeCloseTo(Math.PI * 1.5 ** 2, 0);
		expect(Math.abs(areas[1]!)).toBeCloseTo(Math.PI * 2.5 ** 2, 0);
	});
});

const grids = fc
	.record({ columns: fc.integer({ min: 1, max: 9 }), rows: fc.integer({ min: 1, max: 9 }) })
	.chain(({ columns, rows }) =>
		fc.record({
			columns: fc.constant(columns),
			rows: fc.constant(rows),
			values: fc.array(fc.oneof(fc.integer({ min: 0, max: 9 }), fc.constant(NaN)), {
				minLength: columns * rows,
				maxLength: columns * rows
			})
		})
	);
const runs = { numRuns: process.env.LONG ? 20_000 : 500 };

describe('on random grids', () => {
	test('every node above the level lies inside the rings, every one below outside', () => {
		fc.assert(
			fc.property(grids, ({ columns, rows, values }) => {
				const grid: Grid = { x: 0, y: 0, step: 1, columns, rows, values };
				const rings = ringsAt(grid, 4.5);
				values.forEach((value, n) => {
					const [i, j] = [n % columns, Math.floor(n / columns)];
					// A node at the border or beside a gap lies on its ring: nothing is said of those.
					const around = [
						[i - 1, j],
						[i + 1, j],
						[i, j - 1],
						[i, j + 1]
					].map(([a, b]) => (a! < 0 || b! < 0 || a! >= columns || b! >= rows ? NaN : values[b! * columns + a!]!));
					if (Number.isNaN(value) || around.some(Number.isNaN)) return;
					expect(inside(i, j, rings)).toBe(value >= 4.5);
				});
			}),
			runs
		);
	});
	test('all rings close within the grid, and what is drawn leaves out only seams', () => {
		fc.assert(
			fc.property(grids, ({ columns, rows, values }) => {
				for (const ring of ringsAt({ x: 0, y: 0, step: 1, columns, rows, values }, 4.5)) {
					expect(ring.points.length).toBeGreaterThanOrEqual(4);
					for (const { x, y } of ring.points) {
						expect(x >= 0 && x <= columns - 1 && y >= 0 && y <= rows - 1).toBe(true);
					}
					const drawn = linesOf(ring).reduce((sum, line) => sum + line.length - 1, 0);
					expect(drawn).toBe(ring.seam.filter((seam) => !seam).length);
				}
			}),
			runs
		);
	});
});

test('a line that leaves the grid is drawn open, its region closed along the border', () => {
	const [ring, ...others] = ringsAt(
		gridOf(11, 11, 1, (x) => x),
		0.5
	);
	expect(others).toEqual([]);
	expect(Math.abs(signedArea(ring!.points))).toBeCloseTo(4.5 * 10, 9);
	const lines = linesOf(ring!);
	expect(lines).toHaveLength(1);
	for (const { x } of lines[0]!) expect(x).toBeCloseTo(0.5, 9);
});
