/**
 * The plan kept to what the person will spend, in lights or in money. The cuts come in one order, whatever the budget, and
 * the plan takes as many from the front as it needs: so a larger budget never loses a light that a smaller one kept.
 */
import { fixtureModels } from '../shared/catalogue';
import type { Assumption, Finding } from '../shared/findings';
import { rules } from '../shared/rules';
import { budgetFacts, emptyLedger, type BudgetFacts, type Yard } from '../yard';
import { cutsOf, type Cut } from './budget-cuts';
import { leftOutFindings, overFinding } from './budget-words';
import type { Drafting, Placed } from './drafting';

/** What lights come to: how many, and hundredths of the currency (rule budget.count). */
export interface Sum {
	fixtures: number;
	cents: number;
}
export interface LeftOut extends Cut {
	/** The least budget that has it on the plan. */
	needs: Sum;
}
export interface Kept {
	placed: readonly Placed[];
	findings: Finding[];
	assumptions: Assumption[];
}
const cents = (amount: number): number => Math.round(amount * 100);
const priceOf = new Map(fixtureModels.map(({ id, price }) => [id, price]));

/** Hundredths of the currency that a light counts with: its price, the person's own where told, and its share of the rest. */
export function costOf({ fixture: { model } }: Pick<Placed, 'fixture'>, yard: Yard): number {
	const told = yard.power.prices ?? {};
	const price = Object.hasOwn(told, model) ? told[model]! : (priceOf.get(model) ?? 0);
	return cents(price) + cents(rules['budget.count'].figures.share);
}

/** The lights that stay and what is said of those that go; all of them, and nothing said, where there is no limit. */
export function keepToBudget(d: Drafting, yard: Yard): Kept {
	const ledger = emptyLedger();
	const budget = budgetFacts(yard, ledger);
	const { assumptions } = ledger;
	const sum = sumOf(d.placed, yard);
	if (within(sum, budget)) return { placed: d.placed, findings: d.findings, assumptions };
	const gone = new Set<Placed>();
	const leftOut: LeftOut[] = [];
	for (const cut of cutsOf(d)) {
		if (within(sum, budget)) break;
		leftOut.push({ ...cut, needs: { ...sum } });
		for (const light of cut.parts.flatMap(({ lights }) => lights)) {
			gone.add(light);
			sum.fixtures -= 1;
			sum.cents -= costOf(light, yard);
		}
	}
	const placed = d.placed.filter((one) => !gone.has(one));
	const price = yard.power.price;
	const job = {
		site: d.site,
		budget,
		currency: price && price !== 'unsure' ? price.currency : '$',
		all: d.placed.length,
		placed,
		leftOut
	};
	const { findings, dark } = leftOutFindings(job);
	const about = ({ about: of }: Finding): string => `${of?.kind} ${of?.id}`;
	// Of what has no light left, nothing that was said about its lights holds; what was done by hand does.
	const holds = (finding: Finding): boolean => !dark.has(about(finding)) || finding.code.startsWith('placement.hand');
	return {
		placed,
		findings: [...d.findings.filter(holds), ...findings, ...(within(sum, budget) ? [] : [overFinding(job, sum)])],
		assumptions
	};
}

const within = (sum: Sum, { fixtures, money }: BudgetFacts): boolean =>
	(fixtures === null || sum.fixtures <= fixtures) && (money === null || sum.cents <= cents(money));

const sumOf = (placed: readonly Placed[], yard: Yard): Sum => ({
	fixtures: placed.length,
	cents: placed.reduce((sum, one) => sum + costOf(one, yard), 0)
});
