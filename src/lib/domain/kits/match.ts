/** Which of a shelf to buy for a plan: the cheapest, two runners-up, and every kit's verdict. */
import { lackingOf } from './lacking';
import { problemOf } from './problem';
import { searchFully } from './search';
import { solutionOf } from './solutions';
import { limits as usualLimits } from './search-run';
import type { Found, Limits } from './search-types';
import type { Match, Needs, Shelf } from './types';
import { verdictOf, type Round } from './verdicts';

const nothing = 'The plan has no lights yet: there is nothing to buy.';
const nothingFound: Found = { purchases: [], isProven: true, steps: 0, lacks: [] };
/** The best and the runners-up. */
const shown = 3;

/**
 * The cheapest of the shelf that meets the needs and passes the circuit check with the cable and transformer in it; ties go to fewer lines, then
 * fewer pieces, then the shelf's own order. Beside it the cheapest of two other choices of kits, and for each kit why it is in or out. A
 * plan without lights needs nothing, and `lacking` says so. Neither `needs` nor `shelf` may be changed while they
 * are asked about again: what was solved for them is remembered. `limits`: how far to search for
 * the best and the runners-up; the kits' verdicts may take as many steps once more, all together.
 */
export function matchShelf(needs: Needs, shelf: Shelf, limits: Limits = usualLimits): Match {
	const posed = problemOf(needs, shelf);
	const isEmpty = needs.fixtures.length === 0;
	const { purchases, isProven } = isEmpty ? nothingFound : searchFully(posed.problem, { most: shown, limits });
	const found = purchases.map((one) => solutionOf(one, needs, shelf, posed));
	const [best = null, ...runnersUp] = found;
	const left = { ...limits, kits: shelf.lines.filter(({ kind }) => kind === 'kit').length };
	const round: Round = { needs, shelf, posed, isProven, best, runnersUp, left };
	return {
		isProven,
		best,
		runnersUp,
		kits: shelf.lines.flatMap(({ kind }, place) => (kind === 'kit' ? [verdictOf(place, round)] : [])),
		lacking: isEmpty ? [nothing] : best ? [] : lackingOf(needs, shelf, posed, { isProven, limits })
	};
}
