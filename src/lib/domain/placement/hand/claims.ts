/** Which light of the plan a change made by hand speaks of, after other answers have changed. */
import { distance } from '../../shared/geometry';
import type { Fixture } from '../types';
import { kinOf, pointOf, type Edit } from './edits';

/**
 * Edits by the id of the plan's own light that each takes the place of. A light keeps its number while it stands near where
 * it was; where numbers have shifted (steps added to a walk), the nearest of its kin is it; where nothing is near, its number
 * decides. No light is claimed twice. `reach`: metres within which a light of the plan is taken for the one that was changed.
 */
export function claimed(edits: readonly Edit[], own: readonly Fixture[], reach: number): Map<string, Edit> {
	const claims = new Map<string, Edit>();
	const open = new Set(edits);
	const claim = (edit: Edit, fixture: Fixture): void => {
		if (!open.has(edit) || claims.has(fixture.id)) return;
		open.delete(edit);
		claims.set(fixture.id, edit);
	};
	const kin = new Map<string, Fixture[]>();
	for (const fixture of own) kin.set(kinOf(fixture.id), [...(kin.get(kinOf(fixture.id)) ?? []), fixture]);
	const pairs = edits
		.flatMap((edit) =>
			(kin.get(kinOf(edit.id)) ?? []).map((fixture) => ({
				edit,
				fixture,
				same: fixture.id === edit.id,
				away: edit.told.from ? distance(pointOf(edit.told.from), fixture.at) : Infinity
			}))
		)
		.sort((a, b) => Number(b.same) - Number(a.same) || a.away - b.away);
	for (const { edit, fixture, away } of pairs) if (away <= reach) claim(edit, fixture);
	for (const { edit, fixture, same } of pairs) if (same) claim(edit, fixture);
	return claims;
}
