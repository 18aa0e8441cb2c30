/** Gates, gate posts and paved areas as geometry, and what cannot be; worked by hand. Metres. */
import { describe, expect, it } from 'vitest';
import { blankYard, type Yard, type YardDrive, type YardPoint, type YardWalk } from '../yard';
import { builtAt, leafOf, makeSite, postsMiddle, postsOf } from '.';

const at = (along: number, out: number): YardPoint => ({ along, out });
const yardOf = (more: {
	walk?: Partial<YardWalk>;
	drive?: Partial<YardDrive>;
	paved?: Yard['spots']['paved'];
}): Yard => ({
	...blankYard(),
	place: { units: 'metres' },
	house: { sections: [{ id: 'front', width: 12, out: 0 }], depth: 8 },
	lot: { street: 20, left: 30, right: 30 },
	walks: more.walk ? [{ id: 'walk', name: 'walk', width: 1.2, line: [at(6, 20), at(6, 0)], ...more.walk }] : [],
	drives: more.drive ? [{ id: 'drive', name: 'drive', width: 3, line: [at(16, 20), at(16, 0)], ...more.drive }] : [],
	spots: more.paved ? { paved: more.paved } : {}
});
const codes = (yard: Yard) => makeSite(yard).findings.map(({ code, about }) => [code, about?.kind, about?.id]);
const near = (x: number, y: number) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) });

describe('gates', () => {
	it('lie across the walk, in order from the street; their leaf goes from edge to edge', () => {
		const site = makeSite(
			yardOf({
				walk: {
					gates: [
						{ id: 'b', at: 15 },
						{ id: 'a', at: 2 }
					]
				}
			})
		);
		const [walk] = site.strips;
		expect(walk!.gates).toEqual([
			{ id: 'a', at: 2 },
			{ id: 'b', at: 15 }
		]);
		// Going home left is towards smaller x.
		expect(leafOf(walk!, walk!.gates[0]!)).toEqual([near(5.4, 18), near(6.6, 18)]);
		expect(site.assumptions.filter(({ path }) => path === 'walks.walk.gates')).toHaveLength(1);
	});
	it('on a slanted stretch square to it', () => {
		const [walk] = makeSite(yardOf({ walk: { line: [at(0, 20), at(8, 14)], gates: [{ id: 'a', at: 5 }] } })).strips;
		// Half way along 8 by 6; 0.6 to the left of (0.8, −0.6) is 0.6 × (−0.6, −0.8).
		expect(leafOf(walk!, { at: 5 })[0]).toEqual(near(4 - 0.36, 17 - 0.48));
	});
	it('beyond the end, or in a flight: said', () => {
		expect(codes(yardOf({ walk: { gates: [{ id: 'a', at: 25 }] } }))).toEqual([
			['site.gate-beyond-end', 'walk', 'walk']
		]);
		const steps = [{ id: 'flight', at: 8, treads: 4, going: 0.3 }];
		expect(codes(yardOf({ walk: { steps, gates: [{ id: 'a', at: 8.6 }] } }))).toEqual([
			['site.gate-on-steps', 'walk', 'walk']
		]);
		expect(codes(yardOf({ walk: { steps, gates: [{ id: 'a', at: 8 }] } }))).toEqual([]);
	});
});

describe('gate posts', () => {
	const posts = (drive: Partial<YardDrive>) => makeSite(yardOf({ drive: { posts: true, ...drive } })).strips[0]!;
	it('stand 0.4 square beside the edges, never in the street', () => {
		const drive = posts({ postsAt: 5 });
		expect(drive.posts).toBe(5);
		expect(postsOf(drive)[0]).toEqual([near(14.5, 15.2), near(14.5, 14.8), near(14.1, 14.8), near(14.1, 15.2)]);
		expect(postsOf(drive)[1]!.map(({ x }) => Number(x.toFixed(6)))).toEqual([17.5, 17.5, 17.9, 17.9]);
		expect(postsMiddle(posts({ postsAt: 0 }))).toBeCloseTo(0.2, 9);
		expect(
			Math.max(
				...postsOf(posts({ postsAt: 0 }))
					.flat()
					.map(({ y }) => y)
			)
		).toBeCloseTo(20, 9);
	});
	it('none without a yes', () => {
		for (const told of [false, undefined]) {
			const [drive] = makeSite(yardOf({ drive: { posts: told, postsAt: 4 } })).strips;
			expect(drive!.posts).toBeNull();
			expect(postsOf(drive!)).toEqual([]);
		}
	});
	it('beyond the end: said', () => {
		expect(codes(yardOf({ drive: { posts: true, postsAt: 24 } }))).toEqual([
			['site.posts-beyond-end', 'drive', 'drive']
		]);
	});
});

describe('paved areas', () => {
	const square = [at(2, 3), at(5, 3), at(5, 6), at(2, 6)];
	const paved = (more: { outline?: YardPoint[]; cars?: boolean; name?: string }) =>
		yardOf({ paved: [{ id: 'patio', name: 'patio', outline: square, cars: false, ...more }] });
	it('are areas of their own; nothing stands on them', () => {
		const site = makeSite(paved({}));
		expect(site.areas).toMatchObject([
			{ id: 'patio', kind: 'paved', sort: 'feet', light: 'none', centre: near(3.5, 4.5) }
		]);
		expect(builtAt(site, { x: 3, y: 4 })).toEqual({ kind: 'paved', id: 'patio' });
		expect(makeSite(paved({ cars: true })).areas[0]!.sort).toBe('cars');
		expect(makeSite(paved({ name: ' ' })).areas[0]!.name).toBe('paved area');
	});
	it('not told whether for cars: taken to be, and said', () => {
		const site = makeSite(paved({ cars: undefined }));
		expect(site.areas[0]!.sort).toBe('cars');
		expect(site.assumptions.map(({ path }) => path)).toContain('spots.paved.patio.cars');
	});
	it('without an outline: missing', () => {
		const site = makeSite(paved({ outline: undefined }));
		expect(site.areas).toEqual([]);
		expect(site.missing.map(({ path }) => path)).toContain('spots.paved.patio.outline');
	});
	it.each([
		['crossing itself', [at(2, 3), at(5, 6), at(5, 3), at(2, 6)], 'site.paved-crosses-itself'],
		[
			'crossing itself far from its corners',
			[at(0, 3), at(9, 4), at(0, 5), at(2, 9), at(3, 1)],
			'site.paved-crosses-itself'
		],
		['all on one line', [at(2, 3), at(3, 3), at(5, 3)], 'site.paved-no-area'],
		['into the house', [at(2, -2), at(5, -2), at(5, 3), at(2, 3)], 'site.paved-in-house']
	])('%s: said at its own question', (_, outline, code) => {
		expect(codes(paved({ outline }))).toEqual([[code, 'paved', 'patio']]);
	});
	it('up against the wall, and a corner turned in: sound', () => {
		expect(codes(paved({ outline: [at(2, 0), at(8, 0), at(8, 3), at(5, 1), at(2, 3)] }))).toEqual([]);
	});
});
