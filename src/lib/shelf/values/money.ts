/** Prices, and how many there are. */
import { plainNumber } from './number';
import { quoted, refused, taken, type Note, type ReadValue } from './types';

export interface Price {
	/** Hundredths of the currency, whole. */
	cents: number;
	/** As it stood by the number: `$`, `EUR`; null: none did. */
	currency: string | null;
}
/** A million: a slip of the keys beyond it. */
export const mostCents = 100_000_000;

/** `12.50`, `$12.50`, `12,50 €`, `1.234,50`, `USD 1,234.50`. Not negative; parts of a cent are rounded, and that is said. */
export function readPrice(text: string): ReadValue<Price> {
	const clean = text
		.normalize('NFKC')
		.replace(/[\s\u00a0]+/g, ' ')
		.replace(/[−–]/g, '-')
		.trim();
	if (clean === '') return refused('The price is missing. Type what one costs.');
	const sign =
		/^(-?)\s*(\p{Sc}|[A-Z]{1,3}\p{Sc}|[A-Za-z]{3})?\s*(-?[\d.,' ]+?)(?:,-|\.-)?\s*(\p{Sc}|[A-Za-z]{3})?$/u.exec(clean);
	const plain = sign && plainNumber(`${sign[1] ?? ''}${(sign[3] ?? '').trim()}`);
	if (!sign || !plain) return refused(`${quoted(text)} is not a price. Write it like 12.50.`);
	const currency = sign[2] ?? sign[4] ?? null;
	if (plain.torn === 'point')
		return refused(
			`${quoted(text)} can mean ${Math.round(plain.value * 1000)} or ${plain.value}. Write ${Math.round(plain.value * 1000)}.00 or ${plain.value.toFixed(2)}.`
		);
	const cents = Math.round(Number((plain.value * 100).toFixed(4)));
	if (plain.value < 0) return refused(`${quoted(text)} is less than nothing. Type what one costs.`);
	if (cents > mostCents) return refused(`${quoted(text)} is more than a million: see whether a mark is missing.`);
	return taken(
		{ cents, currency: currency?.length === 3 ? currency.toUpperCase() : currency },
		noteOf(text, plain, cents)
	);
}
function noteOf(text: string, plain: { value: number; torn: unknown; hasComma: boolean }, cents: number): Note | null {
	const said = (cents / 100).toFixed(2);
	if (cents === 0) return { about: 'none-told', words: 'It costs nothing. See whether that is right.' };
	if (Math.abs(plain.value * 100 - cents) > 1e-6)
		return { about: 'rounded', words: `${quoted(text)} was rounded to ${said}.` };
	return plain.torn || plain.hasComma ? { about: 'decimals', words: `${quoted(text)} was taken as ${said}.` } : null;
}

const none = /^(?:none|no|out|out of stock|sold out|-)$/i;
const some = /^(?:yes|in stock|plenty|many|unlimited|∞)$/i;
export const mostStock = 1_000_000;
/** How many there are; null where it is not told. Less than none is none. */
export function readStock(text: string): ReadValue<number | null> {
	const clean = text.normalize('NFKC').replace(/[−–]/g, '-').trim();
	if (clean === '') return taken(null);
	const asWords = (value: number | null, said: string) =>
		taken(value, { about: 'meaning', words: `${quoted(text)} was taken as ${said}.` });
	if (none.test(clean)) return asWords(0, 'none there');
	if (some.test(clean)) return asWords(null, 'as many as are wanted');
	const [, digits = '', more = ''] = /^(-?[\d.,' ]*\d)\s*(\+|pcs?\.?|pieces|units?|ea\.?|each)?$/i.exec(clean) ?? [];
	const plain = plainNumber(digits);
	if (!plain) return refused(`${quoted(text)} is not a count. Write how many there are, or leave it empty.`);
	const size = Math.floor(plain.value + 1e-9);
	if (size > mostStock) return refused(`${quoted(text)} is more than a million: see whether that is a code.`);
	if (plain.value < 0)
		return taken(0, {
			about: 'negative',
			words: `${quoted(text)} is less than none: taken as none there. Count them.`
		});
	if (size !== plain.value)
		return taken(size, { about: 'rounded', words: `${quoted(text)} is no whole number: taken as ${size}.` });
	return more || plain.torn
		? taken(size, { about: 'more', words: `${quoted(text)} was taken as ${size}.` })
		: taken(size);
}
