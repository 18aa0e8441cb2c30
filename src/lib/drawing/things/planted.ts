/** What lies and stands in the yard, as it was told: places from the yard, sizes that were not told from the site. */
import {
	circle,
	ellipse,
	lineLength,
	rectangle,
	smoothLine,
	withoutRepeats,
	type Point
} from '../../domain/shared/geometry';
import type { Site } from '../../domain/site';
import type { Yard, YardDrive, YardWalk } from '../../domain/yard';
import { hand, handlesOf, onPlan, outlined, placed, thing, type Thing } from './thing';
import { lightWords, nameOr, waterWords } from './words';

/** A length as told, else as the site takes it, else the figure given. */
const known = (told: number | 'unsure' | undefined, taken: number | undefined, usual: number): number =>
	typeof told === 'number' ? told : (taken ?? usual);
const place = (at: { along: number; out: number } | undefined): Point | null => (at ? onPlan(at) : null);

export const treesOf = ({ trees = [] }: Yard, site: Site): Thing[] =>
	trees.map((tree, i) =>
		thing({
			kind: 'tree',
			id: tree.id,
			kindWord: 'Tree',
			name: nameOr(tree.name, 'Tree', i, trees.length),
			...placed(place(tree.at)),
			reach: known(tree.spread, site.trees.find(({ id }) => id === tree.id)?.spread, 5) / 2
		})
	);

/** Walk or drive: held by the points told, drawn by the line through them. */
const stripsOf = (kind: 'walk' | 'drive', strips: readonly (YardWalk | YardDrive)[], site: Site): Thing[] =>
	strips.map((strip, i) => {
		const kindWord = kind === 'walk' ? 'Walk' : 'Drive';
		const points = strip.line?.map(onPlan) ?? null;
		const taken = site.strips.find((one) => one.kind === kind && one.id === strip.id);
		return thing({
			kind,
			id: strip.id,
			kindWord,
			name: nameOr(strip.name, kindWord, i, strips.length),
			line: points && centreOf(points, strip.curved === true),
			handles: points ? handlesOf(points, false) : [],
			reach: known(strip.width, taken?.width, kind === 'walk' ? 1.2 : 3) / 2
		});
	});
/** The centre line as the site lays it out. */
function centreOf(points: readonly Point[], curved: boolean): readonly Point[] {
	const apart = withoutRepeats(points, 1e-3);
	return curved && apart.length > 2 && lineLength(apart) > 0 ? smoothLine(apart) : points;
}
export const walksOf = ({ walks = [] }: Yard, site: Site): Thing[] => stripsOf('walk', walks, site);
export const drivesOf = ({ drives = [] }: Yard, site: Site): Thing[] => stripsOf('drive', drives, site);

export const bedsOf = ({ spots: { beds = [] } }: Yard): Thing[] =>
	beds.map(({ id, name, outline }, i) =>
		thing({ kind: 'bed', id, kindWord: 'Bed', name: nameOr(name, 'Bed', i, beds.length), ...outlined(outline) })
	);
export const pavedOf = ({ spots: { paved = [] } }: Yard): Thing[] =>
	paved.map(({ id, name, outline }, i) =>
		thing({
			kind: 'paved',
			id,
			kindWord: 'Paved area',
			name: nameOr(name, 'Paved area', i, paved.length),
			...outlined(outline)
		})
	);
export const seatingOf = ({ spots: { seating = [] } }: Yard): Thing[] =>
	seating.map((seat, i) => {
		const at = place(seat.at);
		// Not told: room for four chairs.
		const reach = known(seat.across, undefined, 3) / 2;
		return thing({
			kind: 'seating',
			id: seat.id,
			kindWord: 'Seating place',
			name: nameOr(seat.name, 'Seating place', i, seating.length),
			...placed(at),
			...(at ? { line: circle(at, reach), closed: true } : {}),
			reach
		});
	});
export const waterOf = ({ spots: { water = [] } }: Yard, site: Site): Thing[] =>
	water.map((one) => {
		const same = water.filter(({ kind }) => kind === one.kind);
		const at = place(one.at);
		const taken = site.areas.find((area) => area.kind === 'water' && area.id === one.id)?.polygon ?? [];
		const across = (of: (p: Point) => number) =>
			taken.length > 0 ? Math.max(...taken.map(of)) - Math.min(...taken.map(of)) : undefined;
		const length = known(
			one.length,
			across(({ x }) => x),
			3
		);
		const width = known(
			one.width,
			across(({ y }) => y),
			2
		);
		const outline = (centre: Point) =>
			one.kind === 'pool'
				? rectangle(
						{ x: centre.x - length / 2, y: centre.y - width / 2 },
						{ x: centre.x + length / 2, y: centre.y + width / 2 }
					)
				: ellipse(centre, length, width);
		return thing({
			kind: 'water',
			id: one.id,
			kindWord: waterWords[one.kind],
			name: nameOr(one.name, waterWords[one.kind], same.indexOf(one), same.length),
			...placed(at),
			...(at ? { line: outline(at), closed: true } : {}),
			reach: Math.max(length, width) / 2
		});
	});
export const lightsOf = ({ spots: { lights = [] } }: Yard): Thing[] =>
	lights.map((light) => {
		const same = lights.filter(({ kind }) => kind === light.kind);
		return thing({
			kind: 'light',
			id: light.id,
			kindWord: lightWords[light.kind],
			name: nameOr(light.name, lightWords[light.kind], same.indexOf(light), same.length),
			...placed(place(light.at)),
			reach: hand
		});
	});
export const wallsOf = ({ spots: { walls = [] } }: Yard): Thing[] =>
	walls.map(({ id, name, from, to }, i) => {
		const ends = from && to ? [onPlan(from), onPlan(to)] : null;
		return thing({
			kind: 'wall',
			id,
			kindWord: 'Garden wall',
			name: nameOr(name, 'Garden wall', i, walls.length),
			line: ends,
			handles: (ends ?? []).map((at, index) => ({ index, at, words: index === 0 ? 'One end' : 'Other end' })),
			reach: hand
		});
	});
export const numbersOf = ({ spots: { numbers = [] } }: Yard): Thing[] =>
	numbers.map((number) => {
		const kindWord = number.kind === 'sign' ? 'Sign' : 'House number';
		const same = numbers.filter(({ kind }) => (kind === 'sign') === (number.kind === 'sign'));
		return thing({
			kind: 'number',
			id: number.id,
			kindWord,
			name: nameOr(number.name, kindWord, same.indexOf(number), same.length),
			...placed(place(number.at)),
			// Not told: a plaque.
			reach: number.kind === 'sign' ? known(number.width, undefined, 0.6) / 2 : hand
		});
	});
