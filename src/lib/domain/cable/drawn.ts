/**
 * A run laid as the person drew it: a chain, a tee, a star, whatever tree the links make. What they leave open the plan joins
 * on. Links count in their order: one that would join what is joined already is not used.
 */
import type { Point } from '../shared/geometry';
import type { RunLink } from '../yard';
import type { Draft, DrawnCable } from './drafts';
import type { Drawn, Unused } from './drawn-links';
import { isBlocked, type Bending, type Blocked, type DrawnWay } from './drawn-way';
import type { Routes } from './paths';
import { gainAtLeast } from './spanning';

/** What is to be said of a link that is used: it cannot lie as bent, lies close to something, or passes under a wall. */
export interface Said extends Pick<DrawnWay, 'close' | 'under'> {
	link: RunLink;
	blocked: Blocked | null;
}
export interface DrawnRun {
	draft: Draft;
	said: Said[];
	unused: Unused[];
}
/** Where cables may lie. */
export interface Fields {
	routes: Pick<Routes, 'size' | 'costs' | 'anyRoute'>;
	bending: Bending;
}
/** A link in use: what was drawn, and the cable from its first terminal to its second. */
interface Used extends Drawn, DrawnCable {}
const backwards = ({ route: { length, path, crossings }, isBent }: DrawnCable): DrawnCable => ({
	route: { length, path: path.toReversed(), crossings: crossings.toReversed() },
	isBent
});
const pointOf = ({ along, out }: { along: number; out: number }): Point => ({ x: along, y: out });

