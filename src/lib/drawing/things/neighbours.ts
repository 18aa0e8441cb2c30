/** What comes before and after a light on its cable, with the metres of cable between. */
import type { Run } from '../../domain/cable';
import type { Plan } from '../../domain/plan';
import { formatLength } from '../../domain/shared/units';
import { keyOf } from './thing';
import type { Neighbour } from './types';

const transformer = keyOf('transformer', 'transformer');

/** The next lights down the cable from a node, past bare tees and hubs, with the metres of cable laid to them. */
function next(run: Run, from: string): { node: string; cable: number }[] {
	return run.segments
		.filter((segment) => segment.from === from)
		.flatMap(({ to, length }) => {
			if (run.nodes.find(({ id }) => id === to)?.fixture) return [{ node: to, cable: length }];
			return next(run, to).map(({ node, cable }) => ({ node, cable: cable + length }));
		});
}
/** From one place on a cable to the next light on it; `from` null: the transformer. */
interface Hop {
	run: Run;
	from: string | null;
	to: string;
	cable: number;
}
function hopsOf(run: Run): Hop[] {
	const fixtureOf = new Map(run.nodes.map(({ id, fixture }) => [id, fixture]));
	return run.nodes
		.filter(({ fixture }, index) => index === 0 || fixture !== null)
		.flatMap(({ id, fixture }) =>
			next(run, id).map(({ node, cable }) => ({ run, from: fixture, to: fixtureOf.get(node)!, cable }))
		);
}
/** Neighbours by the key of a thing, what comes before first: of each light, of each run and of the transformer. */
export function neighboursOf({ runs, fixtures, site }: Plan): Map<string, Neighbour[]> {
	const labels = new Map(fixtures.map(({ id, label }) => [id, label]));
	const found = new Map<string, Neighbour[]>();
	const say = (of: string, key: string, words: string) => found.set(of, [...(found.get(of) ?? []), { key, words }]);
	const hops = runs.flatMap(hopsOf);
	const cableOf = ({ cable }: Hop) => `${formatLength(cable, site.units)} of cable`;
	for (const hop of hops) {
		const before = hop.from === null ? transformer : keyOf('fixture', hop.from);
		const who = hop.from === null ? 'The transformer' : labels.get(hop.from);
		say(keyOf('fixture', hop.to), before, `${who}, ${cableOf(hop)} back`);
	}
	for (const hop of hops) {
		const key = keyOf('fixture', hop.to);
		const who = labels.get(hop.to);
		if (hop.from !== null) say(keyOf('fixture', hop.from), key, `${who}, ${cableOf(hop)} on`);
		else {
			say(transformer, key, `${who} on ${hop.run.name}, ${cableOf(hop)} on`);
			say(keyOf('run', hop.run.id), key, `${who}, ${cableOf(hop)} from the transformer`);
		}
	}
	return found;
}
