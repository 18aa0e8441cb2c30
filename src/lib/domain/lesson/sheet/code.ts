/** A class code as it is understood: what two people type for the same words is the same code. */

/** What is used where nothing was typed; it is said. */
export const usualCode = 'blue hour';
/** Characters of a code that count: a mark with it still fits a line of the page. */
export const longestCode = 32;

/** What cannot be seen or has no place in a line of text: marks of direction and of width nothing (but the joiner within signs), halves of a character. */
const unseen = /(?!\u200d)\p{Cf}|\p{Cs}|\p{Co}/gu;
const blank = /[\s\p{Z}\p{Cc}]+/gu;
/** Letters of either case alike. By way of the upper case, which joins ß with SS and the two small sigmas. */
const folded = (text: string): string => text.toUpperCase().toLowerCase().replaceAll('ς', 'σ');
const plainOnce = (text: string): string =>
	folded(text.normalize('NFKC')).normalize('NFKC').replace(unseen, '').replace(blank, ' ').trim();
function plain(text: string): string {
	let now = plainOnce(text);
	// What was taken out may have stood between signs that belong together.
	for (let next = plainOnce(now); next !== now; next = plainOnce(now)) now = next;
	return now;
}
const cut = (text: string): string => plain([...text].slice(0, longestCode).join(''));
/** A joiner or an accent alone is nothing that could be read from the board. */
const isSeen = (text: string): boolean => /[^\u200d\s\p{M}]/u.test(text);

/** Compatibility-normalized (Unicode NFKC), of one case, white space made one and trimmed, at most `longestCode` characters; may be empty. Done again it stays. */
export function plainCode(typed: string): string {
	const code = cut(plain(typed));
	return isSeen(code) ? code : '';
}
/** The code to draw from, and what there is to say about it. */
export function codeOf(typed: string): { code: string; said: string[] } {
	const code = plainCode(typed);
	if (code === '') return { code: usualCode, said: [`No class code was given, so “${usualCode}” is used.`] };
	const isLong = [...plain(typed)].length > longestCode;
	return {
		code,
		said: isLong ? [`The class code is long: only its first ${longestCode} characters count, “${code}”.`] : []
	};
}
