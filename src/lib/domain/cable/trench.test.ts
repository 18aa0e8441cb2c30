import { Coordinate, GeometryFactory } from 'jsts/org/locationtech/jts/geom.js';
import UnaryUnionOp from 'jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js';
import { describe, expect, it } from 'vitest';
import type { Point } from '../shared/geometry';
import { generator } from './random.testing';
import { trenchLength } from './trench';

const along = (...path: [number, number][]): Point[] => path.map(([x, y]) => ({ x, y }));
const dug = (...paths: Point[][]) => trenchLength(paths.map((path) => ({ path, crossings: [] })));

describe('metres to dig', () => {
	it('count a stretch once where two cables lie in it, either way round', () => {
		// 5 m out together, then 3 m and 4 m apart.
		const there = along([0, 0], [0, 5], [3, 5]);
		const back = along([0, 9], [0, 0]);
		expect(dug(there, back)).toEqual({ trench: 5 + 3 + 4, laid: 8 + 9, rated: 12 });
		expect(dug(back, there)).toEqual({ trench: 5 + 3 + 4, laid: 8 + 9, rated: 12 });
	});
	it('count cables within a spade of each other as one trench, and no more', () => {
		expect(dug(along([0, 0], [10, 0]), along([2, 0.08], [6, 0.08])).trench).toBeCloseTo(10, 9);
		expect(dug(along([0, 0], [10, 0]), along([2, 0.12], [6, 0.12])).trench).toBeCloseTo(14, 9);
		// Parting by 2 cm a metre from one point: 0.1 m apart after 5 m.
		expect(dug(along([0, 0], [10, 0]), along([0, 0], [10, 0.2])).trench).toBeCloseTo(10 + Math.hypot(10, 0.2) / 2, 2);
	});
	it('take nothing off where cables cross, meet or bend', () => {
		const { trench, laid } = dug(along([0, 0], [4, 0], [4, 3]), along([2, -2], [2, 2]), along([4, 3], [8, 6]));
		expect(trench).toBe(laid);
	});
	it('count each metre at its rate, a shared one at that of the cable that comes first', () => {
		const roots = { path: along([0, 0], [0, 5], [3, 5]), crossings: [], rates: [2, 1] };
		const second = { path: along([0, 9], [0, 0]), crossings: [], rates: [1.5] };
		expect(trenchLength([roots, second]).rated).toBeCloseTo(2 * 5 + 3 + 1.5 * 4, 9);
		expect(trenchLength([second, roots]).rated).toBeCloseTo(1.5 * 9 + 3, 9);
	});
	it('leave out what passes under paving', () => {
		const path = along([0, 0], [3, 0], [4.4, 0], [9, 0]);
		expect(trenchLength([{ path, crossings: [{ length: 1.4 }] }]).trench).toBeCloseTo(3 + 4.6, 9);
	});
	it('are those of the dissolved lines of JSTS on random streets of a grid', () => {
		const factory = new GeometryFactory();
		for (let seed = 1; seed <= 200; seed++) {
			const random = generator(seed);
			const whole = (below: number) => Math.floor(random() * below);
			const paths = Array.from({ length: 2 + whole(8) }, () => {
				const path = along([whole(6), whole(6)]);
				for (let leg = 0; leg <= whole(4); leg++) {
					const { x, y } = path.at(-1)!;
					const by = whole(6) + 1;
					path.push(random() < 0.5 ? { x: x + by, y } : { x, y: y + by });
				}
				return path;
			});
			const lines = paths.map((path) => factory.createLineString(path.map(({ x, y }) => new Coordinate(x, y))));
			const union = UnaryUnionOp.union(factory.createMultiLineString(lines));
			expect(dug(...paths).trench, `seed ${seed}`).toBeCloseTo(union.getLength() as number, 9);
		}
	});
});
