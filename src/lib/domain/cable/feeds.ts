/**
 * The ways to feed a run (rule cable.order): at its near end, which takes the least cable; at a lamp in its middle, from
 * which the cable goes on to several sides; or at a hub, from which each lamp has a lead of its own.
 */
import type { Feed } from '../circuit';
import {
	drafted,
	enteredDraft,
	hubDraft,
	treeDraft,
	weigh,
	type Draft,
	type Drafted,
	type Hanging,
	type Weight
} from './drafts';
import type { Laying } from './laid';
import { minimumTree } from './spanning';

export type { Hanging };

/** The tree over `members` in which `parent` holds what each hangs from. */
export function hangingBy(members: readonly number[], parent: (terminal: number) => number): Hanging {
	const after = new Map<number, number[]>();
	for (const terminal of members) {
		const list = after.get(parent(terminal));
		if (list) list.push(terminal);
		else after.set(parent(terminal), [terminal]);
	}
	return after;
}

/** The way along a tree, level by level. */
export const treeWay = (id: string, feed: Feed, hanging: Hanging, laying: Laying): Drafted =>
	drafted(id, treeDraft(feed, hanging), laying);

/** By lamp: those it is joined to in a tree, the supply left out. */
function joined(hanging: Hanging): Map<number, number[]> {
	const near = new Map<number, number[]>();
	const join = (a: number, b: number) => {
		const list = near.get(a);
		if (list) list.push(b);
		else near.set(a, [b]);
	};
	for (const [from, list] of hanging) {
		if (from === 0) continue;
		for (const to of list) {
			join(from, to);
			join(to, from);
		}
	}
	return near;
}

/** Fed in the middle: the tree over the lamps entered at each lamp but `except` from which it goes on to several sides. */
function middles(members: readonly number[], plain: Hanging, except: number): Draft[] {
	const near = joined(plain);
	const isTee = (entry: number) => (near.get(entry)?.length ?? 0) > 1;
	return members.flatMap((entry) => (entry !== except && isTee(entry) ? [enteredDraft(near, entry)] : []));
}

/** A way that may be laid, and what is known of it. */
export interface Weighed {
	draft: Draft;
	weight: Weight;
}
/** No more than another in anything, give or take rounding. */
const isNoMore = (a: Weight, b: Weight): boolean =>
	a.metres <= b.metres + apart &&
	a.laying <= b.laying + apart &&
	a.worst <= b.worst + apart &&
	a.unevenness <= b.unevenness + apart;
const apart = 1e-6;
/** Less than another in something. */
const isLess = (a: Weight, b: Weight): boolean =>
	a.metres < b.metres - apart ||
	a.laying < b.laying - apart ||
	a.worst < b.worst - apart ||
	a.unevenness < b.unevenness - apart;

/**
 * Those that are better than each other in something: a way that takes as much cable and laying as another, and drops as
 * much to its far lamp, by a linear estimate, and as unevenly, is never the one to take.
 */
function worthTrying(drafts: readonly Draft[], laying: Laying): Weighed[] {
	const all = drafts.map((draft) => ({ draft, weight: weigh(draft, laying) }));
	const beats = (other: Weight, j: number, own: Weight, k: number): boolean =>
		j !== k && isNoMore(other, own) && (j < k || isLess(other, own));
	return all.filter(({ weight }, k) => !all.some((other, j) => beats(other.weight, j, weight, k)));
}

/** A run of more lamps than this is laid in its plain way: several times what a home puts on one cable. */
const mostLamps = 60;

/** A hub beside each lamp; of a very long run only beside the one that has all others nearest, taken together. */
function hubs(members: readonly number[], laying: Laying): Draft[] {
	const { size, costs } = laying.routes;
	const away = (terminal: number) => members.reduce((sum, other) => sum + costs[terminal * size + other]!, 0);
	const nearest = () => members.reduce((best, terminal) => (away(terminal) < away(best) ? terminal : best));
	const besides = members.length > mostLamps ? [nearest()] : members;
	return besides.flatMap((beside) => hubDraft(members, beside, laying) ?? []);
}

/** The ways beside the plain one that are better than it in something. */
export function otherWays(members: readonly number[], hanging: Hanging, laying: Laying): Weighed[] {
	if (members.length < 2 || members.length > mostLamps) return [];
	const entries = hanging.get(0) ?? [];
	const own = treeDraft('end', hanging);
	const all = [own, ...(entries.length === 1 ? middles(members, hanging, entries[0]!) : []), ...hubs(members, laying)];
	return worthTrying(all, laying).filter(({ draft }) => draft !== own);
}

/** The ways with a feed that the person asks for: a plain tree that forks where it is entered is fed in its middle too. */
export function waysFed(feed: Feed, id: string, members: readonly number[], plain: Hanging, laying: Laying): Drafted[] {
	if (feed === 'end') return [treeWay(id, feed, plain, laying)];
	const entries = plain.get(0) ?? [];
	const all = feed === 'hub' ? hubs(members, laying) : entries.length === 1 ? middles(members, plain, -1) : [];
	return worthTrying(all, laying).map(({ draft }) => drafted(id, draft, laying));
}

/**
 * The plain way of a run that is given by its lamps: the minimum tree over them, entered where the way from the supply is
 * cheapest. Where there is no tree without the supply in it, more than one cable leaves from there.
 */
export function plainTree(members: readonly number[], { routes: { size, costs } }: Laying): Hanging {
	const entry = members.reduce((best, terminal) => (costs[terminal]! < costs[best]! - 1e-6 ? terminal : best));
	// As if the supply stood where the cable enters: no other way from it is ever the cheaper one.
	const among = costs.slice();
	for (const terminal of members) among[terminal] = costs[entry * size + terminal]!;
	const others = members.filter((terminal) => terminal !== entry);
	const tree = minimumTree({ size, costs: among }, others);
	const isWhole = Number.isFinite(tree.cost);
	const { nodes, up } = isWhole ? tree : minimumTree({ size, costs }, members);
	const parent = new Map<number, number>();
	for (let k = 1; k < nodes.length; k++) parent.set(nodes[k]!, nodes[up[k]!]!);
	if (!isWhole) return hangingBy(members, (terminal) => parent.get(terminal)!);
	return hangingBy(members, (terminal) => (terminal === entry ? 0 : parent.get(terminal)! || entry));
}
