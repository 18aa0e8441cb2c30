/** Points of a thing in the yard: read, held to what a yard can hold, written. */
import {
	distance,
	distanceToPolygon,
	lineLength,
	polygonArea,
	withoutRepeats,
	type Point
} from '$lib/domain/shared/geometry';
import { formatLength } from '$lib/domain/shared/units';
import type { Site } from '$lib/domain/site';
import { limits, type Units, type Yard, type YardPoint } from '$lib/domain/yard';
import { readAnswer, writeAnswer } from '$lib/flow';
import { isPoint } from '../answers/points';
import { leastPoints, listed, type Listed } from './edits-kinds';

/** A tenth of a millimetre; `+ 0` makes of −0 what a file has. */
const tidy = (metres: number): number => Math.round(metres * 1e4) / 1e4 + 0;
export const asTold = ({ x, y }: Point): YardPoint => ({ along: tidy(x), out: tidy(y) });
export const onPlan = ({ along, out }: YardPoint): Point => ({ x: along, y: out });

/** Nearer to one another than this, two points are one press, metres. */
const samePress = 1e-3;
/** Shorter, smaller or nearer than this is a slip of the finger: metres, square metres. */
const shortest = 0.3;
const smallest = 0.05;

/** Points of a thing as told; empty where it has none yet. */
export function pointsOf(yard: Yard, kind: Listed, id: string): YardPoint[] {
	const { each, shape } = listed[kind];
	const read = (path: string) => readAnswer(yard, path, id, each);
	const found =
		shape === 'place'
			? [read('@.at')]
			: shape === 'ends'
				? [read('@.from'), read('@.to')]
				: read(shape === 'line' ? '@.line' : '@.outline');
	return Array.isArray(found) ? found.filter(isPoint) : [];
}
export function withPoints(yard: Yard, kind: Listed, id: string, points: readonly YardPoint[]): Yard {
	const { each, shape } = listed[kind];
	const put = (to: Yard, path: string, value: unknown) => writeAnswer(to, path, id, each, value);
	switch (shape) {
		case 'place':
			return put(yard, '@.at', points[0]);
		case 'ends':
			return put(put(yard, '@.from', points[0]), '@.to', points[1]);
		case 'line':
			return put(yard, '@.line', points);
		case 'outline':
			return put(yard, '@.outline', points);
	}
}

/** Why points cannot be in a yard; null: they can. */
export function offYard(points: readonly Point[], units: Units): string | null {
	const { reach } = limits;
	const holds = points.every(({ x, y }) => Math.abs(x) <= reach && Math.abs(y) <= reach);
	if (holds) return null;
	return `That is further than a yard reaches: ${formatLength(reach, units)} from the left corner of the front, either way. Point nearer to the house.`;
}
/** Why a thing cannot have so many points; null: it can. */
export function wrongCount(kind: Listed, count: number): string | null {
	const { shape, noun } = listed[kind];
	const least = leastPoints[shape];
	const point = shape === 'outline' ? 'corner' : 'point';
	const most = shape === 'line' || shape === 'outline' ? limits.linePoints : least;
	const words = ['', 'one point', `two ${point}s`, `three ${point}s`][least];
	if (count < least) return `A ${noun} needs ${words}${most > least ? ' or more' : ''}.`;
	if (count <= most) return null;
	return most === least ? `A ${noun} has ${words}.` : `A ${noun} takes ${most} ${point}s at most.`;
}
/** Why points make no such thing; null: they do. */
function noRoom(kind: Listed, points: readonly Point[]): string | null {
	const { shape, noun } = listed[kind];
	if (shape === 'outline' && polygonArea(points) < smallest)
		return `The corners of the ${noun} lie on one line. Set one that is off it.`;
	if ((shape === 'line' || shape === 'ends') && lineLength(points) < shortest)
		return `The ${noun} begins and ends at the same place. Point to where it ends.`;
	return null;
}
/** Metres from the house: to its wall, or to the front line while the house is not told. */
const fromHouse = (p: Point, { house }: Site): number => (house.length >= 3 ? distanceToPolygon(p, house) : p.y);
/**
 * Points as a thing of a kind takes them, or why it cannot. Presses on the same spot count once. A walk or a drive is told from
 * the street to the house, and its left and right go by that: a line drawn the other way is turned round.
 */
export function drawnPoints(
	kind: Listed,
	drawn: readonly Point[],
	{ site }: { site: Site }
): { points: YardPoint[] } | { problem: string } {
	const { shape } = listed[kind];
	const apart = shape === 'place' ? drawn : withoutRepeats(drawn, samePress);
	// An outline closed on its first corner by hand has that corner twice.
	const closes = shape === 'outline' && apart.length > 1 && distance(apart[0]!, apart.at(-1)!) < samePress;
	const points = closes ? apart.slice(0, -1) : apart;
	const problem = offYard(points, site.units) ?? wrongCount(kind, points.length) ?? noRoom(kind, points);
	if (problem !== null) return { problem };
	const isFromHouse = shape === 'line' && fromHouse(points[0]!, site) < fromHouse(points.at(-1)!, site) - samePress;
	return { points: (isFromHouse ? points.toReversed() : points).map(asTold) };
}
