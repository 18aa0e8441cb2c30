import { array, assert, constantFrom, double, integer, oneof, property, record, string } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makePlan, type Plan } from '$lib/domain/plan';
import type { Point } from '$lib/domain/shared/geometry';
import { blankYard, examples, limits, readYard, writeYard, type Yard } from '$lib/domain/yard';
import { randomYard } from '$lib/domain/yard/random.testing';
import { thingsOf, type ThingKind } from '$lib/drawing/things';
import { isYard } from '$lib/state/check';
import { applied } from './edits';
import { isListed, itemsOf, listed, type Listed } from './edits-kinds';
import { pointsOf } from './edits-points';
import type { Addable, Edit, Edited, Size } from './edits-types';

const p = (x: number, y: number): Point => ({ x, y });
const yards = examples.map(({ yard }) => ({ yard, plan: makePlan(yard) }));
const [town, suburban] = yards as [(typeof yards)[0], (typeof yards)[0]];
const blank = { yard: blankYard(), plan: makePlan(blankYard()) };

/** The yard after an edit that must succeed. */
function after(yard: Yard, plan: Plan, edit: Edit): Extract<Edited, { ok: true }> {
	const edited = applied(yard, plan, edit);
	if (!edited.ok) throw new Error(edited.problem);
	return edited;
}
function problemOf(yard: Yard, plan: Plan, edit: Edit): string {
	const edited = applied(yard, plan, edit);
	return edited.ok ? '' : edited.problem;
}
const shapes: Readonly<Record<'place' | 'line' | 'outline' | 'ends', Point[]>> = {
	place: [p(3.33333, 6)],
	line: [p(5, 12), p(5, 6), p(7, 2)],
	outline: [p(1, 3), p(4, 3), p(4, 5), p(1, 5)],
	ends: [p(-2, 4), p(-2, 9)]
};
const kinds = Object.keys(listed) as Listed[];
const pointsFor = (kind: Addable): Point[] => (isListed(kind) ? shapes[listed[kind].shape] : shapes.place);

