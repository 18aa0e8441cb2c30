/** What each rule did in the plan in hand. */
import type { Fixture } from '$lib/domain/placement';
import type { Plan } from '$lib/domain/plan';
import type { Finding } from '$lib/domain/shared/findings';

export interface Use {
	/** Lights that stand as they do by it. */
	put: Fixture[];
	/** Lights that would stand elsewhere without it, and the words for it. */
	moved: { fixture: Fixture; because: string }[];
	said: Finding[];
}
export const noUse: Use = { put: [], moved: [], said: [] };

/** By rule. A light that a rule moved is counted there, whatever else the rule says of it. */
export function usesOf({ fixtures, findings }: Pick<Plan, 'fixtures' | 'findings'>): ReadonlyMap<string, Use> {
	const uses = new Map<string, Use>();
	const of = (rule: string): Use => {
		const use = uses.get(rule) ?? { put: [], moved: [], said: [] };
		uses.set(rule, use);
		return use;
	};
	for (const fixture of fixtures)
		for (const { rule, because, notHere } of fixture.reasons) {
			const { put, moved } = of(rule);
			if (notHere) moved.push({ fixture, because });
			else if (!put.includes(fixture)) put.push(fixture);
		}
	for (const finding of findings) if (finding.rule !== null) of(finding.rule).said.push(finding);
	return uses;
}
