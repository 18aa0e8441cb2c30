import { describe, expect, test } from 'vitest';
import type { DrawnThing, Handle } from '$lib/drawing/things/types';
import { anchorOf } from './anchor';
import { doneWords, legWords, pointWords, wayWords } from './said';
import { onStep } from './step';
import { isMoved, moveEdit, nextThing, taken, usualGrip } from './work';

const handle = (index: number, x: number, y: number): Handle => ({ index, at: { x, y }, words: `Point ${index}` });
const thing = (key: string, more: Partial<DrawnThing>): DrawnThing => ({
	key,
	kind: 'tree',
	id: key,
	label: null,
	kindWord: 'Tree',
	name: key,
	said: key,
	at: null,
	line: null,
	closed: false,
	reach: 0,
	fromEdges: [],
	neighbours: [],
	handles: [],
	...more
});
const spot = (key: string, x: number, y: number) => thing(key, { at: { x, y }, handles: [handle(0, x, y)] });
const path = (key: string, ...points: [number, number][]) =>
	thing(key, {
		line: points.map(([x, y]) => ({ x, y })),
		handles: points.map(([x, y], index) => handle(index, x, y))
	});

describe('what is held', () => {
	test('a tree is held by its place, a walk as a whole by its first point, a part of the house not at all', () => {
		expect(usualGrip(spot('oak', 1, 2))).toBe(0);
		expect(usualGrip(path('walk', [0, 9], [0, 1]))).toBe('whole');
		expect(usualGrip(thing('house', {}))).toBeNull();
		expect(taken(thing('house', {}), 0)).toBeNull();
		expect(taken(path('walk', [0, 9], [0, 1]), 'whole')?.from).toEqual({ x: 0, y: 9 });
	});
	test('carried nowhere it is not moved; carried it makes the edit that says so', () => {
		const held = taken(spot('oak', 1, 2), 0)!;
		expect(isMoved(held)).toBe(false);
		expect(isMoved({ ...held, to: { x: 1.00004, y: 2 } })).toBe(false);
		expect(moveEdit({ ...held, to: { x: 1.5, y: 2 } })).toEqual({
			do: 'move',
			key: 'oak',
			handle: 0,
			to: { x: 1.5, y: 2 }
		});
		const walk = taken(path('walk', [0, 9], [0, 1]), 'whole')!;
		expect(moveEdit({ ...walk, to: { x: 0.3048, y: 9 } })).toEqual({
			do: 'shift',
			key: 'walk',
			by: { x: 0.3048, y: 0 }
		});
	});
});

describe('from thing to thing by the arrow keys', () => {
	const things = [
		spot('left', 0, 5),
		spot('middle', 5, 5),
		spot('right', 9, 5.4),
		spot('far-right', 30, 5),
		spot('up', 5, 0)
	];
	const from = (key: string) => things.find((one) => one.key === key)!;
	test.each([
		['middle', { x: -1, y: 0 }, 'left'],
		['middle', { x: 1, y: 0 }, 'right'],
		['right', { x: 1, y: 0 }, 'far-right'],
		['middle', { x: 0, y: -1 }, 'up'],
		['up', { x: 0, y: -1 }, null],
		['left', { x: -1, y: 0 }, null]
	])('from %s that way: %#', (start, way, end) => {
		expect(nextThing(things, from(start), way)?.key ?? null).toBe(end);
	});
	test('from nowhere: the first that is drawn', () => {
		expect(nextThing([thing('unplaced', {}), ...things], null, { x: 1, y: 0 })?.key).toBe('left');
	});
	test('every thing is reached from every other by some row of presses', () => {
		const ways = [
			{ x: 1, y: 0 },
			{ x: -1, y: 0 },
			{ x: 0, y: 1 },
			{ x: 0, y: -1 }
		];
		// A seeded scatter: no two on one spot.
		const scatter = Array.from({ length: 60 }, (_, n) => spot(`s${n}`, ((n * 7919) % 97) / 3, ((n * 104729) % 89) / 3));
		const reached = new Set<string>(['s0']);
		const open = [scatter[0]!];
		for (let one = open.pop(); one; one = open.pop())
			for (const way of ways) {
				const next = nextThing(scatter, one, way);
				if (next && !reached.has(next.key)) {
					reached.add(next.key);
					open.push(next);
				}
			}
		expect(reached.size).toBe(scatter.length);
	});
	test('a line is met half-way, an outline in its middle, what has no place nowhere', () => {
		expect(anchorOf(path('walk', [0, 0], [0, 10]))).toEqual({ x: 0, y: 5 });
		// Centroid of a right triangle: a third of each leg from the right angle.
		const bed = { ...path('bed', [0, 0], [6, 0], [0, 3]), closed: true };
		expect(anchorOf(bed)!.x).toBeCloseTo(2, 12);
		expect(anchorOf(bed)!.y).toBeCloseTo(1, 12);
		expect(anchorOf(thing('unplaced', {}))).toBeNull();
	});
});

describe('what is said', () => {
	test('how far it went, in the person’s units', () => {
		const from = { x: 1, y: 1 };
		expect(wayWords(from, { x: 1 + 0.6096, y: 1 - 0.3048 }, 'feet')).toBe('2 ft right, 1 ft towards the house');
		expect(wayWords(from, { x: 0.5, y: 1 }, 'metres')).toBe('500 mm left');
		expect(wayWords(from, { x: 1, y: 3 }, 'metres')).toBe('2.00 m towards the street');
		expect(wayWords(from, { x: 1.0001, y: 1 }, 'feet')).toBeNull();
		expect(doneWords('Oak moved', '2 ft right')).toBe('Oak moved 2 ft right. Undo takes it back.');
	});
	test('where a point lies, and what it was drawn to but for the step', () => {
		const to = [
			{ kind: 'edge', words: 'the edge of Front walk' },
			{ kind: 'step', words: 'every 6 in' }
		] as const;
		expect(pointWords({ at: { x: 3.6576, y: 0.9144 }, to }, 'feet')).toBe(
			'12 ft along, 3 ft out; the edge of Front walk'
		);
		// 3-4-5, the oldest right triangle.
		expect(legWords({ x: 0, y: 0 }, { x: 3, y: 4 }, 'metres')).toBe('5.00 m on');
	});
	test('steps meet round lengths, as typed ones do after rounding', () => {
		expect(onStep(7.3, 0.1524)).toBe(7.3152);
		expect(onStep(-0.01, 0.1)).toBe(0);
		expect(Object.is(onStep(-0.01, 0.1), 0)).toBe(true);
	});
});
