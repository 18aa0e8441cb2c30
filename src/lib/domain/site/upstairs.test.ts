/** Eaves of parts, gables, upper floors and porch roofs: what they come to, and what cannot be. Sizes of windows are from memory. */
import { describe, expect, it } from 'vitest';
import { blankYard, type Yard } from '../yard';
import { makeSite } from './make-site';

const of = (house: Yard['house']) =>
	makeSite({ ...blankYard(), place: { units: 'metres' }, house: { depth: 8, eaves: 5.2, ...house } });
const wall = (site: ReturnType<typeof of>, id: string) => site.walls.find((one) => one.id === id)!;
const sections = [
	{ id: 'a', width: 6, light: 'soft' as const },
	{ id: 'b', width: 4, out: 1.2, gable: 7.2, light: 'soft' as const },
	{ id: 'c', width: 6, out: -1, eaves: 2.7, light: 'none' as const }
];
const window = (along: number, more: object = {}) => ({
	id: 'w',
	kind: 'window' as const,
	wall: 'front' as const,
	along,
	width: 1,
	...more
});

describe('heights of the walls', () => {
	it('each part has its own eaves and gable, a return those of the part that stands out', () => {
		const site = of({ sections });
		expect(
			['left', 'front-1', 'return-1', 'front-2', 'return-2', 'front-3', 'right'].map((id) => wall(site, id).height)
		).toEqual([5.2, 5.2, 5.2, 5.2, 5.2, 2.7, 2.7]);
		expect(site.walls.filter(({ peak }) => peak !== null).map(({ id, peak }) => [id, peak])).toEqual([
			['front-2', 7.2]
		]);
		expect(site.eaves).toBe(5.2);
		expect(site.findings).toEqual([]);
	});
	it.each([
		[4.9, 'look site.gable-below-eaves b'],
		[5.2, 'look site.gable-below-eaves b'],
		// 2 m in from the corner it would rise by more than 6 m.
		[11.3, 'look site.gable-steep b'],
		[11.1, undefined]
	])('a point %s m up over eaves at 5.2 m', (gable, expected) => {
		const { findings } = of({ sections: sections.map((one) => (one.id === 'b' ? { ...one, gable } : one)) });
		expect(findings.map(({ rank, code, about }) => `${rank} ${code} ${about?.id}`)).toEqual(expected ? [expected] : []);
	});
	it('three storeys are asked about at the part that has them', () => {
		const { findings } = of({ sections: [{ id: 'tower', width: 5, eaves: 9.5, light: 'soft' }] });
		expect(findings).toMatchObject([{ code: 'site.eaves-high', about: { kind: 'section', id: 'tower' } }]);
	});
});

describe('openings of the upper floor', () => {
	const opening = (site: ReturnType<typeof of>) => site.walls.flatMap((one) => one.openings)[0]!;
	it('lie a storey higher; those of the ground floor as before', () => {
		expect(opening(of({ sections, openings: [window(1)] }))).toMatchObject({ sill: 0.9, head: 2.1 });
		const site = of({ sections, openings: [window(1, { floor: 'upper' })] });
		expect(opening(site).sill).toBeCloseTo(3.6, 12);
		expect(opening(site).head).toBeCloseTo(4.8, 12);
		expect(site.assumptions.map(({ path }) => path)).toContain('house.openings');
		expect(opening(of({ sections, openings: [window(1, { kind: 'door' })] }))).toMatchObject({ sill: 0, head: 2.1 });
		expect(opening(of({ sections, openings: [window(1, { kind: 'garage' })] }))).toMatchObject({ sill: 0, head: 2.2 });
	});
	it('a door up there is a window to whoever stands below', () => {
		const site = of({ sections, openings: [window(1, { kind: 'door', floor: 'upper' })] });
		expect(opening(site)).toMatchObject({ kind: 'window', sill: 3.6 });
	});
	it('one over the other do not overlap; two on one floor do', () => {
		const door = { ...window(1.2), id: 'd', kind: 'door' as const };
		expect(of({ sections, openings: [door, window(1, { floor: 'upper' })] }).findings).toEqual([]);
		expect(of({ sections, openings: [door, window(1)] }).findings).toMatchObject([{ code: 'site.openings-overlap' }]);
	});
	it('in a wall of one storey only under a gable that has room for it, and cut off by its slope', () => {
		const low = (along: number, gable?: number) =>
			of({
				eaves: 2.7,
				sections: [{ id: 'a', width: 8, gable, light: 'soft' }],
				openings: [window(along, { floor: 'upper' })]
			});
		expect(low(3.5).findings).toMatchObject([
			{ code: 'site.opening-above-eaves', rank: 'look', about: { kind: 'opening', id: 'w' } }
		]);
		// Half a metre from the middle of 4 m of slope: 2.7 + 2.8 × 7/8 = 5.15 m.
		expect(low(3.5, 5.5).findings).toEqual([]);
		expect(opening(low(3.5, 5.5)).head).toBeCloseTo(4.8, 12);
		// From 2 m along: 2.7 + 2.8 × 2/4 = 4.1 m there.
		expect(opening(low(2, 5.5)).head).toBeCloseTo(4.1, 12);
		expect(low(0.5, 5.5).findings).toMatchObject([{ code: 'site.opening-above-eaves' }]);
	});
	it('no garage', () => {
		const { findings } = of({ sections, openings: [window(1, { kind: 'garage', floor: 'upper' })] });
		expect(findings).toMatchObject([{ code: 'site.garage-upstairs', about: { kind: 'opening', id: 'w' } }]);
	});
});

describe('the roof of a porch', () => {
	const porch = (more: object, more2: Yard['house'] = {}) =>
		of({ sections, porches: [{ id: 'p', along: 1, width: 3, depth: 2, ...more }], ...more2 });
	const under = (site: ReturnType<typeof of>) => site.areas.find(({ kind }) => kind === 'porch')!.under;
	it('is where it is told, else 2.4 m up and no higher than the eaves; an open one has none', () => {
		expect(under(porch({ roof: true, under: 2.6 }))).toBe(2.6);
		expect(under(porch({ roof: true }))).toBe(2.4);
		expect(under(porch({ roof: true }, { eaves: 2 }))).toBe(2);
		expect(under(porch({ roof: false, under: 2.6 }))).toBeUndefined();
		expect(porch({ roof: true }).assumptions.map(({ path }) => path)).toContain('house.porches.p.under');
		expect(porch({ roof: true, under: 2.6 }).assumptions.map(({ path }) => path)).not.toContain(
			'house.porches.p.under'
		);
	});
	it('does not lie above the eaves', () => {
		expect(porch({ roof: true, under: 5.4 }).findings).toMatchObject([
			{ code: 'site.porch-above-eaves', rank: 'look', about: { kind: 'porch', id: 'p' } }
		]);
		expect(porch({ roof: true, under: 5.2 }).findings).toEqual([]);
	});
});
