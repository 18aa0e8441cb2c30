/**
 * Styles of the pages, made for one packet: paper, and at the foot of every page whose it is, which chapter, which page of how many. A sheet that is
 * blown away finds its place by that; CSS can carry words to the margin only as text of a rule.
 */
import { chapters } from './chapters';
import type { Head } from './head';
import { margin, papers, type Orientation, type Paper } from './scale';

/** Text as a CSS string (CSS Syntax 3): what could end it, and line ends, by code point. */
export const cssString = (text: string): string =>
	`"${text.replace(/["\\\n\r\f<]/g, (sign) => `\\${sign.codePointAt(0)!.toString(16)} `)}"`;

/** Name of a page in CSS, as `page` on its sheet has it. */
export const pageName = (id: string, orientation: Orientation): string => `dw-${id}-${orientation}`;

const type =
	"font: 8pt 'Atkinson Hyperlegible Next', system-ui, sans-serif; color: #000; vertical-align: top; padding-top: 2mm";
const comesFirst = 'Local code and the makers’ instructions come first.';

/** `@page` rules for each chapter, upright and across. */
export function pageRules({ name, code, onDate }: Head, paper: Paper): string {
	const { width, height } = papers[paper];
	const rule = (id: string, words: string, orientation: Orientation) => {
		const size = orientation === 'portrait' ? `${width}mm ${height}mm` : `${height}mm ${width}mm`;
		const foot = `${cssString(`${[name, words, `plan ${code}`, onDate].filter(Boolean).join(' · ')}`)} "\\A" ${cssString(comesFirst)}`;
		return `@page ${pageName(id, orientation)} {
	size: ${size};
	margin: ${margin.top}mm ${margin.side}mm ${margin.bottom}mm;
	@bottom-left { content: ${foot}; white-space: pre-wrap; text-align: left; width: 80%; ${type}; }
	@bottom-right { content: counter(page) " of " counter(pages); text-align: right; ${type}; }
}`;
	};
	return [
		{ id: 'cover', words: '' },
		...chapters.map(({ id, title }, index) => ({ id, words: `${index + 1} ${title}` }))
	]
		.flatMap(({ id, words }) => [rule(id, words, 'portrait'), rule(id, words, 'landscape')])
		.concat(
			['cover', ...chapters.map(({ id }) => id)].flatMap((id) =>
				(['portrait', 'landscape'] as const).map(
					(orientation) =>
						`.packet .sheet.chapter-${id}${orientation === 'landscape' ? '.landscape' : ':not(.landscape)'} { page: ${pageName(id, orientation)}; }`
				)
			)
		)
		.join('\n');
}

/** Puts rules on the page while the packet stands there. In a browser only. */
export function usePageRules(css: string): () => void {
	const sheet = new CSSStyleSheet();
	sheet.replaceSync(css);
	document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
	return () => {
		document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
	};
}
