import type { Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Site } from '../site';
import { cornersOf } from './corners';
import { besideEdge, type LayingCosts } from './costs';
import { portalsOf, type Portal } from './crossings';
import type { Ground, Terminal } from './ground';
import { Gathered, type Links } from './links';
import { boundaryWithin, lengthNearWater, waterRings } from './obstacles';

/** A place at which a way may bend: a corner of a grown obstacle, or one end of a crossing. */
export interface Node {
	at: Point;
	/** Index of its obstacle, −1 at a crossing. */
	of: number;
	/** Boundary directions at an obstacle's corner, for leaving out lines that no shortest way takes. */
	before: Point | null;
	after: Point | null;
	/** Obstacles whose edge it lies beside. */
	beside: readonly number[];
}
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

/** What a straight line in open ground costs; `beside`: obstacles whose edge either end lies beside. */
function straightCosts(ground: Ground, costs: LayingCosts) {
	const { obstacles } = ground;
	const waters = waterRings(obstacles);
	const alongEdge = (a: Point, b: Point, besideA: readonly number[], besideB: readonly number[]): boolean => {
		for (const o of besideA)
			if (besideB.includes(o) && boundaryWithin(obstacles[o]!, (a.x + b.x) / 2, (a.y + b.y) / 2, besideEdge))
				return true;
		return false;
	};
	return (a: Point, b: Point, besideA: readonly number[], besideB: readonly number[]): number => {
		const dx = b.x - a.x;
		const dy = b.y - a.y;
		const rate = alongEdge(a, b, besideA, besideB) ? costs.alongEdge : costs.metre;
		const length = Math.sqrt(dx * dx + dy * dy);
		return length * rate + (waters.length === 0 ? 0 : costs.nearWater * lengthNearWater(waters, a, b));
	};
}

/** The ends of crossings, two by two, after the `corners` at which ways bend. */
const portalFinder =
	(portals: readonly Portal[], corners: number): Graph['portal'] =>
	(a, b) => {
		const first = Math.min(a, b) - corners;
		return first >= 0 && Math.abs(a - b) === 1 && first % 2 === 0 ? portals[first >> 1]! : null;
	};

/**
 * Where nodes lie, and whether a line through node i serves a shortest way: at a corner it must not cut into the obstacle
 * on either side. Ends of crossings have no directions, and serve always.
 */
class Places {
	readonly x: Float64Array;
	readonly y: Float64Array;
	/** Boundary directions, four numbers a node. */
	readonly #turn: Float64Array;
	constructor(nodes: readonly Node[]) {
		this.x = new Float64Array(nodes.length);
		this.y = new Float64Array(nodes.length);
		this.#turn = new Float64Array(4 * nodes.length);
		for (let i = 0; i < nodes.length; i++) {
			const { at, before, after } = nodes[i]!;
			this.x[i] = at.x;
			this.y[i] = at.y;
			if (before && after) this.#turn.set([before.x, before.y, after.x, after.y], 4 * i);
		}
	}
	serves(i: number, dx: number, dy: number): boolean {
		const turn = this.#turn;
		const k = 4 * i;
		return -(dx * turn[k + 1]! - dy * turn[k]!) * (dx * turn[k + 3]! - dy * turn[k + 2]!) > -1e-9;
	}
}

/**
 * The visibility graph (Lozano-Pérez & Wesley, 1979): corners of obstacles at their clearance and ends of crossings, each
 * joined to those it sees. The lot is a half strip (boundaries and street), so that no line within it leaves it.
 */
export function makeGraph(site: Site, ground: Ground, terminals: readonly Terminal[], costs: LayingCosts): Graph {
	const { obstacles, open } = ground;
	const inLot = (p: Point) => p.y <= site.street && p.x >= site.leftBoundary && p.x <= site.rightBoundary;
	const isFree = (p: Point) => inLot(p) && ground.free(p, -1);
	const straight = straightCosts(ground, costs);
	const besideOf = (p: Point): number[] => {
		const found: number[] = [];
		for (let i = 0; i < obstacles.length; i++) {
			const o = obstacles[i]!;
			if (o.kind !== 'tree' && boundaryWithin(o, p.x, p.y, besideEdge)) found.push(i);
		}
		return found;
	};

	const nodes: Node[] = [];
	obstacles.forEach((o, of) => {
		const distances = o.kind === 'water' ? [o.clearance, rules['water.clear'].figures.clear] : [o.clearance];
		for (const distance of distances)
			for (const { at, before, after } of cornersOf(o, distance + 1e-9, { free: isFree, isFine: ground.isFine }))
				nodes.push({ at, before, after, of, beside: besideOf(at) });
	});
	const corners = nodes.length;
	const portals = portalsOf(
		site,
		ground,
		terminals.map((t) => t.ground)
	).filter(({ from, to }) => inLot(from) && inLot(to));
	for (const { from, to } of portals)
		for (const at of [from, to]) nodes.push({ at, of: -1, before: null, after: null, beside: besideOf(at) });
	const portal = portalFinder(portals, corners);

	const places = new Places(nodes);
	const { x: xs, y: ys } = places;
	const seen = new Gathered();
	const join = (i: number, j: number, cost: number) => {
		seen.add(i, j, cost);
		seen.add(j, i, cost);
	};
	portals.forEach(({ crossing: { kind, crossing, length } }, k) => {
		const rate = costs.metre + (kind === 'bore' ? costs.boreMetre : 0);
		const once = costs.crossing[crossing === null ? 'undeclared' : kind];
		join(corners + 2 * k, corners + 2 * k + 1, rate * length + once);
	});
	for (let i = 0; i < nodes.length; i++) {
		const a = nodes[i]!;
		const x = xs[i]!;
		const y = ys[i]!;
		for (let j = i + 1; j < nodes.length; j++) {
			const dx = xs[j]! - x;
			const dy = ys[j]! - y;
			if (!places.serves(i, dx, dy) || !places.serves(j, dx, dy)) continue;
			const b = nodes[j]!;
			if (open(a.at, b.at, null, null, -1) && !portal(i, j)) join(i, j, straight(a.at, b.at, a.beside, b.beside));
		}
	}

	const beside = terminals.map((t) => besideOf(t.ground));
	const exits = new Gathered();
	terminals.forEach((t, k) => {
		if (t.within) return;
		const { x, y } = t.ground;
		for (let i = 0; i < nodes.length; i++) {
			const node = nodes[i]!;
			// From inside an obstacle's clearance the way to its corner leads outwards and looks as if it cut in.
			const close = node.of >= 0 && t.stand[node.of]! < ground.clearance[node.of]!;
			if (!close && !places.serves(i, xs[i]! - x, ys[i]! - y)) continue;
			if (open(t.ground, node.at, t.stand, null, -1))
				exits.add(k, i, straight(t.ground, node.at, beside[k]!, node.beside));
		}
	});
	const direct = (i: number, j: number): number => {
		const [a, b] = [terminals[i]!, terminals[j]!];
		if (a.within || b.within || !open(a.ground, b.ground, a.stand, b.stand, -1)) return Infinity;
		return straight(a.ground, b.ground, beside[i]!, beside[j]!);
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
