import { describe, expect, it } from 'vitest';
import { ownLightOf } from '$lib/domain/placement';
import { disc, lampOf, steps, tableOf } from '$lib/domain/placement/own-lamp/own-lamp.testing';
import { makePlan } from '$lib/domain/plan';
import { examples, type OwnLamp, type Yard } from '$lib/domain/yard';
import { beamWords, factsOf, groupsOf, labelsWith, mostModels } from './own-lamps';

const yard = examples.find(({ title }) => title === 'Alder Bend')!.yard;
const withLamp = (lamp: OwnLamp): Yard => ({ ...yard, power: { ...yard.power, lamps: [lamp] } });

describe('the lights that a lamp may be for', () => {
	it('are all lights of the plan, each once, with room in a yard for their models', () => {
		const plan = makePlan(yard);
		const groups = groupsOf(plan);
		expect(groups.flatMap(({ labels }) => labels).toSorted()).toEqual(
			plan.fixtures.map(({ label }) => label).toSorted()
		);
		expect(new Set(groups.map(({ name }) => name)).size).toBe(groups.length);
		for (const { models, own } of groups) {
			expect(plan.fixtures.some(({ model }) => model === models[0])).toBe(true);
			expect([models.length <= mostModels, own]).toEqual([true, null]);
		}
	});
	it('stay together under a lamp that stands for them, and a lamp for a group is in all its lights', () => {
		for (const { name, labels, models } of groupsOf(makePlan(yard))) {
			const lamp = lampOf(disc(50), models, { name: 'Mine' });
			const plan = makePlan(withLamp(lamp));
			const found = groupsOf(plan, [lamp]).find(({ own }) => own === 'Mine');
			expect(found?.name, name).toBe(name);
			expect(found!.labels).toEqual(labelsWith(plan, ownLightOf(lamp)));
			// Places may change with the light; a lamp for a kind of light never leaves the plan.
			expect(found!.labels.length, `${name}: ${labels.join(', ')}`).toBeGreaterThan(0);
		}
	});
});

it('words: one angle or two, and watts that nobody told', () => {
	const flat = ownLightOf(lampOf(disc(50), ['x']))!;
	expect(beamWords(flat.beam)).toBe('120°');
	expect(factsOf(flat, undefined).map(({ value }) => value)).toEqual([
		'157 lm',
		'120° between the edges of half its strength',
		'50 cd',
		'not told: that of the lamp it stands for'
	]);
	const wide = tableOf((g, c) => (g <= (c === 0 ? 20 : 40) ? 5 : 0), steps(0, 90, 10), [0, 90], 'quadrant');
	const light = ownLightOf(lampOf(wide, ['x']))!;
	expect(beamWords(light.beam)).toBe('50° by 90°');
	expect(factsOf(light, 4)[2]).toEqual({ name: 'Along the beam', value: '5.0 cd' });
});
