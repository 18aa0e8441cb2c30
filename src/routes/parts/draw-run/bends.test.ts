import { array, assert, integer, property, record } from 'fast-check';
import { Coordinate, GeometryFactory } from 'jsts/org/locationtech/jts/geom.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import { expect, test } from 'vitest';
import { asBend, asPoint, bendsOf, bentAt, fewer, movedBend, withoutBend } from './bends';

const metres = integer({ min: -3000, max: 3000 }).map((cm) => cm / 100);
const point = record({ x: metres, y: metres });
const factory = new GeometryFactory();
const jts = ({ x, y }: { x: number; y: number }) => new Coordinate(x, y);

test('a bend more goes into the straight that it is nearest to, by JTS', () =>
	assert(
		property(array(point, { minLength: 2, maxLength: 8 }), point, (line, at) => {
			const bends = line.slice(1, -1).map(asBend);
			const next = bentAt(bends, [line[0]!, line.at(-1)!], asBend(at));
			const off = line
				.slice(1)
				.map((p, k) =>
					DistanceOp.distance(factory.createLineString([jts(line[k]!), jts(p)]), factory.createPoint(jts(at)))
				);
			const index = next.findIndex((bend) => !bends.includes(bend));
			expect(next).toHaveLength(bends.length + 1);
			expect(withoutBend(next, index)).toEqual(bends);
			expect(off[index]).toBeLessThanOrEqual(Math.min(...off) + 1e-9);
		}),
		{ numRuns: 300 }
	));

test('a line with fewer corners keeps its ends and its order, and the corners that turn it most', () => {
	assert(
		property(array(point, { minLength: 2, maxLength: 40 }), integer({ min: 0, max: 20 }), (line, most) => {
			const kept = fewer(line, most);
			expect(kept.length - 2).toBe(Math.min(most, line.length - 2));
			expect([kept[0], kept.at(-1)]).toEqual([line[0], line.at(-1)]);
			expect(line.filter((p) => kept.includes(p))).toEqual(kept);
		}),
		{ numRuns: 200 }
	);
	const corner = [0, 1, 2, 3, 4].map((x) => ({ x, y: 0 }));
	const line = [...corner, { x: 4, y: 3 }, { x: 8, y: 3 }];
	expect(fewer(line, 2)).toEqual([line[0], line[4], line[5], line[6]]);
});

test('bends told go before the corners of the plan; a cable has at most twenty', () => {
	const arc = Array.from({ length: 40 }, (_, n) => ({ x: Math.cos(n / 20), y: Math.sin(n / 20) }));
	expect(bendsOf({ from: 'supply', to: 'walk/a' }, { path: arc })).toHaveLength(20);
	const via = [{ along: 1, out: 2 }];
	expect(bendsOf({ from: 'supply', to: 'walk/a', via }, { path: arc })).toBe(via);
	expect(bendsOf({ from: 'supply', to: 'walk/a' }, undefined)).toEqual([]);
});

test('moved: one of them, to where a tape can find it', () => {
	const bends = [asBend({ x: 1 / 3, y: 2 }), asBend({ x: 4, y: 5 })];
	expect(bends[0]).toEqual({ along: 0.3333, out: 2 });
	expect(movedBend(bends, 1, { along: 7, out: 8 })).toEqual([bends[0], { along: 7, out: 8 }]);
	expect(asPoint({ along: 7, out: 8 })).toEqual({ x: 7, y: 8 });
});
