/** What the tool in hand waits for, in a sentence. */
import type { DrawnThing } from '$lib/drawing/things/types';
import type { Point } from '$lib/domain/shared/geometry';
import { nextWords, type KindWords } from './kinds';
import type { Moving } from './work';

export type Tool = 'choose' | 'add' | 'measure';
interface InHand {
	tool: Tool;
	/** Being added, with the points set so far. */
	kind: KindWords | null;
	points: readonly Point[];
	thing: DrawnThing | null;
	moving: Moving | null;
	/** Its place is set by the next tap. */
	awaitsPlace: boolean;
}
export function whatNext({ tool, kind, points, thing, moving, awaitsPlace }: InHand): string {
	if (kind) return nextWords(kind, points.length);
	if (tool === 'add') return 'Choose what to add.';
	if (tool === 'measure') return 'Point to one place, then to another.';
	if (!thing) return 'Choose a thing on the drawing to see it, move it or take it away.';
	if (awaitsPlace) return `${thing.name}: point to where it goes.`;
	if (moving) return `${thing.name}: the arrow keys move it, Enter sets it down, Escape puts it back.`;
	if (thing.handles.length === 0) return `${thing.name} is in hand. It is not moved on the drawing.`;
	return `${thing.name} is in hand. Drag it, or press Move.`;
}
