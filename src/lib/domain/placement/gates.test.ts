/** Gates across walks and gate posts of drives, worked by hand. All metres. */
import { describe, expect, it } from 'vitest';
import { distanceToPolygon, nearestOnSegment } from '../shared/geometry';
import { tradeFigures } from '../shared/settings';
import { leafOf, makeSite, postsOf } from '../site';
import { blankYard, type Yard, type YardDrive, type YardWalk } from '../yard';
import { survey } from './conflicts';
import { inSweep } from './drive-spots';
import { firstsOf } from './firsts';
import { placeFixtures } from './index';

const straight = (along: number) => [
	{ along, out: 20 },
	{ along, out: 0 }
];
const yardOf = ({ walk, drive }: { walk?: Partial<YardWalk>; drive?: Partial<YardDrive> }): Yard => ({
	...blankYard(),
	place: { units: 'metres' },
	house: { sections: [{ id: 'front', width: 12, light: 'none' }], openings: [], porches: [] },
	lot: { street: 20, left: 30, right: 30 },
	trees: [],
	walks: walk ? [{ id: 'walk', name: 'walk', width: 1.2, lights: 'left', line: straight(6), ...walk }] : [],
	drives: drive
		? [{ id: 'drive', name: 'drive', width: 3, lights: 'mouth', line: straight(16), posts: true, ...drive }]
		: []
});
const plan = (yard: Yard) => {
	const site = makeSite(yard);
	return { site, ...placeFixtures(site, yard) };
};
const gate = (at: number) => ({ gates: [{ id: 'gate', at }] });

describe('a gate across a walk', () => {
	it('has a light just before the reach of its leaf', () => {
		const { fixtures } = plan(yardOf({ walk: gate(8) }));
		// The leaf is as long as the walk is wide: 1.2; the head is 0.2 wide and stands 0.2 off an edge 0.6 from the middle.
		const before = fixtures.find((f) => f.reasons[0]!.because.includes('the gate'))!;
		expect(before.at).toEqual({
			x: expect.closeTo(6 - 0.6 - 0.2 - 0.1, 9),
			y: expect.closeTo(20 - (8 - 1.2 - 0.15), 9)
		});
		expect(before.reasons[0]!.because).toContain(
			'just before the reach of its leaf, which may swing 1.20 m either way'
		);
		expect(before.reasons[0]!.because).toContain('latch is on is not known');
	});
	it.each([0, 0.4, 1.8])(
		'at %s m from the street, where no walk lies before it, just beyond; it serves the entry too',
		(at) => {
			const { fixtures } = plan(yardOf({ walk: gate(at) }));
			const beside = fixtures.find((f) => f.reasons[0]!.because.includes('the gate'))!;
			expect(beside.at.y).toBeCloseTo(20 - (at + 1.2 + 0.15), 9);
			expect(beside.reasons[0]!.because).toContain('just beyond');
			if (at < 0.6) expect(beside.reasons[0]!.because).toContain('it serves the entry too');
		}
	);
	it.each(['left', 'right', 'both', 'either'] as const)(
		'%s: no light within reach of the leaf, whichever way it swings',
		(lights) => {
			for (const at of [0, 3, 5.2, 9.9, 16, 20]) {
				const { site, fixtures } = plan(yardOf({ walk: { ...gate(at), lights } }));
				const leaf = leafOf(site.strips[0]!, { at });
				expect(fixtures.length).toBeGreaterThan(3);
				for (const f of fixtures)
					expect(nearestOnSegment(f.at, ...leaf).distance - 0.1).toBeGreaterThanOrEqual(1.2 - 1e-6);
			}
		}
	);
	it('keeps every other lamp off as well, but not one on a wall or a step', () => {
		const ground = survey(makeSite(yardOf({ walk: gate(8) })), tradeFigures.figures);
		// 1.2 beyond the edge at 6.6 is 7.8; the lamp is 0.05 across half.
		expect(ground.blocked({ x: 7.84, y: 12 }, 0.05, 'ground')).toBe('gate');
		expect(ground.blocked({ x: 7.86, y: 12 }, 0.05, 'ground')).toBe(null);
		expect(ground.blocked({ x: 7.5, y: 12 }, 0.05, 'mounted')).toBe(null);
	});
	it('between two bends of a short walk it may leave no room: said', () => {
		const { findings } = plan(
			yardOf({
				walk: {
					...gate(1.2),
					line: [
						{ along: 6, out: 2.4 },
						{ along: 6, out: 0 }
					]
				}
			})
		);
		const said = findings.find((f) => f.code === 'placement.no-room')!;
		expect(said).toMatchObject({ rank: 'look', about: { kind: 'walk', id: 'walk' } });
		expect(said.message).toContain('the gate gets no light');
		expect(said.message).toContain('a gate may swing there');
	});
	it('the head and foot of steps come before it, it before a junction', () => {
		const walk = { ...gate(8), steps: [{ id: 'flight', at: 6, treads: 2, going: 0.3 }] };
		const [strip] = makeSite(yardOf({ walk })).strips;
		// Foot at 5.7, head at 6.9; the light of the gate at 6.65 lies within 1.5 of both.
		expect(firstsOf(strip!, 3).map(({ at, first, also }) => [Number(at.toFixed(2)), first, also])).toEqual([
			[0.5, 'entry', []],
			[6.9, 'head', ['foot', 'gate']]
		]);
	});
});

