/** Counts, plain numbers, bearings and money as people type them. */
import { tidy } from './read-tidy';

export type ReadNumber = { ok: true; value: number; understood: string } | { ok: false; message: string };
export interface NumberRange {
	min: number;
	max: number;
}
const refuse = (message: string): ReadNumber => ({ ok: false, message });
const taken = (value: number, understood: string): ReadNumber => ({ ok: true, value, understood });
const within = (value: number, { min, max }: NumberRange) => value >= min && value <= max;

/** A whole number of things. */
export function readCount(text: string, range: NumberRange): ReadNumber {
	const clean = tidy(text);
	if (clean === '') return refuse('Type a number.');
	if (!/^[+-]?\d{1,9}$/.test(clean)) return refuse('Type a whole number, in digits.');
	const value = Number(clean);
	return within(value, range) ? taken(value, String(value)) : refuse(`Here it goes from ${range.min} to ${range.max}.`);
}

const plain = /^[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/;
/** `1,250` can be a thousand and more, or one and a quarter. */
const torn = /^[+-]?[1-9]\d{0,2},\d{3}$/;

/** A number with decimals, by point or comma; a unit written after it (`VA`, `%`) is let pass when it is `unit`. */
export function readNumber(text: string, range: NumberRange, unit = ''): ReadNumber {
	const clean = tidy(text);
	const bare = unit && clean.endsWith(unit.toLowerCase()) ? clean.slice(0, -unit.length).trim() : clean;
	if (bare === '') return refuse('Type a number.');
	if (torn.test(bare))
		return refuse(`Write ${bare.replace(',', '')} or ${bare.replace(',', '.')}: the comma can mean either.`);
	if (!plain.test(bare)) return refuse('Type a number, in digits.');
	const value = Number(bare.replace(',', '.'));
	const shown = unit ? `${value} ${unit}` : String(value);
	const end = unit ? ` ${unit}` : '';
	return within(value, range) ? taken(value, shown) : refuse(`Here it goes from ${range.min} to ${range.max}${end}.`);
}

const compass: Record<string, number> = { n: 0, ne: 45, e: 90, se: 135, s: 180, sw: 225, w: 270, nw: 315 };
const winds = ['North', 'North-east', 'East', 'South-east', 'South', 'South-west', 'West', 'North-west'];

/** A bearing in degrees clockwise from north, 0 to 360, or one of eight directions in words or letters. */
export function readDegrees(text: string): ReadNumber {
	const clean = tidy(text).replace(/\s*(?:°|deg\.?|degrees?)$/, '');
	if (clean === '') return refuse('Type a direction, or degrees from north.');
	const letters = clean
		.replace(/north/g, 'n')
		.replace(/south/g, 's')
		.replace(/east/g, 'e')
		.replace(/west/g, 'w')
		.replace(/[\s-]/g, '');
	const value = compass[letters] ?? (plain.test(clean) ? Number(clean.replace(',', '.')) : Number.NaN);
	if (Number.isNaN(value)) return refuse('Type a direction such as south-west, or degrees from north such as 225.');
	if (!within(value, { min: 0, max: 360 }))
		return refuse('A bearing goes from 0 to 360 degrees, clockwise from north.');
	return taken(value, `${winds[Math.round(value / 45) % 8]}, ${value}°`);
}

/** An amount of money, `0.32` or `0,32`; a currency sign before or after it is let pass. */
export function readMoney(text: string, range: NumberRange): ReadNumber {
	const clean = tidy(text).replace(/^\p{Sc}\s*|\s*\p{Sc}$/gu, '');
	if (clean === '') return refuse('Type an amount, for example 0.32.');
	return readNumber(clean, range);
}
