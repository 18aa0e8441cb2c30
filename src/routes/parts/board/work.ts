/** What may be in hand on the board, and what it makes of a point. Pure. */
import type { Point } from '$lib/domain/shared/geometry';
import type { DrawnThing } from '$lib/drawing/things/types';
import type { Ghost } from '$lib/drawing/view/types';
import type { Edit } from './edits-types';
import type { KindWords } from './kinds';
import { anchorOf } from './anchor';
import { tidy } from './step';

/** What of a thing is being moved: one handle, or all of it. */
export type Grip = number | 'whole';
export interface Moving {
	key: string;
	grip: Grip;
	/** What it is held by, before it was moved: the handle, or where the whole is met. */
	from: Point;
	/** Where that is to go. */
	to: Point;
}

/** A thing with one place is held by it, a line or an outline as a whole. Null: nothing of it can be moved here. */
export function usualGrip({ handles }: DrawnThing): Grip | null {
	if (handles.length === 0) return null;
	return handles.length === 1 ? handles[0]!.index : 'whole';
}
/** Whether all of it can be carried at once: not what hangs on one place anyway. */
export const hasWhole = ({ handles }: DrawnThing): boolean => handles.length > 1;

/** A thing taken hold of. A whole line is held by its first point, whose place can be read off a tape. */
export function taken(thing: DrawnThing, grip: Grip): Moving | null {
	const from = grip === 'whole' ? thing.handles[0]?.at : thing.handles.find(({ index }) => index === grip)?.at;
	return from ? { key: thing.key, grip, from, to: from } : null;
}
export const isMoved = ({ from, to }: Moving): boolean => tidy(from.x) !== tidy(to.x) || tidy(from.y) !== tidy(to.y);

export const moveEdit = ({ key, grip, from, to }: Moving): Edit =>
	grip === 'whole'
		? { do: 'shift', key, by: { x: tidy(to.x - from.x), y: tidy(to.y - from.y) } }
		: { do: 'move', key, handle: grip, to: { x: tidy(to.x), y: tidy(to.y) } };

/** What is being drawn, as far as it is set; the board draws on from there to the pointer. */
export const drawnGhost = ({ closed }: KindWords, points: readonly Point[]): Ghost | null =>
	points.length > 0 ? { line: points, closed, reach: 0 } : null;

/** The thing nearest in the direction of an arrow key: near, and rather ahead than aside. Null: none lies that way. */
export function nextThing(things: readonly DrawnThing[], from: DrawnThing | null, way: Point): DrawnThing | null {
	const start = from && anchorOf(from);
	if (!from || !start) return things.find((thing) => anchorOf(thing) !== null) ?? null;
	let best: { thing: DrawnThing; cost: number } | null = null;
	for (const thing of things) {
		const at = anchorOf(thing);
		if (!at || thing.key === from.key) continue;
		const ahead = (at.x - start.x) * way.x + (at.y - start.y) * way.y;
		const aside = Math.abs((at.x - start.x) * way.y - (at.y - start.y) * way.x);
		const cost = ahead + 2 * aside;
		if (ahead > 1e-9 && (!best || cost < best.cost)) best = { thing, cost };
	}
	return best?.thing ?? null;
}
