/** Numbers as lists have them: `12.5`, `12,5`, `1.234,50`, `1,234.50`, `1 234`, `20W`. Nothing that can mean two things is guessed. */
import { tidy } from '../../domain/shared/read-tidy';
import { quoted, refused, taken, type Note, type ReadValue } from './types';

export interface Plain {
	value: number;
	/** `1,234`: either a thousand and more, or one and a bit. */
	torn: 'comma' | 'point' | null;
	/** Written with a comma for the decimals. */
	hasComma: boolean;
}
/** Digits with marks to a number; null where they are none. */
export function plainNumber(text: string): Plain | null {
	const bare = text.replace(/(?<=\d)[\s'](?=\d{3}(?!\d))/g, '');
	const whole = (digits: string, torn: Plain['torn'] = null, hasComma = false): Plain => ({
		value: Number(digits),
		torn,
		hasComma
	});
	if (/^-?(?:\d+\.?\d*|\.\d+)$/.test(bare)) return whole(bare, /^-?[1-9]\d{0,2}\.\d{3}$/.test(bare) ? 'point' : null);
	if (/^-?[1-9]\d{0,2},\d{3}$/.test(bare)) return whole(bare.replace(',', ''), 'comma');
	if (/^-?(?:\d+,\d*|,\d+)$/.test(bare)) return whole(bare.replace(',', '.'), null, true);
	if (/^-?\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(bare)) return whole(bare.replace(/,/g, ''));
	if (/^-?\d{1,3}(?:\.\d{3})+,\d+$/.test(bare)) return whole(bare.replace(/\./g, '').replace(',', '.'), null, true);
	return /^-?\d{1,3}(?:\.\d{3}){2,}$/.test(bare) ? whole(bare.replace(/\./g, '')) : null;
}

export interface NumberKind {
	min: number;
	max: number;
	/** Units that may stand behind it, in capitals or not; the first as it is said. */
	units: readonly string[];
	/** Said of something far above 100: `1,234` is a thousand and more. */
	isLarge?: boolean;
	isWhole?: boolean;
}
const unitNote = (text: string, value: number): Note => ({
	about: 'unit',
	words: `${quoted(text)} was taken as ${value}.`
});

/** Most cells of a long list: nothing to make plain. */
const isBare = /^\d+(?:\.\d+)?$/;

/** Reads a number of a kind. Its unit may stand behind it: that is said. */
export function readFigure(text: string, { min, max, units, isLarge, isWhole }: NumberKind): ReadValue<number> {
	const clean = isBare.test(text) ? text : tidy(text);
	const [, digits = '', unit = ''] = /^([-\d.,'\s]*\d[.,]?)\s*([a-z°%/²"' ]*?)\.?$/.exec(clean) ?? [];
	const plain = plainNumber(digits.trim());
	const example = `${isWhole ? Math.max(min, 4) : Math.max(min, 12.5)}`;
	if (!plain) return refused(`${quoted(text)} is not a number. Write it in digits, such as ${example}.`);
	const [own = ''] = units;
	if (unit && !units.some((one) => one.toLowerCase() === unit))
		return refused(
			`${quoted(text)} has a unit that does not belong here. Write the number alone${own ? `, in ${own}` : ''}.`
		);
	if (plain.torn === 'comma' && !isLarge)
		return refused(`${quoted(text)} can mean ${plain.value} or ${plain.value / 1000}. Write one of them.`);
	const value = plain.value;
	if (value < min || value > max)
		return refused(`${quoted(text)} is outside of what is usual here, ${min} to ${max}${own ? ` ${own}` : ''}.`);
	if (isWhole && !Number.isInteger(value)) return refused(`${quoted(text)} is not a whole number.`);
	if (unit) return taken(value, unitNote(text, value));
	if (plain.hasComma || plain.torn === 'comma')
		return taken(value, { about: 'decimals', words: `${quoted(text)} was taken as ${value}.` });
	return taken(value);
}
