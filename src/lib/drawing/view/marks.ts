/** What is drawn over the drawing while something is pointed at: lines in hand, what is dragged, live measures. Metres. */
import { offsetLine, type Line, type Point } from '../../domain/shared/geometry';
import { formatLength } from '../../domain/shared/units';
import type { Units } from '../../domain/yard';
import type { DimensionMark } from '../marks';
import { circlePath, closedPath, openPath, shifted } from '../path';
import type { DrawnThing } from '../things/types';
import type { Ghost, Grab } from './types';
import type { Measure } from './measure';

/** Path data of a line in hand: its line and, where it has a breadth, its edges. */
export function ghostPaths({ line, closed, reach }: Ghost): { line: string; edges: string } {
	if (line.length === 0) return { line: '', edges: '' };
	if (line.length === 1) return { line: '', edges: reach > 0 ? circlePath(line[0]!, reach) : '' };
	const edges = reach > 0 && !closed ? openPath(offsetLine(line, reach)) + openPath(offsetLine(line, -reach)) : '';
	return { line: closed ? closedPath(line) : openPath(line), edges };
}

/** Where the points of a thing come to when a handle is dragged to `to`; null for the whole of it, told by its first handle. */
export function draggedGhost(thing: DrawnThing, handle: Grab, to: Point): Ghost {
	const { line, closed, reach, at } = thing;
	const first = thing.handles[0]?.at ?? at ?? to;
	if (!line || line.length === 0) return { line: [to], closed: false, reach };
	if (handle === null) return { line: line.map((p) => shifted(p, to.x - first.x, to.y - first.y)), closed, reach };
	// A curve has more points than handles: its own way through them comes with the plan.
	const points = thing.handles.length === line.length ? line : thing.handles.map((one) => one.at);
	return { line: points.map((p, k) => (thing.handles[k]?.index === handle ? to : p)), closed, reach };
}
/** Points that the dragged one follows, for right angles: of an outline round its corner. */
export function pointsBefore(thing: DrawnThing, handle: Grab): Line {
	if (handle === null || thing.handles.length < 2) return [];
	const at = thing.handles.findIndex(({ index }) => index === handle);
	const points = thing.handles.map((one) => one.at);
	return thing.closed ? [...points.slice(at + 1), ...points.slice(0, at)] : points.slice(0, at);
}

const dimension = (key: string, from: Point, to: Point, units: Units): DimensionMark[] => {
	const length = Math.hypot(to.x - from.x, to.y - from.y);
	return length > 0.005 ? [{ kind: 'dimension', key, from, to, text: formatLength(length, units), witness: [] }] : [];
};
/** Of the stretch from the last point set to the pointer: beside it, so that it can be seen. `px`: metres to a pixel. */
export function stretchDimension(from: Point, to: Point, units: Units, px: number): DimensionMark[] {
	const length = Math.hypot(to.x - from.x, to.y - from.y);
	if (!(length > 0.005)) return [];
	const [dx, dy] = [(-(to.y - from.y) / length) * 16 * px, ((to.x - from.x) / length) * 16 * px];
	return dimension('stretch', shifted(from, dx, dy), shifted(to, dx, dy), units).map((mark) => ({
		...mark,
		witness: [
			[from, mark.from],
			[to, mark.to]
		]
	}));
}
/** Along the front from its left corner, and out from it, as the tape measures. */
export function placeDimensions(at: Point, units: Units, px: number): DimensionMark[] {
	const foot = { x: at.x, y: 0 };
	const back = -20 * px;
	return [...dimension('along', { x: 0, y: back }, { x: at.x, y: back }, units), ...dimension('out', foot, at, units)];
}
/** The straight measure, and edge to edge where it is another. */
export function measureDimensions({ from, to, nearest }: Measure, units: Units, px: number): DimensionMark[] {
	const straight = dimension('straight', from.at, to.at, units);
	if (!nearest || !(nearest.distance > 0)) return straight;
	const isSame =
		Math.hypot(nearest.from.x - from.at.x, nearest.from.y - from.at.y) < px &&
		Math.hypot(nearest.to.x - to.at.x, nearest.to.y - to.at.y) < px;
	if (isSame) return straight;
	// The two lie close to each other: the figures stand apart, each on its own line.
	return [
		...straight.map((mark) => ({ ...mark, figureAt: 0.28 })),
		...stretchDimension(nearest.from, nearest.to, units, px).map((mark) => ({ ...mark, figureAt: 0.72 }))
	];
}
