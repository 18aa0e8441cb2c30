/** How the slip is laid out so that it stays on one page. Pure: who asks says how high a layout comes out. */

export interface SlipLayout {
	/** Most height of the sketch, millimetres; 0: it goes to a second page. */
	sketch: number;
	/** Columns of the list of what to buy. */
	columns: 1 | 2;
	/** How many lines of that list stand on the first page; all of them but where not even the list fits. */
	lines: number;
}
/** From large to small; below the last its letters crowd. Millimetres. */
export const sketchHeights = [105, 90, 75, 62, 50, 40] as const;

/**
 * The first layout that fits: the sketch gives way first, then the list goes into two columns, then the sketch goes to a second page, and only
 * when the list alone is too long do its last lines follow.
 *
 * @param lines how many lines are bought
 * @param fits whether the first page holds a layout
 */
export function chosenLayout(lines: number, fits: (layout: SlipLayout) => boolean): SlipLayout {
	for (const columns of [1, 2] as const)
		for (const sketch of sketchHeights) {
			const layout = { sketch, columns, lines };
			if (fits(layout)) return layout;
		}
	const bare = (count: number): SlipLayout => ({ sketch: 0, columns: 2, lines: count });
	if (fits(bare(lines))) return bare(lines);
	// The most lines that fit: more lines are never lower.
	let [least, most] = [0, lines];
	while (most - least > 1) {
		const middle = Math.floor((least + most) / 2);
		if (fits(bare(middle))) least = middle;
		else most = middle;
	}
	return bare(least);
}

/** What did not fit on the first page, said on it; null where all did. */
export function leftOver({ sketch, lines }: SlipLayout, all: number): string | null {
	if (sketch > 0) return null;
	if (lines === all) return 'The sketch of the yard is on the second page.';
	const rest = all - lines;
	return `On the second page: ${rest} more ${rest === 1 ? 'line' : 'lines'} to buy, and the sketch of the yard.`;
}
