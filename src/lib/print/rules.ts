/** The rule behind a step, with how well it is known, as printed under it. */
import { rules, type Rule } from '../domain/shared/rules';
import { sources } from '../domain/shared/sources';

export function formatRule(id: string): string {
	const rule: Rule | undefined = Object.values<Rule>(rules).find((rule) => rule.id === id);
	return rule ? `${rule.title}: ${sources[rule.source].text}.` : '';
}
