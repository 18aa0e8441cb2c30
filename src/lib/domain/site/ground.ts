import type { Point } from '../shared/geometry';
import { distanceToPolygon, inPolygon, nearestOnLine, nearestOnPolygon } from '../shared/geometry';
import type { Site, Strip } from './types';

/**
 * Metres from a point to the nearest edge of a strip, negative on it. Sound also where the inside of a tight bend folds
 * the polygon over itself: near the centre line is on the strip whatever the ring says.
 */
export function distanceToStrip(p: Point, strip: Strip): number {
	const edge = nearestOnPolygon(p, strip.polygon);
	if (!edge) return Infinity;
	const centre = nearestOnLine(p, strip.centre)!;
	const between = centre.at > 1e-9 && centre.at < strip.length - 1e-9;
	const inside = (between && centre.distance < strip.width / 2) || inPolygon(p, strip.polygon);
	return inside ? -edge.distance : edge.distance;
}
/** What a point stands on that no fixture may stand on; null for open ground. Edges do not count as inside. */
export function builtAt(
	site: Pick<Site, 'house' | 'strips' | 'areas'>,
	p: Point
): { kind: 'house' | 'walk' | 'drive' | 'paved' | 'porch' | 'water' | 'seating'; id: string } | null {
	if (distanceToPolygon(p, site.house) < 0) return { kind: 'house', id: 'house' };
	const strip = site.strips.find((strip) => distanceToStrip(p, strip) < 0);
	if (strip) return { kind: strip.kind, id: strip.id };
	for (const area of site.areas) {
		if (area.kind !== 'bed' && distanceToPolygon(p, area.polygon) < 0) return { kind: area.kind, id: area.id };
	}
	return null;
}
