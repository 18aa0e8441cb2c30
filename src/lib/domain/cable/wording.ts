/** Small words that findings, advice and alternatives are made of. */
import type { Feed } from '../circuit';

export const volts = (value: number): string => (Math.round(value * 10) / 10).toFixed(1);
/** Two figures that would read the same get a second decimal. */
export const apart = (value: number, limit: number): [string, string] =>
	volts(value) === volts(limit) ? [value.toFixed(2), limit.toFixed(2)] : [volts(value), volts(limit)];
/** The same in whole figures: two that would read the same get a decimal. */
export const apartWhole = (value: number, limit: number): [string, string] =>
	Math.round(value) === Math.round(limit)
		? [value.toFixed(1), limit.toFixed(1)]
		: [`${Math.round(value)}`, `${Math.round(limit)}`];
/** `a, b and c`. */
export const listed = (names: readonly string[]): string =>
	names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
/** At the start of a sentence. */
export const called = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);
export const fedWords: Record<Feed, string> = {
	end: 'fed at its near end',
	middle: 'fed at its middle',
	hub: 'fed from a hub'
};
const numbers = [
	'no',
	'one',
	'two',
	'three',
	'four',
	'five',
	'six',
	'seven',
	'eight',
	'nine',
	'ten',
	'eleven',
	'twelve'
];
/** `one run`, `two runs`. */
export const runsWords = (count: number): string => `${numbers[count] ?? count} ${count === 1 ? 'run' : 'runs'}`;

/** A thing's name after its article; one that brings its own keeps it. */
export const the = (name: string): string => (/^(the|a|an|my|our)\s/i.test(name) ? name : `the ${name}`);
