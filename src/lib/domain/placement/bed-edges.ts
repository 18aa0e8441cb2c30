/** The sides of a bed: which way is out, which are looked at, and how near to each a lamp may come. Frame of the site, metres. */
import {
	between,
	distance,
	distanceToPolygon,
	dot,
	inPolygon,
	leftOf,
	lengthInside,
	moved,
	nearestOnLine,
	nearestOnPolygon,
	nearestOnSegment,
	segmentMeeting,
	sidesOf,
	towards,
	withoutRepeats,
	type Point,
	type Polygon
} from '../shared/geometry';
import { rules } from '../shared/rules';
import type { Area, Site } from '../site';

export interface Side {
	from: Point;
	to: Point;
	/** Unit vector out of the bed. */
	outward: Point;
	/** Seen from a walk or drive beside the bed, or from the street. */
	front: boolean;
	/** Nothing of a lamp stands nearer. */
	clear: number;
}
const { clear, alongside } = rules['bed.inset'].figures;
/** A side within so many metres of the house or a garden wall is neither mown nor edged; a lamp keeps so far from it: our assumptions. */
const built = { within: 0.35, clear: 0.05 } as const;
/** Cosines of the angles between the way out of a side and the way to who looks, up to which it is looked at: 75° from the street, 60° from a walk beside it. */
const facing = { street: 0.26, walk: 0.5 } as const;
const shares = [0.25, 0.5, 0.75] as const;
const probe = 1e-4;

/** The corners without repeats. */
export function ringOf(polygon: Polygon): Polygon {
	const ring = withoutRepeats(polygon);
	return ring.length > 1 && distance(ring[0]!, ring.at(-1)!) < 1e-6 ? ring.slice(0, -1) : ring;
}

/** Whether an outline crosses itself: two of its sides cut each other between their ends. */
export function crossesItself(ring: Polygon): boolean {
	const sides = sidesOf(ring);
	const within = (t: number): boolean => t > 1e-9 && t < 1 - 1e-9;
	return sides.some(([a, b], i) =>
		sides.slice(i + 1).some(([c, e]) => {
			const hit = segmentMeeting(a, b, c, e);
			return hit !== null && within(hit.t) && within(hit.u);
		})
	);
}

/** The sides in the order told; one that has the bed on both hands, or on neither, is no edge and is left out. */
export function bedSides(site: Site, area: Area, ring: Polygon): Side[] {
	const view = viewOf(site, area);
	const sides = sidesOf(ring).flatMap(([from, to]): Side[] => {
		const middle = between(from, to, 0.5);
		const left = leftOf(towards(from, to));
		const [atLeft, atRight] = [probe, -probe].map((off) => inPolygon(moved(middle, left, off), ring));
		if (atLeft === atRight) return [];
		const outward = atLeft ? { x: -left.x, y: -left.y } : left;
		const front = dot(outward, view) > facing.street || besideWay(site, from, to, outward);
		return [{ from, to, outward, front, clear: isBuilt(site, from, to) ? built.clear : clear }];
	});
	if (sides.some(({ front }) => front)) return sides;
	// A sliver that points at who looks: the sides that are turned to them most.
	const most = Math.max(...sides.map(({ outward }) => dot(outward, view)));
	return sides.map((side) => ({ ...side, front: dot(side.outward, view) > most - 1e-6 }));
}

/** The way to who looks: towards the street, or where the house stands between, towards the house. */
function viewOf({ house, street }: Site, { centre }: Area): Point {
	const hidden = house.length >= 3 && lengthInside(centre, { x: centre.x, y: street }, house) > 1e-6;
	const near = hidden ? nearestOnPolygon(centre, house) : null;
	return near && near.distance > 1e-6 && distanceToPolygon(centre, house) > 0
		? towards(centre, near.point)
		: { x: 0, y: 1 };
}
const besideWay = ({ strips }: Site, from: Point, to: Point, outward: Point): boolean =>
	strips.some(({ centre, width }) =>
		shares.some((share) => {
			const p = between(from, to, share);
			const near = nearestOnLine(p, centre);
			return (
				near !== null && near.distance <= alongside + width / 2 && dot(outward, towards(p, near.point)) > facing.walk
			);
		})
	);
const isBuilt = ({ house, walls }: Site, from: Point, to: Point): boolean =>
	shares.every((share) => {
		const p = between(from, to, share);
		return (
			(nearestOnPolygon(p, house)?.distance ?? Infinity) <= built.within ||
			walls.some((wall) => wall.of === 'garden' && nearestOnSegment(p, wall.from, wall.to).distance <= built.within)
		);
	});
