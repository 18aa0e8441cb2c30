/** What the kinds of problem about energy share. */
import { costOf, energyOf } from '../../dusk';
import { agrees, reckon } from '../reckon';
import type { Given, Problem, ProblemKind, StepRule } from '../types';

/** kWh of a year at the lamps, to a tenth: what the transformer takes for itself is left out. */
export const energyAt = (watts: number, hours: number): number =>
	energyOf(hours, { watts, efficiency: 1, idleWatts: 0, assumptions: [] });
/** Price of so many kWh, to the cent. `price`: dollars a kilowatt-hour. */
export const costAt = (energy: number, price: number): number =>
	costOf(energy, { perKwh: price, currency: 'dollars', assumptions: [] });
/** `0.18`, `0.085`: a price has two decimals at least. */
export const priceText = (price: number): string =>
	Number(price.toFixed(2)) === price ? price.toFixed(2) : String(price);

export const lampsOnly = 'Leave out what the transformer takes for itself.';
export const given = (symbol: string, name: string, text: string, unit: string): Given => ({
	symbol,
	name,
	text,
	unit
});
interface Sum {
	kind: ProblemKind['id'];
	story: string;
	ask: string;
	because: string;
	givens: Given[];
	rules: StepRule[];
	engine: number;
}
/** The problem of some numbers; null where the steps, rounded as written down, end elsewhere than the engine, or at nothing. */
export function problemFrom({ rules, engine, ...rest }: Sum): Problem | null {
	const steps = reckon(rest.givens, rules);
	const last = steps.at(-1)!;
	if (!agrees(engine, steps) || !(Number(last.text) > 0)) return null;
	return {
		...rest,
		steps,
		answer: { type: 'number', text: last.text, unit: last.unit, decimals: last.decimals },
		engine
	};
}
export const step = (
	symbol: string,
	label: string,
	expression: string,
	unit: string,
	decimals: number,
	rule: string
): StepRule => ({ symbol, label, expression, unit, decimals, rule, source: 'physics' });
