import type { Cabling, Run, RunNode, RunSegment } from '../cable';
import type { Dusk } from '../dusk';
import type { Fixture } from '../placement';
import type { Shopping } from '../shopping';
import type { Site } from '../site';

/** What the steps are written from. */
export interface Job {
	site: Site;
	/** In the order of the work: along each run from the transformer, then those on no run. */
	fixtures: Fixture[];
	cabling: Cabling;
	dusk: Dusk;
	shopping: Shopping;
	/** A node as written on the drawing. */
	nodeName(run: Run, id: string): string;
	nodeOf(fixture: Fixture): RunNode | null;
	halogen: boolean;
}
/**
 * Nodes and segments of a run the way one walks it: straight on where the cable goes on, back to the tee for each
 * branch. Segments that hang on nothing come last.
 */
export function walked(run: Run): { nodes: RunNode[]; segments: RunSegment[] } {
	const byId = new Map(run.nodes.map((node) => [node.id, node]));
	const onward = new Map<string, RunSegment[]>();
	for (const segment of run.segments) onward.set(segment.from, [...(onward.get(segment.from) ?? []), segment]);
	const seen = new Set<string>();
	const nodes: RunNode[] = [];
	const segments: RunSegment[] = [];
	const arrive = (id: string): void => {
		const node = byId.get(id);
		if (node) nodes.push(node);
		seen.add(id);
		stack.push(...(onward.get(id) ?? []).toReversed());
	};
	const stack: RunSegment[] = [];
	if (run.nodes[0]) arrive(run.nodes[0].id);
	for (let next = stack.pop(); next; next = stack.pop()) {
		segments.push(next);
		if (!seen.has(next.to)) arrive(next.to);
	}
	const walkedSegments = new Set(segments);
	return {
		nodes: [...nodes, ...run.nodes.filter((node) => !seen.has(node.id))],
		segments: [...segments, ...run.segments.filter((segment) => !walkedSegments.has(segment))]
	};
}
export function makeJob(
	site: Site,
	fixtures: readonly Fixture[],
	cabling: Cabling,
	dusk: Dusk,
	shopping: Shopping
): Job {
	const byId = new Map(fixtures.map((fixture) => [fixture.id, fixture]));
	const nodes = new Map<string, RunNode>();
	for (const run of cabling.runs) for (const node of walked(run).nodes) if (node.fixture) nodes.set(node.fixture, node);
	const fed = [...nodes.keys()].flatMap((id) => byId.get(id) ?? []);
	const order = [...fed, ...fixtures.filter((fixture) => !nodes.has(fixture.id))];
	return {
		site,
		fixtures: order,
		cabling,
		dusk,
		shopping,
		nodeName: (run, id) => {
			const index = run.nodes.findIndex((node) => node.id === id);
			if (index === 0) return 'the transformer';
			const fixture = run.nodes[index]?.fixture;
			return fixture ? (byId.get(fixture)?.label ?? fixture) : 'the hub';
		},
		nodeOf: (fixture) => nodes.get(fixture.id) ?? null,
		halogen: fixtures.some((fixture) => fixture.lamp.kind === 'halogen')
	};
}
