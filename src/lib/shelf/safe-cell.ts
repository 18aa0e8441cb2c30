/**
 * Cells that a spreadsheet would run. A text that begins, after any spaces, with = + - @ (also in their wide forms), or with a tab or a
 * line's end, gets a ' before it; a text that begins with such 's and then with one of these gets one more. So reading can take exactly
 * one away, and every text comes back as it was.
 */
const runs = /^'*(?:\s*[=+\-@＝＋－＠]|[\t\r\n])/;
const guarded = /^'+(?:\s*[=+\-@＝＋－＠]|[\t\r\n])/;

/** Text as it is written into a file. */
export const guard = (text: string): string => (runs.test(text) ? `'${text}` : text);
/** Text as it was before `guard`; any other text as it is. */
export const unguard = (text: string): string => (guarded.test(text) ? text.slice(1) : text);
/** Whether a cell, were it not kept as text, would be worked out: `=1+1`, `+49`. A minus before a number is a number. */
export const isFormula = (text: string): boolean =>
	/^\s*[=@＝＠]|^\s*[+\-＋－](?!\s*[\d.,]+\s*[^\s\d+*/=()-]{0,3}\s*$)/.test(text);
