/** What a plan needs, which of the shelf meets it, and what the customer has already: worked out in one go. */
import { compareOwned, matchShelf, needsOf, ownLines, withLines } from '$lib/domain/kits';
import type { Match, Needs, Owned, OwnedVerdict, Shelf, ShelfLine } from '$lib/domain/kits/types';
import type { Plan } from '$lib/domain/plan';
import type { QuickAnswers, QuickYard } from '$lib/domain/quick';

export interface Job {
	answers: QuickAnswers;
	quick: QuickYard;
	plan: Plan;
	shelf: Shelf;
}
export interface Work {
	/** What the customer can keep: searched before the shelf's own lines, which need not come back from a worker. */
	own: ShelfLine[];
	needs: Needs;
	match: Match;
	owned: OwnedVerdict[];
}
/** What the customer said to have. */
export const ownedOf = ({ units, transformer, halogens, cable }: QuickAnswers): Owned => ({
	transformer: transformer === null ? null : { voltAmps: transformer },
	halogens,
	cable: cable && { size: { system: units === 'feet' ? 'awg' : 'mm2', size: cable.size }, metres: cable.metres }
});
export function worked({ answers, quick, plan, shelf }: Job): Work {
	const needs = needsOf(plan, quick.yard);
	const has = ownedOf(answers);
	const owned = compareOwned(needs, plan, has);
	const own = ownLines(shelf, has, owned, needs.units);
	return { own, needs, match: matchShelf(needs, withLines(shelf, own)), owned };
}
