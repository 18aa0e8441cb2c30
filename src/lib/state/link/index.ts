/**
 * A yard in a link: all of it after the `#`, which browsers send to no one. The sign after `#` says how to read the rest:
 *
 *     a…   format 1 as base64url, for a link that is sent or typed
 *     1…   format 1 as decimal digits, for a code on paper
 *
 * Format 1: the yard's JSON without white space, its keys in the order of the schema, packed as `pack.ts` says. The next format takes `b` and `2`.
 */
import { longestFile, readYard, writeYard, type Yard } from '../../domain/yard';
import { fromBase64url, fromDigits, toBase64url, toDigits } from './letters';
import { pack, unpack } from './pack';

/** Signs that a link may have after the `#`. Browsers take more; what a link of this length holds wants a file. */
export const longestFragment = 60_000;

export type ReadLink = { ok: true; yard: Yard } | { ok: false; problems: string[] };

/** What goes with a link: the yard without its pictures and without what lies under the drawing, since that is nothing without its picture. */
export function travelling(yard: Yard): Yard {
	const { pictures: _, underlay: __, ...rest } = yard;
	return rest;
}
const packed = (yard: Yard): Uint8Array => pack(JSON.stringify(JSON.parse(writeYard(travelling(yard)))));

/** A link that holds the yard, however long. `base`: full address of the page that opens it, without a `#`. */
export const linkOf = (yard: Yard, base: string): string => `${base}#a${toBase64url(packed(yard))}`;
/** The same for a code on paper: longer in signs, smaller in modules. */
export const codeTextOf = (yard: Yard, base: string): string => `${base}#1${toDigits(packed(yard))}`;
/** Whether a link can be opened by `yardFromFragment`, by its length. */
export const opens = (link: string): boolean => link.length - link.indexOf('#') - 1 <= longestFragment;

const refused = (...problems: string[]): ReadLink => ({ ok: false, problems });
const useCopy = 'Open a saved copy of the yard instead.';
const cut = refused(
	'This link is damaged, or part of it is missing: mail and chat programs cut long links.',
	'Copy it again from its first sign to its last, or scan the code again. A saved copy of the yard does as well.'
);
const newer = refused(
	'This link was made by a newer version of Duskwright, or it is not a link to a yard.',
	'Reload the page to get the newest version, then open the link again.'
);
const foreign = refused('This is no link to a yard.', `Copy the whole link, what stands after the # too. ${useCopy}`);

/** The yard in what stands after the `#` of a link, with or without it, or what is wrong and what to do, in words. Never throws. */
export function yardFromFragment(text: string): ReadLink {
	if (text.length > longestFragment + 1) return refused('This link is far too long to be a yard.', useCopy);
	const fragment = text.trim().replace(/^#/, '');
	const [sign, rest] = [fragment.charAt(0), fragment.slice(1)];
	if (/[b-z2-9]/.test(sign)) return newer;
	if (sign !== 'a' && sign !== '1') return foreign;
	const bytes = sign === 'a' ? fromBase64url(rest) : fromDigits(rest);
	const out = bytes && unpack(bytes, longestFile);
	if (!out || 'problem' in out) {
		return out?.problem === 'too-long' ? refused('What this link holds is far too long to be a yard.', useCopy) : cut;
	}
	const read = readYard(out.text);
	return read.ok
		? read
		: refused(...read.problems.map((problem) => problem.replace(/^This file/, 'What this link holds')));
}
