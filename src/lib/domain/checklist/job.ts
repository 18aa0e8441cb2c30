import type { Cabling, Run, RunNode, RunSegment } from '../cable';
import type { Dusk } from '../dusk';
import type { Fixture } from '../placement';
import { pullsOf, type Shopping } from '../shopping';
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
 * Nodes and segments of a run the way one walks it, as on its route card: the main line, then the branches in the order in
 * which one meets their joints. Nodes that no cable reaches come last.
 */
export function walked(run: Run): { nodes: RunNode[]; segments: RunSegment[] } {
	const legs = pullsOf(run).flatMap((pull) => pull.legs);
	const order = new Set([...run.nodes.slice(0, 1).map(({ id }) => id), ...legs.flatMap(({ from, to }) => [from, to])]);
	const byId = new Map(run.nodes.map((node) => [node.id, node]));
	return {
		nodes: [...[...order].flatMap((id) => byId.get(id) ?? []), ...run.nodes.filter(({ id }) => !order.has(id))],
		segments: legs.map(({ segment }) => run.segments[segment]!)
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