describe('set by hand', () => {
	it.each([
		['in the swing of a gate', { walk: gate(8) }, { along: 7.5, out: 12 }, 'stands where a gate may swing'],
		['in a gate post', { drive: { postsAt: 5 } }, { along: 14.3, out: 15 }, 'stands in a gate post']
	] as const)('%s: said, and left there', (_, more, at, words) => {
		const added = [{ id: 'mine', technique: 'path' as const, at }];
		const { fixtures, findings } = plan({ ...yardOf(more), fixtures: { added } });
		expect(fixtures.find((f) => f.byHand)!.at).toEqual({ x: at.along, y: at.out });
		expect(findings.some(({ code, message }) => code.startsWith('placement.hand') && message.includes(words))).toBe(
			true
		);
	});
});

describe('gate posts', () => {
	/** A marker head is 0.15 wide; the post 0.4; edges at 14.5 and 17.5. */
	const out = 0.4 + 0.15 + 0.075;
	it('at the street: the pair stands just outside them, beside their middle', () => {
		const { site, fixtures, assumptions } = plan(yardOf({ drive: { postsAt: 0 } }));
		expect(fixtures.map((f) => f.at).sort((a, b) => a.x - b.x)).toEqual([
			{ x: expect.closeTo(14.5 - out, 9), y: expect.closeTo(19.8, 9) },
			{ x: expect.closeTo(17.5 + out, 9), y: expect.closeTo(19.8, 9) }
		]);
		for (const f of fixtures) {
			expect(f.reasons[0]!.because).toContain('just outside the gate posts');
			expect(inSweep(out - 0.075, 20 - f.at.y - 0.075, 1)).toBe(false);
			for (const post of postsOf(site.strips[0]!))
				expect(distanceToPolygon(f.at, post) - 0.075).toBeGreaterThan(0.15 - 1e-9);
			const setback = f.reasons.find((r) => r.rule === 'drive.setback')!;
			expect(setback.value).toBeCloseTo(out, 9);
			expect(setback.working!.value).toBeCloseTo(0.55, 9);
		}
		expect(assumptions.some(({ path }) => path === 'drives.drive.postsAt')).toBe(false);
	});
	it.each([undefined, 'unsure'] as const)('told %s: at the street, as an assumption', (postsAt) => {
		const { site, fixtures } = plan(yardOf({ drive: { postsAt } }));
		expect(site.strips[0]!.posts).toBe(0);
		expect(fixtures[0]!.reasons[0]!.because).toContain('just outside the gate posts');
		expect(site.assumptions.find(({ path }) => path === 'drives.drive.postsAt')?.message).toContain(
			'where the drive leaves the street'
		);
	});
	it('further in: the pair stays where wheels leave the street', () => {
		const { fixtures } = plan(yardOf({ drive: { postsAt: 6 } }));
		expect(fixtures.map((f) => f.at).sort((a, b) => a.x - b.x)).toEqual([
			{ x: expect.closeTo(14.5 - 0.35, 9), y: expect.closeTo(19, 9) },
			{ x: expect.closeTo(17.5 + 0.35, 9), y: expect.closeTo(19, 9) }
		]);
		expect(fixtures[0]!.reasons[0]!.because).toContain('the gate posts stand 6.00 m in');
	});
	it('from 1.425 m in there is room before them: 1 m, half a head, 0.15 and half a post', () => {
		const ys = (postsAt: number) => plan(yardOf({ drive: { postsAt } })).fixtures.map((f) => Number(f.at.y.toFixed(3)));
		expect(ys(1.43)).toEqual([19, 19]);
		expect(ys(1.42)).toEqual([18.58, 18.58]);
	});
	it('where a wall runs on from a post, both stand just inside', () => {
		const yard = yardOf({ drive: { postsAt: 0 } });
		const wall = {
			id: 'wall',
			name: 'front wall',
			from: { along: 17.9, out: 19.8 },
			to: { along: 40, out: 19.8 },
			height: 1
		};
		const { fixtures } = plan({ ...yard, spots: { walls: [{ ...wall, light: 'none' }] } });
		expect(fixtures.map((f) => f.at.y)).toEqual([expect.closeTo(19, 9), expect.closeTo(19, 9)]);
		expect(fixtures[0]!.reasons[0]!.because).toContain('just inside the gate posts');
	});
	it('a row along the edges goes round them', () => {
		for (const postsAt of [1, 4.2, 7, 9.8]) {
			const { site, fixtures } = plan(yardOf({ drive: { postsAt, lights: 'both', pattern: 'paired' } }));
			expect(fixtures.length).toBeGreaterThan(7);
			for (const f of fixtures)
				for (const post of postsOf(site.strips[0]!))
					expect(distanceToPolygon(f.at, post) - 0.075).toBeGreaterThanOrEqual(0.05 - 1e-6);
		}
	});
});
