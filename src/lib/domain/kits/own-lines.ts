/** What the customer has, as lines beside the shelf's: at no cost, one of each, so that the search counts on it where it can. */
import { sizeName } from '../circuit';
import { ownTransformer } from './owned-transformer';
import type { Contents, Owned, OwnedVerdict, Shelf, ShelfLine } from './types';
import { cableLength } from './words';
import type { UnitSystem } from '../shared/units';

const nothing: Contents = { fixtures: [], transformer: null, cable: [], connectors: 0 };
/** A code that the shelf does not have. */
function free(code: string, taken: ReadonlySet<string>): string {
	return taken.has(code) ? free(`${code}+`, taken) : code;
}
/**
 * What the customer can keep or use again, as lines that go before the shelf's own. Halogen lamps are no part of it: what they are is not known well
 * enough to buy around them.
 */
export function ownLines(
	shelf: Shelf,
	{ transformer, cable }: Owned,
	verdicts: readonly OwnedVerdict[],
	units: UnitSystem
): ShelfLine[] {
	const serves = (what: OwnedVerdict['what']): boolean =>
		verdicts.some((one) => one.what === what && one.verdict !== 'replace');
	const taken = new Set(shelf.lines.map(({ code }) => code));
	const line = (kind: 'transformer' | 'cable', name: string, contents: Partial<Contents>): ShelfLine => ({
		code: free(`own ${kind}`, taken),
		kind,
		name,
		cents: 0,
		stock: 1,
		place: null,
		contents: { ...nothing, ...contents },
		isOwned: true
	});
	return [
		...(transformer && serves('transformer')
			? [
					line('transformer', `Their own ${transformer.voltAmps} VA transformer`, {
						transformer: ownTransformer(transformer)
					})
				]
			: []),
		...(cable && serves('cable')
			? [
					line('cable', `Their own ${cableLength(cable.metres, units, false)} of ${sizeName(cable.size)} cable`, {
						cable: [{ size: cable.size, metres: cable.metres, count: 1 }]
					})
				]
			: [])
	];
}
/** The shelf with lines before its own; the shelf itself where there are none. */
export const withLines = (shelf: Shelf, own: readonly ShelfLine[]): Shelf =>
	own.length > 0 ? { ...shelf, lines: [...own, ...shelf.lines] } : shelf;
