/** What of the yard a route's drawing shows: the run with a margin, never less than a corner of the garden. */
import type { RouteCard } from '../../domain/checklist';
import type { Box } from '../../domain/shared/geometry';
import { boxAround } from '../path';

/** Metres that are shown at least, across and out. */
const least = { width: 7, height: 4 };

/** Metres. Room for names round the run is part of it. */
export function routeFrame(card: RouteCard): Box {
	const points = card.lines.flatMap((line) => line.legs.flatMap((leg) => leg.path));
	const box = boxAround(points) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
	const size = Math.max(box.maxX - box.minX, box.maxY - box.minY);
	const margin = Math.max(0.8, 0.07 * size);
	const across = Math.max(margin, (least.width - (box.maxX - box.minX)) / 2);
	const out = Math.max(margin, (least.height - (box.maxY - box.minY)) / 2);
	return { minX: box.minX - across, minY: box.minY - out, maxX: box.maxX + across, maxY: box.maxY + out };
}
