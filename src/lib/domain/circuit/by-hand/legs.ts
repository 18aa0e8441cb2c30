/** A run read outwards from its supply. */
import { rootTree } from '../tree';
import { tidy } from './figures';
import type { HandRun, LampKind } from './types';

export type ByKind = Record<LampKind, number>;
/** A segment, and what passes through it to the lamps beyond. */
export interface Leg {
	/** Nodes, `from` nearer the supply. */
	from: number;
	to: number;
	metres: number;
	/** Marked volt-amperes of the lamps beyond. */
	voltAmps: ByKind;
	/** Their amperes in the plan; null where it has no solution. */
	planAmps: ByKind | null;
}
const none = (): ByKind => ({ led: 0, halogen: 0 });
const add = (sum: ByKind, more: ByKind): void => {
	sum.led += more.led;
	sum.halogen += more.halogen;
};

/** Branch by branch, each leg after the one that leads to it. Null where the run is no tree: a ring, or a part cut off. */
export function legsOf({ nodes, segments }: HandRun): Leg[] | null {
	if (segments.length !== nodes.length - 1) return null;
	const tree = rootTree({
		sourceVolts: 0,
		sourceOhms: 0,
		nodes: nodes.length,
		segments: segments.map(({ from, to }) => ({ from, to, ohms: 0 })),
		loads: []
	});
	if (tree.reached < nodes.length) return null;
	const after: number[][] = nodes.map(() => []);
	for (let p = tree.reached - 1; p > 0; p--) after[tree.order[tree.parent[p]!]!]!.push(p);
	const legs: Leg[] = [];
	const waiting = [...after[0]!];
	for (let p = waiting.pop(); p !== undefined; p = waiting.pop()) {
		const to = tree.order[p]!;
		const { metres } = segments[tree.via[p]!]!;
		legs.push({ from: tree.order[tree.parent[p]!]!, to, metres, voltAmps: none(), planAmps: none() });
		waiting.push(...after[to]!);
	}
	gather(legs, nodes, planAmpsInto(nodes.length, segments, tree));
	return legs;
}

/** The plan's amperes into each node from the supply's side; null where it has no solution. */
function planAmpsInto(
	count: number,
	segments: HandRun['segments'],
	{ order, parent, via }: ReturnType<typeof rootTree>
): number[] | null {
	const into = Array.from({ length: count }, () => 0);
	for (let p = 1; p < count; p++) {
		const { from, amps } = segments[via[p]!]!;
		if (amps === null) return null;
		into[order[p]!] = from === order[parent[p]!] ? amps : -amps;
	}
	return into;
}

/** Sums what hangs beyond each leg, tips first. */
function gather(legs: Leg[], nodes: HandRun['nodes'], into: number[] | null): void {
	const marked = nodes.map(none);
	const planned = nodes.map(none);
	const left = into?.slice();
	if (into && left) for (const { from, to } of legs) left[from]! -= into[to]!;
	for (const leg of legs.toReversed()) {
		const { lamp } = nodes[leg.to]!;
		if (lamp) {
			marked[leg.to]![lamp.kind] += lamp.voltAmps;
			planned[leg.to]![lamp.kind] += left?.[leg.to] ?? 0;
		}
		leg.voltAmps = marked[leg.to]!;
		leg.planAmps = into ? planned[leg.to]! : null;
		add(marked[leg.from]!, leg.voltAmps);
		add(planned[leg.from]!, planned[leg.to]!);
	}
}

/** The legs that lead from the supply to a node. */
export function wayTo(node: number, legs: readonly Leg[]): Leg[] {
	const way: Leg[] = [];
	let at = node;
	for (const leg of legs.toReversed()) {
		if (leg.to !== at) continue;
		way.unshift(leg);
		at = leg.from;
	}
	return way;
}
export const metresOf = (way: readonly Leg[]): number => way.reduce((sum, { metres }) => sum + metres, 0);
/** Without the last bits of the additions, so that it is the sum of the marked figures. */
export const total = ({ led, halogen }: ByKind): number => tidy(led + halogen);
