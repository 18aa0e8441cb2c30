import { describe, expect, it } from 'vitest';
import { makePlan } from '$lib/domain/plan';
import { blankYard, examples } from '$lib/domain/yard';
import { stepsOf } from '$lib/flow';
import { stepAbout } from './abouts';
import { effectOf } from './effect';

describe('what the answers change', () => {
	for (const { id, yard } of examples) {
		const plan = makePlan(yard);
		it(`gives every fixture of ${id} to the page that asked for it`, () => {
			const told = new Set(
				stepsOf(yard).flatMap((step) =>
					effectOf(plan, step).groups.flatMap(({ fixtures }) => fixtures.map((fixture) => fixture.id))
				)
			);
			expect([...told].sort()).toEqual(plan.fixtures.map((fixture) => fixture.id).sort());
		});
		it(`leads from what every fixture of ${id} lights to a page`, () => {
			for (const { target, label } of plan.fixtures) {
				if (target.kind === 'steps') continue;
				expect(stepAbout(yard, target), `${label} ${target.kind} ${target.id}`).not.toBeNull();
			}
		});
	}
	it('is empty for a blank yard', () => {
		const yard = blankYard();
		const plan = makePlan(yard);
		for (const step of stepsOf(yard)) expect(effectOf(plan, step).groups).toEqual([]);
	});
	it('has no page for what it does not know', () => {
		expect(stepAbout(blankYard(), { kind: 'comet', id: 'x' })).toBeNull();
		expect(stepAbout(blankYard(), null)).toBeNull();
	});
});
