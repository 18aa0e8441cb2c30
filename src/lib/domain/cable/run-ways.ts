/** A run and the ways it may be laid, as the circuit is asked to choose among them. */
import type { RunShape, RunWays } from '../circuit';
import { drafted, type Drafted, type Weight } from './drafts';
import { demandOf } from './estimate';
import { otherWays, plainTree, treeWay, waysFed, type Hanging, type Weighed } from './feeds';
import type { HandRun } from './hand';
import type { Laying } from './laid';
import type { Bounded } from './least';

/** A run and the ways it may be laid, the plain one first. */
export interface WaysOfRun {
	plain: Drafted;
	others: () => Drafted[];
	/** What is known of the others before they are made. */
	weights: () => Pick<Weight, 'metres' | 'laying' | 'worst'>[];
	hand: HandRun | null;
}
export const waysFor = (id: string, members: readonly number[], hanging: Hanging, laying: Laying): WaysOfRun => {
	let found: Weighed[] | null = null;
	let made: Drafted[] | null = null;
	const weighed = () => (found ??= otherWays(members, hanging, laying));
	return {
		plain: treeWay(id, 'end', hanging, laying),
		others: () => (made ??= weighed().map(({ draft }) => drafted(id, draft, laying))),
		weights: () => weighed().map(({ weight }) => weight),
		hand: null
	};
};

/** A run set by hand: as it is drawn; else where the feed is held, the ways that are fed so; all ways where there is none such. */
export function handWays(hand: HandRun, laying: Laying): WaysOfRun {
	const { id, members, feed, drawn } = hand;
	if (drawn) return { plain: drafted(id, drawn, laying), others: () => [], weights: () => [], hand };
	const hanging = plainTree(members, laying);
	const [plain, ...others] = feed === null ? [] : waysFed(feed, id, members, hanging, laying).toSorted(bySize);
	const weights = () => others.map(({ shape }) => ({ ...demandOf(shape), laying: shape.laying! }));
	return plain ? { plain, others: () => others, weights, hand } : { ...waysFor(id, members, hanging, laying), hand };
}
/** Least digging first, then least cable: the circuit takes the first for the cheapest. */
const bySize = (a: Drafted, b: Drafted): number =>
	a.shape.laying! - b.shape.laying! || metresOf(a.shape) - metresOf(b.shape);
const metresOf = ({ segments }: RunShape): number => segments.reduce((sum, { metres }) => sum + metres, 0);

/** What the circuit chooses from; `all`: the other ways too. */
export const asked = ({ plain, others, hand }: WaysOfRun, all: boolean): RunWays => ({
	shape: plain.shape,
	...(all && { others: () => others().map(({ shape }) => shape) }),
	...(hand && (hand.size || hand.tapVolts !== null)
		? { held: { ...(hand.size && { size: hand.size }), ...(hand.tapVolts !== null && { tapVolts: hand.tapVolts }) } }
		: {})
});

export const bounded = ({ plain, weights, hand }: WaysOfRun): Bounded => ({
	plain: plain.shape,
	others: weights(),
	size: hand?.size ?? null
});
