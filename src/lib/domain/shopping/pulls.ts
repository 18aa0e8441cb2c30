import type { Run } from '../cable';

/** One stretch of a run between two joints. */
export interface Leg {
	/** Metres, slack included. */
	length: number;
	/** Place in the run's segments. */
	segment: number;
	/** Ids of the nodes it leads from and to, the way it is walked from the supply. */
	from: string;
	to: string;
}
/** Cable laid in one go from the supply, a tee or a hub to an end: best cut from one roll, else cut at a joint. */
export interface Pull {
	run: string;
	legs: Leg[];
}
interface Way {
	segment: number;
	to: string;
	length: number;
}
function waysOf(run: Run): Map<string, Way[]> {
	const ways = new Map<string, Way[]>();
	const add = (from: string, way: Way): void => {
		const list = ways.get(from);
		if (list) list.push(way);
		else ways.set(from, [way]);
	};
	run.segments.forEach(({ from, to, length }, segment) => {
		add(from, { segment, to, length });
		add(to, { segment, to: from, length });
	});
	return ways;
}
/** Metres from each node to the farthest end beyond it, seen from the supply. */
function reachBeyond(ways: ReadonlyMap<string, Way[]>, start: string): Map<string, number> {
	const cameFrom = new Map<string, string | null>([[start, null]]);
	const order = [start];
	for (const node of order) {
		for (const way of ways.get(node) ?? []) {
			if (cameFrom.has(way.to)) continue;
			cameFrom.set(way.to, node);
			order.push(way.to);
		}
	}
	const reach = new Map<string, number>();
	for (const node of order.toReversed()) {
		const onward = (ways.get(node) ?? []).filter((way) => cameFrom.get(way.to) === node);
		reach.set(node, Math.max(0, ...onward.map((way) => way.length + (reach.get(way.to) ?? 0))));
	}
	return reach;
}
/**
 * The pulls of a run: at a tee the longest way on goes straight through, and every other way starts its own; at a hub all
 * end or start. The main line first, then the branches in the order in which one meets their joints.
 */
export function pullsOf(run: Run): Pull[] {
	const start = run.nodes[0]?.id ?? run.segments[0]?.from;
	if (start === undefined) return [];
	const ways = waysOf(run);
	const reach = reachBeyond(ways, start);
	const used = new Set<number>();
	const hubs = new Set(run.nodes.flatMap((node, i) => (i > 0 && node.fixture === null ? [node.id] : [])));
	const longestWay = (node: string): Way | undefined =>
		(ways.get(node) ?? [])
			.filter((way) => !used.has(way.segment))
			.sort((a, b) => b.length + (reach.get(b.to) ?? 0) - (a.length + (reach.get(a.to) ?? 0)))[0];
	const pulls: Pull[] = [];
	const follow = (from: string): void => {
		const legs: Leg[] = [];
		const passed: string[] = [];
		let at = from;
		for (let way = longestWay(from); way; way = hubs.has(at) ? undefined : longestWay(at)) {
			used.add(way.segment);
			legs.push({ length: way.length, segment: way.segment, from: at, to: way.to });
			passed.push(way.to);
			at = way.to;
		}
		if (legs.length === 0) return;
		pulls.push({ run: run.id, legs });
		for (const node of [from, ...passed]) follow(node);
	};
	follow(start);
	// Stretches that hang on nothing are cable all the same.
	for (const segment of run.segments) follow(segment.from);
	return pulls;
}
