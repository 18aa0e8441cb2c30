/** What is bought, in the order in which one walks the shop. */
import type { Bought, Shelf, ShelfLine } from '../../domain/kits/types';

export interface ToFetch {
	line: ShelfLine;
	count: number;
	/** Of all pieces of it, hundredths of the currency. */
	cents: number;
}
// Fixed to one language, so that a slip is the same on any computer. Numbers by their size: bay 2 before bay 10.
const collator = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });
const byText = (a: string, b: string): number => collator.compare(a, b) || (a < b ? -1 : a > b ? 1 : 0);

/** By place on the shelf, then by code; lines whose place nobody told come last. What the customer has, and codes that the shelf does not have, are left out. */
export function inWalkingOrder(buys: readonly Bought[], shelf: Shelf): ToFetch[] {
	const lines = new Map(shelf.lines.map((line) => [line.code, line]));
	return buys
		.flatMap(({ code, count }) => {
			const line = lines.get(code);
			return line && !line.isOwned && count > 0 ? [{ line, count, cents: line.cents * count }] : [];
		})
		.toSorted((a, b) => {
			const [one, other] = [a.line.place, b.line.place];
			if (one === null || other === null)
				return one === other ? byText(a.line.code, b.line.code) : one === null ? 1 : -1;
			return byText(one, other) || byText(a.line.code, b.line.code);
		});
}
