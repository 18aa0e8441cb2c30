/** What a slip is printed on: a sheet, or the roll of a receipt printer. Millimetres. */

export type SlipPaper = 'letter' | 'a4' | 'receipt';
export interface SlipPaperSize {
	/** As on the choice. */
	name: string;
	/** As a person says it in a sentence. */
	words: string;
	width: number;
	/** Null: as long as what stands on it. */
	height: number | null;
	margin: { side: number; top: number; bottom: number };
}
/**
 * Letter is 8.5 × 11 in (ANSI/ASME Y14.1), A4 210 × 297 mm (ISO 216). A roll 80 mm wide has 72 mm that its printer reaches, 576 dots at
 * 8 to the millimetre: common practice, no source.
 */
export const slipPapers: Readonly<Record<SlipPaper, SlipPaperSize>> = {
	letter: {
		name: 'Letter',
		words: 'one Letter sheet',
		width: 215.9,
		height: 279.4,
		margin: { side: 12, top: 11, bottom: 11 }
	},
	a4: { name: 'A4', words: 'one A4 sheet', width: 210, height: 297, margin: { side: 12, top: 11, bottom: 11 } },
	receipt: {
		name: '80 mm roll',
		words: 'an 80 mm roll',
		width: 80,
		height: null,
		margin: { side: 4, top: 3, bottom: 4 }
	}
};
export const readSlipPaper = (text: string | null): SlipPaper | null =>
	text !== null && Object.hasOwn(slipPapers, text) ? (text as SlipPaper) : null;

/** Millimetres between the margins, across. */
export const widthOn = (paper: SlipPaper): number => slipPapers[paper].width - 2 * slipPapers[paper].margin.side;
/**
 * Millimetres that print and screen may differ in the height of what is set: fonts are fitted to the dots of each. Common
 * practice, no source; ten lines that each grow by a dot of a 96 dpi screen are 2.6 mm.
 */
export const tolerance = 3;
/** Millimetres between the margins, down, less what print and screen may differ by; on a roll without end. */
export function heightOn(paper: SlipPaper): number {
	const { height, margin } = slipPapers[paper];
	return height === null ? Infinity : height - margin.top - margin.bottom - tolerance;
}

/**
 * The `@page` rule. One page for all and no name: where a named page ends, what follows takes a page of its own. `long`: of what stands on a
 * roll, millimetres.
 */
export function slipPageRule(paper: SlipPaper, long: number): string {
	const { width, height, margin } = slipPapers[paper];
	const high = height ?? Math.ceil(long + tolerance) + margin.top + margin.bottom;
	return `@page { size: ${width}mm ${high}mm; margin: ${margin.top}mm ${margin.side}mm ${margin.bottom}mm; }`;
}
