/** Three yards that differ in their receptacle only, and what the plan says is to be done in each. */
import type { ChecklistStep } from '../../checklist';
import { makePlan } from '../../plan';
import type { Yard } from '../../yard';
import { yardWith } from '../energy/yard';

/** ready: receptacle with GFCI and cover. bare: no receptacle. unguarded: one without GFCI or in-use cover. */
export type YardState = 'ready' | 'bare' | 'unguarded';
const power: Record<YardState, Partial<Yard['power']>> = {
	ready: {},
	bare: { receptacle: 'none' },
	unguarded: { gfci: false, inUseCover: false }
};
const made = new Map<YardState, ChecklistStep[]>();
/** All steps in their order. Made once. */
export function stepsOf(state: YardState): ChecklistStep[] {
	const known = made.get(state);
	if (known) return known;
	const yard = yardWith('led');
	const { checklist } = makePlan({ ...yard, power: { ...yard.power, ...power[state] } });
	const steps = checklist.parts.flatMap((part) => part.steps);
	made.set(state, steps);
	return steps;
}
/** Throws where the plan has no such step: a job named after it would be a job of nobody's plan. */
export function stepOf(state: YardState, id: string): ChecklistStep {
	const step = stepsOf(state).find((one) => one.id === id);
	if (!step) throw new Error(`The plan of the ${state} yard has no step ${id}`);
	return step;
}
