/** What is known of setups and parts of them, as a tree by demand: each is asked about once, whichever kits it is tried with. */
import { transformerAt, type Asked } from './search-demands';
import type { SetupIndex } from './search-types';

export interface Known {
	before: Known | null;
	/** By resource chosen for the next demand, of resources that are alike the first. */
	next: Map<number, Known>;
	/** How many of `next` are closed: when all that there can be are, this is too. */
	closed: number;
	/** False: nothing that begins so can pass. Null: not asked. */
	isOpen: boolean | null;
}
export const unknown = (before: Known | null = null): Known => ({
	before,
	next: new Map<number, Known>(),
	closed: 0,
	isOpen: null
});

/** The node for a further choice, made when there is none. */
export function step({ like }: Asked, known: Known, resource: number): Known {
	const kept = known.next.get(like[resource]!);
	if (kept) return kept;
	const made = unknown(known);
	known.next.set(like[resource]!, made);
	return made;
}
/** Closes a node that so many demands lead to, and those before it of which nothing is open any more. */
function close(asked: Asked, known: Known, depth: number): void {
	known.isOpen = false;
	const { before } = known;
	if (!before || before.isOpen === false) return;
	before.closed += 1;
	const { options } = asked.demands[depth - 1]!;
	if (before.closed === new Set(options.map((r) => asked.like[r]!)).size) close(asked, before, depth - 1);
}
/** Whether the node or one before it is closed. */
export function isClosed(known: Known): boolean {
	for (let node: Known | null = known; node; node = node.before) if (node.isOpen === false) return true;
	return false;
}

/** The setup that resources chosen for all demands are, in the problem's numbers. */
export function setupOf({ problem }: Asked, chosen: readonly number[]): SetupIndex {
	const { products, sizes, runs } = problem;
	const afterRuns = transformerAt + 1 + runs.length;
	return {
		transformer: chosen[transformerAt]! - products - sizes,
		sizes: chosen.slice(transformerAt + 1, afterRuns).map((r) => r - products),
		products: chosen.slice(afterRuns)
	};
}

/** Whether what is chosen so far can pass; of a whole setup, whether it does. Asks the problem where it is not known. */
export function isOpen(asked: Asked, known: Known, chosen: readonly number[]): boolean {
	if (known.isOpen === null) {
		known.isOpen = true;
		const isWhole = asked.demands.length === chosen.length;
		if (!(isWhole ? passes : mayPass)(asked, chosen)) close(asked, known, chosen.length);
	}
	return known.isOpen;
}
const passes = (asked: Asked, chosen: readonly number[]): boolean => asked.problem.passes(setupOf(asked, chosen));
function mayPass(asked: Asked, chosen: readonly number[]): boolean {
	const { problem } = asked;
	if (chosen.length <= transformerAt || !problem.hopeless) return true;
	const { transformer, sizes, products } = setupOf(asked, chosen);
	const filled = (list: number[], length: number): (number | null)[] =>
		Array.from({ length }, (_, k) => list[k] ?? null);
	return !problem.hopeless({
		transformer,
		sizes: filled(sizes, problem.runs.length),
		products: filled(products, problem.needs.length)
	});
}

/**
 * Asks setups in plain order and closes what cannot pass, until `left.asks` are used up. Where it ends before that, a part is
 * open just where some setup with it passes. Returns whether anything is open.
 */
export function survey(asked: Asked, known: Known, chosen: readonly number[], left: { asks: number }): boolean {
	if (left.asks <= 0) return true;
	if (known.isOpen === null) left.asks -= 1;
	if (!isOpen(asked, known, chosen)) return false;
	const demand = asked.demands[chosen.length];
	if (!demand) return true;
	let any = false;
	for (const r of demand.options) if (survey(asked, step(asked, known, r), [...chosen, r], left)) any = true;
	return any;
}
