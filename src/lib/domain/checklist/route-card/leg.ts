import { lineLength, type Line } from '../../shared/geometry';
import { formatLength } from '../../shared/units';
import { placedCrossings } from '../../cable';
import type { Site } from '../../site';
import { sentence } from '../words';
import { headingOf } from './heading';
import { alongEdge, type Landmarks } from './landmarks';
import { inOpenGround, rootsOn, underPaving } from './protection';
import type { Stretch } from './stops';
import type { Trenches } from './trenches';
import type { LegCrossing, RouteLeg, RoutePoint } from './types';

/** A light that stands this near to the place before has a cable of nothing but slack, metres. */
const besideIt = 0.005;

const crossingWords = ({ kind, under, shared }: LegCrossing): string => {
	if (shared) return `across ${under}, the way already made`;
	if (kind === 'sleeve') return `across ${under} in the sleeve`;
	return kind === 'joint' ? `across ${under} in the expansion joint` : `under ${under} in a bore`;
};
/** Which way in words, and what they say already of the place where it ends. */
function wayOf(path: Line, crossing: LegCrossing | null, { landmarks, site }: Walk): { way: string; says: string[] } {
	const heading = headingOf(path, site);
	if (crossing) {
		const way = sentence([crossingWords(crossing), heading].filter(Boolean).join(', '));
		return { way, says: [`the edge of ${crossing.under}`] };
	}
	if (lineLength(path) < besideIt) return { way: 'On the same spot', says: [] };
	const edge = alongEdge(landmarks, path);
	return { way: sentence([heading, edge?.words ?? ''].filter(Boolean).join(' ')), says: edge ? [edge.from] : [] };
}

export interface Walk {
	/** Name of the run. */
	run: string;
	landmarks: Landmarks;
	trenches: Trenches;
	site: Site;
}
/** One stretch from point to point; digs its trench. */
export function legOf(stretch: Stretch, from: RoutePoint, to: RoutePoint, walk: Walk): RouteLeg {
	const { run, trenches, site } = walk;
	const { path, crossing: told } = stretch;
	const length = lineLength(path);
	const sharedWith = length < besideIt ? null : trenches.holding(path);
	const shared = told !== null && trenches.take(placedCrossings(path, [told])[0]!.place);
	const ground = told ? underPaving(told, shared, site) : inOpenGround(site);
	const roots = told ? [] : rootsOn(path, site);
	trenches.dig(run, path);
	const { way, says } = wayOf(path, ground.crossing, walk);
	const far = length < besideIt ? '' : `, ${formatLength(length, site.units)}`;
	const near = says.some((edge) => to.near.endsWith(edge)) ? '' : to.near;
	return {
		from,
		to,
		length,
		path,
		way,
		near,
		words: `${way}${far}, to ${to.label}${near === '' ? '' : `, ${near}`}.`,
		...ground,
		roots,
		sharedWith,
		findings: [...ground.findings, ...(roots.length > 0 ? ['cable.roots'] : [])]
	};
}

/** What lies in the ground on a leg, and whose trench it is. */
export function groundOf({ sharedWith, crossing, protection, roots }: RouteLeg, card: { name: string }): string {
	const whose = sharedWith === card.name ? 'the trench that is open' : `the trench of ${sharedWith}`;
	return [
		...(sharedWith && !crossing ? [`In ${whose}.`] : []),
		protection,
		...(roots.length > 0 ? ['By hand: roots.'] : [])
	].join(' ');
}