describe('each kind, each change', () => {
	for (const kind of kinds) {
		const { shape } = listed[kind];
		const add: Edit = { do: 'add', kind, points: pointsFor(kind), name: 'Ivy' };
		test(`${kind}: added, moved, carried, bent, straightened, named, removed`, () => {
			const made = after(blank.yard, blank.plan, add);
			const key = made.key!;
			const id = key.slice(key.indexOf('/') + 1);
			expect(made.label).toBe('Ivy added');
			const item = itemsOf(made.yard, kind)[0]!;
			expect(item).toMatchObject({ id, name: 'Ivy' });
			// All else is not asked yet.
			const asked = new Set([
				'id',
				'name',
				'at',
				'line',
				'outline',
				'from',
				'to',
				...(kind === 'number' ? [] : ['kind'])
			]);
			for (const answer of Object.keys(item)) expect(asked).toContain(answer);
			expect(pointsOf(made.yard, kind, id)).toHaveLength(pointsFor(kind).length);

			const moved = after(made.yard, blank.plan, { do: 'move', key, handle: 0, to: p(2, 8.00004) });
			expect(pointsOf(moved.yard, kind, id)[0]).toEqual({ along: 2, out: 8 });
			expect(moved).toMatchObject({ label: 'Ivy moved', key });
			const before = pointsOf(made.yard, kind, id);
			const carried = after(made.yard, blank.plan, { do: 'shift', key, by: p(-1, 0.5) });
			pointsOf(carried.yard, kind, id).forEach(({ along, out }, i) => {
				expect(along).toBeCloseTo(before[i]!.along - 1, 9);
				expect(out).toBeCloseTo(before[i]!.out + 0.5, 9);
			});
			const bend: Edit = { do: 'bend', key, after: 1, at: p(6, 4) };
			if (shape === 'line' || shape === 'outline') {
				const bent = after(made.yard, blank.plan, bend);
				expect(pointsOf(bent.yard, kind, id)).toEqual(before.toSpliced(2, 0, { along: 6, out: 4 }));
				const straight = after(bent.yard, blank.plan, { do: 'straighten', key, handle: 2 });
				expect(writeYard(straight.yard)).toBe(writeYard(made.yard));
			} else {
				expect(problemOf(made.yard, blank.plan, bend)).toContain('no bends');
				expect(problemOf(made.yard, blank.plan, { do: 'straighten', key, handle: 0 })).toContain('no bends');
			}
			expect(itemsOf(after(made.yard, blank.plan, { do: 'name', key, to: '  Elm ' }).yard, kind)[0]!.name).toBe('Elm');
			const drawn = after(made.yard, blank.plan, {
				do: 'draw',
				key,
				points: pointsFor(kind).map(({ x, y }) => p(x + 1, y))
			});
			expect(pointsOf(drawn.yard, kind, id)[0]!.along).toBeCloseTo(before[0]!.along + 1, 9);
			const removed = after(made.yard, blank.plan, { do: 'remove', key });
			expect(itemsOf(removed.yard, kind)).toEqual([]);
			expect(removed).toMatchObject({ label: 'Ivy removed', key: null });
			expect(problemOf(removed.yard, blank.plan, { do: 'remove', key })).toContain('no longer');
		});
		test(`${kind}: added to a finished yard and removed, the file is the same to the byte`, () => {
			for (const { yard, plan } of yards) {
				const made = after(yard, plan, { do: 'add', kind, points: pointsFor(kind) });
				expect(writeYard(made.yard)).not.toBe(writeYard(yard));
				const back = after(made.yard, plan, { do: 'remove', key: made.key! });
				expect(writeYard(back.yard)).toBe(writeYard(yard));
			}
		});
		test(`${kind}: sizes within what its question takes, refused beyond with the limit in words`, () => {
			const made = after(blank.yard, blank.plan, kind === 'number' ? { ...add, sort: 'sign' } : add);
			for (const what of ['spread', 'width', 'across', 'length', 'height'] satisfies Size[]) {
				const edit: Edit = { do: 'size', key: made.key!, what, to: 2.00001 };
				if (!listed[kind].sizes.includes(what)) {
					expect(problemOf(made.yard, blank.plan, edit)).toContain(`no ${what}`);
					continue;
				}
				const sized = after(made.yard, blank.plan, edit);
				expect(itemsOf(sized.yard, kind)[0]).toMatchObject({ [what]: 2 });
				for (const to of [-1, 1000, Number.NaN])
					expect(problemOf(made.yard, blank.plan, { ...edit, to })).toMatch(/is not within .* to .*\d (ft|in|m)/);
			}
		});
	}
	test('receptacle, transformer and sensor: placed, moved, carried, taken away; one of each', () => {
		const { yard, plan } = suburban;
		for (const kind of ['receptacle', 'transformer', 'sensor'] as const) {
			const key = `${kind}/${kind}`;
			const free = kind === 'receptacle' ? after(yard, plan, { do: 'remove', key }).yard : yard;
			const made = after(free, plan, { do: 'add', kind, points: [p(6, 0.1)] });
			expect(problemOf(made.yard, plan, { do: 'add', kind, points: [p(7, 0)] })).toContain('one already');
			const carried = after(made.yard, plan, { do: 'shift', key, by: p(1, 0) });
			const moved = after(made.yard, plan, { do: 'move', key, handle: 0, to: p(7, 0.1) });
			expect(writeYard(carried.yard)).toBe(writeYard(moved.yard));
			expect(writeYard(after(moved.yard, plan, { do: 'remove', key }).yard)).toBe(writeYard(free));
		}
	});
	test('a transformer near the wall hangs on it; out in the yard it is on a post', () => {
		const { yard, plan } = suburban;
		const to = (y: number) =>
			after(yard, plan, { do: 'move', key: 'transformer/transformer', handle: 0, to: p(12, y) }).yard.power.transformer;
		expect(to(0.1)).toEqual({ at: { along: 12, out: 0.1 }, on: 'wall' });
		expect(to(3)).toEqual({ at: { along: 12, out: 3 }, on: 'post' });
	});
	test('a light of the plan: moved and removed by hand, told from where it was; a light more is for what it stands by', () => {
		const { yard, plan } = suburban;
		const light = plan.fixtures.find(({ technique }) => technique === 'path')!;
		const key = `fixture/${light.id}`;
		const moved = after(yard, plan, { do: 'shift', key, by: p(0.3048, 0) });
		expect(moved.label).toBe(`${light.label} moved`);
		expect(moved.yard.fixtures!.set![0]!.at!.along).toBeCloseTo(light.at.x + 0.3048, 4);
		// Carried on before the plan has followed, it goes on from where the hand left it.
		const again = after(moved.yard, plan, { do: 'shift', key, by: p(0.3048, 0) });
		expect(again.yard.fixtures!.set![0]!.at!.along).toBeCloseTo(light.at.x + 0.6096, 3);
		expect(after(yard, plan, { do: 'remove', key }).yard.fixtures!.set![0]).toMatchObject({
			id: light.id,
			removed: true
		});
		const more = after(yard, plan, { do: 'add', kind: 'fixture', points: [p(11, 11)] });
		expect(more).toMatchObject({ label: 'Path light added', key: 'fixture/added/light-1' });
		expect(more.yard.fixtures!.added![0]).toMatchObject({
			technique: 'path',
			target: { kind: 'walk', id: 'front-walk' }
		});
		expect(makePlan(more.yard).fixtures.some(({ id }) => id === 'added/light-1')).toBe(true);
		const back = after(more.yard, plan, { do: 'remove', key: more.key! });
		expect(writeYard(back.yard)).toBe(writeYard(yard));
		const far = after(yard, plan, { do: 'add', kind: 'fixture', technique: 'uplight', points: [p(-40, 40)] });
		expect(far.yard.fixtures!.added![0]!.target).toBeUndefined();
	});
	test('what is set by lengths is refused, and where it is set is said', () => {
		const { yard, plan, things } = { ...suburban, things: thingsOf(suburban.plan, suburban.yard) };
		const said: Partial<Record<ThingKind, string>> = {
			section: 'House',
			opening: 'House',
			porch: 'House',
			steps: 'Walks',
			run: 'page of its run'
		};
		for (const [kind, where] of Object.entries(said)) {
			const thing = things.find((one) => one.kind === kind)!;
			for (const edit of [
				{ do: 'move', key: thing.key, handle: 0, to: p(1, 1) },
				{ do: 'remove', key: thing.key }
			] satisfies Edit[])
				expect(problemOf(yard, plan, edit)).toContain(where);
		}
	});
});

