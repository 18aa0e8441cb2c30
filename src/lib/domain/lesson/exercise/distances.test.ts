/** Distances of the marks against JSTS, a port of the JTS Topology Suite, which shares no line with the engine's geometry. */
import { Coordinate, GeometryFactory } from 'jsts/org/locationtech/jts/geom.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import { expect, test } from 'vitest';
import { fixtureModels } from '../../shared/catalogue';
import type { Point, Polygon } from '../../shared/geometry';
import { randomOf } from '../random';
import { some } from './exercise.testing';
import { markLayout } from './index';
import type { LightKind } from './types';

const factory = new GeometryFactory();
const coordinate = ({ x, y }: Point) => new Coordinate(x, y);
const ringOf = (ring: Polygon) => factory.createPolygon([...ring, ring[0]!].map(coordinate));
const pointOf = (p: Point) => factory.createPoint(coordinate(p));
const apart = (a: unknown, b: unknown): number => DistanceOp.distance(a, b) as number;

const full = some.filter(({ id }) => id === 'pool');
test.each([
	['path.setback', 'path', 'walk'],
	['drive.setback', 'drive', 'drive'],
	['water.clear', 'path', 'water']
] as const)('%s is the distance that JTS finds', (rule, kind, what) => {
	let compared = 0;
	for (let n = 0; n < 60; n += 1) {
		const exercise = full[n % full.length]!;
		const { site } = exercise.empty;
		const random = randomOf(`${rule} ${n}`);
		const along = random.stepped(site.leftBoundary + 1, site.rightBoundary - 1, 0.01);
		const out = random.stepped(1, site.street - 1, 0.01);
		const { plan, rows } = markLayout(exercise, { lights: [{ kind: kind as LightKind, along, out }], supply: null });
		const shapes: readonly { kind: string; polygon: Polygon }[] = [...site.strips, ...site.areas];
		const { polygon } = shapes.find((one) => one.kind === what)!;
		const far = apart(pointOf({ x: along, y: out }), ringOf(polygon));
		// On the shape itself JTS knows no depth.
		if (far === 0) continue;
		const head = fixtureModels.find(({ id }) => id === plan.fixtures[0]!.model)!.headDiameter;
		const row = rows.find((one) => one.rule === rule)!;
		expect(row.working?.value, `${n}: ${along}, ${out}`).toBeCloseTo(far - head / 2, 9);
		compared += 1;
	}
	expect(compared).toBeGreaterThan(30);
});
test('path.spacing is the distance that JTS finds', () => {
	for (let n = 0; n < 30; n += 1) {
		const exercise = some[n % 2]!;
		const [walk] = exercise.empty.site.strips;
		const random = randomOf(`spacing ${n}`);
		const right = walk!.centre[0]!.x + walk!.width / 2;
		const place = () => ({ x: right + random.stepped(0.1, 2, 0.01), y: random.stepped(1, 6, 0.01) });
		const [a, b] = [place(), place()];
		const lights = [a, b].map(({ x, y }) => ({ kind: 'path' as const, along: x, out: y }));
		const row = markLayout(exercise, { lights, supply: null }).rows.find(({ rule }) => rule === 'path.spacing')!;
		expect(row.working?.value).toBeCloseTo(apart(pointOf(a), pointOf(b)), 9);
	}
});
