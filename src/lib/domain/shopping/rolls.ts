import { cutThrough, inOrder, lengthOf, pack, splitToFit, type Packing } from './packing';
import type { Pull } from './pulls';

/** A roll as sold: metres, and hundredths of the currency. */
export interface RollKind {
	id: string;
	length: number;
	cents: number;
}
export interface RollChoice {
	/** By the order of the kinds given. */
	counts: number[];
	cents: number;
	/** Joints that the ends of rolls add. */
	joints: number;
	/** Metres bought and in hand beyond what is laid. */
	spare: number;
	/** Every roll bought and that in hand, each with what is cut off it. */
	rolls: CutUp[];
}
/** One roll and what is cut off it. */
export interface CutUp {
	/** Place among the kinds given; null: the cable in hand. */
	kind: number | null;
	/** Metres on it before, and after. */
	length: number;
	rest: number;
	cuts: Pull[];
}
/** Waste at ends and bends, over the lengths laid (which hold the slack already): common practice, no source. */
export const wasteShare = 0.05;
/** Beyond this many of the longest rolls nobody searches: the longest are bought and laid one after the other. */
const searchedRolls = 12;
/** Further small rolls tried when the least number covers the length but not the cuts. */
const further = 3;

const none = (kinds: readonly RollKind[]): number[] => kinds.map(() => 0);
const rollsOf = (counts: readonly number[]): number => counts.reduce((sum, n) => sum + n, 0);
/** The kind of each roll bought. */
const bought = (counts: readonly number[]): number[] =>
	counts.flatMap((number, kind) => Array.from({ length: number }, () => kind));
const metresOf = (counts: readonly number[], kinds: readonly RollKind[]): number =>
	kinds.reduce((sum, kind, i) => sum + kind.length * counts[i]!, 0);
const centsOf = (counts: readonly number[], kinds: readonly RollKind[]): number =>
	kinds.reduce((sum, kind, i) => sum + kind.cents * counts[i]!, 0);

/** The rolls of a packing with their kinds; rolls that it does not know of are whole. */
const cutUp = (kindsOfRolls: readonly (number | null)[], lengths: readonly number[], packing: Packing): CutUp[] =>
	kindsOfRolls.map((kind, i) => ({
		kind,
		length: lengths[i]!,
		rest: packing.left[i] ?? lengths[i]!,
		cuts: packing.cuts[i] ?? []
	}));

/**
 * Every way of covering `need` metres in which no smaller number of the shortest rolls would do, and a few more of those;
 * of each longer kind one more than covers it alone, since a length that covers may still not take the cuts.
 */
function coversOf(kinds: readonly RollKind[], need: number): number[][] {
	const sorted = kinds.map((kind, index) => ({ ...kind, index })).sort((a, b) => b.length - a.length);
	const covers: number[][] = [];
	const cover = (depth: number, counts: number[], rest: number): void => {
		const kind = sorted[depth]!;
		const least = Math.max(0, Math.ceil(rest / kind.length - 1e-9));
		const last = depth === sorted.length - 1;
		for (let number = last ? least : 0; number <= least + (last ? further : 1); number += 1) {
			const next = counts.with(kind.index, number);
			if (last) covers.push(next);
			else cover(depth + 1, next, rest - number * kind.length);
		}
	};
	cover(0, none(kinds), need);
	return covers;
}
/**
 * The cheapest rolls out of which the pulls can be cut with 5 % to spare, after a length in hand (metres). All ways of
 * covering the length are tried in order of price (then fewest rolls, then least over) until one packs. `kinds` must
 * not be empty.
 */
export function cheapestRolls(pulls: readonly Pull[], kinds: readonly RollKind[], inHand: number): RollChoice {
	const total = pulls.reduce((sum, pull) => sum + lengthOf(pull.legs), 0);
	const enough = total * (1 + wasteShare) <= inHand ? pack(pulls, [inHand]) : null;
	if (enough) {
		const rolls = cutUp([null], [inHand], enough);
		return { counts: none(kinds), cents: 0, joints: enough.joints, spare: inHand - total, rolls };
	}
	const longest = kinds.reduce((best, kind, i) => (kind.length > kinds[best]!.length ? i : best), 0);
	const need = Math.max(0, total * (1 + wasteShare) - inHand);
	const fitting = splitToFit(pulls, kinds[longest]!.length);
	const choice = (counts: readonly number[], packing: Packing): RollChoice => {
		const which: (number | null)[] = [...bought(counts), ...(inHand > 0 ? [null] : [])];
		const lengths = which.map((kind) => (kind === null ? inHand : kinds[kind]!.length));
		return {
			counts: [...counts],
			cents: centsOf(counts, kinds),
			joints: packing.joints,
			spare: metresOf(counts, kinds) + inHand - total,
			rolls: cutUp(which, lengths, packing)
		};
	};
	if (need > searchedRolls * kinds[longest]!.length) {
		const laid = inOrder(fitting, kinds[longest]!.length);
		const number = Math.max(laid.cuts.length, Math.ceil(need / kinds[longest]!.length));
		return choice(none(kinds).with(longest, number), laid);
	}
	const packed = (counts: readonly number[]): RollChoice | null => {
		const rolls = bought(counts).map((kind) => kinds[kind]!.length);
		const packing = pack(fitting, inHand > 0 ? [...rolls, inHand] : rolls);
		return packing && choice(counts, packing);
	};
	const covers = coversOf(kinds, need)
		.map((counts) => ({
			counts,
			cents: centsOf(counts, kinds),
			rolls: rollsOf(counts),
			metres: metresOf(counts, kinds)
		}))
		.sort((a, b) => a.cents - b.cents || a.rolls - b.rolls || a.metres - b.metres);
	for (const { counts } of covers) {
		const found = packed(counts);
		if (found) return found;
	}
	// Every leg fits the longest roll, so enough of those always do.
	for (let { counts } = covers[0]!; ;) {
		counts = counts.with(longest, counts[longest]! + 1);
		const found = packed(counts);
		if (found) return found;
	}
}

/** The cuts where cable is bought by the metre (kind 0) beside a length in hand, metres; together they hold all pulls. */
export function cutLengths(pulls: readonly Pull[], bought: number, inHand: number): { rolls: CutUp[]; joints: number } {
	const which: (number | null)[] = [...(inHand > 0 ? [null] : []), ...(bought > 0 ? [0] : [])];
	const lengths = which.map((kind) => (kind === null ? inHand : bought));
	const packing = pack(pulls, lengths) ?? cutThrough(pulls, lengths);
	return { rolls: cutUp(which, lengths, packing), joints: packing.joints };
}
