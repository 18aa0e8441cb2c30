/**
 * What of the graph of ways stays the same whatever hangs or stands where: places at which ways bend, and the lines between
 * them. One ground is asked for it several times, for places of the transformer and for what is laid from the one taken.
 */
import type { Point } from '../shared/geometry';
import type { Site } from '../site';
import type { LayingCosts } from './costs';
import { makeGround, type Ground, type Terminal } from './ground';
import { bedsOf } from './lawn-edges';
import { Gathered } from './links';
import { nodesOf, type Node } from './nodes';
import { obstaclesOf, waterRings } from './obstacles';
import { Places } from './places';
import { surfaceOf } from './surface';

export interface Standing {
	nodes: readonly Node[];
	/** Lines between nodes that see each other, both ways. */
	seen: Gathered;
	/** Cost of a straight line that nothing blocks. */
	straight: (a: Point, b: Point) => number;
	/** What a terminal sees of the nodes: node and cost in turn, in the order of nodes. */
	exits: (terminal: Terminal) => readonly number[];
	/** The same for an end of a crossing. */
	sights: (end: Point) => readonly number[];
}

interface Kept {
	/** As long as the site is the same object: it is never changed. */
	grounds: Map<string, Ground>;
	standing: Map<Ground, { costs: string; standing: Standing }>;
}
const kept = new WeakMap<Site, Kept>();
function keptOf(site: Site): Kept {
	const known = kept.get(site) ?? { grounds: new Map(), standing: new Map() };
	kept.set(site, known);
	return known;
}

/** The ground of a site. `walls`: garden walls are in the way; `isFine`: as in `Ground`. */
export function groundOf(site: Site, walls: boolean, isFine = false): Ground {
	const { grounds } = keptOf(site);
	const key = `${walls} ${isFine}`;
	const ground = grounds.get(key) ?? makeGround(obstaclesOf(site, walls), isFine);
	grounds.set(key, ground);
	return ground;
}

/** Whether a point lies in the lot: a half strip (boundaries and street), so that no line within it leaves it. */
export const inLotOf =
	({ leftBoundary, rightBoundary, street }: Site) =>
	(p: Point): boolean =>
		p.y <= street && p.x >= leftBoundary && p.x <= rightBoundary;

function standingOn(site: Site, ground: Ground, costs: LayingCosts): Standing {
	const { obstacles, open } = ground;
	const { leftBoundary, rightBoundary, street } = site;
	const inLot = inLotOf(site);
	const broughtIn = (p: Point): Point =>
		inLot(p) ? p : { x: Math.min(rightBoundary, Math.max(leftBoundary, p.x)), y: Math.min(street, p.y) };
	const isFree = (p: Point) => inLot(p) && ground.free(p, -1);
	const beds = bedsOf(site, obstacles);
	const roots = site.trees.map(({ at, rootRadius }) => ({ at, radius: rootRadius }));
	const straight = surfaceOf({ obstacles, beds, roots, waters: waterRings(obstacles) }, costs);
	const around = { obstacles, beds, roots, isFree, inLot: broughtIn, isFine: ground.isFine };
	const { nodes, zones, along } = nodesOf(around, costs);
	const seen = new Gathered();
	const see = (i: number, j: number) => {
		const [a, b] = [nodes[i]!.at, nodes[j]!.at];
		if (!open(a, b, null, null, -1)) return;
		const cost = straight(a, b);
		seen.add(i, j, cost);
		seen.add(j, i, cost);
	};
	for (const [i, j] of along) see(i, j);
	const places = new Places(nodes, costs);
	for (let i = 0; i < nodes.length; i++) for (let j = i + 1; j < nodes.length; j++) if (places.join(i, j)) see(i, j);
	const exitsFrom = (t: Terminal): number[] => {
		const found: number[] = [];
		if (t.within) return found;
		const { x, y } = t.ground;
		const inside = zones.map(({ holds }) => holds(t.ground));
		for (let i = 0; i < nodes.length; i++) {
			const node = nodes[i]!;
			// From inside an obstacle's clearance, or a zone, the way to its corner leads outwards and looks as if it cut in.
			const close =
				(node.of >= 0 && t.stand[node.of]! < ground.clearance[node.of]!) || (node.zone >= 0 && inside[node.zone]!);
			if (!close && !places.serves(i, x - places.x[i]!, y - places.y[i]!)) continue;
			if (open(t.ground, node.at, t.stand, null, -1)) found.push(i, straight(t.ground, node.at));
		}
		return found;
	};
	const sightsFrom = (p: Point): number[] => {
		const found: number[] = [];
		for (let i = 0; i < nodes.length; i++) {
			const { at } = nodes[i]!;
			if (places.serves(i, p.x - at.x, p.y - at.y) && open(at, p, null, null, -1)) found.push(i, straight(at, p));
		}
		return found;
	};
	/** What is seen from a place, made once: a terminal sees by nothing else but where it stands, and whether it can be left. */
	const known = new Map<string, readonly number[]>();
	const once = (key: string, make: () => number[]): readonly number[] => {
		const own = known.get(key) ?? make();
		known.set(key, own);
		return own;
	};
	const exits = (t: Terminal) => once(`${t.within ? 'shut' : 'from'} ${t.at.x} ${t.at.y}`, () => exitsFrom(t));
	const sights = (p: Point) => once(`end ${p.x} ${p.y}`, () => sightsFrom(p));
	return { nodes, seen, straight, exits, sights };
}

/** The same for a site, a ground of it (`groundOf`, or one made by itself) and laying costs, made once. */
export function standingOf(site: Site, ground: Ground, costs: LayingCosts): Standing {
	const { standing } = keptOf(site);
	const key = JSON.stringify(costs);
	const known = standing.get(ground);
	if (known?.costs === key) return known.standing;
	const made = standingOn(site, ground, costs);
	standing.set(ground, { costs: key, standing: made });
	return made;
}
