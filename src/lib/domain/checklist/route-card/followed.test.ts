import { describe, expect, it } from 'vitest';
import type { Point } from '../../shared/geometry';
import { makeSite } from '../../site';
import { blankYard } from '../../yard';
import { followedEdge, type Landmarks } from './landmarks';
import { stretchesOf } from './stops';

const round = (radius: number, sides: number, from = 0, to = sides): Point[] =>
	Array.from({ length: to - from + 1 }, (_, k) => {
		const angle = (2 * Math.PI * (from + k)) / sides;
		return { x: 5 + radius * Math.cos(angle), y: 8 + radius * Math.sin(angle) };
	});
const site = makeSite(blankYard());
const along = 'along the edge of the seating circle';
const circle: Landmarks = {
	site,
	edges: [{ along, from: 'the edge of the seating circle', line: round(2, 48) }],
	spots: []
};
const square: Landmarks = {
	site,
	edges: [
		{
			along: 'along the edge of the terrace',
			from: 'the edge of the terrace',
			line: [0, 1, 2, 3, 0].map((k) => ({ x: k === 1 || k === 2 ? 4 : 0, y: k > 1 ? 4 : 0 }))
		}
	],
	spots: []
};
const aroundCorner: Point[] = [
	{ x: 0, y: -0.1 },
	{ x: 4.1, y: -0.1 },
	{ x: 4.1, y: 4 }
];

describe('a way round the bend of an edge', () => {
	it('is told as one, with how far off it keeps', () => {
		// Half-way round at 2.12 m of the middle, in steps of 15°: the middles of the steps lie 2.12 × cos 7.5° = 2.102 m off it.
		expect(followedEdge(circle, round(2.12, 24, 0, 12))?.words).toMatch(
			new RegExp(
				`^${along} and round its bend, (110|120) mm off it$|^${along} and round its bend, (4 1/2|4|5) in off it$`
			)
		);
	});
	it('is none where the distance changes, or where there is no turn', () => {
		const leaving = round(2.12, 24, 0, 6).map((p, k) => ({ x: p.x + 0.1 * k, y: p.y }));
		expect(followedEdge(circle, leaving)).toBeNull();
		expect(followedEdge(square, aroundCorner.slice(0, 2))).toBeNull();
	});
	it('takes one stretch, and a corner its stake', () => {
		expect(stretchesOf(round(2.12, 24, 0, 12), [], circle, () => null)).toHaveLength(1);
		expect(stretchesOf(aroundCorner, [], square, () => null)).toHaveLength(2);
	});
	it('parts where the trench of another run begins', () => {
		const path = round(2.12, 24, 0, 12);
		const held = (part: readonly Point[]) => (part[0]!.y > 10 ? 'run 1' : null);
		expect(stretchesOf(path, [], circle, held)).toHaveLength(3);
	});
});
