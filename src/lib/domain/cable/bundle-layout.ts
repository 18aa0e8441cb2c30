/**
 * The layout that is cheapest in truth. The search for it prices each cable's trench by itself; here cables are led along each
 * other (`bundle.ts`), the circuit is solved again with the lengths that they then have, and what lost by the first price is
 * looked at once more by the true one.
 */
import type { Alternative, Choice, ChooseOptions } from '../circuit';
import { Sharing, type Found } from './bundle-sharing';
import type { Hand } from './hand';
import type { Laying } from './laid';
import { isBetter, laidRun, worthIt, type Layout, type Lost, type SharedRun } from './layout';
import { renewed } from './recost';

/** What had lost, at its true price; `found`: the layout, where it is the better one. */
interface Again {
	lost: Lost;
	found: Found | null;
}
function again(lost: Lost, best: Found, sharing: Sharing): Again {
	const runs = lost.shared.map((run) => laidRun(run, sharing.laying));
	const { choice } = lost;
	if (!choice) {
		const cost = sharing.thinnest(runs, best);
		if (cost >= best.choice.cost - worthIt) return { lost: { ...lost, cost }, found: null };
		const found = sharing.best(runs, sharing.solved(runs).choice);
		return { lost: { ...lost, cost: found.choice.cost, choice: found.choice }, found };
	}
	const found = sharing.couldBeat(best, runs, choice) ? sharing.best(runs, choice) : sharing.asLaid(runs, choice);
	return { lost: { ...lost, cost: found.choice.cost, choice: found.choice }, found };
}

/** The other way that an alternative takes; null where it is the same in another size or on another tap. */
function wayOf({ run, shape }: Alternative, { others, choice, runs }: Layout): SharedRun | null {
	if (choice.runs.some((own) => own.shape === shape)) return null;
	const way = others
		.get(run)?.()
		.find((one) => one.shape === shape);
	const laid = runs.find((one) => one.shape.id === run);
	return way && laid ? { ...way, byHand: laid.byHand } : null;
}
interface Weighed {
	alternative: Alternative;
	/** Currency: of the whole with it. */
	cost: number;
	found: Found | null;
}
/** An alternative by the true price, led along the others where it keeps every limit and could be the better one. */
function againWith(alternative: Alternative, layout: Layout, best: Found, sharing: Sharing): Weighed[] {
	const way = wayOf(alternative, layout);
	if (!way) return [];
	const { run: id, size } = alternative;
	const runs = layout.runs.map((run) => (run.shape.id === id ? laidRun(way, sharing.laying) : run));
	const sizes = layout.choice.runs.map((run) => (run.id === id ? { ...run, size } : run));
	const choice = renewed(layout.choice, { runs: sizes }, () => []);
	const isOpen = alternative.problem === null && sharing.couldBeat(best, runs, choice);
	const found = isOpen ? sharing.best(runs, sharing.solved(runs).choice) : null;
	return [{ alternative, cost: (found ?? sharing.asLaid(runs, choice)).choice.cost, found }];
}

/** Other sizes and taps of the ways taken, and `others`: all differences by the true sum. */
function withAlternatives(choice: Choice, others: readonly Weighed[]): Choice {
	const own = new Set(choice.runs.map(({ shape }) => shape));
	const weighed = others.flatMap(({ alternative, cost }): Alternative[] => {
		const costDifference = cost - choice.cost;
		// One that is sound and no dearer was not taken because the circuit, solved with its true lengths, has problems.
		return alternative.problem === null && costDifference <= 0 ? [] : [{ ...alternative, costDifference }];
	});
	return renewed(choice, {}, () => [...choice.alternatives.filter(({ shape }) => own.has(shape)), ...weighed]);
}

/**
 * The layout with its cables led along each other, all costs by the true sum: cable, digging once, crossings once, branches,
 * transformer. Never with more problems than before, and never dearer by that sum.
 */
export function shareTrenches(layout: Layout, laying: Laying, hand: Hand, options: ChooseOptions): Layout {
	const sharing = new Sharing(laying, hand, options, layout);
	const first = sharing.best(layout.runs, layout.choice);
	let best = first;
	const lost = layout.lost.map((one): Lost => {
		const { lost: priced, found } = again(one, best, sharing);
		if (!found || !isBetter(found.choice, best.choice)) return priced;
		const before: Lost = { ...one, runs: best.runs.length, cost: best.choice.cost, choice: best.choice };
		best = found;
		return before;
	});
	const rival = best;
	const others = layout.choice.alternatives.flatMap((one) => againWith(one, layout, rival, sharing));
	for (const { found } of others) if (found && isBetter(found.choice, best.choice)) best = found;
	const isFirst = best === first;
	best = sharing.bettered(best);
	return {
		...layout,
		runs: [...best.runs],
		choice: withAlternatives(best.choice, isFirst ? others : []),
		lost
	};
}
