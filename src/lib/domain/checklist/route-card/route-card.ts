import { sizeName } from '../../circuit';
import type { Finding } from '../../shared/findings';
import { rules } from '../../shared/rules';
import type { Run, RunSegment, Supply } from '../../cable';
import type { Fixture } from '../../placement';
import { pullsOf, type Pull } from '../../shopping';
import type { Site } from '../../site';
import { cautionsOf } from './cautions';
import { landmarksOf } from './landmarks';
import { legOf, type Walk } from './leg';
import { Points } from './points';
import { stretchesOf, type Stretch } from './stops';
import { Trenches } from './trenches';
import type { RouteCard, RouteLeg, RouteLine } from './types';

const sum = <T>(list: readonly T[], of: (one: T) => number): number => list.reduce((total, one) => total + of(one), 0);

/** The stretches of a segment the way it is walked. */
function walked(segment: RunSegment, from: string, { landmarks, trenches }: Walk): Stretch[] {
	const backwards = segment.from !== from;
	const told = segment.path.length >= 2 ? segment.path : [...segment.path, ...segment.path];
	const path = backwards ? told.toReversed() : told;
	const crossings = backwards ? segment.crossings.toReversed() : segment.crossings;
	return stretchesOf(path, crossings, landmarks, (part) => trenches.holding(part));
}
function legsOf(pull: Pull, run: Run, points: Points, walk: Walk): RouteLeg[] {
	return pull.legs.flatMap(({ segment, from, to }) => {
		const stretches = walked(run.segments[segment]!, from, walk);
		let at = points.node(from, stretches[0]!.path[0]!);
		return stretches.map((stretch, i) => {
			const end = stretch.path.at(-1)!;
			const crosses = stretch.crossing !== null || stretches[i + 1]?.crossing;
			const next = i + 1 === stretches.length ? points.node(to, end) : points.stop(end, crosses ? 'crossing' : 'bend');
			const leg = legOf(stretch, at, next, walk);
			at = next;
			return leg;
		});
	});
}
function lineOf(pull: Pull, isMain: boolean, run: Run, points: Points, walk: Walk): RouteLine {
	const legs = legsOf(pull, run, points, walk);
	const start = legs[0]!.from;
	const from =
		start.kind === 'transformer' ? 'the transformer' : start.kind === 'hub' ? `the hub ${start.label}` : start.label;
	return {
		title: isMain
			? `Main line, ${from} to ${legs.at(-1)!.to.label}`
			: `Branch from ${from} to ${legs.at(-1)!.to.label}`,
		ground: sum(legs, (leg) => leg.length),
		laid: sum(pull.legs, (leg) => leg.length),
		legs
	};
}
function cardOf(run: Run, supply: Supply | null, fixtures: ReadonlyMap<string, Fixture>, walk: Walk): RouteCard {
	const points = new Points(run, fixtures, walk.landmarks, walk.site);
	const lines = pullsOf(run).map((pull, i) => lineOf(pull, i === 0, run, points, walk));
	const ground = sum(lines, (line) => line.ground);
	const laid = sum(lines, (line) => line.laid);
	const climbs = run.segments.filter(({ from }) => from === run.nodes[0]?.id).length;
	const rise = supply ? climbs * (supply.mountHeight + rules['cable.depth'].figures.lawn) : 0;
	return {
		run: run.id,
		name: run.name,
		cable: sizeName(run.cable),
		ground,
		laid,
		rise,
		slack: laid - ground - rise,
		lines,
		cautions: cautionsOf(lines, walk.site),
		points: points.all
	};
}
/** The findings that say more about a card: those of its crossings, where practice and table part ways. */
export function findingsOf(card: RouteCard, findings: readonly Finding[]): Finding[] {
	const legs = card.lines.flatMap((line) => line.legs);
	return findings.filter(({ code, about }) =>
		legs.some(({ findings: codes, crossing }) => crossing && crossing.strip === about?.id && codes.includes(code))
	);
}
/**
 * The route cards of all runs, in their order: what one cable has dug or crossed, the next one finds done. Each: the main
 * line from the transformer, then the branches in the order in which one meets their joints; each stretch with its way in
 * the words of someone with a tape, its length (metres over the ground), depth and protection.
 */
export function routeCards(
	site: Site,
	fixtures: readonly Fixture[],
	runs: readonly Run[],
	supply: Supply | null
): RouteCard[] {
	const byId = new Map(fixtures.map((fixture) => [fixture.id, fixture]));
	const landmarks = landmarksOf(site);
	const trenches = new Trenches();
	return runs.map((run) => cardOf(run, supply, byId, { run: run.name, landmarks, trenches, site }));
}
