/** Which thing a tap means: what stands at a point before lines, those before what one stands in, the smaller before the larger. */
import { distance, distanceToPolygon, nearestOnLine, polygonArea, type Point } from '../../domain/shared/geometry';
import type { Plan } from '../../domain/plan';
import type { DrawnThing, ThingKind } from '../things/types';

/** What stands at a point, however far it reaches: a tap means its middle. */
const spots: ReadonlySet<ThingKind> = new Set([
	'fixture',
	'transformer',
	'receptacle',
	'sensor',
	'light',
	'number',
	'tree'
]);
/** Lines without a breadth that one could stand on. */
const thin: ReadonlySet<ThingKind> = new Set(['run', 'wall', 'opening']);

/** Metres from a point to the edge of a thing; 0 on it. */
export function distanceToThing(thing: DrawnThing, p: Point): number {
	const { line, at, reach, closed } = thing;
	if (line && line.length > 0) {
		if (closed && line.length > 2) return Math.max(0, distanceToPolygon(p, line) - reach);
		return Math.max(0, (nearestOnLine(p, line)?.distance ?? Infinity) - reach);
	}
	return at ? Math.max(0, distance(at, p) - reach) : Infinity;
}
/** Square metres, about. */
function sizeOf({ line, closed, reach }: DrawnThing): number {
	if (!line || line.length < 2) return Math.PI * reach * reach;
	if (closed) return polygonArea(line);
	return line.slice(1).reduce((sum, p, k) => sum + distance(line[k]!, p), 0) * 2 * reach;
}

interface Candidate {
	thing: DrawnThing;
	/** Lower goes first; `order` within. */
	rank: number;
	order: number;
}
/** How a tap at `p` reads a thing; null when it does not mean it. `reach` in metres. */
function candidate(thing: DrawnThing, p: Point, reach: number): Candidate[] {
	if (spots.has(thing.kind) && thing.at) {
		const off = distance(thing.at, p);
		if (off <= reach) return [{ thing, rank: 0, order: off }];
		// Under its crown or in its light, beside the trunk.
		return thing.kind === 'tree' && off <= thing.reach ? [{ thing, rank: 2, order: sizeOf(thing) }] : [];
	}
	const off = distanceToThing(thing, p);
	if (thin.has(thing.kind)) return off <= reach / 2 ? [{ thing, rank: 1, order: off }] : [];
	if (off <= 1e-9) return [{ thing, rank: 2, order: sizeOf(thing) }];
	return off <= reach ? [{ thing, rank: 3, order: off }] : [];
}

/** The thing that a tap at `p` means, within `reach` metres; null beside all of them. Of equals the first. */
export function thingAt(things: readonly DrawnThing[], p: Point, reach: number): DrawnThing | null {
	const found = things.flatMap((thing) => candidate(thing, p, reach));
	const first = found.reduce<Candidate | null>(
		(best, one) => (best && (best.rank < one.rank || (best.rank === one.rank && best.order <= one.order)) ? best : one),
		null
	);
	return first?.thing ?? null;
}

/** Index in `handles` of the handle nearest to `p` within `reach` metres; null when there is none. */
export function handleAt({ handles }: Pick<DrawnThing, 'handles'>, p: Point, reach: number): number | null {
	let best: number | null = null;
	let least = reach;
	for (const { index, at } of handles) {
		const off = distance(at, p);
		if (off > least || (best !== null && off >= least)) continue;
		best = index;
		least = off;
	}
	return best;
}

/** The fixtures of a plan as things, for a drawing that was given none. They stay where they are. */
export const fixtureThings = ({ fixtures }: Pick<Plan, 'fixtures'>): DrawnThing[] =>
	fixtures.map(({ id, label, at }) => ({
		key: `fixture/${id}`,
		kind: 'fixture',
		id,
		label,
		kindWord: 'Light',
		name: label,
		said: label,
		at,
		line: null,
		closed: false,
		reach: 0,
		fromEdges: [],
		neighbours: [],
		handles: []
	}));