describe('as its question has it', () => {
	test('new ones get the ids that the questions give: prefix and first free number', () => {
		const prefixes = {
			tree: 'tree',
			walk: 'walk',
			drive: 'drive',
			bed: 'bed',
			paved: 'paved',
			seating: 'seat',
			water: 'water',
			light: 'light',
			wall: 'wall',
			number: 'number'
		};
		for (const kind of kinds) {
			const one = after(blank.yard, blank.plan, { do: 'add', kind, points: pointsFor(kind) });
			const two = after(one.yard, blank.plan, { do: 'add', kind, points: pointsFor(kind) });
			expect([one.key, two.key]).toEqual([1, 2].map((n) => `${kind}/${prefixes[kind]}-${n}`));
		}
	});
	test('a walk drawn from the door to the street is turned round; one drawn home stays', () => {
		const home = [p(7, 13), p(7, 6), p(7, 2)];
		for (const { yard, plan } of yards) {
			const [there, back] = [home, home.toReversed()].map(
				(points) => after(yard, plan, { do: 'add', kind: 'walk', points }).yard
			);
			expect(writeYard(there!)).toBe(writeYard(back!));
			expect(there!.walks!.at(-1)!.line![0]).toEqual({ along: 7, out: 13 });
		}
	});
	test('presses on one spot count once; an outline closed by hand has its first corner once', () => {
		const { yard, plan } = town;
		const corners = [p(1, 3), p(4, 3), p(4, 5)];
		const bed = (points: Point[]) => writeYard(after(yard, plan, { do: 'add', kind: 'bed', points }).yard);
		expect(bed([corners[0]!, ...corners, corners[0]!])).toBe(bed(corners));
	});
});

describe('refused in words, with the limit', () => {
	const refusals: [string, Edit, RegExp][] = [
		['too far', { do: 'add', kind: 'tree', points: [p(501, 0)] }, /1640 ft 5 in/],
		['no number', { do: 'add', kind: 'tree', points: [p(Number.NaN, 0)] }, /further than a yard/],
		['no point', { do: 'add', kind: 'tree', points: [] }, /needs one point/],
		['two points', { do: 'add', kind: 'tree', points: [p(0, 1), p(0, 2)] }, /has one point/],
		['too few', { do: 'add', kind: 'bed', points: [p(0, 1), p(0, 2)] }, /three corners/],
		['on one line', { do: 'add', kind: 'bed', points: [p(0, 1), p(0, 2), p(0, 5)] }, /one line/],
		['no length', { do: 'add', kind: 'walk', points: [p(0, 1), p(0, 1.1)] }, /same place/],
		[
			'too many',
			{ do: 'add', kind: 'walk', points: Array.from({ length: 61 }, (_, y) => p(0, y)) },
			/60 points at most/
		],
		['a long name', { do: 'add', kind: 'tree', points: [p(0, 1)], name: 'x'.repeat(61) }, /60 letters at most/],
		['no such sort', { do: 'add', kind: 'water', points: [p(0, 1)], sort: 'sea' }, /pond/],
		['no such light', { do: 'add', kind: 'fixture', points: [p(0, 1)], technique: 'laser' }, /laser/],
		['gone', { do: 'move', key: 'tree/none', handle: 0, to: p(0, 0) }, /no longer/],
		['no key', { do: 'remove', key: 'nonsense' }, /no longer/],
		['no such point', { do: 'move', key: 'walk/front-walk', handle: 9, to: p(0, 0) }, /no such point/],
		['the last two', { do: 'straighten', key: 'walk/front-walk', handle: 0 }, /two points or more/]
	];
	for (const [what, edit, words] of refusals)
		test(what, () => expect(problemOf(town.yard, town.plan, edit)).toMatch(words));
	test('no more than a yard holds', () => {
		const trees = Array.from({ length: limits.items }, (_, i) => ({ id: `tree-${i + 1}`, name: '' }));
		const full = { ...town.yard, trees };
		expect(problemOf(full, town.plan, { do: 'add', kind: 'tree', points: [p(0, 1)] })).toContain('400 trees');
	});
});

