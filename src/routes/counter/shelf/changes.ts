/** One change of the shelf, as a new shelf. The order is kept: it settles ties between equal purchases. */
import type { Contents, Shelf, ShelfLine } from '$lib/domain/kits/types';

export const emptyShelf: Shelf = { name: '', currency: 'USD', lines: [] };

/** What was a product before the change, and what it is now. */
type Renewed = Map<string, Contents['fixtures'][number]>;
function renewedBy(before: ShelfLine | undefined, line: ShelfLine): Renewed {
	const renewed: Renewed = new Map(line.contents.fixtures.map((one) => [one.product, one]));
	const [own] = line.contents.fixtures;
	const [old] = before?.contents.fixtures ?? [];
	// A loose light that got another code is still the light that the kits hold.
	if (line.kind === 'fixture' && before?.kind === 'fixture' && own && old) renewed.set(old.product, own);
	return renewed;
}
/** What is the same fixture wherever it is sold stays the same fixture: a lamp changed in one line is changed in all. */
function renewedIn(contents: Contents, renewed: Renewed): Contents {
	if (!contents.fixtures.some(({ product }) => renewed.has(product))) return contents;
	return {
		...contents,
		fixtures: contents.fixtures.map((one) => {
			const now = renewed.get(one.product);
			return now ? { ...one, product: now.product, fixture: now.fixture } : one;
		})
	};
}
/** The line in place of the one with the code `was`; null: behind the last. Its fixtures' figures go into every line that has them. */
export function withLine(shelf: Shelf, line: ShelfLine, was: string | null): Shelf {
	const before = shelf.lines.find(({ code }) => code === was);
	const renewed = renewedBy(before, line);
	const lines = shelf.lines.map((one) =>
		one === before ? line : { ...one, contents: renewedIn(one.contents, renewed) }
	);
	return { ...shelf, lines: before ? lines : [...lines, line] };
}
export const withoutLine = (shelf: Shelf, code: string): Shelf => ({
	...shelf,
	lines: shelf.lines.filter((line) => line.code !== code)
});
/** Lines of the other shelf beside ours: one with a code that we have takes its place, the rest come behind. */
export function merged(shelf: Shelf, other: Shelf): Shelf {
	const renewed = new Map(other.lines.map((line) => [line.code, line]));
	const kept = shelf.lines.map((line) => renewed.get(line.code) ?? line);
	const codes = new Set(shelf.lines.map(({ code }) => code));
	return { ...shelf, lines: [...kept, ...other.lines.filter(({ code }) => !codes.has(code))] };
}
