/** Changes to the shape of a run that might cure it. */
import { solve } from './solve';
import { rootTree } from './tree';
import type { Load, RunShape } from './types';

/** The part of a tree that feeds `loads`, nodes numbered afresh in the order of the walk from the supply. */
function branchFor(shape: RunShape, loads: RunShape['loads'], id: string, laying: number): RunShape {
	const network = {
		sourceVolts: 1,
		sourceOhms: 0,
		nodes: shape.nodes,
		segments: shape.segments.map(({ from, to }) => ({ from, to, ohms: 0 })),
		loads: []
	};
	const { order, position, parent, via } = rootTree(network);
	const needed = new Uint8Array(shape.nodes);
	needed[0] = 1;
	for (const { node } of loads) for (let p = position[node]!; p > 0 && !needed[p]; p = parent[p]!) needed[p] = 1;
	const number = new Int32Array(shape.nodes);
	let nodes = 1;
	const segments: RunShape['segments'] = [];
	for (let p = 1; p < order.length; p++) {
		if (!needed[p]) continue;
		number[p] = nodes++;
		segments.push({ from: number[parent[p]!]!, to: number[p]!, metres: shape.segments[via[p]!]!.metres });
	}
	const feed = shape.feed && { feed: shape.feed };
	return {
		id,
		...feed,
		laying,
		nodes,
		segments,
		loads: loads.map((l) => ({ ...l, node: number[position[l.node]!]! }))
	};
}

/** Position of each node along a walk that finishes one branch before the next, without recursion. */
function branchOrder(shape: RunShape): Float64Array {
	const near: number[][] = Array.from({ length: shape.nodes }, () => []);
	for (const { from, to } of shape.segments) {
		near[from]!.push(to);
		near[to]!.push(from);
	}
	const at = new Float64Array(shape.nodes).fill(-1);
	const stack = [0];
	for (let count = 0; stack.length > 0;) {
		const node = stack.pop()!;
		if (at[node]! >= 0) continue;
		at[node] = count++;
		stack.push(...near[node]!.filter((n) => at[n]! < 0).toReversed());
	}
	return at;
}

/**
 * Two runs for one: the lamps met first on the walk from the supply, up to half the volt-amperes, on the one, the rest on a
 * cable of their own along the same trench, whose cost stays with the first. Null for a run with rings, without a solution to measure by, or of one lamp.
 */
export function splitRun(shape: RunShape): [RunShape, RunShape] | null {
	if (shape.loads.length < 2 || shape.segments.length !== shape.nodes - 1) return null;
	const check = solve({
		sourceVolts: 1,
		sourceOhms: 0,
		nodes: shape.nodes,
		segments: shape.segments.map(({ from, to, metres }) => ({ from, to, ohms: metres })),
		loads: []
	});
	if (!check.ok) return null;
	const at = branchOrder(shape);
	const loads = shape.loads.toSorted((a, b) => at[a.node]! - at[b.node]!);
	const weight = (load: Load) => (load.kind === 'led' ? load.voltAmps : load.kind === 'halogen' ? load.watts : 1);
	const half = loads.reduce((sum, { load }) => sum + weight(load), 0) / 2;
	let sum = 0;
	let cut = 0;
	while (cut < loads.length - 1 && (cut === 0 || sum + weight(loads[cut]!.load) <= half))
		sum += weight(loads[cut++]!.load);
	return [
		branchFor(shape, loads.slice(0, cut), shape.id, shape.laying ?? 0),
		branchFor(shape, loads.slice(cut), `${shape.id}'`, 0)
	];
}

/**
 * The run with LED lamps for its halogen ones: a quarter of the watts in volt-amperes (a fifth in watts at power factor 0.8)
 * and 9 to 15 V for a 12 V lamp, as the pairs in the catalogue; from memory. Null where there is no halogen lamp.
 */
export function withLeds(shape: RunShape): RunShape | null {
	if (!shape.loads.some(({ load }) => load.kind === 'halogen')) return null;
	const swap = (load: Load): Load =>
		load.kind === 'halogen'
			? { kind: 'led', voltAmps: load.watts / 4, minVolts: load.ratedVolts * 0.75, maxVolts: load.ratedVolts * 1.25 }
			: load;
	return { ...shape, loads: shape.loads.map((l) => ({ ...l, load: swap(l.load) })) };
}
