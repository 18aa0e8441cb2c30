import type { Point } from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Site } from '../site';
import { besideEdge, type LayingCosts } from './costs';
import { portalsOf, type Portal } from './crossings';
import type { Ground, Terminal } from './ground';
import { boundaryDistance, cornersOf, lengthNearWater, waterRings } from './obstacles';

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
/** Links by their first node, one after the other: those of node i are `start[i]` to `start[i + 1]`. */
export interface Links {
	start: Int32Array;
	to: Int32Array;
	cost: Float64Array;
}
export interface Graph {
	nodes: Node[];
	links: Links;
	/** The crossing between two nodes that are its ends. */
	portal: (a: number, b: number) => Portal | null;
	/** Nodes that a terminal sees. */
	exits: Links;
	/** Cost of the straight line between two terminals, Infinity where something is in the way. */
	direct: (a: number, b: number) => number;
}

/** Links gathered two ways, put in order by their first node. */
class Gathered {
	readonly #from: number[] = [];
	readonly #to: number[] = [];
	readonly #cost: number[] = [];
	add(from: number, to: number, cost: number): void {
		this.#from.push(from);
		this.#to.push(to);
		this.#cost.push(cost);
	}
	links(count: number): Links {
		const size = this.#from.length;
		const start = new Int32Array(count + 1);
		for (let l = 0; l < size; l++) start[this.#from[l]! + 1]!++;
		for (let i = 0; i < count; i++) start[i + 1]! += start[i]!;
		const next = start.slice();
		const to = new Int32Array(size);
		const cost = new Float64Array(size);
		for (let l = 0; l < size; l++) {
			const place = next[this.#from[l]!]!++;
			to[place] = this.#to[l]!;
			cost[place] = this.#cost[l]!;
		}
		return { start, to, cost };
	}
}

/**
 * Whether a line through node i serves a shortest way: at a corner it must not cut into the obstacle on either side.
 * Ends of crossings have no directions, and serve always.
 */
function supporting(nodes: readonly Node[]): (i: number, dx: number, dy: number) => boolean {
	const flat = (pick: (node: Node) => number | undefined) => Float64Array.from(nodes, (node) => pick(node) ?? 0);
	const beforeX = flat((node) => node.before?.x);
	const beforeY = flat((node) => node.before?.y);
	const afterX = flat((node) => node.after?.x);
	const afterY = flat((node) => node.after?.y);
	return (i, dx, dy) => -(dx * beforeY[i]! - dy * beforeX[i]!) * (dx * afterY[i]! - dy * afterX[i]!) > -1e-9;
}

/**
 * The visibility graph (Lozano-Pérez & Wesley, 1979): corners of obstacles at their clearance and ends of crossings, each
 * joined to those it sees. The lot is a half strip (boundaries and street), so that no line within it leaves it.
 */
export function makeGraph(site: Site, ground: Ground, terminals: readonly Terminal[], costs: LayingCosts): Graph {
	const { obstacles, open } = ground;
	const inLot = (p: Point) => p.y <= site.street && p.x >= site.leftBoundary && p.x <= site.rightBoundary;
	const waters = waterRings(obstacles);
	const besideOf = (p: Point): number[] => {
		const found: number[] = [];
		obstacles.forEach((o, i) => {
			if (o.kind === 'tree' || p.x < o.minX - besideEdge || p.x > o.maxX + besideEdge) return;
			if (p.y < o.minY - besideEdge || p.y > o.maxY + besideEdge) return;
			if (boundaryDistance(o, p.x, p.y) <= besideEdge) found.push(i);
		});
		return found;
	};
	const straight = (a: Point, b: Point, besideA: readonly number[], besideB: readonly number[]): number => {
		const [x, y] = [(a.x + b.x) / 2, (a.y + b.y) / 2];
		let rate = costs.metre;
		for (const o of besideA) {
			if (!besideB.includes(o) || boundaryDistance(obstacles[o]!, x, y) > besideEdge) continue;
			rate = costs.alongEdge;
			break;
		}
		const length = Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
		return length * rate + (waters.length === 0 ? 0 : costs.nearWater * lengthNearWater(waters, a, b));
	};

	const nodes: Node[] = [];
	obstacles.forEach((o, of) => {
		const distances = o.kind === 'water' ? [o.clearance, rules['water.clear'].figures.clear] : [o.clearance];
		for (const corner of distances.flatMap((distance) => cornersOf(o, distance + 1e-9)))
			if (inLot(corner.at) && ground.free(corner.at, -1)) nodes.push({ ...corner, of, beside: besideOf(corner.at) });
	});
	const corners = nodes.length;
	const portals = portalsOf(
		site,
		ground,
		terminals.map((t) => t.ground)
	).filter(({ from, to }) => inLot(from) && inLot(to));
	for (const { from, to } of portals)
		for (const at of [from, to]) nodes.push({ at, of: -1, before: null, after: null, beside: besideOf(at) });
	const portal = (a: number, b: number) =>
		Math.min(a, b) >= corners && Math.abs(a - b) === 1 && (Math.min(a, b) - corners) % 2 === 0
			? portals[(Math.min(a, b) - corners) >> 1]!
			: null;

	const serves = supporting(nodes);
	const xs = Float64Array.from(nodes, (node) => node.at.x);
	const ys = Float64Array.from(nodes, (node) => node.at.y);
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
		const x = xs[i]!;
		const y = ys[i]!;
		for (let j = i + 1; j < nodes.length; j++) {
			const dx = xs[j]! - x;
			const dy = ys[j]! - y;
			if (!serves(i, dx, dy) || !serves(j, dx, dy)) continue;
			const a = nodes[i]!;
			const b = nodes[j]!;
			if (!portal(i, j) && open(a.at, b.at, null, null, -1)) join(i, j, straight(a.at, b.at, a.beside, b.beside));
		}
	}

	const beside = terminals.map((t) => besideOf(t.ground));
	const exits = new Gathered();
	terminals.forEach((t, k) => {
		if (t.within) return;
		for (let i = 0; i < nodes.length; i++) {
			const node = nodes[i]!;
			// From inside an obstacle's clearance the way to its corner leads outwards and looks as if it cut in.
			const close = node.of >= 0 && t.stand[node.of]! < ground.clearance[node.of]!;
			if (!close && !serves(i, xs[i]! - t.ground.x, ys[i]! - t.ground.y)) continue;
			if (open(t.ground, node.at, t.stand, null, -1))
				exits.add(k, i, straight(t.ground, node.at, beside[k]!, node.beside));
		}
	});
	const direct = (i: number, j: number): number => {
		const [a, b] = [terminals[i]!, terminals[j]!];
		if (a.within || b.within || !open(a.ground, b.ground, a.stand, b.stand, -1)) return Infinity;
		return straight(a.ground, b.ground, beside[i]!, beside[j]!);
	};
	return { nodes, links: seen.links(nodes.length), portal, exits: exits.links(terminals.length), direct };
}
