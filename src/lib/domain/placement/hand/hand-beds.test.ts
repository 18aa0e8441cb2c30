/** Lights of beds and signs under a person's hand: chosen as a target, checked, kept. */
import { describe, expect, it } from 'vitest';
import { makeSite } from '../../site';
import { yardSchema, type HandFixtures, type Yard } from '../../yard';
import { wholeYard } from '../budget.testing';
import { placeFixtures } from '../index';

const at = (along: number, out: number) => ({ along, out });
const board = { id: 'board', name: 'board', kind: 'sign' as const, width: 0.8, at: at(-12, 20), light: true };
const base: Yard = { ...wholeYard, spots: { ...wholeYard.spots, numbers: [...wholeYard.spots.numbers!, board] } };
const planned = (fixtures?: HandFixtures) => {
	const yard: Yard = { ...base, ...(fixtures ? { fixtures } : {}) };
	expect(yardSchema.safeParse(yard).error).toBeUndefined();
	return placeFixtures(makeSite(yard), yard);
};
const bed = { kind: 'bed' as const, id: 'roses' };
const withAdded = (along: number, out: number) =>
	planned({ added: [{ id: 'mine', technique: 'area', at: at(along, out), target: bed }] });
const broken = ({ findings }: ReturnType<typeof planned>): string[] =>
	findings.filter(({ code }) => code.startsWith('placement.hand-')).map(({ message }) => message);

describe('a light added for a bed', () => {
	// The bed reaches from −6 to −1 along and from 15 to 16.2 out; the plan has lights at −4.625 and −2.375.
	it('has the letter of beds, and the plan keeps out of its way', () => {
		const plan = withAdded(-3.5, 15.6);
		expect(plan.fixtures.find(({ id }) => id === 'added/mine')).toMatchObject({ target: bed, technique: 'area' });
		expect(plan.fixtures.find(({ id }) => id === 'added/mine')!.label).toMatch(/^B\d$/);
	});
	it('outside the bed, or within reach of the edger: said', () => {
		expect(broken(withAdded(-3.5, 18)).join()).toMatch(/stands outside the roses\. Move it, or take it away\./);
		expect(broken(withAdded(-3.5, 16.1)).join()).toMatch(
			/is 0 mm from the edge of the roses, nearer than 150 mm: edger/
		);
	});
	it('beside another low light: two do the work of one', () => {
		const own = planned().fixtures.filter(({ target }) => target.kind === 'bed');
		expect(own).toHaveLength(2);
		expect(broken(withAdded(own[0]!.at.x + 0.6, own[0]!.at.y)).join()).toMatch(/two lights do the work of one/);
	});
});

describe('a light of the plan', () => {
	const own = planned().fixtures;
	it('in the bed stays where it is moved; taken away, it is called what it is', () => {
		const one = own.find(({ target }) => target.kind === 'bed')!;
		const from = at(one.at.x, one.at.y);
		const moved = planned({ set: [{ id: one.id, from, at: at(one.at.x, one.at.y - 0.2) }] });
		expect(moved.fixtures.find(({ id }) => id === one.id)).toMatchObject({ byHand: ['moved'], target: bed });
		expect(broken(planned({ set: [{ id: one.id, from, removed: true }] }))[0]).toMatch(/^You took away a bed light\./);
	});
	it('before a sign stays aimed at it wherever it is moved', () => {
		const one = own.find(({ id }) => id === 'board/sign-1')!;
		const moved = planned({ set: [{ id: one.id, at: at(one.at.x + 0.5, one.at.y + 0.2) }] });
		const now = moved.fixtures.find(({ id }) => id === one.id)!;
		expect(now.aim!.point).toEqual({ x: -12, y: 20, z: 0.9 });
		expect(broken(planned({ set: [{ id: one.id, removed: true }] }))[0]).toMatch(/^You took away a sign light\./);
	});
	it('a wash added for a sign is aimed at it', () => {
		const target = { kind: 'number' as const, id: 'board' };
		const plan = planned({ added: [{ id: 'mine', technique: 'wash', at: at(-11, 21), target }] });
		expect(plan.fixtures.find(({ id }) => id === 'added/mine')!.aim!.point).toEqual({ x: -12, y: 20, z: 0.9 });
	});
	it('whose bed is gone is kept for when it comes back', () => {
		const yard: Yard = {
			...base,
			spots: { ...base.spots, beds: [] },
			fixtures: { set: [{ id: 'roses/bed-1', at: at(-3, 15.6) }] }
		};
		const plan = placeFixtures(makeSite(yard), yard);
		expect(plan.fixtures.some(({ id }) => id === 'roses/bed-1')).toBe(false);
		expect(broken(plan)[0]).toMatch(/no longer in the yard\. Your change to it is kept/);
	});
});
