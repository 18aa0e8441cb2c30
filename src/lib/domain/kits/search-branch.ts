/** The branches of the search, and in which order they are looked at. */
import type { Choice, Kits, Part } from './search-choices';
import type { Bill } from './search-cover';

/** One more kit. */
export interface More extends Bill {
	bundle: number;
}
/** Of several ways on, the one at `at`; those after it are no cheaper and come when it is taken. No purchase in a branch is below its bill. */
export type Branch = Bill & { serial: number } & (
		| { kind: 'kits'; from: Kits; ways: More[]; at: number }
		| { kind: 'choice'; from: Part; ways: Choice[]; at: number }
		| { kind: 'whole'; part: Part; counts: number[] }
	);

/** The first difference of two lists of the same length, or 0. */
function difference(a: readonly number[], b: readonly number[]): number {
	for (let k = 0; k < a.length; k++) if (a[k] !== b[k]) return a[k]! - b[k]!;
	return 0;
}
/**
 * By the bill; at the same bill a whole purchase comes last, so that all like it are there when it is taken; of two, the one with
 * more of the first offer in which they differ, then the one with the lower numbers in its setup.
 */
export function before(a: Branch, b: Branch): boolean {
	if (a.cents !== b.cents) return a.cents < b.cents;
	if (a.minor !== b.minor) return a.minor < b.minor;
	if (a.kind !== 'whole') return b.kind === 'whole' || a.serial < b.serial;
	if (b.kind !== 'whole') return false;
	return (difference(b.counts, a.counts) || difference(a.part.chosen, b.part.chosen) || a.serial - b.serial) < 0;
}
const depth = (branch: Branch): number => {
	if (branch.kind === 'kits') return -1;
	return branch.kind === 'whole' ? Infinity : branch.from.chosen.length;
};
/** The furthest on first: finds something soon, not the cheapest. */
export const beforeInHaste = (a: Branch, b: Branch): boolean => {
	const [one, other] = [depth(a), depth(b)];
	return one === other ? before(a, b) : one > other;
};
