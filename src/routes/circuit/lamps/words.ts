/** The comparison in words. */
import type { Comparison, Range, WorkingRange } from '$lib/domain/compare';
import { currencyWords } from '../../parts/words';

/** Money to the whole unit: the comparison is not good to cents. */
export const about = (amount: number, currency: string): string =>
	currencyWords(Math.round(amount), currency).replace(/\.00$/, '');

/** One figure, or two when they read differently. */
export function rangeWords({ low, high }: Range, words: (value: number) => string): string {
	const [a, b] = [words(low), words(high)];
	return a === b ? a : `${a} to ${b}`;
}
/** A figure and its unit stay on one line. */
export const tied = (text: string): string =>
	text.replace(/(\d) (?=(?:VA|V|W|kWh|lm|ft|m|AWG|mm²)(?![a-z])|%)/g, '$1\u00a0');
export const valuesOf = ({ low, high }: WorkingRange): Range => ({ low: low.value, high: high.value });

const yearWords = (years: number): string => (years === 1 ? '1 year' : `${years} years`);

/** How LED, dearer to buy, fares later. */
function catchingUp({ ledAhead: { earliest, latest }, years }: Comparison): string {
	if (earliest === null) return `and is not ahead within ${yearWords(years)}`;
	if (latest === null) return `and may be ahead after ${yearWords(earliest)}, if halogen lamps die soon`;
	return `and is ahead after ${earliest === latest ? '' : `${earliest} to `}${yearWords(latest)}`;
}
/** By how much LED is ahead; a total that leaves lamps out is only a least one. */
function gap({ led, halogen }: Pick<Comparison, 'led' | 'halogen'>, range: Range): string {
	const money = (value: number) => about(value, led.plan.shopping.currency);
	const [ledOpen, halogenOpen] = [led, halogen].map(({ replaced }) => replaced.unknown.length > 0);
	if (halogenOpen && !ledOpen) return `at least ${money(range.low)}`;
	if (ledOpen && !halogenOpen) return `up to ${money(range.high)}`;
	return rangeWords(range, money);
}
/** How LED, no dearer to buy, fares later. */
function stayingAhead({ led, halogen, years }: Comparison): string {
	const least = halogen.total.low.value - led.total.high.value;
	const most = halogen.total.high.value - led.total.low.value;
	if (least >= 0.5)
		return `and is ${gap({ led, halogen }, { low: least, high: most })} ahead after ${yearWords(years)}`;
	if (most <= -0.5) return `but more over ${yearWords(years)}`;
	return `and about the same over ${yearWords(years)}`;
}

/** What the comparison comes to, one sentence without a full stop. */
export function headline(comparison: Comparison): string {
	const { led, halogen, places } = comparison;
	if (places.length === 0) return 'Nothing to compare yet';
	const { currency } = led.plan.shopping;
	const more = led.purchase.total.value - halogen.purchase.total.value;
	if (Math.abs(more) < 0.5) return `LED costs the same to buy, ${stayingAhead(comparison)}`;
	return more > 0
		? `LED costs ${about(more, currency)} more to buy ${catchingUp(comparison)}`
		: `LED costs ${about(-more, currency)} less to buy ${stayingAhead(comparison)}`;
}

/** What the totals leave out, whole sentences; empty when nothing is. */
export function leftOut({ led, halogen }: Comparison): string[] {
	const sides = [
		['LED', led, 'fixtures'],
		['halogen', halogen, 'lamps']
	] as const;
	const unfed = sides.filter(([, { plan }]) => plan.fixtures.length > 0 && !plan.supply).map(([name]) => name);
	const unknown = sides.flatMap(([name, { plan, replaced, volts }, what]) => {
		const count = replaced.unknown.length;
		if (count === 0 || !plan.supply) return [];
		const all = count === plan.fixtures.length ? 'all' : `${count} of ${plan.fixtures.length}`;
		const why =
			name === 'LED'
				? 'their volts are outside their window'
				: 'their volts are more than a tenth off what they are rated for';
		return [
			volts === null
				? `With ${name} the circuit has no solution, so no volts, light or life are known. ${sentenceOf(what)} replaced are not in its total.`
				: `With ${name}, light and life of ${all} lamps are not known: ${why}. They are not in the light, and the ${what} that replace them are not in the total: it is at least that much.`
		];
	});
	return [
		...(unfed.length > 0
			? [
					'No transformer has a place yet, so cable, volts and lamps replaced are left out. Say where the receptacle is.'
				]
			: []),
		...unknown
	];
}
const sentenceOf = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
