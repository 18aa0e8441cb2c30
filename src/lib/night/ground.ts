/** What lies on the ground, by place. */
import {
	boxOf,
	directionAt,
	leftOf,
	moved,
	pointAt,
	type Box,
	type Point,
	type Polygon
} from '../domain/shared/geometry';
import type { Site, Steps, Strip } from '../domain/site';

export type Ground = 'lawn' | 'street' | 'walk' | 'drive' | 'paved' | 'seating' | 'bed' | 'water' | 'verge' | 'tread';
export interface Region {
	ring: Float64Array;
	box: Box;
	kind: Ground;
	surface: number;
	/** Of a flight of steps: where its foot is, the unit vector up it, and from riser to riser, metres. */
	flight: { x: number; y: number; dx: number; dy: number; going: number } | null;
}
/** Depth of the street beyond its edge, metres: our assumption; beyond it is somebody else's ground. */
export const streetDepth = 6;

const region = (ring: Polygon, kind: Ground, surface: number): Region => ({
	ring: Float64Array.from(ring.flatMap((p) => [p.x, p.y])),
	box: boxOf(ring),
	kind,
	surface,
	flight: null
});
/** A flight as a piece of its walk. The ground of the plan is flat: steps are seen by their edges and the shade under them. */
function flightOf(strip: Strip, { start, end, treads }: Steps, surface: number): Region {
	const half = strip.width / 2;
	const ends = [start, end].map((along) => {
		const at = pointAt(strip.centre, along);
		const left = leftOf(directionAt(strip.centre, along));
		return { at, left: moved(at, left, half), right: moved(at, left, -half) };
	}) as [End, End];
	const [foot, head] = ends;
	const size = Math.hypot(head.at.x - foot.at.x, head.at.y - foot.at.y) || 1;
	return {
		...region([foot.left, head.left, head.right, foot.right], 'tread', surface),
		flight: {
			...foot.at,
			dx: (head.at.x - foot.at.x) / size,
			dy: (head.at.y - foot.at.y) / size,
			going: size / Math.max(1, treads)
		}
	};
}
interface End {
	at: Point;
	left: Point;
	right: Point;
}
/** Regions, the uppermost first. `name` gives a surface its number. */
export function regionsOf(site: Site, name: (kind: string, name: string) => number): Region[] {
	const strips = site.strips.map((strip) => region(strip.polygon, strip.kind, name(strip.kind, strip.name)));
	const order = ['water', 'seating', 'paved', 'bed'] as const;
	const areas = order.flatMap((kind) =>
		site.areas.filter((area) => area.kind === kind).map((area) => region(area.polygon, kind, name(kind, area.name)))
	);
	const flights = site.strips.flatMap((strip) =>
		strip.steps
			.filter(({ start, end }) => end > start)
			.map((steps) => flightOf(strip, steps, name('steps', `steps of the ${strip.name || strip.kind}`)))
	);
	return [
		...flights,
		...strips.filter((one) => one.kind === 'walk'),
		...strips.filter((one) => one.kind === 'drive'),
		...areas
	];
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
