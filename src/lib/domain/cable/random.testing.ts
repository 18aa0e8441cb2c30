/** Seeded ground for the tests: a house, a walk, a drive, trunks, water, seating, fixtures in the open. */
import { circle, offsetLine, rectangle, type Point } from '../shared/geometry';
import { fixtureModels, type FixtureModel } from '../shared/catalogue';
import type { Fixture } from '../placement';
import type { Area, Crossing, Site, Strip, Tree } from '../site';

/** Park & Miller's minimal standard generator: 0 ≤ next < 1. */
export function generator(seed: number): () => number {
	let state = (seed % 2147483646) + 1;
	return () => ((state = (state * 48271) % 2147483647) - 1) / 2147483646;
}

export const emptySite = (): Site => ({
	units: 'feet',
	faces: 180,
	surroundings: 'suburb',
	house: [],
	eaves: 2.7,
	walls: [],
	trees: [],
	strips: [],
	areas: [],
	existing: [],
	houseNumber: [],
	street: 20,
	leftBoundary: -15,
	rightBoundary: 30,
	receptacle: null,
	bounds: { minX: -15, minY: -15, maxX: 30, maxY: 20 },
	findings: [],
	assumptions: [],
	missing: []
});

export function stripOf(
	kind: 'walk' | 'drive',
	id: string,
	centre: Point[],
	width: number,
	crossings: { id: string; at: number; kind: Crossing['kind'] }[] = []
): Strip {
	const left = offsetLine(centre, -width / 2);
	const right = offsetLine(centre, width / 2);
	const lengths = centre.slice(1).map((p, i) => Math.hypot(p.x - centre[i]!.x, p.y - centre[i]!.y));
	const placed = crossings.map(({ id: name, at, kind: sort }): Crossing => {
		let rest = at;
		let i = 0;
		while (i < lengths.length - 1 && rest > lengths[i]!) rest -= lengths[i++]!;
		const [a, b] = [centre[i]!, centre[i + 1]!];
		const u = { x: (b.x - a.x) / lengths[i]!, y: (b.y - a.y) / lengths[i]! };
		const middle = { x: a.x + u.x * rest, y: a.y + u.y * rest };
		const reach = width / 2 + 0.1;
		return {
			id: name,
			kind: sort,
			at,
			left: { x: middle.x + u.y * reach, y: middle.y - u.x * reach },
			right: { x: middle.x - u.y * reach, y: middle.y + u.x * reach }
		};
	});
	return {
		id,
		name: `the ${id}`,
		kind,
		centre,
		width,
		length: lengths.reduce((sum, one) => sum + one, 0),
		left,
		right,
		polygon: [...left, ...right.toReversed()],
		bends: [],
		junctions: [],
		steps: [],
		crossings: placed,
		lights: 'either',
		pattern: 'staggered',
		rail: 'none',
		posts: null,
		gates: [],
		runOffs: [],
		meetsStreet: true
	};
}
export const treeOf = (id: string, at: Point, trunkDiameter: number): Tree => ({
	id,
	name: `the ${id}`,
	at,
	spread: 5,
	height: 8,
	crownBase: 2,
	trunkDiameter,
	form: 'round',
	ground: 'lawn',
	light: 'soft',
	seenFrom: { x: 0, y: 20 },
	rootRadius: 12 * trunkDiameter
});
export const areaOf = (kind: Area['kind'], id: string, polygon: Point[]): Area => ({
	id,
	name: `the ${id}`,
	kind,
	polygon,
	centre: polygon[0]!,
	light: 'none'
});
const modelOf = (id: string): FixtureModel => fixtureModels.find((one) => one.id === id)!;
export const fixtureOf = (id: string, label: string, at: Point, model = 'path-led-2.5w-2700'): Fixture => ({
	id,
	label,
	target: { kind: 'walk', id: 'walk' },
	technique: 'path',
	at,
	height: 0.5,
	aim: null,
	model,
	mount: 'stake',
	lamp: modelOf(model).lamp,
	reasons: []
});
/** A house `width` × `depth` behind the base line, its front wall given. */
export function withHouse(site: Site, width: number, depth: number): Site {
	return {
		...site,
		house: [
			{ x: 0, y: -depth },
			{ x: 0, y: 0 },
			{ x: width, y: 0 },
			{ x: width, y: -depth }
		],
		walls: [
			{
				id: 'front',
				name: 'front',
				of: 'house',
				from: { x: 0, y: 0 },
				to: { x: width, y: 0 },
				outward: { x: 0, y: 1 },
				length: width,
				height: 2.7,
				peak: null,
				finish: 'light',
				texture: 'smooth',
				light: 'none',
				openings: [],
				front: true
			}
		]
	};
}

/** Obstacles strewn at random, some overlapping, and as many fixtures in the open as asked. */
export function randomGround(seed: number, count: number): { site: Site; fixtures: Fixture[] } {
	const random = generator(seed);
	const between = (low: number, high: number) => low + (high - low) * random();
	const width = between(6, 14);
	const street = between(8, 20);
	const site = { ...withHouse(emptySite(), width, between(5, 9)), street };
	const bend = between(2, street - 2);
	const door = between(1, width - 1);
	const mouth = between(-4, width + 4);
	const declared = (id: string, length: number) =>
		random() < 0.6
			? [
					{
						id,
						at: between(0.6, length - 0.6),
						kind: (['sleeve', 'joint', 'bore'] as const)[Math.floor(random() * 3)]!
					}
				]
			: [];
	const walk = stripOf(
		'walk',
		'walk',
		[
			{ x: mouth, y: street },
			{ x: mouth, y: bend },
			{ x: door, y: bend - between(0, 1) },
			{ x: door, y: 0 }
		],
		between(0.8, 1.6),
		declared('cross-1', street)
	);
	const side = random() < 0.5 ? -3 : width + 3;
	const drive = stripOf(
		'drive',
		'drive',
		[
			{ x: side, y: street },
			{ x: side, y: -2 }
		],
		between(2.4, 4),
		declared('cross-2', street)
	);
	const trees = Array.from({ length: Math.floor(between(0, 7)) }, (_, i) =>
		treeOf(`tree-${i}`, { x: between(-8, width + 8), y: between(1, street - 1) }, between(0.1, 0.8))
	);
	const pond = { x: between(-8, width + 8), y: between(3, street) };
	const areas: Area[] = [];
	if (random() < 0.7) areas.push(areaOf('water', 'pond', [...circle(pond, between(0.5, 2.5))]));
	if (random() < 0.5)
		areas.push(areaOf('seating', 'seat', [...circle({ x: between(-8, 0), y: between(3, street) }, between(0.8, 2))]));
	if (random() < 0.4)
		areas.push(areaOf('porch', 'porch', [...rectangle({ x: door - 1.5, y: 0 }, { x: door + 1.5, y: between(1, 2) })]));
	const fixtures = Array.from({ length: count }, (_, i) =>
		fixtureOf(`f-${i}`, `P${i + 1}`, { x: between(-10, width + 10), y: between(0.3, street - 0.3) })
	);
	return {
		site: {
			...site,
			strips: [walk, drive],
			trees,
			areas,
			receptacle: { at: { x: between(0, width), y: 0 }, known: true, gfci: true, inUseCover: true }
		},
		fixtures
	};
}
