/** For tests: sites of one thing and fixtures of one lamp, small enough to work out by hand. */
import { fixtureModels, type Lamp } from '../shared/catalogue';
import type { Point } from '../shared/geometry';
import type { Fixture } from '../placement';
import { makeSite, type Area, type Site, type Strip, type Tree, type Wall } from '../site';
import { blankYard } from '../yard';
import { planLight } from './plan-light';
import type { Receiver, ReceiverKind } from './types';

/** A bare site of 1 m from front to back, in a suburb, its boundaries at x = 0 and x = 10. */
export const siteWith = (things: Partial<Site>): Site => ({
	...makeSite(blankYard()),
	surroundings: 'suburb',
	bounds: { minX: 0, minY: 0, maxX: 10, maxY: 1 },
	leftBoundary: 0,
	rightBoundary: 10,
	street: 1,
	...things
});

interface Told {
	body: 'path' | 'marker' | 'wash';
	at: Point;
	height: number;
	lumens?: number;
	aim?: { x: number; y: number; z: number };
	target?: Fixture['target'];
}
/** A fixture of the catalogue's kind with a beam of 120° (shaded heads) or 60° (a wash), `lumens` as told. */
export function fixtureOf({ body, at, height, lumens = 150, aim, target }: Told): Fixture {
	const model = fixtureModels.find((one) => one.body === body)!;
	const lamp: Lamp = { ...model.lamp, lumens, beamAngle: body === 'wash' ? 60 : 120 };
	return {
		id: `${body}-${at.x}-${at.y}`,
		label: 'X1',
		target: target ?? { kind: 'added', id: 'lamp' },
		technique: body === 'wash' ? 'wash' : 'path',
		at,
		height,
		aim: aim ? { bearing: 0, tilt: 0, point: aim } : null,
		model: model.id,
		mount: 'stake',
		lamp,
		reasons: []
	};
}

/** Out from the street, so that right of it is +x: the centre line lies on x = `x`. */
export const stripOf = (
	kind: 'walk' | 'drive',
	x: number,
	width: number,
	length: number,
	more: Partial<Strip> = {}
): Strip => {
	const line = (aside: number) => [
		{ x: x + aside, y: length },
		{ x: x + aside, y: 0 }
	];
	const [left, right] = [line(-width / 2), line(width / 2)];
	return {
		id: kind,
		name: '',
		kind,
		centre: line(0),
		width,
		length,
		left,
		right,
		polygon: [...left, ...right.toReversed()],
		bends: [],
		junctions: [],
		steps: [],
		crossings: [],
		lights: 'either',
		pattern: 'paired',
		rail: 'none',
		posts: null,
		gates: [],
		runOffs: [],
		meetsStreet: true,
		...more
	};
};
/** Along x on y = 0, its lit side towards +y. */
export const wallOf = (from: number, to: number, height: number, more: Partial<Wall> = {}): Wall => ({
	id: 'wall',
	name: 'long wall',
	of: 'garden',
	from: { x: from, y: 0 },
	to: { x: to, y: 0 },
	outward: { x: 0, y: 1 },
	length: to - from,
	height,
	peak: null,
	finish: 'light',
	texture: 'smooth',
	light: 'soft',
	openings: [],
	front: false,
	...more
});
export const treeOf = (more: Partial<Tree> = {}): Tree => ({
	id: 'tree',
	name: 'pear',
	at: { x: 5, y: 0 },
	spread: 2,
	height: 3,
	crownBase: 1,
	trunkDiameter: 0.2,
	form: 'round',
	ground: 'bed',
	light: 'soft',
	seenFrom: { x: 5, y: 5 },
	rootRadius: 2.4,
	...more
});
export const seatOf = (centre: Point, half: number): Area => ({
	id: 'seat',
	name: 'bench',
	kind: 'seating',
	centre,
	light: 'soft',
	polygon: [
		{ x: centre.x - half, y: centre.y - half },
		{ x: centre.x + half, y: centre.y - half },
		{ x: centre.x + half, y: centre.y + half },
		{ x: centre.x - half, y: centre.y + half }
	]
});

export const lightOf = (
	site: Site,
	fixtures: Fixture[],
	sensor?: { at: Point; height: number; view: { faces: number } }
) => planLight(site, fixtures, { runs: [] }, sensor ?? null);
/** The one receiver of a kind, or with that id. */
export function receiverIn(receivers: readonly Receiver[], which: ReceiverKind | (string & {})): Receiver {
	const found = receivers.find(({ kind, id }) => kind === which || id === which);
	if (!found) throw new Error(`no receiver ${which}`);
	return found;
}