describe('any changes one after another', () => {
	const coordinate = oneof(
		{ weight: 12, arbitrary: double({ min: -60, max: 60, noNaN: true }) },
		{ weight: 1, arbitrary: constantFrom(600, -1e9, Number.NaN, Infinity, -0) }
	);
	const point = record({ x: coordinate, y: coordinate });
	const addable = constantFrom<Addable[]>(...kinds, 'receptacle', 'transformer', 'sensor', 'fixture');
	const pick = integer({ min: 0, max: 1000 });
	const index = integer({ min: -1, max: 6 });
	type Step = (keys: readonly string[]) => Edit;
	const onThing =
		(make: (key: string) => Edit, n: number): Step =>
		(keys) =>
			make(keys[n % Math.max(1, keys.length)] ?? '');
	const step = oneof(
		record({ kind: addable, points: array(point, { maxLength: 6 }), name: string({ maxLength: 70 }) }).map(
			(add): Step =>
				() => ({ do: 'add', ...add })
		),
		record({ n: pick, handle: index, to: point }).map(({ n, ...rest }) =>
			onThing((key) => ({ do: 'move', key, ...rest }), n)
		),
		record({ n: pick, by: point }).map(({ n, by }) => onThing((key) => ({ do: 'shift', key, by }), n)),
		record({ n: pick, after: index, at: point }).map(({ n, ...rest }) =>
			onThing((key) => ({ do: 'bend', key, ...rest }), n)
		),
		record({ n: pick, handle: index }).map(({ n, handle }) => onThing((key) => ({ do: 'straighten', key, handle }), n)),
		record({ n: pick, points: array(point, { maxLength: 6 }) }).map(({ n, points }) =>
			onThing((key) => ({ do: 'draw', key, points }), n)
		),
		record({
			n: pick,
			what: constantFrom<Size[]>('spread', 'width', 'across', 'length', 'height'),
			to: coordinate
		}).map(({ n, ...rest }) => onThing((key) => ({ do: 'size', key, ...rest }), n)),
		record({ n: pick, to: string({ maxLength: 70 }) }).map(({ n, to }) =>
			onThing((key) => ({ do: 'name', key, to }), n)
		),
		record({ n: pick, to: constantFrom('pond', 'spa', 'sign', 'other', 'x') }).map(({ n, to }) =>
			onThing((key) => ({ do: 'sort', key, to }), n)
		),
		pick.map((n) => onThing((key) => ({ do: 'remove', key }), n))
	);
	test('leave a yard that can be saved, opened again and planned; what is refused says why', () => {
		const start = [
			blank,
			...yards,
			...[3, 5, 8].map((seed) => ({ yard: randomYard(seed), plan: makePlan(randomYard(seed)) }))
		];
		assert(
			property(integer({ min: 0, max: start.length - 1 }), array(step, { maxLength: 25 }), (which, steps) => {
				const { yard: first, plan } = start[which]!;
				let yard = first;
				const keys = thingsOf(plan, yard).map(({ key }) => key);
				for (const make of steps) {
					const edited = applied(yard, plan, make(keys));
					if (!edited.ok) {
						expect(edited.problem.length).toBeGreaterThan(10);
						continue;
					}
					yard = edited.yard;
					if (edited.key !== null && !keys.includes(edited.key)) keys.push(edited.key);
				}
				expect(isYard(yard)).toBe(true);
				expect(readYard(writeYard(yard))).toMatchObject({ ok: true });
			}),
			{ numRuns: process.env.LONG ? 2000 : 200, seed: 11 }
		);
	}, 600_000);
	test('are on the drawing: the things of the new plan are where the changes put them', () => {
		const { yard, plan } = suburban;
		let now = yard;
		for (const kind of kinds)
			now = after(now, plan, { do: 'add', kind, points: pointsFor(kind), name: `new ${kind}` }).yard;
		const things = thingsOf(makePlan(now), now);
		for (const kind of kinds) {
			const thing = things.find(({ name }) => name === `new ${kind}`)!;
			expect(thing.kind).toBe(kind);
			const wanted = pointsFor(kind).map(({ x, y }) => `${x.toFixed(4)} ${y.toFixed(4)}`);
			const got = thing.handles.map(({ at }) => `${at.x.toFixed(4)} ${at.y.toFixed(4)}`);
			expect(got.toSorted()).toEqual(wanted.toSorted());
		}
	});
});
