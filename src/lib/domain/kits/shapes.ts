/** Runs of another shape than the plan's: with fewer lights, or split in two. */
import type { RunShape } from '../circuit';

interface Outward {
	/** By node: the segment that leads to it from the supply's side, and the node before it; −1 at the supply. */
	via: number[];
	before: number[];
	/** Metres of cable from the supply. */
	reach: number[];
}
/** Null where the run is no tree, or a part of it hangs on nothing. */
function outward({ nodes, segments }: RunShape): Outward | null {
	if (segments.length !== nodes - 1) return null;
	const via = Array.from({ length: nodes }, () => -1);
	const before = Array.from({ length: nodes }, () => -1);
	const reach = Array.from({ length: nodes }, () => Infinity);
	reach[0] = 0;
	const order = [0];
	for (const at of order)
		segments.forEach(({ from, to, metres }, s) => {
			const next = from === at ? to : to === at ? from : -1;
			if (next < 0 || reach[next] !== Infinity) return;
			via[next] = s;
			before[next] = at;
			reach[next] = reach[at]! + metres;
			order.push(next);
		});
	return order.length === nodes ? { via, before, reach } : null;
}

/** A run's lights, each with its metres of cable from the supply; 0 for all on a ring. */
export function reachOfLights(shape: RunShape): { id: string; reach: number }[] {
	const ways = outward(shape);
	return shape.loads.map(({ id, node }) => ({ id, reach: ways?.reach[node] ?? 0 }));
}
export const metresOf = ({ segments }: RunShape): number => segments.reduce((sum, { metres }) => sum + metres, 0);

/** The run without its other lights; its cable as it is. */
export const without = (shape: RunShape, left: ReadonlySet<string>): RunShape => ({
	...shape,
	loads: shape.loads.filter(({ id }) => !left.has(id))
});

/** The run with these lights only, and no cable that leads to none of them. Null where it is no tree. */
export function cutTo(shape: RunShape, kept: ReadonlySet<string>, id: string): RunShape | null {
	const ways = outward(shape);
	if (!ways) return null;
	const loads = shape.loads.filter((load) => kept.has(load.id));
	const stays = new Set([0]);
	for (const { node } of loads) for (let at = node; !stays.has(at); at = ways.before[at]!) stays.add(at);
	const nodes = Array.from({ length: shape.nodes }, (_, n) => n).filter((n) => stays.has(n));
	const place = new Map(nodes.map((node, k) => [node, k]));
	return {
		...shape,
		id,
		nodes: nodes.length,
		segments: nodes.slice(1).map((node) => ({
			from: place.get(ways.before[node]!)!,
			to: place.get(node)!,
			metres: shape.segments[ways.via[node]!]!.metres
		})),
		loads: loads.map((load) => ({ ...load, node: place.get(load.node)! }))
	};
}
