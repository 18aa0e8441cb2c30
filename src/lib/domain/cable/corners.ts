import type { Point } from '../shared/geometry';
import type { Shape } from './obstacles';

/** A corner of an obstacle at its clearance: the only places at which a shortest way bends. */
export interface Corner {
	at: Point;
	/** Directions of the boundary before and after it. */
	before: Point;
	after: Point;
}
type Free = (at: Point) => boolean;

const trunkSides = 8;
/** A corner whose tip stands in the way of something else is cut into so many. */
const finer = 4;
/** What corners of an obstacle are wanted. */
export interface Wanted {
	/** Only those in open ground: where a tip is not, a way may still pass behind it, and the corner is cut more finely. */
	free?: Free;
	/** All are cut finely, for what can be reached only by a way that hardly fits. */
	isFine?: boolean;
}

/** A bend round `p` by `turn` from direction `from`, as `parts` corners that lie `distance` metres off it or a little more. */
function bend(p: Point, from: number, turn: number, distance: number, parts: number, free?: Free): Corner[] {
	const step = turn / parts;
	const reach = distance / Math.cos(step / 2);
	const direction = (angle: number): Point => ({ x: Math.cos(angle), y: Math.sin(angle) });
	const found: Corner[] = [];
	for (let part = 0; part < parts; part++) {
		const before = from + turn * (part / parts);
		// Outward of a counter-clockwise ring is the direction of travel turned clockwise.
		const outward = from + turn * ((part + 0.5) / parts) - Math.PI / 2;
		const at = { x: p.x + reach * Math.cos(outward), y: p.y + reach * Math.sin(outward) };
		if (!free || free(at))
			found.push({ at, before: direction(before), after: direction(from + turn * ((part + 1) / parts)) });
		else found.push(...bend(p, before, step, distance, finer).filter((corner) => free(corner.at)));
	}
	return found;
}

/** Corners of an obstacle grown by `distance` metres; one turning more than a right angle is cut into two or three. */
export function cornersOf(
	o: Pick<Shape, 'ring' | 'round'>,
	distance: number,
	{ free, isFine = false }: Wanted = {}
): Corner[] {
	const times = isFine ? finer : 1;
	if (o.round) return bend(o.round.at, Math.PI / 2, 2 * Math.PI, o.round.radius + distance, trunkSides * times, free);
	return o.ring.flatMap((p, i) => {
		const a = o.ring[(i + o.ring.length - 1) % o.ring.length]!;
		const b = o.ring[(i + 1) % o.ring.length]!;
		const from = Math.atan2(p.y - a.y, p.x - a.x);
		let turn = Math.atan2(b.y - p.y, b.x - p.x) - from;
		while (turn <= -Math.PI) turn += 2 * Math.PI;
		while (turn > Math.PI + 1e-9) turn -= 2 * Math.PI;
		if (turn < 1e-6) return [];
		const parts = Math.max(1, Math.ceil((turn - 1e-6) / (Math.PI / 2)));
		return bend(p, from, turn, distance, parts * times, free);
	});
}
