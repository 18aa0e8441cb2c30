import { nearestOnSegment, type Line, type Point } from '../shared/geometry';

/** Half a spade's width: a trench dug straight between the turns kept passes every other point this near, metres. */
const tolerance = 0.06;

/** The turns of a route worth setting out with a tape, ends left out (Douglas and Peucker 1973). */
export function turnsWorthSaying(path: Line): Point[] {
	if (path.length < 3) return [];
	const kept = new Set<number>();
	const spans: [number, number][] = [[0, path.length - 1]];
	for (const [from, to] of spans) {
		let far = -1;
		let most = tolerance;
		for (let i = from + 1; i < to; i += 1) {
			const off = nearestOnSegment(path[i]!, path[from]!, path[to]!).distance;
			// Of equals the first, whatever the rounding: a mirrored route turns at the mirrored places.
			if (off > most + 1e-9) [far, most] = [i, off];
		}
		if (far < 0) continue;
		kept.add(far);
		spans.push([from, far], [far, to]);
	}
	return path.filter((_, i) => kept.has(i));
}
