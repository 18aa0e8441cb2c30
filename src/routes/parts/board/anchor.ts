/** Where a thing is met by arrow keys and heard from: one point of it. Metres, in the yard's frame. */
import { centroid, lineLength, pointAt, type Point } from '$lib/domain/shared/geometry';
import type { DrawnThing } from '$lib/drawing/things/types';

/** Its place; of an outline its middle; of a line the point half-way along. Null: it is drawn nowhere. */
export function anchorOf({ at, line, closed }: Pick<DrawnThing, 'at' | 'line' | 'closed'>): Point | null {
	if (at) return at;
	if (!line || line.length === 0) return null;
	if (closed && line.length > 2) return centroid(line);
	return line.length === 1 ? line[0]! : pointAt(line, lineLength(line) / 2);
}
