/** How a worksheet is divided into pages. Millimetres of paper. */
import { papers, type Paper } from '../scale';

/** Kept clear at each side of a page. */
export const margin = { side: 12, top: 11, bottom: 11 };
/** Head of a sheet's first page, with the lines for name and date; of the pages after it; and the foot of each. */
export const head = { first: 27, later: 16 };
export const foot = 9;
/** Between two problems. */
export const gap = 5;
/**
 * What print and screen may differ by in the height of a page: fonts are fitted to the dots of each. Common practice, no source; thirty lines that each
 * grow by a tenth of a dot at 96 to the inch are under 1 mm.
 */
const tolerance = 4;

/** Between the margins. A hair less high than the paper has, so that no page runs over onto a blank one. */
export const leafOf = (paper: Paper): { width: number; height: number } => ({
	width: papers[paper].width - 2 * margin.side,
	height: papers[paper].height - margin.top - margin.bottom - 0.5
});
/** Height for problems on a page. */
export const roomOn = (paper: Paper, isFirst: boolean): number =>
	leafOf(paper).height - foot - tolerance - (isFirst ? head.first : head.later);

/**
 * Which blocks stand on which page, by index: in order, each whole, as many as there is room for. A block higher than a page has one of its own.
 * No blocks: one page.
 */
export function leavesOf(heights: readonly number[], paper: Paper, isKey = false): number[][] {
	const leaves: number[][] = [[]];
	// A key has no lines for name and date.
	let left = roomOn(paper, !isKey);
	for (const [index, height] of heights.entries()) {
		const page = leaves.at(-1)!;
		const takes = height + (page.length > 0 ? gap : 0);
		if (takes <= left || page.length === 0) {
			page.push(index);
			left -= takes;
		} else {
			leaves.push([index]);
			left = roomOn(paper, false) - height;
		}
	}
	return leaves;
}
/** One size of page for all, without a name: where a named page ends, what follows takes a page of its own. */
export function pageRule(paper: Paper): string {
	const { width, height } = papers[paper];
	return `@page { size: ${width}mm ${height}mm; margin: ${margin.top}mm ${margin.side}mm ${margin.bottom}mm; }`;
}
