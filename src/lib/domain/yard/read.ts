/** A yard from and to a file. Everything from outside comes in here and is checked here, once. */
import * as z from 'zod/mini';
import { inWords, where } from './in-words';
import { yardSchema, type Yard } from './schema';
import { bringUp, today, type Saved } from './versions';

export type ReadYard = { ok: true; yard: Yard } | { ok: false; problems: string[] };

/** Longest file that is opened, characters. A yard of a hundred trees and walks is a thirtieth of it; a picture may be half. */
export const longestFile = 6_000_000;
/** A broken file is often broken everywhere: the first few places are enough to find the cause. */
const mostProblems = 5;

const refused = (...problems: string[]): ReadYard => ({ ok: false, problems });

/**
 * The yard in a file's text, or what is wrong and where, in words. Strict for today's version; an older one is brought up
 * first; a newer one is refused whole rather than read in part.
 */
export function readYard(text: string): ReadYard {
	if (text.length > longestFile) return refused('This file is far too long to be a yard.');
	if (text.trim() === '') return refused('This file is empty.');
	let saved: unknown;
	try {
		saved = JSON.parse(text);
	} catch (error) {
		if (!(error instanceof SyntaxError)) throw error;
		return refused('This file is not a yard, or it was cut short: it cannot be read as JSON.');
	}
	if (!isGroup(saved) || saved.format !== 'duskwright/yard') return refused(notAYard(saved));
	const { version } = saved;
	if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
		return refused('This yard does not say which version it was saved by.');
	}
	if (version > today) {
		return refused(
			`This yard was saved by a newer version of Duskwright (format ${version}; this one reads up to ${today}). Reload the page to get the newest, then open it again.`
		);
	}
	const current = bringUp(saved, version);
	const read = z.safeParse(yardSchema, current);
	if (!read.success) return refused(...firstFew(inWords(read.error.issues, current)));
	const twice = repeatedIds(read.data);
	return twice.length > 0 ? refused(...firstFew(twice)) : { ok: true, yard: read.data };
}
/**
 * A yard as the text of a file: keys in the order of the schema, two spaces, a line feed at the end. A yard that the schema
 * would not take is still written, in its own order: no answer is lost to a check on the way out.
 */
export function writeYard(yard: Yard): string {
	const ordered = z.safeParse(yardSchema, yard);
	return `${JSON.stringify(ordered.success ? ordered.data : yard, null, 2)}\n`;
}
const isGroup = (value: unknown): value is Saved =>
	typeof value === 'object' && value !== null && !Array.isArray(value);

function notAYard(saved: unknown): string {
	const format = isGroup(saved) ? saved.format : undefined;
	if (format === 'duskwright/plan') return 'This is a plan, not a yard. Open the yard file that it was made from.';
	return 'This file is not a Duskwright yard.';
}
function firstFew(problems: string[]): string[] {
	const rest = problems.length - mostProblems;
	return rest > 0
		? [...problems.slice(0, mostProblems), `And ${rest} more like ${rest === 1 ? 'this' : 'these'}.`]
		: problems;
}
/** Two items of one list under the same id would answer for each other. */
function repeatedIds(value: unknown, path: PropertyKey[] = [], whole = value): string[] {
	if (Array.isArray(value)) {
		const seen = new Set<unknown>();
		return value.flatMap((item: unknown, i) => {
			const id = isGroup(item) ? item.id : undefined;
			const again = id !== undefined && seen.has(id);
			seen.add(id);
			const here = again
				? [`${capital(where([...path, i], whole))}: the id "${String(id)}" is used twice in this list.`]
				: [];
			return [...here, ...repeatedIds(item, [...path, i], whole)];
		});
	}
	if (!isGroup(value)) return [];
	return Object.entries(value).flatMap(([key, item]) => repeatedIds(item, [...path, key], whole));
}
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
