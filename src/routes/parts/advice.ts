/** Words for what a change costs. */

/** Below this, in the currency's units, prices that are a starting point say nothing. */
const noDifference = 0.5;

/** Whole units: `$31`, `€31`, `Fr 31`. */
function wholeMoney(amount: number, currency: string): string {
	if (!/^[A-Z]{3}$/.test(currency)) return `${currency.length === 1 ? currency : `${currency} `}${Math.round(amount)}`;
	return new Intl.NumberFormat('en', {
		style: 'currency',
		currency,
		currencyDisplay: 'narrowSymbol',
		maximumFractionDigits: 0
	}).format(amount);
}

/** A change in cost: `about $31 more`, `about $12 less`, `no change in cost`. */
export function costWords(difference: number, currency: string): string {
	if (Math.abs(difference) < noDifference) return 'no change in cost';
	return `about ${wholeMoney(Math.abs(difference), currency)} ${difference > 0 ? 'more' : 'less'}`;
}
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
