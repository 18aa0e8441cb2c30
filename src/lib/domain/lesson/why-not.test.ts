/** Why not: over the demos, awkward yards and seeded ones; distances against JSTS. */
import { Coordinate, GeometryFactory } from 'jsts/org/locationtech/jts/geom.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import { describe, expect, test } from 'vitest';
import { planDusk } from '../dusk';
import { planLight } from '../light';
import { placeFixtures } from '../placement';
import { makePlan } from '../plan';
import type { Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import { makeSite } from '../site';
import { awkward, blankYard, examples, faulty, type Yard } from '../yard';
import { randomYard } from '../yard/random.testing';
import { whyNot, type Planned } from './why-not';

const count = process.env['LONG'] ? 3000 : 300;
const ids = new Set<string>(Object.keys(rules));
const factory = new GeometryFactory();
const coordinate = ({ x, y }: Point) => new Coordinate(x, y);
const ring = (points: readonly Point[]) =>
	factory.createPolygon(factory.createLinearRing([...points, points[0]!].map(coordinate)));
/** All of a plan but its cable, which takes most of the time. */
function planned(yard: Yard): Planned {
	const site = makeSite(yard);
	const { fixtures } = placeFixtures(site, yard);
	const dusk = planDusk(site, fixtures, null, yard);
	return { site, fixtures, dusk, light: planLight(site, fixtures, { runs: [] }, dusk.sensor) };
}
const away = (p: Point, polygon: unknown): number =>
	DistanceOp.distance(factory.createPoint(coordinate(p)), polygon) as number;

/** What is wrong with what is said of a plan's lights. */
function faultsOf(plan: Planned): string[] {
	const { units } = plan.site;
	return plan.fixtures.flatMap((fixture) => {
		const said = whyNot(plan, fixture.id);
		const words = (rule: string) => said.find((one) => one.rule === rule)?.words ?? null;
		const met = fixture.reasons.map(({ rule }) => rule);
		const waters = plan.site.areas.filter(({ kind }) => kind === 'water').map(({ polygon }) => ring(polygon));
		const water = Math.min(...waters.map((polygon) => away(fixture.at, polygon)));
		const bare = plan.light.glare.filter((one) => one.fixture === fixture.id).map(({ candela }) => candela);
		const inRoots = plan.site.trees.some(
			({ at, rootRadius }) => Math.hypot(at.x - fixture.at.x, at.y - fixture.at.y) < rootRadius - 1e-9
		);
		return [
			...said.map(({ rule }) => (met.includes(rule) ? `${rule} is among the reasons` : '')),
			...said.map(({ rule }) => (ids.has(rule) ? '' : `no rule ${rule}`)),
			...said.map(({ words: text, rule }) =>
				/\d/.test(text) && !/NaN|undefined|unknown|Infinity|null/.test(text) ? '' : `${rule}: ${text}`
			),
			new Set(said.map(({ rule }) => rule)).size === said.length ? '' : 'a rule is told twice',
			// The figures of the rules, by geometry and by the light stage's own list, in another way.
			// Two ways to the same metres may differ in the last bit, and so round a tie apart.
			words('water.clear') !== null &&
			![-1e-9, 1e-9].some((bit) => words('water.clear')!.includes(formatLength(water + bit, units)))
				? `${water} m from water: ${words('water.clear')}`
				: '',
			words('water.clear') !== null && !(water >= 3.05) ? `as near to water as ${water} m` : '',
			words('tree.roots') !== null && inRoots ? 'stands among roots' : '',
			words('glare.level') !== null && bare.some((candela) => candela > 50) ? 'dazzles' : ''
		]
			.filter(Boolean)
			.map((fault) => `${fixture.id}: ${fault}`);
	});
}
describe('why not by another rule', () => {
	const told = [...examples, ...awkward, ...faulty];
	test.each(told.map(({ id, yard }) => [id, yard] as const))('%s', (_, yard) => {
		const [plan, again] = [planned(yard), planned(yard)];
		expect(faultsOf(plan)).toEqual([]);
		for (const { id } of plan.fixtures) expect(whyNot(plan, id)).toEqual(whyNot(again, id));
	});
	test.each(examples.map(({ id, yard }) => [id, yard] as const))('%s, by its whole plan', (_, yard) =>
		expect(faultsOf(makePlan(yard))).toEqual([])
	);
	const chunk = 30;
	test.each(Array.from({ length: count / chunk }, (_, i) => i * chunk))(`seeded yards from %d on`, (from) => {
		let lights = 0;
		for (let seed = from + 1; seed <= from + chunk; seed += 1) {
			const plan = planned(randomYard(seed));
			lights += plan.fixtures.length;
			expect(faultsOf(plan), `seed ${seed}`).toEqual([]);
		}
		expect(lights).toBeGreaterThan(chunk);
	});
	test('every light of the demos has something to say', () => {
		const seen = new Set<string>();
		for (const { yard } of told) {
			const plan = planned(yard);
			for (const { id } of plan.fixtures) {
				const said = whyNot(plan, id);
				expect(said.length, id).toBeGreaterThanOrEqual(2);
				for (const { rule } of said) seen.add(rule);
			}
		}
		expect([...seen].toSorted()).toMatchInlineSnapshot(`
			[
			  "drive.mouth",
			  "drive.setback",
			  "existing.light",
			  "glare.level",
			  "path.setback",
			  "place.clear",
			  "sensor.light",
			  "spill.boundary",
			  "tree.group",
			  "tree.offset",
			  "tree.roots",
			  "tree.skirt",
			  "wall.combustible",
			  "wall.gable",
			  "wall.porch",
			  "water.clear",
			]
		`);
	});
	test('a light that is not there has none', () => expect(whyNot(planned(blankYard()), 'oak/uplight-1')).toEqual([]));
});
