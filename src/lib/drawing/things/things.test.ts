import { Coordinate, GeometryFactory } from 'jsts/org/locationtech/jts/geom.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import { describe, expect, test } from 'vitest';
import { makePlan, type Plan } from '../../domain/plan';
import type { Line, Point } from '../../domain/shared/geometry';
import { formatLength } from '../../domain/shared/units';
import { awkward, blankYard, examples, type Yard } from '../../domain/yard';
import { mirrored } from '../../domain/yard/mirror.testing';
import { randomYard } from '../../domain/yard/random.testing';
import { thingsOf } from './things';
import type { DrawnThing, ThingKind } from './types';

const seeds = Array.from({ length: process.env.LONG ? 80 : 10 }, (_, seed) => seed + 1);
const yards: Yard[] = [blankYard(), ...[...examples, ...awkward].map(({ yard }) => yard), ...seeds.map(randomYard)];
const made = yards.map((yard) => {
	const plan = makePlan(yard);
	return { yard, plan, things: thingsOf(plan, yard) };
});
const size = (list: readonly unknown[] | undefined) => list?.length ?? 0;

describe('every thing', () => {
	test('as many of each kind as the yard and its plan have', () => {
		for (const { yard, plan, things } of made) {
			const { house, spots, power } = yard;
			const isPoint = (value: unknown) => Number(typeof value === 'object' && value !== null);
			const expected: Record<ThingKind, number> = {
				section: size(house.sections),
				opening: size(house.openings),
				porch: size(house.porches),
				tree: size(yard.trees),
				walk: size(yard.walks),
				drive: size(yard.drives),
				steps: (yard.walks ?? []).reduce((sum, { steps }) => sum + size(steps), 0),
				bed: size(spots.beds),
				paved: size(spots.paved),
				seating: size(spots.seating),
				water: size(spots.water),
				light: size(spots.lights),
				wall: size(spots.walls),
				number: size(spots.numbers),
				receptacle: isPoint(power.receptacle),
				transformer: Number(isPoint(power.transformer) || plan.supply !== null),
				sensor: Number(isPoint(power.sensor) || plan.dusk.sensor !== null),
				fixture: plan.fixtures.length,
				run: plan.runs.length
			};
			for (const [kind, count] of Object.entries(expected))
				expect(things.filter((thing) => thing.kind === kind).length, `${yard.name}: ${kind}`).toBe(count);
		}
	});
	test('keys are unique, and every neighbour is on the drawing', () => {
		for (const { things } of made) {
			const keys = new Set(things.map(({ key }) => key));
			expect(keys.size).toBe(things.length);
			for (const { neighbours } of things) for (const { key } of neighbours) expect(keys).toContain(key);
		}
	});
	test('the same plan gives the same things; each is said with its name and, where it has a place, two edges', () => {
		for (const { yard, plan, things } of made) {
			expect(thingsOf(plan, yard)).toEqual(things);
			for (const thing of things) {
				const has = thing.at !== null || thing.line !== null;
				expect(thing.fromEdges.length, thing.key).toBe(has ? 2 : 0);
				expect(thing.name.trim()).not.toBe('');
				expect(thing.said).toContain(has ? thing.fromEdges[0]!.words : 'not on the drawing yet');
			}
		}
	});
	test('handles are the points that were told; what is set by lengths has none', () => {
		for (const { yard, things } of made)
			for (const { kind, id, handles } of things) {
				const points = (told: { along: number; out: number }[] | undefined) =>
					(told ?? []).map(({ along, out }) => ({ x: along, y: out }));
				const at = handles.map((handle) => handle.at);
				if (kind === 'walk') expect(at).toEqual(points(yard.walks!.find((one) => one.id === id)!.line));
				if (kind === 'bed') expect(at).toEqual(points(yard.spots.beds!.find((one) => one.id === id)!.outline));
				if (['section', 'opening', 'porch', 'steps', 'run'].includes(kind)) expect(at).toEqual([]);
			}
	});
});

