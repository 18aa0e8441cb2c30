/** Where a bed ends and lawn begins: the edge along which a cable is tucked in rather than trenched. */
import type { Point } from '../shared/geometry';
import type { Site } from '../site';
import { clearances } from './costs';
import { boundaryWithin, insideOf, ringShape, type Obstacle, type Shape } from './obstacles';

/** Part of a bed's edge with lawn on its outer side. `place`: its number round the bed; it ends at place + 1. */
export interface LawnEdge {
	from: Point;
	to: Point;
	place: number;
}
/** A bed as ground to dig in. */
export interface Bed {
	id: string;
	name: string;
	shape: Shape;
	/** Corners and places between them, counter-clockwise, in x right, y up. */
	places: Point[];
	edges: LawnEdge[];
}

/** Metres between places at which a cable may enter or leave an edge, and the most of them in a yard. */
const every = 1.5;
const most = 40;
/** Metres of lawn that an edge needs beside it (our figure, no source): less is a strip that goes with the paving. */
const lawnBeside = 0.3;

/** Sides cut into equal parts of about `step` metres, so that a mirror cuts them alike. */
function placesOf(ring: readonly Point[], step: number): Point[] {
	return ring.flatMap((a, i) => {
		const b = ring[(i + 1) % ring.length]!;
		const parts = Math.max(1, Math.round(Math.hypot(b.x - a.x, b.y - a.y) / step));
		return Array.from({ length: parts }, (_, k) => ({
			x: a.x + ((b.x - a.x) * k) / parts,
			y: a.y + ((b.y - a.y) * k) / parts
		}));
	});
}
const around = (ring: readonly Point[]): number =>
	ring.reduce((sum, a, i) => {
		const b = ring[(i + 1) % ring.length]!;
		return sum + Math.hypot(b.x - a.x, b.y - a.y);
	}, 0);

/**
 * The beds of a yard and their edges against lawn. What is no bed, no obstacle and not within 0.3 m of one is taken to be
 * lawn: the survey asks for beds and paving, not for grass.
 */
export function bedsOf(site: Pick<Site, 'areas'>, obstacles: readonly Obstacle[]): Bed[] {
	const shapes = site.areas.flatMap((area) =>
		area.kind === 'bed' && area.polygon.length > 2
			? [{ id: area.id, name: area.name, shape: ringShape(area.polygon) }]
			: []
	);
	if (shapes.length === 0) return [];
	const step = Math.max(every, shapes.reduce((sum, { shape }) => sum + around(shape.ring), 0) / most);
	return shapes.map(({ id, name, shape }) => {
		const places = placesOf(shape.ring, step);
		const isLawn = (p: Point, out: Point): boolean =>
			shapes.every((other) => other.shape === shape || !insideOf(other.shape, out.x, out.y)) &&
			obstacles.every(
				(o) => !insideOf(o, out.x, out.y) && !insideOf(o, p.x, p.y) && !boundaryWithin(o, p.x, p.y, clearances.paving)
			);
		const edges = places.flatMap((from, place): LawnEdge[] => {
			const to = places[(place + 1) % places.length]!;
			const length = Math.hypot(to.x - from.x, to.y - from.y);
			if (length < 1e-6) return [];
			const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
			// Outward of a counter-clockwise ring is the direction of travel turned clockwise.
			const out = {
				x: middle.x + ((to.y - from.y) / length) * lawnBeside,
				y: middle.y - ((to.x - from.x) / length) * lawnBeside
			};
			return isLawn(middle, out) ? [{ from, to, place }] : [];
		});
		return { id, name, shape, places, edges };
	});
}
