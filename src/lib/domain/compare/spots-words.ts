/** Places of the transformer in words. */
import type { Cabling } from '../cable';
import { distance, nearestOnSegment, type Point } from '../shared/geometry';
import { formatLength, type UnitSystem } from '../shared/units';
import type { Site } from '../site';
import type { SpotFigures } from './spots-types';

/** A wall further off than this is not the one it hangs on, metres. */
const onWall = 0.15;
/** Differences smaller than this are none, metres. */
const noDifference = 0.15;

/** Where it hangs: on which wall and how far along it, as seen from before that wall; a post by its distance from the house front. */
export function spotPlace(site: Site, { at, on }: { at: Point; on: 'wall' | 'post' }): string {
	const length = (metres: number) => formatLength(metres, site.units);
	const walls = site.walls.filter((wall) => wall.length > 0 && on === 'wall');
	const near = walls
		.map((wall) => ({ wall, ...nearestOnSegment(at, wall.from, wall.to) }))
		.filter(({ distance: off }) => off < onWall)
		.reduce<{ wall: Site['walls'][number]; distance: number; point: Point } | null>(
			(best, one) => (best && best.distance <= one.distance ? best : one),
			null
		);
	if (near)
		return `the ${near.wall.name.replace(/^the /, '')}, ${length(distance(near.point, near.wall.from))} from its left end`;
	return `a post, ${length(at.x)} along, ${length(at.y)} out`;
}

const listed = (parts: readonly string[]): string =>
	parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)!}`;

const comparedTo = (difference: number, more: string, less: string): string => (difference > 0 ? more : less);

function lengths(spot: SpotFigures, other: SpotFigures, units: UnitSystem): string[] {
	const parts = [
		{ what: 'trench', difference: spot.trench - other.trench },
		{ what: 'cable', difference: spot.cable - other.cable }
	];
	return parts
		.filter(({ difference }) => Math.abs(difference) >= noDifference)
		.map(
			({ what, difference }) =>
				`${formatLength(Math.abs(difference), units)} ${comparedTo(difference, 'more', 'less')} ${what}`
		);
}
function crossings(spot: SpotFigures, other: SpotFigures): string[] {
	const difference = spot.crossings - other.crossings;
	const count = Math.abs(difference);
	if (count === 0) return [];
	return [`${count} ${comparedTo(difference, 'more', 'fewer')} ${count === 1 ? 'crossing' : 'crossings'} under paving`];
}

/** What tells `spot` from `other`, in sentences. `than`: what the other is called. */
export function whyWords(spot: SpotFigures, other: SpotFigures, than: string, units: UnitSystem): string {
	const parts = [...lengths(spot, other, units), ...crossings(spot, other)];
	const [first, ...rest] = listed(parts.length > 0 ? parts : ['about as much to dig and to lay']);
	const beside = parts.length > 0 ? 'than' : 'as';
	const unfed = spot.unfed - other.unfed;
	return [
		`${first!.toUpperCase()}${rest.join('')} ${beside} ${than}.`,
		...(spot.voltAmps === other.voltAmps
			? []
			: [`It takes a transformer of ${spot.voltAmps} VA in place of ${other.voltAmps} VA.`]),
		...(unfed > 0 ? [`No cable gets from here to ${unfed} ${unfed === 1 ? 'light' : 'lights'} more.`] : [])
	].join(' ');
}

/** Lights on no run. */
export const unfedOf = ({ runs }: Cabling, lights: number): number =>
	lights - runs.reduce((sum, { nodes }) => sum + nodes.filter(({ fixture }) => fixture !== null).length, 0);