describe('two edges to measure from', () => {
	const factory = new GeometryFactory();
	const coordinate = ({ x, y }: Point) => new Coordinate(x, y);
	const lineOf = (line: Line) => factory.createLineString(line.map(coordinate));
	const pointOf = (p: Point) => factory.createPoint(coordinate(p));
	/** Longer than any yard. */
	const far = 2000;
	const ringed = (ring: Line): Line => (ring.length > 0 ? [...ring, ring[0]!] : []);

	/** Everything on the ground that goes by a name, found without the code under test. */
	function named({ site }: Plan, yard: Yard, edge: string, p: Point): unknown[] {
		const width = (yard.house.sections ?? []).reduce((sum, section) => sum + section.width, 0);
		const upright = (x: number) =>
			lineOf([
				{ x, y: -far },
				{ x, y: far }
			]);
		const front = lineOf([
			{ x: -far, y: 0 },
			{ x: far, y: 0 }
		]);
		if (edge === 'the left corner of the front') return [upright(0)];
		if (edge === 'the right corner of the front') return [upright(width)];
		if (edge === 'the front line') return [front];
		if (edge.startsWith('the house front')) {
			// Straight to the house from a hand's breadth in front of the place, so that one on the wall meets it too.
			const tape = lineOf([
				{ x: p.x, y: p.y + 0.01 },
				{ x: p.x, y: -far }
			]);
			return [OverlayOp.intersection(lineOf(ringed(site.house)), tape)];
		}
		const ofName = (name: string) => edge.endsWith(` of ${the(name)}`);
		return [
			...site.strips
				.filter(({ name, kind }) => ofName(name || kind))
				.map(({ left, right }) => factory.createMultiLineString([lineOf(left), lineOf(right)])),
			...site.areas.filter(({ name, kind }) => ofName(name || kind)).map(({ polygon }) => lineOf(ringed(polygon))),
			...site.walls.filter(({ name }) => edge === the(name || 'garden wall')).map(({ from, to }) => lineOf([from, to]))
		];
	}
	const the = (name: string) => (/^(the|my|our)\s/i.test(name.trim()) ? name.trim() : `the ${name.trim()}`);

	test('each distance is that of the edge named, within 1 mm, by JSTS', () => {
		let checked = 0;
		for (const { yard, plan, things } of made)
			for (const thing of things) {
				const p = thing.at ?? thing.handles[0]?.at ?? thing.line?.[0];
				for (const { edge, distance } of thing.fromEdges) {
					const offs = named(plan, yard, edge, p!).map((one) => DistanceOp.distance(one, pointOf(p!)) as number);
					expect(offs.length, `${thing.key}: ${edge}`).toBeGreaterThan(0);
					expect(Math.min(...offs.map((off) => Math.abs(off - distance))), `${thing.key}: ${edge}`).toBeLessThan(1e-3);
					checked++;
				}
			}
		expect(checked).toBeGreaterThan(1000);
	}, 600_000);
	test('the words give the place back: along and out from the edges named', () => {
		for (const { plan, things } of made)
			for (const { fromEdges } of things)
				for (const { edge, distance, words } of fromEdges) {
					expect(words.endsWith(edge) || words.includes('on the house front')).toBe(true);
					if (distance >= 0.005) expect(words.startsWith(formatLength(distance, plan.site.units))).toBe(true);
				}
	});
	test('a path light beside its walk is measured from the edge of the walk and from the house', () => {
		const { things } = made.find(({ yard }) => yard.name === 'Alder Bend')!;
		const light = things.find(({ key }) => key === 'fixture/front-walk/path-1')!;
		// By hand: the middle of the walk lies 33 ft along there, it is 4 ft wide, and its light stands a foot off its edge.
		// Within half an inch, as it is told.
		expect(Math.abs(light.at!.x / 0.3048 - (33 + 2 + 1))).toBeLessThan(1 / 24);
		expect(light.fromEdges[0]!.words).toBe('1 ft right of the edge of the front walk');
		expect(light.fromEdges[1]!.edge).toBe('the house front behind it');
		expect(light.said).toBe(`Path light P1, front walk: ${light.fromEdges[0]!.words}, ${light.fromEdges[1]!.words}.`);
	});
	const turned = (words: string) =>
		words.replaceAll(/\b(left|right)\b/g, (side) => (side === 'left' ? 'right' : 'left')).replaceAll(/[\d./]+/g, '#');
	test('a yard in a mirror is told with left for right', () => {
		let compared = 0;
		// Each costs a plan more: every other one will do.
		for (const { yard, things } of made.filter((_, index) => index % 2 === 1)) {
			const width = (yard.house.sections ?? []).reduce((sum, section) => sum + section.width, 0);
			const seen = mirrored(yard);
			const other = new Map(thingsOf(makePlan(seen), seen).map((thing) => [thing.key, thing]));
			for (const thing of things) {
				if (thing.kind === 'fixture' || thing.kind === 'run' || width === 0) continue;
				const p = thing.at ?? thing.handles[0]?.at ?? thing.line?.[0];
				const image = other.get(thing.key);
				// In the middle of the front both corners are as near, and the left is taken; a device may be hung anew.
				if (!p || Math.abs(p.x - width / 2) < 1e-6 || !image || isSuggested(thing)) continue;
				const q = image.at ?? image.handles[0]?.at ?? image.line?.[0];
				expect(q!.x, thing.key).toBeCloseTo(width - p.x, 6);
				thing.fromEdges.forEach(({ distance, words }, i) => {
					expect(image.fromEdges[i]!.distance, `${yard.name} ${thing.key}`).toBeCloseTo(distance, 6);
					expect(image.fromEdges[i]!.words.replaceAll(/[\d./]+/g, '#'), `${yard.name} ${thing.key}`).toBe(
						turned(words)
					);
					compared++;
				});
			}
		}
		expect(compared).toBeGreaterThan(200);
	}, 600_000);
	const isSuggested = ({ kind }: DrawnThing) => kind === 'transformer' || kind === 'sensor';
});

describe('neighbours on the cable', () => {
	test('each light has one before it, with the metres of the segments that lead back to it', () => {
		for (const { plan, things } of made)
			for (const run of plan.runs)
				for (const node of run.nodes.slice(1)) {
					if (node.fixture === null) continue;
					// Back up the cable, segment by segment, to the next light or the transformer.
					let [metres, at] = [0, node.id];
					do {
						const up = run.segments.find(({ to }) => to === at)!;
						metres += up.length;
						at = up.from;
					} while (at !== run.nodes[0]!.id && run.nodes.find(({ id }) => id === at)!.fixture === null);
					const before = run.nodes.find(({ id }) => id === at)!.fixture;
					const thing = things.find(({ key }) => key === `fixture/${node.fixture}`)!;
					const back = thing.neighbours.filter(({ words }) => words.endsWith(' back'));
					expect(back).toHaveLength(1);
					expect(back[0]!.key).toBe(before === null ? 'transformer/transformer' : `fixture/${before}`);
					expect(back[0]!.words).toContain(`${formatLength(metres, plan.site.units)} of cable`);
				}
	});
	test('a run goes along all of its cable', () => {
		for (const { plan, things } of made)
			for (const run of plan.runs) {
				const { line } = things.find(({ key }) => key === `run/${run.id}`)!;
				for (const { path } of run.segments) for (const p of path) expect(line).toContainEqual(p);
			}
	});
});
