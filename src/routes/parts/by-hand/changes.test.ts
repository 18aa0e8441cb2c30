/** What the layout page writes, tried on the demo yards through the whole plan. */
import { describe, expect, it } from 'vitest';
import { makePlan } from '$lib/domain/plan';
import { fixtureModels } from '$lib/domain/shared/catalogue';
import { examples, yardSchema, type Yard } from '$lib/domain/yard';
import {
	absent,
	added,
	editOf,
	forgotten,
	moved,
	nameOfAbsent,
	pinned,
	removed,
	targetsFor,
	turned,
	withModel,
	type Told
} from './changes';

const plain = examples.find(({ id }) => id === 'suburban')!.yard;
const withTold = (fixtures: Told): Yard => ({ ...plain, ...(fixtures ? { fixtures } : {}) });
const planOf = (fixtures: Told) => {
	const yard = withTold(fixtures);
	expect(yardSchema.safeParse(yard).error).toBeUndefined();
	return makePlan(yard);
};
const plan = makePlan(plain);
const light = plan.fixtures.find(({ technique }) => technique === 'uplight')!;
const find = (told: Told, id = light.id) => planOf(told).fixtures.find((fixture) => fixture.id === id);

describe('one light of the plan', () => {
	it('moves, and stays with the place it had', () => {
		const told = moved(undefined, light, { x: light.at.x + 0.1, y: light.at.y });
		expect(find(told)).toMatchObject({ byHand: ['moved'], planned: { at: light.at } });
		const further = moved(told, find(told)!, { x: 1, y: 5 });
		expect(editOf(further, light.id)?.from).toEqual(editOf(told, light.id)?.from);
		expect(further?.set).toHaveLength(1);
	});
	it('is pinned, turned, and takes another lamp; each goes back by itself', () => {
		let told = pinned(undefined, light);
		expect(find(told)).toMatchObject({ at: light.at, byHand: ['pinned'], aim: light.aim });
		told = turned(undefined, light, { bearing: 90, tilt: 20 });
		const now = find(told)!;
		expect(now.aim?.bearing).toBeCloseTo(90, 6);
		expect(now.aim?.tilt).toBeCloseTo(20, 6);
		const model = fixtureModels.find(({ body, id }) => body === 'spot' && id !== light.model)!.id;
		told = withModel(told, now, model);
		expect(find(told)).toMatchObject({ byHand: ['turned', 'lamp'], model });
		told = turned(told, find(told)!, undefined);
		expect(find(told)?.byHand).toEqual(['lamp']);
		expect(withModel(told, find(told)!, undefined)).toBeUndefined();
	});
	it('is taken away and put back, and the plan is as it was', () => {
		const told = removed(moved(undefined, light, { x: 1, y: 5 }), light);
		const without = planOf(told);
		expect(without.fixtures.some(({ id }) => id === light.id)).toBe(false);
		expect(absent(without, told)).toEqual([{ id: light.id, removed: true }]);
		expect(nameOfAbsent(without, light.id)).toMatch(/^uplight \d/);
		const back = forgotten(told, light.id);
		expect(back).toBeUndefined();
		expect(JSON.stringify(planOf(back))).toBe(JSON.stringify(plan));
	});
});
describe('a light more', () => {
	it.each(['uplight', 'wash', 'graze', 'path', 'step', 'drive', 'area', 'number'] as const)('%s', (technique) => {
		const [first] = targetsFor(plan, technique);
		const one = added(undefined, technique, { along: 2, out: 6 }, first?.target ?? null);
		const now = find(one.told, one.id)!;
		expect(now).toMatchObject({ technique, byHand: ['added'], at: { x: 2, y: 6 } });
		expect(now.target.kind).toBe(first?.target.kind ?? 'added');
		const two = added(one.told, technique, { along: 4, out: 6 }, null);
		expect(two.id).not.toBe(one.id);
		const shifted = moved(two.told, now, { x: 2.5, y: 6 });
		expect(find(shifted, one.id)?.at.x).toBe(2.5);
		expect(removed(forgotten(shifted, two.id), find(shifted, one.id)!)).toBeUndefined();
	});
});
