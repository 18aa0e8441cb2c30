/** What lies on the ground, by place. */
import { boxOf, type Box, type Polygon } from '../domain/shared/geometry';
import type { Site } from '../domain/site';

export type Ground = 'lawn' | 'street' | 'walk' | 'drive' | 'paved' | 'seating' | 'bed' | 'water' | 'verge' | 'tread';
export interface Region {
	ring: Float64Array;
	box: Box;
	kind: Ground;
	surface: number;
}
/** Depth of the street beyond its edge, metres: our assumption; beyond it is somebody else's ground. */
export const streetDepth = 6;

const region = (ring: Polygon, kind: Ground, surface: number): Region => ({
	ring: Float64Array.from(ring.flatMap((p) => [p.x, p.y])),
	box: boxOf(ring),
	kind,
	surface
});
/** Regions, the uppermost first. `name` gives a surface its number. */
export function regionsOf(site: Site, name: (kind: string, name: string) => number): Region[] {
	const strips = site.strips.map((strip) => region(strip.polygon, strip.kind, name(strip.kind, strip.name)));
	const order = ['water', 'seating', 'paved', 'bed'] as const;
	const areas = order.flatMap((kind) =>
		site.areas.filter((area) => area.kind === kind).map((area) => region(area.polygon, kind, name(kind, area.name)))
	);
	return [...strips.filter((one) => one.kind === 'walk'), ...strips.filter((one) => one.kind === 'drive'), ...areas];
}

/** Whether a place lies within a ring (crossing number). */
export function within({ ring, box }: Region, x: number, y: number): boolean {
	if (x < box.minX || x > box.maxX || y < box.minY || y > box.maxY) return false;
	let inside = false;
	for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
		const yi = ring[i + 1]!;
		const yj = ring[j + 1]!;
		if (yi > y !== yj > y && x < ((ring[j]! - ring[i]!) * (y - yi)) / (yj - yi) + ring[i]!) inside = !inside;
	}
	return inside;
}
