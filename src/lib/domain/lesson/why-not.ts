/** Why not by another rule: what might have come in where a light stands, and did not, by the figures of the plan. */
import type { Plan } from '../plan';
import type { RuleId } from '../shared/rules';
import { everywhere } from './why-not-everywhere';
import { ofTechnique } from './why-not-technique';

/** What of a plan it goes by. */
export type Planned = Pick<Plan, 'site' | 'fixtures' | 'light' | 'dusk'>;
export interface Unmet {
	/** Id in `shared/rules.ts`. */
	rule: string;
	/** One or two sentences in the person's units. */
	words: string;
}
/** A rule, and the words for a light where it stays out; null where it comes in, or has nothing to speak of. */
export type Check = readonly [rule: RuleId, words: (plan: Planned, fixture: Plan['fixtures'][number]) => string | null];

/**
 * The rules of a light's own technique, then those that hold everywhere, that did not come in, each with its reason in figures. None
 * that is among the light's reasons. Total and deterministic: a light that the plan does not have has none.
 */
export function whyNot(plan: Planned, fixtureId: string): Unmet[] {
	const fixture = plan.fixtures.find(({ id }) => id === fixtureId);
	if (!fixture) return [];
	const met = new Set(fixture.reasons.map(({ rule }) => rule));
	return [...ofTechnique, ...everywhere].flatMap(([rule, words]) => {
		const said = met.has(rule) ? null : words(plan, fixture);
		return said === null ? [] : [{ rule, words: said }];
	});
}
