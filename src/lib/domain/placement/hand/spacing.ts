/** How far lights that mark an edge stand from one another. */
import { distance, nearestOnLine } from '../../shared/geometry';
import type { Site } from '../../site';
import type { Fixture } from '../types';

/** The nearest light on the same edge of the same walk or drive; null for lights that mark none, or the only one. */
export function nearestOnEdge(
	site: Site,
	fixture: Fixture,
	all: readonly Fixture[]
): { fixture: Fixture; away: number } | null {
	const { kind, id } = fixture.target;
	const strip = site.strips.find((one) => one.kind === kind && one.id === id);
	if (!strip || (fixture.technique !== 'path' && fixture.technique !== 'drive')) return null;
	const sideOf = (one: Fixture) => nearestOnLine(one.at, strip.centre)?.side;
	const side = sideOf(fixture);
	let best: { fixture: Fixture; away: number } | null = null;
	for (const other of all) {
		const beside = other.target.kind === kind && other.target.id === id && other.technique === fixture.technique;
		if (!beside || other.id === fixture.id || sideOf(other) !== side) continue;
		const away = distance(other.at, fixture.at);
		if (!best || away < best.away) best = { fixture: other, away };
	}
	return best;
}