/** Parts of the run that are joined so far, by terminal: union–find. */
class Parts {
	readonly #of = new Map<number, number>();
	head(terminal: number): number {
		let at = terminal;
		for (let up = this.#of.get(at); up !== undefined; up = this.#of.get(at)) at = up;
		return at;
	}
	/** False where both were in one part already. */
	join(a: number, b: number): boolean {
		const [from, to] = [this.head(a), this.head(b)];
		if (from === to) return false;
		this.#of.set(to, from);
		return true;
	}
}

/** Links that together make a tree, each with its cable; the rest are said. */
function usedOf(drawn: readonly Drawn[], { routes, bending }: Fields) {
	const parts = new Parts();
	const used: Used[] = [];
	const said: Said[] = [];
	const unused: Unused[] = [];
	for (const one of drawn) {
		const { link, from, to } = one;
		const own = routes.anyRoute(from, to);
		if (!own) unused.push({ link, why: 'unreached' });
		else if (!parts.join(from, to)) unused.push({ link, why: 'ring' });
		else {
			const bent = link.via ? bending(from, to, link.via.map(pointOf)) : null;
			const stands = bent && !isBlocked(bent);
			used.push(stands ? { ...one, route: bent.route, isBent: true } : { ...one, route: own, isBent: false });
			if (bent)
				said.push(isBlocked(bent) ? { link, blocked: bent, close: [], under: [] } : { link, blocked: null, ...bent });
		}
	}
	return { used, said, unused };
}

/** By terminal: cables that meet there, each seen from it. */
type Meeting = Map<number, { to: number; cable: DrawnCable }[]>;
function meetingOf(used: readonly Used[]): Meeting {
	const meeting: Meeting = new Map();
	const add = (at: number, to: number, cable: DrawnCable) => {
		const list = meeting.get(at);
		if (list) list.push({ to, cable });
		else meeting.set(at, [{ to, cable }]);
	};
	for (const { from, to, route, isBent } of used) {
		add(from, to, { route, isBent });
		add(to, from, backwards({ route, isBent }));
	}
	return meeting;
}

/** What hangs from each terminal, and the cable drawn to it where there is one. */
interface Tree {
	after: Map<number, number[]>;
	drawn: Map<number, DrawnCable>;
	joined: number[];
}
function hang(tree: Tree, from: number, to: number, cable: DrawnCable | null): void {
	const list = tree.after.get(from);
	if (list) list.push(to);
	else tree.after.set(from, [to]);
	if (cable) tree.drawn.set(to, cable);
	tree.joined.push(to);
}
/** Hangs on all that drawn cables join to the last place joined. */
function followDrawn(tree: Tree, meeting: Meeting, start: number): void {
	const open: [at: number, before: number][] = [[start, -1]];
	for (const [at, before] of open)
		for (const { to, cable } of meeting.get(at) ?? []) {
			if (to === before) continue;
			hang(tree, at, to, cable);
			open.push([to, at]);
		}
}

/** A light at which a part may be joined on, and the cheapest way to it from what is joined; Infinity: there is none yet. */
interface Waiting {
	head: number;
	cost: number;
	from: number;
}
const cheapest = (open: readonly Waiting[]): Waiting =>
	open.reduce((best, one) => (one.cost < best.cost - gainAtLeast ? one : best));

/**
 * What was drawn, and what the links leave open joined on: again and again whatever is nearest to what is joined, by the cost
 * of its way, as Prim's algorithm does (Bell System Technical Journal 36, 1957). A part that was drawn is joined at the light
 * that it was drawn from, so that each of its cables runs the way it was drawn. As in a run of the plan's own one cable leaves
 * the transformer, to where the way is cheapest, unless more are drawn. `isFree`: more may leave it. Null where that is needed.
 */
function joinedTree(members: readonly number[], used: readonly Used[], routes: Fields['routes'], isFree: boolean) {
	const { size, costs } = routes;
	const meeting = meetingOf(used);
	const tree: Tree = { after: new Map(), drawn: new Map(), joined: [] };
	const led = new Set(used.map(({ to }) => to));
	const joined = new Set<number>();
	let open: Waiting[] = members.flatMap((head) => (led.has(head) ? [] : [{ head, cost: Infinity, from: 0 }]));
	const look = (light: number) => {
		for (const one of open) {
			const cost = costs[light * size + one.head]!;
			if (cost < one.cost - gainAtLeast) Object.assign(one, { cost, from: light });
		}
	};
	/** After all that was hung since there were `before` places. */
	const goOn = (before: number) => {
		const news = tree.joined.slice(before);
		for (const light of news) joined.add(light);
		open = open.filter(({ head }) => !joined.has(head));
		for (const light of news) look(light);
	};
	followDrawn(tree, meeting, 0);
	goOn(0);
	if (isFree || joined.size === 0) look(0);
	while (open.length > 0) {
		const { head, cost, from } = cheapest(open);
		if (cost === Infinity) return null;
		const isEntry = joined.size === 0 && !isFree;
		const before = tree.joined.length;
		hang(tree, from, head, null);
		followDrawn(tree, meeting, head);
		// The transformer was open to the first cable only.
		if (isEntry) for (const one of open) one.cost = Infinity;
		goOn(before);
	}
	return tree;
}

/** Whether ways among the lights join them all without the transformer: `plainTree` lets more than one cable leave it where they do not. */
function isWhole(members: readonly number[], { size, costs }: Fields['routes']): boolean {
	const met = new Set(members.slice(0, 1));
	for (const at of met) for (const other of members) if (costs[at * size + other]! < Infinity) met.add(other);
	return met.size === members.length;
}

/** Level by level, as other drafts; it forks where it is entered, or is fed at its end. */
function draftOf({ after, drawn }: Tree): Draft {
	const terminals = [0];
	const from: number[] = [];
	for (let at = 0; at < terminals.length; at++)
		for (const next of after.get(terminals[at]!) ?? []) {
			from.push(at);
			terminals.push(next);
		}
	const entries = after.get(0) ?? [];
	const isTee = entries.length === 1 && (after.get(entries[0]!) ?? []).length > 1;
	const cables = terminals.slice(1).map((terminal) => drawn.get(terminal) ?? null);
	return { feed: isTee ? 'middle' : 'end', terminals, from, drawn: cables };
}

/**
 * The run over `members` with the links drawn for it; null where none of them can be used: the plan then lays it by itself,
 * and `unused` says why. Each member has a way from terminal 0.
 */
export function drawnRun(
	members: readonly number[],
	links: readonly Drawn[],
	fields: Fields
): Omit<DrawnRun, 'draft'> & { draft: Draft | null } {
	const { used, said, unused } = usedOf(links, fields);
	if (used.length === 0) return { draft: null, said, unused };
	const { routes } = fields;
	const one = isWhole(members, routes) ? joinedTree(members, used, routes, false) : null;
	const tree = one ?? joinedTree(members, used, routes, true);
	return { draft: tree && draftOf(tree), said, unused };
}
