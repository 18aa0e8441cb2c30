/** What a press on the board takes hold of, and where that comes to. */
import type { DrawnThing } from '../things/types';
import { distanceToThing, handleAt } from './hit';
import { pointsBefore } from './marks';
import { snapped } from './snap';
import type { SnapSources } from './snap-sources';
import type { Grab, Point, SnapSettings, Snapped } from './types';

/** px within which a press means a thing or a handle: half of the least size of a target. */
export const tapReach = 22;
/** px within which a point is drawn to something, unless a page says otherwise. */
export const snapReach = 12;

export interface Grabbed {
	thing: DrawnThing;
	handle: Grab;
	/** Metres from the press to what is held: it does not jump under the finger. */
	offset: Point;
}
/** What of the thing in hand a press at `p` (metres) takes: a handle within reach, or the whole where it is pressed. */
export function grabbed(thing: DrawnThing, p: Point, pxPerMetre: number): Grabbed | null {
	const first = thing.handles[0];
	if (!first) return null;
	const reach = tapReach / pxPerMetre;
	const index = handleAt(thing, p, reach);
	const held = thing.handles.find((one) => one.index === index);
	if (held) return { thing, handle: held.index, offset: { x: held.at.x - p.x, y: held.at.y - p.y } };
	if (distanceToThing(thing, p) > reach / 2) return null;
	const handle = thing.handles.length === 1 && !thing.line ? first.index : null;
	return { thing, handle, offset: { x: first.at.x - p.x, y: first.at.y - p.y } };
}

export interface Snapping {
	sources: SnapSources;
	settings: SnapSettings;
	pxPerMetre: number;
}
/** Where a point under the pointer comes to; `before`: points already set of its line. */
export const pointAt = (p: Point, before: readonly Point[], { sources, settings, pxPerMetre }: Snapping): Snapped =>
	snapped(p, sources, { reach: settings.reach ?? snapReach, before, except: null, on: settings.on }, pxPerMetre);

/** Where what is dragged comes to: not drawn to itself, square to the rest of its own line. */
export function draggedTo({ thing, handle, offset }: Grabbed, p: Point, snapping: Snapping): Snapped {
	const { sources, settings, pxPerMetre } = snapping;
	const wish = {
		reach: settings.reach ?? snapReach,
		before: pointsBefore(thing, handle),
		except: thing.key,
		on: settings.on
	};
	return snapped({ x: p.x + offset.x, y: p.y + offset.y }, sources, wish, pxPerMetre);
}
