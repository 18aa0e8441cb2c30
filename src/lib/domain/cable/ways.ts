import { distance, nearestOnLine, nearestOnSegment, type Point } from '../shared/geometry';
import type { Finding } from '../shared/findings';
import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import type { Ground } from './ground';
import { deadCrossingFindings, sameSpotFindings, sodEdgeFindings } from './ground-findings';
import type { LaidWay } from './laid';
import { lengthNearWater, type Obstacle, type WaterRing } from './obstacles';
import type { SegmentCrossing } from './types';
import { listed, the } from './wording';

interface Used {
	crossing: SegmentCrossing;
	runs: string[];
	/** Metres along the centre line of the strip. */
	at: number;
}

/** Crossings of paving in use, each once, with the runs that take it. */
function crossingsUsed(site: Site, runs: readonly Pick<LaidWay, 'segments'>[]): Used[] {
	const used = new Map<string, Used>();
	runs.forEach((run, k) => {
		for (const { route } of run.segments) {
			for (const crossing of route.crossings) {
				const strip = site.strips.find((one) => one.id === crossing.strip)!;
				const middle = crossingMiddle(route.path, crossing, strip.centre);
				const key = `${crossing.strip}/${crossing.crossing ?? middle.toFixed(2)}`;
				const one = used.get(key) ?? { crossing, runs: [], at: middle };
				const name = `run ${k + 1}`;
				if (!one.runs.includes(name)) one.runs.push(name);
				used.set(key, one);
			}
		}
	});
	return [...used.values()];
}
/** Station at which a path crosses the centre line, metres from its street end. */
function crossingMiddle(path: readonly Point[], crossing: SegmentCrossing, centre: readonly Point[]): number {
	let best = { off: Infinity, at: 0 };
	for (let i = 1; i < path.length; i++) {
		const [a, b] = [path[i - 1]!, path[i]!];
		if (Math.abs(distance(a, b) - crossing.length) > 1e-6) continue;
		const near = nearestOnLine({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, centre);
		if (near && near.distance < best.off) best = { off: near.distance, at: near.at };
	}
	return best.at;
}

function crossingFindings(site: Site, runs: readonly Pick<LaidWay, 'segments'>[]): Finding[] {
	const length = (metres: number) => formatLength(metres, site.units);
	const { lawn, drive } = rules['cable.depth'].figures;
	return crossingsUsed(site, runs).flatMap(({ crossing, runs: names, at }): Finding[] => {
		const strip = site.strips.find((one) => one.id === crossing.strip)!;
		const about = { kind: strip.kind, id: strip.id };
		const where = `${the(strip.name)}, ${length(at)} from its street end`;
		const found: Finding[] = [];
		if (crossing.crossing === null) {
			const message = `A bore under ${where}, is needed for ${listed(names)}: ${length(crossing.length)} from edge to edge, with a conduit in it. If a sleeve or an expansion joint is there, tell the plan and it will use that.`;
			found.push({ code: 'cable.bore-needed', rank: 'look', message, about, rule: 'cable.crossing' });
		}
		if (crossing.kind === 'joint') {
			const least = strip.kind === 'drive' ? drive : lawn;
			const message = `${listed(names).replace(/^r/, 'R')} cross${names.length > 1 ? '' : 'es'} ${where}, in an expansion joint. That is common practice, but shallower than the ${length(least)} that cable laid straight in the ground needs by the table. Ask the authority that enforces the code whether it is accepted.`;
			found.push({ code: 'cable.joint-shallow', rank: 'look', message, about, rule: 'cable.crossing' });
		} else if (strip.kind === 'drive') {
			const message = `Under ${where}, the cable lies ${length(drive)} down or deeper, unless its own instructions allow less. Check how deep the ${crossing.kind} is.`;
			found.push({ code: 'cable.drive-depth', rank: 'note', message, about, rule: 'cable.depth' });
		}
		return found;
	});
}

/** One note for all trees whose roots a cable meets. */
function rootFindings(site: Site, runs: readonly Pick<LaidWay, 'segments'>[]): Finding[] {
	const length = (metres: number) => formatLength(metres, site.units);
	const segments = runs.flatMap((run) => run.segments);
	const met = site.trees.filter((tree) =>
		segments.some(({ route }) =>
			route.path.some((p, i) => i > 0 && nearestOnSegment(tree.at, route.path[i - 1]!, p).distance < tree.rootRadius)
		)
	);
	if (met.length === 0) return [];
	const trees = met.map((tree) => `${length(tree.rootRadius)} of ${the(tree.name)}`);
	const message = `Cable passes among tree roots. Dig by hand within ${listed(trees)}, and go round roots thicker than ${length(rules['tree.roots'].figures.keepRoot)}.`;
	const about = met.length === 1 ? { kind: 'tree', id: met[0]!.id } : null;
	return [{ code: 'cable.roots', rank: 'note', message, about, rule: 'tree.roots' }];
}

function waterFindings(
	site: Site,
	runs: readonly Pick<LaidWay, 'segments'>[],
	waters: readonly Obstacle[],
	rings: readonly WaterRing[]
): Finding[] {
	const clear = rules['water.clear'].figures.clear;
	return waters.flatMap((water, w): Finding[] => {
		const near = (a: Point, b: Point) => lengthNearWater([rings[w]!], a, b);
		const names = runs.flatMap((run, k) =>
			run.segments.some(({ route }) => route.path.some((p, i) => i > 0 && near(route.path[i - 1]!, p) > 0.01))
				? [`run ${k + 1}`]
				: []
		);
		if (names.length === 0) return [];
		const message = `${listed(names).replace(/^r/, 'R')} pass${names.length > 1 ? '' : 'es'} within ${formatLength(clear, site.units)} of ${the(water.name)}. Ask a licensed electrician whether the code in force allows cable there.`;
		return [
			{ code: 'cable.near-water', rank: 'look', message, about: { kind: 'water', id: water.id }, rule: 'water.clear' }
		];
	});
}

function wallFindings(
	site: Site,
	runs: readonly Pick<LaidWay, 'segments'>[],
	passes: (wall: Obstacle, a: Point, b: Point) => boolean,
	walls: readonly Obstacle[]
): Finding[] {
	return walls.flatMap((wall): Finding[] => {
		const crossed = runs.some((run) =>
			run.segments.some(({ route }) => route.path.some((p, i) => i > 0 && passes(wall, route.path[i - 1]!, p)))
		);
		if (!crossed) return [];
		const message = `Cable has to pass under ${the(wall.name)}: there is no way round it. Look for a gap or a drain hole, or tunnel under its footing by hand.`;
		return [{ code: 'cable.under-wall', rank: 'look', message, about: { kind: 'wall', id: wall.id }, rule: null }];
	});
}

export interface WaysSurvey {
	waters: readonly Obstacle[];
	waterRings: readonly WaterRing[];
	/** Garden walls that could not be gone round, and whether a line passes under one. */
	walls: readonly Obstacle[];
	passes: (wall: Obstacle, a: Point, b: Point) => boolean;
	/** What the ways were sought in, and what they lead to. */
	ground: Ground;
	fixtures: readonly Fixture[];
}
/** What is to be said of the ways that the cables take. */
export const wayFindings = (site: Site, runs: readonly Pick<LaidWay, 'segments'>[], survey: WaysSurvey): Finding[] => [
	...sameSpotFindings(survey.fixtures),
	...deadCrossingFindings(site, survey.ground),
	...crossingFindings(site, runs),
	...waterFindings(site, runs, survey.waters, survey.waterRings),
	...wallFindings(site, runs, survey.passes, survey.walls),
	...rootFindings(site, runs),
	...sodEdgeFindings(site, survey.ground, runs)
];
