/** Words for what the plan holds, for lists and headings. */
import type { Technique } from '$lib/domain/placement';

const names: Record<Technique, [one: string, many: string]> = {
	uplight: ['uplight', 'uplights'],
	wash: ['wall wash', 'wall washes'],
	graze: ['grazing light', 'grazing lights'],
	path: ['path light', 'path lights'],
	step: ['step light', 'step lights'],
	drive: ['drive light', 'drive lights'],
	area: ['light for a seat or bed', 'lights for seats and beds'],
	number: ['light for the number', 'lights for the number']
};
const numbers = [
	'No',
	'One',
	'Two',
	'Three',
	'Four',
	'Five',
	'Six',
	'Seven',
	'Eight',
	'Nine',
	'Ten',
	'Eleven',
	'Twelve'
];

export const techniqueName = (technique: Technique): string => names[technique][0];
/** `Two uplights`, `14 path lights`. */
export const countOf = (technique: Technique, count: number): string =>
	`${numbers[count] ?? count} ${names[technique][count === 1 ? 0 : 1]}`;

/** Keeps a figure with its unit on one line: `33 ft 1/2 in`. */
export const together = (text: string): string =>
	text
		.replaceAll(/(\d) (?=(?:\d+\/\d+|ft|in|m|cm|mm|V|W|VA|lx)\b)/g, '$1\u00A0')
		.replaceAll(/\bft (?=\d)/g, 'ft\u00A0');

/** Several labels in a sentence: `T1, T2 and T3`; long runs as `P1 to P9`. */
export function labelList(labels: readonly string[]): string {
	if (labels.length > 4) return `${labels[0]} to ${labels.at(-1)}`;
	return labels.length < 2 ? (labels[0] ?? '') : `${labels.slice(0, -1).join(', ')} and ${labels.at(-1)}`;
}

/** A bearing in words, for aiming. */
const winds = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'];
export const windOf = (degrees: number): string =>
	winds[Math.round((((degrees % 360) + 360) % 360) / 45) % 8] ?? 'north';

/** Money as it is written: `$32.00`, `€32.00`; a sign of one's own stands before the figure. */
export function currencyWords(amount: number, currency: string): string {
	if (/^[A-Z]{3}$/.test(currency)) {
		return new Intl.NumberFormat('en', { style: 'currency', currency, currencyDisplay: 'narrowSymbol' }).format(amount);
	}
	return `${currency.length === 1 ? currency : `${currency} `}${amount.toFixed(2)}`;
}
