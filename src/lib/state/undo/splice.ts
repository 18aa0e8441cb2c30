/**
 * The difference between two texts, reversible: at one place some characters went and others came. Most answers touch one
 * place of a yard's text, so a step takes a few dozen characters where a whole text takes thousands. Kept both ways, it
 * needs no full text but that of the state in hand.
 */
export interface Splice {
	/** Characters before the place. */
	at: number;
	gone: string;
	come: string;
}

/** A slice of a string may hold on to the whole string in memory; what went through JSON does not. */
const alone = (text: string): string => JSON.parse(JSON.stringify(text)) as string;
const isLow = (code: number): boolean => code >= 0xdc00 && code <= 0xdfff;

/** What turns `before` into `after`. A pair of surrogates is never taken apart. */
export function spliceOf(before: string, after: string): Splice {
	const shorter = Math.min(before.length, after.length);
	let at = 0;
	while (at < shorter && before.charCodeAt(at) === after.charCodeAt(at)) at += 1;
	if (at > 0 && (isLow(before.charCodeAt(at)) || isLow(after.charCodeAt(at)))) at -= 1;
	let tail = 0;
	const most = shorter - at;
	while (tail < most && before.charCodeAt(before.length - 1 - tail) === after.charCodeAt(after.length - 1 - tail))
		tail += 1;
	if (tail > 0 && isLow(before.charCodeAt(before.length - tail))) tail -= 1;
	return {
		at,
		gone: alone(before.slice(at, before.length - tail)),
		come: alone(after.slice(at, after.length - tail))
	};
}
const replaced = (text: string, at: number, old: string, now: string): string | null =>
	text.startsWith(old, at) ? text.slice(0, at) + now + text.slice(at + old.length) : null;

/** The text after the splice, or null when it was not taken from this text. */
export const forward = (before: string, { at, gone, come }: Splice): string | null => replaced(before, at, gone, come);
/** The text before the splice, or null when it does not lead to this text. */
export const backward = (after: string, { at, gone, come }: Splice): string | null => replaced(after, at, come, gone);
