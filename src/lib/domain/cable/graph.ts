import type { Site } from '../site';
import type { LayingCosts } from './costs';
import { portalsOf, type Portal } from './crossings';
import type { Ground, Terminal } from './ground';
import { Gathered, type Links } from './links';
import { endsOf, type Node } from './nodes';
import { inLotOf, standingOf } from './standing';

export interface Graph {
	nodes: Node[];
	links: Links;
	/** The crossing between two nodes that are its ends. */
	portal: (a: number, b: number) => Portal | null;
	/** Nodes that a terminal sees, and by node the terminals that see it. */
	exits: Links;
	entries: Links;
	/** Cost of the straight line between two terminals, Infinity where something is in the way. */
	direct: (a: number, b: number) => number;
}

/** The ends of crossings, two by two, after the `corners` at which ways bend. */
const portalFinder =
	(portals: readonly Portal[], corners: number): Graph['portal'] =>
	(a, b) => {
		const first = Math.min(a, b) - corners;
		return first >= 0 && Math.abs(a - b) === 1 && first % 2 === 0 ? portals[first >> 1]! : null;
	};

/**
 * The visibility graph (Lozano-Pérez & Wesley, 1979): corners of obstacles at their clearance and ends of crossings, each
 * joined to those it sees.
 *
 * Ground of several costs makes this a weighted-region problem (Mitchell & Papadimitriou, 1991). Exact: the cost of each
 * straight line (`surface.ts`), and the least way where all ground costs the same. Heuristic: where ways may bend for the
 * cost's sake, at eight corners round a root zone and at places 1.5 m apart along the edge of a bed. A way does not bend
 * where it enters a zone, but for one whose end lies in it, and joins an edge at the places next to where the law of
 * refraction would have it. Against a fine grid (`grid.test.ts`) half of all ways cost no more, one in a hundred 15 % more.
 */
export function makeGraph(site: Site, ground: Ground, terminals: readonly Terminal[], costs: LayingCosts): Graph {
	const { open } = ground;
	const inLot = inLotOf(site);
	const { nodes: bends, seen: lines, straight, exits: known, sights } = standingOf(site, ground, costs);
	const corners = bends.length;
	const portals = portalsOf(
		site,
		ground,
		terminals.map((t) => t.ground)
	).filter(({ from, to }) => inLot(from) && inLot(to));
	const nodes = [...bends, ...endsOf(portals)];
	const portal = portalFinder(portals, corners);

	const seen = lines.copy();
	const join = (i: number, j: number, cost: number) => {
		seen.add(i, j, cost);
		seen.add(j, i, cost);
	};
	portals.forEach(({ crossing: { kind, crossing, length } }, k) => {
		const rate = kind === 'bore' ? costs.bored : costs.metre;
		const once = costs.crossing[crossing === null ? 'undeclared' : kind];
		join(corners + 2 * k, corners + 2 * k + 1, rate * length + once);
	});
	for (let j = corners; j < nodes.length; j++) {
		const { at } = nodes[j]!;
		const bent = sights(at);
		for (let e = 0; e < bent.length; e += 2) join(bent[e]!, j, bent[e + 1]!);
		for (let i = corners; i < j; i++) {
			const other = nodes[i]!.at;
			if (!portal(i, j) && open(other, at, null, null, -1)) join(i, j, straight(other, at));
		}
	}

	const exits = new Gathered();
	terminals.forEach((t, k) => {
		const own = known(t);
		for (let e = 0; e < own.length; e += 2) exits.add(k, own[e]!, own[e + 1]!);
		if (t.within) return;
		for (let i = corners; i < nodes.length; i++) {
			const { at } = nodes[i]!;
			if (open(t.ground, at, t.stand, null, -1)) exits.add(k, i, straight(t.ground, at));
		}
	});
	const direct = (i: number, j: number): number => {
		const [a, b] = [terminals[i]!, terminals[j]!];
		if (a.within || b.within || !open(a.ground, b.ground, a.stand, b.stand, -1)) return Infinity;
		return straight(a.ground, b.ground);
	};
	return {
		nodes,
		links: seen.links(nodes.length),
		portal,
		exits: exits.links(terminals.length),
		entries: exits.reversed(nodes.length),
		direct
	};
}
