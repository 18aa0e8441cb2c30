import type { Word } from './types';

export interface Part {
	text: string;
	word: Word | null;
}
const escape = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Cuts a text at the first appearance of each word, whole words only, plural or not, upper or lower case. */
export function splitWords(text: string, words: readonly Word[]): Part[] {
	const found: { at: number; end: number; word: Word }[] = [];
	for (const word of words.toSorted((a, b) => b.word.length - a.word.length)) {
		const match = new RegExp(`(?<![\\p{L}-])${escape(word.word)}(?:s|es)?(?![\\p{L}])`, 'iu').exec(text);
		if (!match) continue;
		const at = match.index;
		const end = at + match[0].length;
		if (found.some((other) => at < other.end && end > other.at)) continue;
		found.push({ at, end, word });
	}
	const parts: Part[] = [];
	let from = 0;
	for (const { at, end, word } of found.toSorted((a, b) => a.at - b.at)) {
		if (at > from) parts.push({ text: text.slice(from, at), word: null });
		parts.push({ text: text.slice(at, end), word });
		from = end;
	}
	if (from < text.length) parts.push({ text: text.slice(from), word: null });
	return parts;
}
