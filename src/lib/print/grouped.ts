/** Findings that say the same of several things, said once. */
import type { Finding } from '../domain/shared/findings';

/** `a; b and c`: what is listed may hold commas. */
const inSeries = (items: readonly string[]): string => `${items.slice(0, -1).join('; ')} and ${items.at(-1)!}`;
const shared = (a: readonly string[], b: readonly string[]): number => {
	const end = Math.min(a.length, b.length);
	for (let i = 0; i < end; i += 1) if (a[i] !== b[i]) return i;
	return end;
};
const sharedByAll = (lists: readonly (readonly string[])[]): number =>
	lists.slice(1).reduce((least, list) => Math.min(least, shared(lists[0]!, list)), lists[0]!.length);

/** What differs may be this many words long and hold no sentence's end, or it reads as a list no more. */
const longest = 9;
/** A figure or a unit at the seam would be torn from its other half: `6` from `in`. */
const ofMeasure = /^([\d−./]+|ft|in|m|mm|lx|fc|V|VA|A|%)[.,;:]?$/;

/**
 * One sentence for messages that begin and end alike, what differs listed in the middle: "Within 3 m of the oak and 2 m of the elm dig by hand."
 * Null when that would not read well.
 */
export function saidOnce(messages: readonly string[]): string | null {
	const words = [...new Set(messages)].map((message) => message.split(' '));
	if (words.length === 1) return messages[0]!;
	const first = words[0]!;
	let start = sharedByAll(words);
	const rests = words.map((list) => list.slice(start).reverse());
	let end = sharedByAll(rests);
	while (start > 0 && ofMeasure.test(first[start - 1]!)) start -= 1;
	while (end > 0 && ofMeasure.test(first[first.length - end]!)) end -= 1;
	const middles = words.map((list) => list.slice(start, list.length - end));
	const reads = (middle: string[]) =>
		middle.length > 0 && middle.length <= longest && !middle.some((word) => /[.:;]$/.test(word));
	if (start + end === 0 || !middles.every(reads)) return null;
	const listed = inSeries(middles.map((middle) => middle.join(' ')));
	return [first.slice(0, start).join(' '), listed, first.slice(first.length - end).join(' ')].filter(Boolean).join(' ');
}

/** What to print for findings of one rank: those of one code together where they can be said at once; order kept by the first of each. */
export function grouped(findings: readonly Finding[]): string[] {
	const codes = [...new Set(findings.map(({ code }) => code))];
	return codes.flatMap((code) => {
		const messages = findings.filter((finding) => finding.code === code).map(({ message }) => message);
		const once = saidOnce(messages);
		return once === null ? [...new Set(messages)] : [once];
	});
}
